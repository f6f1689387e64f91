/** Which leg of a loaded circuit loses more than it should. */
import { type Current, ImpossibleInput, type Voltage, positive } from './quantity.ts';

/** `drop` measured, V; `due`: what a good leg loses at that current, V. */
export type Leg = { readonly name: string; readonly drop: Voltage; readonly due: Voltage };
export type Guilt = { readonly leg: Leg; readonly excess: number; /** ohm more than due */ readonly ohm: number };

/**
 * The leg with the most volts over its due, null where none is over by more than `slack` V (resolution of the meter and
 * of good contacts). Raises ImpossibleInput for a drop below zero: the readings were not of one moment.
 */
export const guiltyLeg = (legs: readonly Leg[], current: Current, slack: number): Guilt | null => {
  positive('current', current);
  let worst: Guilt | null = null;
  for (const leg of legs) {
    if (leg.drop < -slack)
      throw new ImpossibleInput(
        `drop over ${leg.name}`,
        leg.drop,
        'volts rise along no leg: read both ends at the same moment',
      );
    const excess = leg.drop - leg.due;
    if (excess > slack && (!worst || excess > worst.excess)) worst = { leg, excess, ohm: excess / current };
  }
  return worst;
};
