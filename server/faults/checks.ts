/** All checks, left and right where they exist. */
import { chassisChecks } from './checks/chassis.ts';
import { pumpChecks } from './checks/pump.ts';
import { soapChecks } from './checks/soap.ts';
import { standingChecks } from './checks/standing.ts';
import { type Check, type CheckRow, expandCheck } from './check.ts';

export const checkRows: readonly CheckRow[] = [...standingChecks, ...soapChecks, ...pumpChecks, ...chassisChecks];
export const checks: readonly Check[] = checkRows.flatMap(expandCheck);
const byKey = new Map(checks.map((c) => [c.key, c]));
export const checkOf = (key: string): Check | undefined => byKey.get(key);

/** The check that proves a fault: of its side, where the check has sides. */
export const confirmOf = (fault: { confirm: string; side: 'left' | 'right' | null }): Check | undefined =>
  byKey.get(fault.confirm) ?? (fault.side ? byKey.get(`${fault.side} ${fault.confirm}`) : undefined);
