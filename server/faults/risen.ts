/**
 * A tank that stood below cut-in and was read higher later: the pump was called and ran, whatever was said of it. Pure.
 *
 * Air that was let in by hand says nothing of the pump: nothing is concluded over such work, nor over a bridged switch.
 */
import { amountSaid } from '../../intents/plain.ts';
import type { ReadingFact } from '../../intents/shapes.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { bridgedNotes } from './bridged.ts';
import type { Measured } from './measured.ts';

/** So much more than both readings leave open is no warming of the air. Pa; 10 psi, an estimate of ours. */
const rise = 69_000;

const ofTank = (fact: ReadingFact): boolean => fact.what.v === 'pressure' && fact.where.v === 'tank' && !fact.held;

export const risenEvidence = (standing: Standing, sheet: Sheet): Measured[] => {
  const low = sheet.supply?.cutIn?.low;
  const bridged = bridgedNotes(standing);
  const out: Measured[] = [];
  let from: { fact: ReadingFact; clock: number } | null = null;
  for (const [clock, { fact, note, seq }] of standing.facts.entries()) {
    const byHand = fact.is === 'work' && (fact.what.v === 'pumped up' || fact.what.v === 'inflated');
    if (byHand || bridged.has(note)) from = null;
    if (fact.is !== 'reading' || !ofTank(fact) || bridged.has(note)) continue;
    const { si, pm } = fact.amount.v;
    const before = from?.fact.amount.v;
    if (before && si - before.si > rise + pm + before.pm)
      out.push({
        see: 'pump called',
        outcome: 'runs',
        because: [from!.fact.id, fact.id],
        seq,
        words: `tank rose from ${amountSaid(before)} to ${amountSaid(fact.amount.v)}`,
        clock,
      });
    from = low !== undefined && si < low.si - pm ? { fact, clock } : null;
  }
  return out;
};
