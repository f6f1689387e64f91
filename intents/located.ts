/** Places that only say where another stands, and parts named by what they belong to. */
import type { PlaceItem, Settled } from './settled.ts';
import type { Part, Span } from './shapes.ts';

const hung: ReadonlySet<string> = new Set([
  'tank',
  'line',
  'bellows line',
  'supply line',
  'discharge line',
  'panel',
  'pump',
  'motor',
  'height valve',
  'battery',
  'dryer',
]);

/** "tank bracket cracked": what holds the tank, and not the bracket whose shims are turned. */
export const bracketsOf = (items: readonly Settled[]): Settled[] =>
  items.flatMap((item, i): Settled[] => {
    const next = items[i + 1];
    const prev = items[i - 1];
    const bracket = (it: Settled | undefined): it is PlaceItem =>
      it?.k === 'place' && it.p.part === 'bracket' && !it.p.side;
    const holds = (it: Settled | undefined): boolean => it?.k === 'place' && hung.has(it.p.part ?? '');
    if (bracket(next) && holds(item) && next.span[0] === item.span[1] + 1) return [];
    if (bracket(item) && prev && holds(prev) && item.span[0] === prev.span[1] + 1)
      return [{ k: 'unknown', low: 'bracket', span: [prev.span[0], item.span[1]] }];
    return [item];
  });

/** What runs between two parts; the two in the order of the alphabet. */
const lines: Readonly<Record<string, Part>> = {
  'height valve+tank': 'supply line',
  'protection valve+tank': 'supply line',
  'regulator+tank': 'supply line',
  'panel+tank': 'supply line',
  'pump+tank': 'discharge line',
  'dryer+tank': 'discharge line',
  'check valve+tank': 'discharge line',
  'check valve+pump': 'discharge line',
  'dryer+pump': 'discharge line',
  'bellows+height valve': 'bellows line',
  'bellows+panel': 'bellows line',
  'height valve+panel': 'valve to panel line',
};

/** "a leak between the tank and the protection valve": in the line between them, and in neither. */
export const betweenParts = (items: readonly Settled[]): Settled[] => {
  const out = [...items];
  items.forEach((item, i) => {
    if (item.k !== 'filler' || item.phrase !== 'between') return;
    const [a, b] = items.slice(i + 1, i + 7).filter((it): it is PlaceItem => it.k === 'place');
    if (!a?.p.part || !b?.p.part) return;
    const from = items.indexOf(a);
    const to = items.indexOf(b);
    if (to - from > 3 || !items.slice(from, to).some((it) => it.k === 'join')) return;
    if (!items.slice(i + 1, to).every((it) => it.k === 'filler' || it.k === 'join' || it.k === 'place')) return;
    const part = lines[[a.p.part, b.p.part].toSorted().join('+')];
    if (part === undefined) return;
    const side = a.p.side ?? b.p.side;
    const span: Span = [a.span[0], b.span[1]];
    out[from] = { ...a, p: { ...(side ? { side } : {}), part }, span, spans: [...a.spans, ...b.spans], assumed: true };
    for (let j = from + 1; j <= to; j += 1) out[j] = { k: 'filler', span: items[j]!.span, phrase: 'there' };
  });
  return out;
};

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
    // "checked both check valves, the one at the tank leaks": which of them
    if (
      / (?:the |that )?one (?:at|on|by|near|in|off|from|for) (?:the |my )?$/.test(gap) &&
      prev.p.part &&
      prev.p.part !== item.p.part &&
      !item.p.side
    ) {
      item.p = { ...prev.p, side: undefined };
      item.assumed = true;
    }
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
