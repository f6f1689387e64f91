import { readFileSync } from 'node:fs';
import { loadSheet } from '../../server/sheet/load.ts';
import type { Sheet } from '../../server/sheet/schema.ts';

export const demoSheet = (name: 'juniper-38' | 'larkfield-11' = 'juniper-38'): Sheet =>
  loadSheet(readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8'), name).sheet;

/** A sheet with nothing on it but who it is. */
export const bareSheet = (): Sheet => {
  const { v, id, coach, source, units, zone } = demoSheet();
  return { v, id, coach, source, units, zone };
};
