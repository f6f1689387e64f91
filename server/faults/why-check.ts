/** Why that check, in words. Pure. */
import type { Hypothesis } from './hypotheses.ts';
import type { Weighed } from './weigh.ts';
import type { Candidate } from './candidates.ts';

export const told = (bits: number): string =>
  bits >= 0.8 ? 'it tells most' : bits >= 0.3 ? 'it tells much' : 'it tells something';

/** The two likeliest faults that the check would tell apart. */
const splits = (w: Weighed, hs: readonly Hypothesis[], c: Candidate): string => {
  const { width, cells } = c.table;
  const apart = (a: number, b: number): number => {
    let sum = 0;
    for (let y = 0; y < width; y++) sum += Math.abs(cells[a * width + y]! - cells[b * width + y]!);
    return sum / 2;
  };
  const name = (h: Hypothesis): string =>
    h.of.length === 0
      ? 'nothing wrong'
      : h.of
          .map((x) =>
            x < w.model.faults.length
              ? w.model.faults[x]!.title
              : `${w.model.faults[w.faultOfCause[x]!]!.where} mended`,
          )
          .join(', and ');
  let best: { a: number; b: number; worth: number } | null = null;
  for (let a = 0; a < Math.min(6, hs.length); a++)
    for (let b = a + 1; b < Math.min(10, hs.length); b++) {
      const worth = apart(a, b) * Math.min(hs[a]!.p, hs[b]!.p);
      if (!best || worth > best.worth) best = { a, b, worth };
    }
  if (!best || best.worth < 0.005) return 'It narrows the list';
  return `It tells "${name(hs[best.a]!)}" from "${name(hs[best.b]!)}"`;
};

export const whyCheck = (w: Weighed, hs: readonly Hypothesis[], c: Candidate, first: boolean): string => {
  const split = splits(w, hs, c);
  if (first) return `${split}, and three minutes of pumping would wipe it out.`;
  const wait =
    c.minutes.wait > 0
      ? `${c.minutes.wait} min waiting${c.check.meanwhile ? ` (meanwhile: ${c.check.meanwhile})` : ''}`
      : 'no waiting';
  return `${split}; ${told(c.bits)} for ${Math.round(c.minutes.hands)} min at hand, ${wait}.`;
};
