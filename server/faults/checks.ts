/** All checks, left and right where they exist. */
import { chassisChecks } from './checks/chassis.ts';
import { electricChecks } from './checks/electrics.ts';
import { gaugeChecks } from './checks/gauge.ts';
import { halfChecks } from './checks/halves.ts';
import { lookChecks } from './checks/looks.ts';
import { pumpChecks } from './checks/pump.ts';
import { soapChecks } from './checks/soap.ts';
import { standingChecks } from './checks/standing.ts';
import { valveChecks } from './checks/valve.ts';
import { type Check, type CheckRow, expandCheck } from './check.ts';

export const checkRows: readonly CheckRow[] = [
  ...standingChecks,
  ...halfChecks,
  ...soapChecks,
  ...valveChecks,
  ...lookChecks,
  ...gaugeChecks,
  ...pumpChecks,
  ...electricChecks,
  ...chassisChecks,
];
export const checks: readonly Check[] = checkRows.flatMap(expandCheck);
const byKey = new Map(checks.map((c) => [c.key, c]));
export const checkOf = (key: string): Check | undefined => byKey.get(key);

/** The check that proves a fault: of its side, where the check has sides. */
export const confirmOf = (fault: { confirm: string; side: 'left' | 'right' | null }): Check | undefined =>
  byKey.get(fault.confirm) ?? (fault.side ? byKey.get(`${fault.side} ${fault.confirm}`) : undefined);
