/** "blew the 30A fuse twice": what happened to a fuse. */

import type { PlaceItem } from './settled.ts';
import { assumed, phraseOf, said, use, whereOf, type Clause, type Walk } from './walk.ts';
import { push } from './push.ts';

/** "blew the 30A fuse twice": the fuse's size is no reading. */
export const readFuse = (w: Walk, c: Clause): void => {
  const at = c.items.findIndex((it) =>
    /^(?:blew|blow|blows|blowing|blown|popped|pops|popping|took out|burns|burned|burnt)$/.test(
      it.k === 'unknown' ? it.low : phraseOf(it),
    ),
  );
  const fuse = c.places.find((i) => i > at && (c.items[i] as PlaceItem).p.part === 'fuse');
  if (at < 0 || fuse === undefined || fuse - at > 4 || c.items.slice(0, at).some((it) => it.k === 'neg')) return;
  const by = c.items[at]!;
  use(w, c.items[fuse]);
  for (const it of c.items.slice(at, fuse)) use(w, it);
  push(
    w,
    {
      is: 'sign',
      where: whereOf(assumed({ part: 'pump' })),
      what: said('blows fuse', by),
      there: true,
      ...(c.often ? { often: c.often.v } : {}),
    },
    null,
    by,
  );
};
