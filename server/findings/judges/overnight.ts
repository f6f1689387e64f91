/** As found after standing: how far each rear side has come down in the hours said. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Case, type Judge, inputOf, latest, middle, physics, sheetInput } from '../case.ts';
import { cornerPlace, heightRange, heightValue, nominalOf, tapeHalf } from '../corner-sheet.ts';
import type { Finding } from '../finding.ts';
import { shown, spell, typed } from '../show.ts';
import { isAsFound } from '../as-found.ts';

const one = (c: Case, stood: ReadingFact, height: ReadingFact, which: 'leftRear' | 'rightRear'): Finding | null => {
  const range = heightRange(c, which);
  const nominal = nominalOf(range);
  if (nominal === null) return null;
  const unit = height.amount.v.unit;
  const half = tapeHalf(c, height);
  const fall = nominal - heightValue(height);
  const hours = middle(stood.amount.v);
  const tolerance = c.sheet.heights?.[which]?.tolerance;
  const slack = Math.max(tolerance?.si ?? 0, half);
  const place = cornerPlace[which];
  const stops = c.sheet.heights?.toStops;
  const down = stops && fall >= stops.si - 2 * half;
  const kept = fall <= slack;
  return {
    key: `stood@${place}`,
    verdict: kept ? 'within' : 'low',
    words: kept
      ? `${place} kept its height in ${typed(stood.amount.v)}`
      : down
        ? `${place} went down to its stops in ${typed(stood.amount.v)} or less: level for less than ${spell((hours * slack) / fall)}`
        : `${place} level for about ${spell((hours * slack) / fall)}: ${shown(fall, unit, half, { difference: true }).text} down in ${typed(stood.amount.v)}`,
    amount: shown(-fall, unit, half, { difference: true }),
    limit: { low: shown(-slack, unit, half, { difference: true }), source: range!.source },
    because: [stood.id, height.id],
    why: {
      formula: 'fall from the sheet height, taken as steady over the hours it stood',
      inputs: [
        inputOf('stood', stood),
        inputOf(place, height),
        { name: 'wanted', text: shown(nominal, unit, 0).text, from: range!.source.words },
        ...(tolerance ? [sheetInput('tolerance', tolerance, `heights.${which}.tolerance`)] : []),
      ],
      source: physics('constant load, so a steady leak sinks steadily'),
      notes: ['assumed: it stood at the sheet height when it was parked'],
    },
  };
};

export const overnight: Judge = {
  subject: 'standing',
  judge: (c) => {
    const stood = latest(c, 'standing time');
    if (!stood) return [];
    const fresh = (f: ReadingFact): boolean => c.fresh.some((x) => x.id === f.id);
    return (['leftRear', 'rightRear'] as const).flatMap((which) => {
      const height = latest(c, 'height', (p) => p === cornerPlace[which]);
      if (!height || (!fresh(stood) && !fresh(height)) || !isAsFound(c, height)) return [];
      const found = one(c, stood, height, which);
      return found ? [found] : [];
    });
  },
};
