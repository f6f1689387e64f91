/**
 * Expected cost of repair (Heckerman, Breese and Rommelse, Decision-theoretic troubleshooting, CACM 38(3), 1995): one
 * fault, repairs tried one after another until it is gone. Minutes here.
 */
export type Repair = { readonly p: number; readonly cost: number };

/** The order that costs least when one thing is at fault and costs do not depend on order: falling p / cost. */
export const bestOrder = <R extends Repair>(repairs: readonly R[]): R[] =>
  repairs.toSorted((a, b) => b.p / b.cost - a.p / a.cost);

/** ECR = sum over i of (1 - sum of p before i) * cost i, in the order given. */
export const expectedCost = (order: readonly Repair[]): number => {
  let left = 1;
  let sum = 0;
  for (const { p, cost } of order) {
    sum += left * cost;
    left -= p;
  }
  return sum;
};

export type Inspected = { readonly p: number; readonly look: number; readonly mend: number };
/** With a look before each repair: ECR = sum of (1 - sum of p before i) * look i + p i * mend i; best by falling p / look. */
export const bestInspectedOrder = <R extends Inspected>(repairs: readonly R[]): R[] =>
  repairs.toSorted((a, b) => b.p / b.look - a.p / a.look);
export const expectedInspectedCost = (order: readonly Inspected[]): number => {
  let left = 1;
  let sum = 0;
  for (const { p, look, mend } of order) {
    sum += left * look + p * mend;
    left -= p;
  }
  return sum;
};
