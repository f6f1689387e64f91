/** Verdicts that fall are taken back out loud, with the note that felled them. Pure. */
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { evidenceOf } from './evidence.ts';
import { contradictionsOf } from './sure.ts';
import { rankOf } from './rank.ts';
import { bitsFor } from './suspects.ts';
import { weigh } from './weigh.ts';

/** Held likely before ("1 in 2" or better), and not any more. */
const was = 0.42;
const now = 0.2;

/** What speaks hardest against a fault among facts that are new. */
const felledBy = (fault: string, after: Standing, fresh: ReadonlySet<string>, sheet: Sheet): string | null => {
  const w = weigh(after, sheet);
  const cause = w.model.index.get(fault);
  if (cause === undefined) return null;
  const hit = w.evidence
    .map((e, k) => ({ e, bits: bitsFor(w, k, cause) }))
    .filter(({ e }) => e.because.some((id) => fresh.has(id)))
    .toSorted((a, b) => a.bits - b.bits)[0];
  return hit ? hit.e.words : null;
};

export const withdrawn = (before: Standing, after: Standing, sheet?: Sheet): string[] => {
  const out: string[] = [];
  const had = new Set(before.facts.map((h) => h.fact.id));
  const has = new Set(after.facts.map((h) => h.fact.id));
  const fresh = after.facts.filter((h) => !had.has(h.fact.id));
  const ids = new Set(fresh.map((h) => h.fact.id));
  const lost = before.facts.some((h) => !has.has(h.fact.id));
  const works = fresh.flatMap(({ fact }) =>
    fact.is === 'work' && fact.done && fact.where.v !== '' ? [fact.where.v] : [],
  );
  for (const s of before.suspects) {
    if (s.p < was) continue;
    const p = after.suspects.find((x) => x.fault === s.fault && x.where === s.where)?.p ?? 0;
    // Mended is not withdrawn: the verdict stood, the fault is gone.
    if (p >= now || works.length > 0) continue;
    const felled = sheet && fresh.length > 0 ? felledBy(s.fault, after, ids, sheet) : null;
    const because = felled
      ? `because of "${felled}"`
      : fresh.length > 0
        ? 'because of what you just noted'
        : lost
          ? 'because what it rested on was taken back'
          : 'because of the last note';
    out.push(`I take back "${s.name}": it was ${s.rank}, now ${rankOf(p)}, ${because}.`);
  }
  return sheet ? [...out, ...doubts(before, after, sheet)] : out;
};

/** Reports that have come to disagree, and readings that a second gauge has put in doubt. */
const doubts = (before: Standing, after: Standing, sheet: Sheet): string[] => {
  const is = weigh(after, sheet);
  const said = contradictionsOf(is);
  const doubted = is.evidence.filter((e) => e.note === 'gauge in doubt');
  if (said.length === 0 && doubted.length === 0) return [];
  // what was in doubt before hangs on the evidence alone: nothing is weighed for it
  const was = { evidence: evidenceOf(before, sheet) };
  const known = new Set(contradictionsOf(was));
  const out = said.filter((words) => !known.has(words));
  if (doubted.length > 0 && !was.evidence.some((e) => e.note === 'gauge in doubt'))
    out.push(
      `The gauges disagree, so what I took from the tank gauge no longer counts for much: ${doubted.map((e) => `"${e.words}"`).join(', ')}. Read again by the gauge you trust.`,
    );
  return out;
};
