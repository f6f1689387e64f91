/** Chances in words: steps, never false digits. */
const steps: readonly (readonly [from: number, words: string])[] = [
  [0.95, 'nearly certain'],
  [0.85, '9 in 10'],
  [0.7, '3 in 4'],
  [0.58, '2 in 3'],
  [0.42, '1 in 2'],
  [0.29, '1 in 3'],
  [0.22, '1 in 4'],
  [0.14, '1 in 6'],
  [0.07, '1 in 10'],
  [0.035, '1 in 20'],
  [0, 'unlikely'],
];

export const rankOf = (p: number): string => steps.find(([from]) => p >= from)?.[1] ?? 'unlikely';
export const rankFloor = (rank: string): number | undefined => steps.find(([, words]) => words === rank)?.[0];
