/** Numbers that are no reading of a gauge or a tape: which bay, how often, the size of a fuse; and what they say instead. */
import { dimensionOf } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { voltParts } from './dims.ts';
import { readRate } from './read-rate.ts';
import { locOf } from './loc.ts';
import type { Hit } from './near.ts';
import { isNoNumber } from './no-number.ts';
import { unreadable } from './ask-about.ts';
import { push } from './push.ts';
import type { PlaceItem, Settled } from './settled.ts';
import { amountOf, carried, phraseOf, said, use, type Clause, type Walk } from './walk.ts';

/** "30A fuse blown", "fuse was a twenty amp", "put a new one in, also 30A": the size of a fuse is no reading. */
const isRating = (
  w: Walk,
  n: Amounting,
  before: Settled | undefined,
  after: Settled | undefined,
  hit: Hit | null,
): boolean => {
  if (/^ ?(?:blade )?(?:fuse|breaker)\b/i.test(w.text.slice(n.span[1], n.span[1] + 16))) return true;
  if (after?.k === 'place' && ['fuse', 'breaker', 'relay'].includes(after.p.part ?? '')) return true;
  if (!n.whole) return false;
  // "replaced the relay with new 40a"
  const lately = w.facts.at(-1);
  const fitted = lately?.is === 'work' && /(?:relay|fuse|breaker)$/.test(lately.where.v);
  if (fitted && /^(?:new|a|with|a new|another)$/.test(phraseOf(before))) return true;
  if (before?.k === 'place' && before.p.part === 'fuse') return true;
  if (hit?.item.p.part === 'fuse') return true;
  if (w.subject?.p.part !== 'fuse') return false;
  return (
    /(?:^| )(?:a|new|another|the same)$/.test(phraseOf(before)) ||
    /\b(?:also|another|same|new one|one)(?: also)? $/i.test(w.text.slice(0, n.span[0]).slice(-14))
  );
};

/** Reads such a number; the index after what it took, null when the number is a reading. */
export const readNumberCase = (w: Walk, c: Clause, n: Amounting, index: number, hit: Hit | null): number | null => {
  const items = c.items;
  const { unit } = n;
  const before = items[index - 1];
  const after = items[index + 1];
  const bare = unit === null && n.whole;
  if (isNoNumber(w, c, n, index)) return index + 1;
  // "9 psi in 15": of what unit the time is was not said
  const within15 = items[index + 2];
  if (
    unit !== null &&
    dimensionOf(unit) === 'pressure' &&
    phraseOf(after) === 'in' &&
    within15?.k === 'num' &&
    within15.unit === null &&
    within15.clock === undefined &&
    !w.used.has(within15)
  ) {
    unreadable(w, within15);
    return index + 3;
  }
  // "2 tiny bubbles": how many
  const counted = items.slice(index + 1, index + 4).find((it) => it.k !== 'filler' && it.k !== 'unknown');
  if (
    bare &&
    n.value < 20 &&
    counted?.k === 'sign' &&
    /(?:^| )(?:bubbles|leaks|cracks|splits|cuts|holes)$/.test(counted.phrase)
  ) {
    use(w, n);
    return index + 1;
  }
  // "parked at 4, by 6 it was down": an hour, of morning or evening
  if (
    bare &&
    n.value <= 12 &&
    phraseOf(before) === 'by' &&
    /\b(?:parked|left|stopped|shut (?:it )?(?:off|down)|at \d+|noon|morning|evening|night)\b/i.test(
      w.text.slice(0, n.span[0]),
    ) &&
    !/^(?:sign|change)$/.test(items[index - 2]?.k ?? '')
  )
    return index + 1;
  // "12 starts an hour": how often
  if (bare && /^(?:starts|cycles|runs|times)$/.test(phraseOf(after))) {
    use(w, after);
    return index + 1;
  }
  // "1 psi/min", "5 psi an hour"
  if (!items.slice(0, index).some((it) => it.k === 'num' && w.used.has(it))) {
    const rated = readRate(w, c, n, index, hit ? locOf(w, hit.item) : null);
    if (rated !== null) return rated;
  }
  // "12.1 at the relay 85, 11.9 at the 30 post": which terminal
  if (
    bare &&
    [30, 85, 86, 87].includes(n.value) &&
    (/^(?:post|terminal|pin|stud|leg)\b/.test(after?.k === 'unknown' ? after.low : phraseOf(after)) ||
      /^(?:pin|terminal)$/.test(before?.k === 'unknown' ? before.low : phraseOf(before)) ||
      /\brelay(?: pin| terminal)? $/i.test(w.text.slice(0, n.span[0]).slice(-18)))
  ) {
    use(w, n);
    return index + 1;
  }
  // "left tyre was 20 lbs low": by how much, no pressure of it
  if (
    (unit === 'psi' || unit === 'lb' || unit === 'bar' || unit === 'kPa') &&
    after?.k === 'sign' &&
    (after.v === 'low' || after.v === 'high') &&
    ['tyre', 'wheel', 'tank', 'bellows'].includes(hit?.item.p.part ?? '')
  )
    return index + 1;
  // "fuse is a 30": its size
  if (bare && n.value >= 2 && /^(?:fuse|breaker)$/.test(hit?.item.p.part ?? '') && n.value !== 12 && n.value !== 24)
    return index + 1;
  // "two wedges": so many of something nobody knows
  if (bare && after?.k === 'unknown' && /^[a-z]{3,}s$/.test(after.low)) return index + 1;
  if (unit === 'A' && isRating(w, n, before, after, hit)) {
    use(w, n, hit?.item.p.part === 'fuse' || w.subject?.p.part === 'fuse' ? hit?.item : undefined);
    return index + 1;
  }
  // "soaped it two times"
  if (unit === null && /^times?$/.test(phraseOf(after))) {
    use(w, n);
    return index + 1;
  }
  // "checked the ground, .8 drop": volts lost there
  const lossy = hit?.item.p.part ?? w.subject?.p.part;
  if (
    (unit === null || unit === 'V') &&
    n.value < 6 &&
    /^(?:drop|dropped|lost)$/.test(phraseOf(after)) &&
    lossy !== undefined &&
    (voltParts.has(lossy) || lossy === 'pressure switch') &&
    !['battery', 'motor'].includes(lossy)
  ) {
    const at = hit ? locOf(w, hit.item) : carried(w.subject);
    const amount = said(amountOf(n, 'V', true), n);
    push(w, { is: 'reading', what: said('voltage drop', after!), amount }, at, n);
    use(w, after);
    return index + 2;
  }
  // "dash gauge reads 6 lbs low": it lies, by so much
  if (
    hit?.item.p.part === 'gauge' &&
    after?.k === 'sign' &&
    (after.v === 'low' || after.v === 'high') &&
    n.value < 40
  ) {
    const gauge = locOf(w, hit.item);
    push(w, { is: 'sign', what: said('reads wrong', after), there: true }, gauge, after);
    return index + 2;
  }
  // "nearside shock 50 mm longer than the other": no height of the corner
  if (
    after?.k === 'unknown' &&
    /^(?:longer|shorter)$/.test(after.low) &&
    (hit?.item.p.part === 'shock' || w.subject?.p.part === 'shock')
  ) {
    // the first named is the one that is longer
    const first = items.find((it): it is PlaceItem => it.k === 'place' && it.p.part === 'shock');
    const shock = first ? locOf(w, first) : carried(w.subject);
    push(w, { is: 'sign', what: { v: 'wrong part', from: 'assumed', spans: [after.span] }, there: true }, shock, after);
    use(w, n);
    w.subject = shock;
    return index + 2;
  }
  return null;
};
