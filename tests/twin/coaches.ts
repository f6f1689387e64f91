/** Coaches for the tests: the demo sheets at the middle of every spread, tight, so that one cause speaks at a time. */
import { readFileSync } from 'node:fs';
import { loadSheet } from '../../server/sheet/load.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import type { CoachParams } from '../../server/twin/params.ts';

export const sheetOf = (id: 'juniper-38' | 'larkfield-11') =>
  loadSheet(readFileSync(new URL(`../../fixtures/sheets/${id}.json`, import.meta.url), 'utf8'), id).sheet;

export const psi = 6894.757293168;
export const inch = 0.0254;
export const litre = 1e-3;

/** Typical coach with a panel; no seepage, no night, nothing off. */
export const tight = (
  over: Partial<CoachParams> = {},
  id: 'juniper-38' | 'larkfield-11' = 'juniper-38',
): CoachParams => ({
  ...makeCoach(sheetOf(id), { seed: 1, typical: true }),
  tankWeep: 0,
  supplyWeep: 0,
  bellowsWeep: [0, 0],
  nightDrop: 0,
  ...over,
});
