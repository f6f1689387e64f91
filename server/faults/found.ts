/** What findings say, as outcomes of observables, by the state their readings were taken in. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { Finding } from '../findings/finding.ts';
import { stillRests } from '../session/rests.ts';
import type { Standing } from '../session/standing.ts';
import { farLow, nightTakes } from '../twin/observables.ts';
import { leans } from '../twin/see-standing.ts';
import { answersNight } from './moment.ts';
import { type Evidence, noteOf, trust, trustAssumed, trustRead } from './told.ts';
import { touches } from './touch.ts';
import { assumedAuto, furtherLow, verdictEvidence } from './verdicts.ts';

type Remembered = Standing & { tape?: { replies: ReadonlyMap<string, { blocks: readonly { is: string }[] }> } };

/** Findings whose facts still stand: the newest of each key, and older ones where the replies are at hand. */
const findingsOf = (standing: Remembered): Finding[] => {
  const rests = stillRests(standing);
  const all = new Map<string, Finding>();
  const put = (f: Finding): void => {
    if (rests(f)) all.set(`${f.key} ${f.because.length} ${f.because[0] ?? ''} ${f.because.at(-1) ?? ''}`, f);
  };
  for (const reply of standing.tape?.replies.values() ?? [])
    for (const block of reply.blocks)
      if (block.is === 'findings') for (const f of (block as { list?: Finding[] }).list ?? []) put(f);
  for (const f of standing.findings.values()) put(f);
  return [...all.values()];
};

/** Whether the intake filter was off at that place in the order of the facts: the pump then breathes freely. */
const filterOff =
  (standing: Standing): ((i: number) => boolean) =>
  (i) => {
    const last = standing.facts
      .slice(0, i + 1)
      .findLast(({ fact }) => fact.is === 'work' && fact.done && takePlace(fact.where.v)?.part === 'intake filter');
    return last?.fact.is === 'work' && last.fact.what.v === 'removed';
  };

/** One side watched by tape beside the other in the same note, and hardly moving against it: it only leans after it. */
const onlyLeans = (f: Finding, all: readonly Finding[]): boolean => {
  const side = /^sink .*@(left|right)\b/.exec(f.key)?.[1];
  if (!side || !f.amount) return false;
  const other = f.key.replace(/@(?:left|right)\b/, `@${side === 'left' ? 'right' : 'left'}`);
  const note = (id: string | undefined): string => noteOf(id ?? '.');
  return all.some(
    (o) =>
      o.key === other &&
      o.amount !== undefined &&
      note(o.because.at(-1)) === note(f.because.at(-1)) &&
      leans(Math.abs(f.amount!.si), Math.abs(o.amount.si)),
  );
};

/** Cold and dead band take both sides alike: one that is that much lower than the other, and out of tolerance, is low. */
const leansOver = (f: Finding, all: readonly Finding[], see: string, outcome: string): boolean => {
  if (outcome !== 'low' || !see.endsWith('as found') || !f.amount || f.amount.si < -farLow) return false;
  const other = all.find((o) => o.key === f.key.replace(/(left|right)/, (s) => (s === 'left' ? 'right' : 'left')));
  return other?.amount !== undefined && f.amount.si - other.amount.si < -nightTakes;
};

/** So long without a note and nothing pumping is a night. ms */
const night = 6 * 3_600_000;
/** Left standing for a night before that fact was taken: said so, asked for, or a gap that long, key not on since. */
const stoodANight = (standing: Standing, i: number): boolean => {
  const { fact, seq } = standing.facts[i]!;
  if (fact.is !== 'reading' || standing.stateAt.get(fact.id)?.panel === 'shut') return false;
  if (fact.often === 'standing' || answersNight(standing, i)) return true;
  const before = standing.facts.slice(0, i).findLast((h) => h.seq < seq);
  return before !== undefined && fact.at - before.fact.at >= night && standing.stateAt.get(fact.id)?.key !== true;
};
/** A height taped then says how the night went, not what the valve levels to. */
const afterNight = (e: { see: string; outcome: string }): { see: string; outcome: string } => {
  const side = /^(left|right) (?:as found|rear height)$/.exec(e.see)?.[1];
  if (!side) return e;
  const outcome = /^(?:level|within)$/.test(e.outcome) ? 'holds' : e.outcome === 'on stops' ? 'on stops' : 'drops';
  return e.outcome === 'high' ? e : { see: `${side} overnight`, outcome };
};

export const findingEvidence = (standing: Standing): Evidence[] => {
  const at = new Map(standing.facts.map((h, i) => [h.fact.id, { i, h }]));
  const touched = standing.facts.findIndex(({ fact }) => touches(fact));
  const untilTouched = touched < 0 ? standing.facts.length : touched;
  const open = filterOff(standing);
  const all = findingsOf(standing);
  return all.flatMap((f) => {
    const beside = onlyLeans(f, all);

    let last: { i: number; h: Standing['facts'][number] } | null = null;
    let weight = Infinity;
    for (const id of f.because) {
      const rest = at.get(id);
      if (!rest) continue;
      const { fact } = rest.h;
      if (!last || rest.i > last.i) last = rest;
      weight = Math.min(weight, fact.is === 'reading' && fact.word === 'own' ? trustRead : trust[fact.word]);
    }
    if (!last) return [];
    const guessed = assumedAuto(f);
    if (guessed.length > 0) weight = Math.min(weight, trustAssumed);
    const newest = last;
    return (
      [...(f.evidence ?? []), ...verdictEvidence(f), ...guessed]
        .map((e) => (newest.i > untilTouched && stoodANight(standing, newest.i) ? afterNight(e) : e))
        // How it was found is said once, before anything is touched.
        .filter(({ see }) => !see.endsWith('as found') || newest.i <= untilTouched)
        .map(({ see, outcome }): Evidence => ({
          ...(open(newest.i) && see.startsWith('pump-up')
            ? { see: 'pump-up without filter', outcome: outcome === 'within' ? 'quick' : 'as slow' }
            : {
                see,
                outcome: beside ? 'holds' : leansOver(f, all, see, outcome) ? 'low' : furtherLow(f, see, outcome),
              }),
          weight,
          because: f.because,
          seq: newest.h.seq,
          words: f.words,
          clock: newest.i,
        }))
    );
  });
};
