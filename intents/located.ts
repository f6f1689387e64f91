/** Places that only say where another stands, and parts named by what they belong to. */
import type { PlaceItem, Settled } from './settled.ts';

/** "the corner of my coach", "the rod between the arm and the axle", "the crimp and its line". */
export const located = (items: readonly Settled[], text: string): Settled[] => {
  const idleAt = new Set<number>();
  let before: { place: PlaceItem; at: number } | undefined;
  items.forEach((item, i) => {
    // "coffee machine": not this one
    if (item.k === 'place' && item.phrase === 'machine' && items[i - 1]?.k === 'unknown') idleAt.add(i);
    if (item.k !== 'place') return;
    const led = before;
    before = { place: item, at: i };
    if (!led) return;
    const prev = led.place;
    const gap = text.slice(prev.span[1], item.span[0]).toLowerCase();
    // "weeping at the tank end": which end of it
    if (
      item.p.part &&
      !item.p.side &&
      prev.p.part &&
      / (?:at|on) the $/.test(gap) &&
      /^ end\b/i.test(text.slice(item.span[1], item.span[1] + 5))
    )
      idleAt.add(i);
    if (
      item.p.part === 'coach' &&
      (prev.p.side ?? prev.p.end ?? prev.p.part) &&
      /^(?: corner| side| end)? of (?:my|the|this|our|his|her) $/.test(gap)
    )
      idleAt.add(i);
    // "the fitting at the left bag", "the hose going to it": the line of that bag
    if (
      item.p.part === 'bellows' &&
      ((prev.p.part === 'line' &&
        /^ (?:(?:going|running|leading|that goes|that runs|feeding|coming) )?(?:to|into|from|off|of) (?:the |his |my )?$/.test(
          gap,
        )) ||
        (prev.p.part === 'fitting' && /^ (?:at|on|of|for) (?:the |his |my )?$/.test(gap))) &&
      !prev.p.side
    ) {
      idleAt.add(led.at);
      item.p = { ...item.p, part: 'bellows line' };
      item.phrase = prev.phrase;
    }
    // "the crimp and its line"
    if (
      item.p.part === 'line' &&
      /^(?:bellows|bellows crimp|bellows fold)$/.test(prev.p.part ?? '') &&
      /^(?: and|,) its $/.test(gap)
    )
      item.p = { ...prev.p, ...item.p, part: 'bellows line' };
    // "rear shocks both warm": both of them
    if (
      item.p.side === 'both' &&
      !item.p.part &&
      !item.p.end &&
      item.phrase === 'both' &&
      gap === ' ' &&
      prev.p.side &&
      /s$/i.test(text.slice(...prev.span))
    )
      idleAt.add(i);
    if (!/^ between (?:the |my )?$/.test(gap)) return;
    const to = items.slice(i + 1).findIndex((o) => o.k === 'place');
    const near = to < 0 || to > 3 || !items.slice(i + 1, i + 1 + to).some((o) => o.k === 'join') ? 0 : to + 1;
    if (near === 0) return;
    for (let j = i; j <= i + near; j += 1) idleAt.add(j);
    if (item.p.side && !prev.p.side) prev.p = { ...prev.p, side: item.p.side };
  });
  return items.map((item, i) => (idleAt.has(i) ? { k: 'filler', span: item.span, phrase: 'there' } : item));
};
