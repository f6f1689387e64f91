/** What is kept from one weighing to the next (evidence made ready, situations, sets of causes) changes no figure. */
import { describe, expect, test } from 'vitest';
import { forecastsOf, tableOf } from '../../server/faults/forecast.ts';
import { hypothesesOf } from '../../server/faults/hypotheses.ts';
import { type Model, modelOf } from '../../server/faults/model.ts';
import { observables } from '../../server/faults/observables.ts';
import type { Mend } from '../../server/faults/situation.ts';
import { suspectsFrom } from '../../server/faults/suspects.ts';
import { weigh, weighEvidence } from '../../server/faults/weigh.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { juniper, larkfield, seen, standingOf } from './bench.ts';

const rng = makeRng(40_961);
const pick = <T>(list: readonly T[]): T => list[Math.floor(rng.next() * list.length)]!;

/** Nothing is kept for a model that was never seen. */
const unseen = (model: Model): Model => ({ ...model });

const situation = (model: Model): { evidence: ReturnType<typeof seen>[]; mends: Mend[] } => {
  const can = observables.filter((o) => model.view(o.see));
  const evidence = Array.from({ length: 1 + Math.floor(rng.next() * 9) }, (_, k) => {
    const o = pick(can);
    return seen(o.see, pick(o.outcomes), k, pick([0.97, 0.99, 0.7, 0.5, 0.3]));
  });
  const mend = (clock: number): Mend => ({
    part: pick(model.faults).part,
    side: pick(['left', 'right', null]),
    chance: 0.95,
    clock,
    seq: clock + 2,
    words: 'mended',
  });
  return { evidence, mends: rng.next() < 0.4 ? [mend(Math.floor(rng.next() * 9))] : [] };
};

describe('what is kept from one weighing to the next', () => {
  const models = [modelOf(juniper), modelOf(larkfield)];
  test('600 situations, more than are kept at once, are weighed as by a model that was never seen', () => {
    for (let n = 0; n < 600; n += 1) {
      const model = models[n % 2]!;
      const { evidence, mends } = situation(model);
      const kept = weighEvidence(model, evidence, mends);
      if (n % 4 !== 3) continue;
      const fresh = weighEvidence(unseen(model), evidence, mends);
      expect(kept.posterior).toEqual(fresh.posterior);
      expect(suspectsFrom(kept)).toEqual(suspectsFrom(fresh));
    }
  });
  test('forecasts over more sets than are kept at once are those of a model that was never seen', () => {
    const model = unseen(models[0]!);
    for (let n = 0; n < 120; n += 1) {
      const { evidence, mends } = situation(model);
      const kept = weighEvidence(model, evidence, mends);
      const fresh = weighEvidence(unseen(model), evidence, mends);
      const hs = hypothesesOf(kept);
      const told = (w: typeof kept) => {
        const forecast = forecastsOf(w, hs);
        return observables.map(({ see }) => {
          const f = forecast(see);
          return f && { see, bits: f.bits, table: tableOf(f), given: f.given };
        });
      };
      expect(told(kept)).toEqual(told(fresh));
    }
  });
  test('the same standing is weighed once; another sheet, other findings or other facts are weighed anew', () => {
    const standing = standingOf(juniper, ['sags overnight', 'left rear low']);
    const w = weigh(standing, juniper);
    expect(weigh(standing, juniper)).toBe(w);
    expect(weigh({ ...standing, findings: new Map() }, juniper)).not.toBe(w);
    expect(weigh(standing, larkfield)).not.toBe(w);
    expect(weigh(standingOf(juniper, ['sags overnight']), juniper).seen).not.toEqual(w.seen);
  });
});
