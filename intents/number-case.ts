/** Numbers that are no reading of a gauge or a tape: which bay, how often, the size of a fuse; and what they say instead. */
import type { Amounting } from './amount-item.ts';
import { locOf } from './loc.ts';
import type { Hit } from './near.ts';
import { push } from './push.ts';
import type { PlaceItem } from './settled.ts';
import { carried, phraseOf, said, use, type Clause, type Walk } from './walk.ts';

/** Reads such a number; the index after what it took, null when the number is a reading. */
export const readNumberCase = (w: Walk, c: Clause, n: Amounting, index: number, hit: Hit | null): number | null => {
  const items = c.items;
  const { unit } = n;
  // "bay 3", "job 4410": which, not how much
  const named = c.items[index - 1];
  if (
    n.unit === null &&
    n.whole &&
    named?.k === 'unknown' &&
    /^(?:bay|lift|stall|job|ticket|ro|order|invoice|unit|fleet)$/.test(named.low)
  )
    return index + 1;
  // "two wedges": so many of something nobody knows; "unit 214"
  const things = items[index + 1];
  if (phraseOf(items[index - 1]) === 'unit' && n.whole && n.value >= 100) return index + 1;
  if (
    unit === null &&
    n.whole &&
    ((things?.k === 'unknown' && /^[a-z]{3,}s$/.test(things.low)) || phraseOf(items[index - 1]) === 'unit')
  )
    return index + 1;
  // "fuse 30A": its size
  const again =
    w.subject?.p.part === 'fuse' &&
    /\b(?:also|another|same|new one|one)(?: also)? $/i.test(w.text.slice(0, n.span[0]).slice(-14));
  if (unit === 'A' && n.whole && (hit?.item.p.part === 'fuse' || again)) {
    use(w, n, hit?.item);
    return index + 1;
  }
  // "soaped it two times"
  if (n.unit === null && /^times?$/.test(phraseOf(items[index + 1]))) {
    use(w, n);
    return index + 1;
  }
  // "dash gauge reads 6 lbs low": it lies, by so much
  const off = items[index + 1];
  if (hit?.item.p.part === 'gauge' && off?.k === 'sign' && (off.v === 'low' || off.v === 'high') && n.value < 40) {
    const gauge = locOf(w, hit.item);
    push(w, { is: 'sign', what: said('reads wrong', off), there: true }, gauge, off);
    return index + 2;
  }
  // "nearside shock 50 mm longer than the other": no height of the corner
  const than = items[index + 1];
  if (
    than?.k === 'unknown' &&
    /^(?:longer|shorter)$/.test(than.low) &&
    (hit?.item.p.part === 'shock' || w.subject?.p.part === 'shock')
  ) {
    // the first named is the one that is longer
    const first = items.find((it): it is PlaceItem => it.k === 'place' && it.p.part === 'shock');
    const shock = first ? locOf(w, first) : carried(w.subject);
    push(w, { is: 'sign', what: { v: 'wrong part', from: 'assumed', spans: [than.span] }, there: true }, shock, than);
    use(w, n);
    w.subject = shock;
    return index + 2;
  }
  // "30A fuse blown": the size of a fuse is no reading
  const sized = items[index + 1];
  if (unit === 'A' && /^ ?(?:blade )?(?:fuse|breaker)\b/i.test(w.text.slice(n.span[1], n.span[1] + 16))) {
    use(w, n);
    return index + 1;
  }
  if (unit === 'A' && sized?.k === 'place' && ['fuse', 'breaker', 'relay'].includes(sized.p.part ?? '')) {
    use(w, n);
    return index + 1;
  }
  // "fuse was a twenty amp": its size
  if (
    unit === 'A' &&
    n.whole &&
    /^(?:a|new|another|the same)$/.test(
      phraseOf(items[index - 1])
        .split(' ')
        .at(-1) ?? '',
    ) &&
    (w.subject?.p.part === 'fuse' || hit?.item.p.part === 'fuse')
  ) {
    use(w, n, hit?.item);
    return index + 1;
  }
  return null;
};
