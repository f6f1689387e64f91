/** Whose word a clause is, how regularly its things are so, and of what time. */
import { dimension } from './amount-item.ts';
import { isContent } from './near.ts';
import { phraseOf, skippable, use, type Clause, type Walk } from './walk.ts';

const ownWord = /^(?:i|ive|im|we|weve)$/;

/** "driver says it leans, i got 27 amps": what the tech says himself ends what was told. */
const speaksHimself = (c: Clause, joined: boolean): boolean => {
  const first = c.items[0];
  if (!first || c.items.some((i) => i.k === 'told')) return false;
  return (
    ownWord.test(phraseOf(first)) ||
    // "driver c/o bouncing, found both shocks blown"
    /^(?:found|checked|measured)$/.test(phraseOf(first)) ||
    (first.k === 'unknown' && ownWord.test(first.low)) ||
    c.items.some((i) => i.k === 'num' && i.unit !== null && dimension(i) !== 'duration') ||
    // nobody but the tech puts a tape to a corner
    (!joined &&
      c.items.some((i) => i.k === 'num' && i.unit === null && i.clock === undefined) &&
      c.items.some((i) => i.k === 'place' && i.p.end !== undefined && i.p.part === undefined))
  );
};

/** Sets who speaks, what was thought and how often, before the clause is read. */
export const hearVoice = (w: Walk, c: Clause, before: Clause | undefined): void => {
  // a time that leads a sentence is of all its readings, until another is said
  const timed = c.items.some((i) => (i.k === 'num' && i.clock !== undefined) || i.k === 'day');
  if (!before || before.hard || timed) w.lineWhen = null;
  if (speaksHimself(c, before?.joined === true)) w.told = false;
  if (c.items.some((i) => i.k === 'told')) w.told = true;
  w.hunch = c.items.some(
    (i, j) =>
      i.k === 'hedge' &&
      !(/^(?:looks|seems|appears)/.test(i.phrase) && c.items.slice(j + 1).find((it) => !skippable(it))?.k === 'num'),
  );
  // "lower does nothing, exhaust blocked?": supposed
  if (before !== undefined && !before.hard && /^\s*\?/.test(w.text.slice(c.items.at(-1)!.span[1]))) w.hunch = true;
  for (const i of c.items) if (i.k === 'hedge' || i.k === 'told' || i.k === 'often') use(w, i);
  if (
    before &&
    !before.hard &&
    !c.often &&
    before.often &&
    ((before.joined && before.items[0] === before.often) ||
      (before.often.v === 'driving' && before.items.every((it) => it === before.often || skippable(it))))
  )
    c.often = before.often;
  // "sat overnight, LR down 1 1/2, RR held": what sank, sank overnight
  if (!before || before.hard) w.lineOften = null;
  if (c.often?.v === 'standing' && !c.items.some(isContent) && c.places.length === 0 && !c.hard)
    w.lineOften = 'standing';
  if (
    w.lineOften &&
    !c.often &&
    c.items.some((it) => it.k === 'change' || (it.k === 'sign' && ['holds', 'low', 'leans', 'flat'].includes(it.v)))
  )
    c.often = before?.often ?? { k: 'often', v: 'standing', span: c.items[0]!.span, phrase: '' };
  const last = w.facts.at(-1);
  if (
    c.often &&
    last &&
    !(last.is === 'reading' && ['temperature', 'odometer', 'humidity', 'voltage', 'current'].includes(last.what.v)) &&
    !last.often &&
    (!before?.hard || c.hard) &&
    c.places.length === 0 &&
    !c.items.some((it) => isContent(it) || it.k === 'day' || it.k === 'told' || it.k === 'unknown') &&
    (last.is === 'sign' || last.is === 'reading')
  )
    last.often = c.often.v;
};

/** "bounces and wanders on the highway": what the end of a clause says is of the sign joined before it, too. */
export const shareOften = (w: Walk, c: Clause, before: Clause | undefined): void => {
  const lastFact = w.facts.at(-1);
  if (
    before?.joined &&
    c.often &&
    !before.often &&
    lastFact?.is === 'sign' &&
    !lastFact.often &&
    c.places.length === 0 &&
    before.items.some((it) => it.k === 'sign') &&
    c.items.indexOf(c.often) > c.items.findIndex((it) => it.k === 'sign')
  )
    lastFact.often = c.often.v;
};
