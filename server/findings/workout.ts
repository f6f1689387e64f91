/** Questions with a number in them, or about one: worked out from sheet, standing and what was said. Pure. */
import type { Ask } from '../../intents/shapes.ts';
import { ImpossibleInput } from '../core/quantity.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { impossibleWords } from './impossible-words.ts';
import { airRoom } from './workouts/air-room.ts';
import { angles } from './workouts/angles.ts';
import { atTemperatures } from './workouts/at-temperature.ts';
import { conversions } from './workouts/conversions.ts';
import { due } from './workouts/due.ts';
import { leakSize } from './workouts/leak-size.ts';
import { howLong } from './workouts/how-long.ts';
import { legal } from './workouts/legal.ts';
import { limits } from './workouts/limits.ts';
import { loadTests } from './workouts/load-test.ts';
import { loads } from './workouts/loads.ts';
import { absolutes } from './workouts/absolutes.ts';
import { pumping } from './workouts/pumping.ts';
import { type Workout, type Worked, questionOf } from './workouts/question.ts';
import { recheck } from './workouts/recheck.ts';
import { suppose } from './workouts/suppose.ts';
import { switchNut } from './workouts/switch-nut.ts';
import { turns } from './workouts/turns.ts';
import { waterMade } from './workouts/water.ts';
import { weather } from './workouts/weather.ts';
import { wires } from './workouts/wires.ts';

/** Asked in this order; the first that knows the question answers it. A new subject is one file and one line here. */
const workouts: readonly Workout[] = [
  due,
  recheck,
  loadTests,
  legal,
  wires,
  leakSize,
  absolutes,
  weather,
  airRoom,
  waterMade,
  atTemperatures,
  loads,
  switchNut,
  turns,
  pumping,
  angles,
  conversions,
  limits,
  howLong,
  suppose,
];

/**
 * The answer to a question of any kind whose words or numbers a subject knows; null where none does. Impossible inputs
 * are named in words, never raised.
 */
export const workOut = (ask: Ask, standing: Standing, sheet: Sheet): Worked | null => {
  const q = questionOf(ask, standing, sheet);
  for (const { work } of workouts) {
    try {
      const worked = work(q);
      if (worked) return worked;
    } catch (error) {
      if (!(error instanceof ImpossibleInput)) throw error;
      return { words: `not worked out: ${impossibleWords(error, sheet)}`, lines: [] };
    }
  }
  return null;
};
