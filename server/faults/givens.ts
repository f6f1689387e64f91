/** All that can be observed beside what the simulated coach shows, with its chances. */
import { chassisGivens } from './givens/chassis.ts';
import { electricGivens } from './givens/electrics.ts';
import type { Given } from './givens/given.ts';
import { lookGivens } from './givens/looks.ts';
import { pumpGivens } from './givens/pump.ts';
import { tankGivens } from './givens/tank.ts';
import { trialGivens } from './givens/trials.ts';
import { tyreGivens } from './givens/tyres.ts';

export const givens: readonly Given[] = [
  ...pumpGivens,
  ...tankGivens,
  ...electricGivens,
  ...lookGivens,
  ...trialGivens,
  ...chassisGivens,
  ...tyreGivens,
];
