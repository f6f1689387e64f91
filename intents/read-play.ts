/** Play that was felt and not measured. */
import { locOf } from './loc.ts';
import { push } from './push.ts';
import type { PlaceItem } from './settled.ts';
import { phraseOf, said, use, type Clause, type Walk } from './walk.ts';

/** "bit of play in the left arm bush", "some slop in the link": loose, by no figure. */
export const readPlay = (w: Walk, c: Clause): void => {
  const at = c.items.findIndex((it) => it.k === 'measure' && it.v === 'free play');
  const play = c.items[at];
  if (!play || c.items.some((it) => it.k === 'num' || it.k === 'neg' || it.k === 'sign')) return;
  const lead = w.text.slice(0, play.span[0]).slice(-24);
  const place = c.places.find((i) => i > at);
  if (place === undefined || !/^(?:in|at|on)$/.test(phraseOf(c.items[at + 1]))) return;
  if (
    !/\b(?:bit of|some|little|lot of|lots of|too much|excess|excessive|slight|theres|there is|got|has|have|found|bad|big|mm of|much) $/i.test(
      lead,
    )
  )
    return;
  push(w, { is: 'sign', what: said('loose', play), there: true }, locOf(w, c.items[place] as PlaceItem), play);
  use(w, play);
};
