/** The input for which a property does not hold, or null: what a test asserts to be null. */
import { type IProperty, check } from 'fast-check';

export const counterexample = <Ts>(property: IProperty<Ts>): string | null => {
  const run = check(property);
  return run.failed ? JSON.stringify(run.counterexample) : null;
};
