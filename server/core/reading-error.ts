/**
 * How far a reading of a gauge or a tape may be off, as one standard deviation. The model, used by every interval:
 * the reading is rounded to the nearest division (uniform, plus or minus half a division: d / sqrt 12), and needle,
 * parallax and hand add a normal error of a quarter of a division. The two are independent from reading to reading;
 * a gauge that is wrong by the same amount each time does not touch a rate and is not in it.
 */
import { positive } from './quantity.ts';

/** Share of a division that needle, parallax and hand add. An estimate of ours, no published source. */
export const handShare = 0.25;

/** Standard deviation, in the unit of `division`, of one reading on a scale with that division. */
export const readingDeviation = (division: number): number =>
  positive('scale division', division) * Math.sqrt(1 / 12 + handShare ** 2);

/** Standard deviation of a time written to the nearest `step` (s): rounding alone. */
export const timeDeviation = (step: number): number => step / Math.sqrt(12);
