/** A fault as the catalogue holds it: one row a kind; rows with sides stand twice in the list. Minutes are estimates. */
import { makePlace } from '../../intents/place.ts';
import type { Part, Place, Side } from '../../intents/shapes.ts';

/** What a coach must have for the fault to be possible: from the sheet. */
export type Feature = 'panel' | 'dryer' | 'protection' | 'regulator' | 'unloader' | 'relay';

export type FaultRow = {
  readonly id: string;
  readonly sided?: true;
  /** Plain words; a sided row is read with "left" or "right" before it. */
  readonly name: string;
  readonly part: Part;
  /** Further parts on which work of replacing or repairing ends it. */
  readonly mends?: readonly Part[];
  /** Row of twin/ailments.ts (without side) that its air-side evidence comes from. */
  readonly ailment?: string;
  readonly needs?: Feature;
  /** Nothing to repair: the coach does as it should, or the world does. */
  readonly innocent?: true;
  /** Chance that a coach that comes in has it, before anything is known; an estimate, with its reason. */
  readonly prior: number;
  readonly priorWhy: string;
  /** Check that proves it (checks/); sided checks take the fault's side. */
  readonly confirm: string;
  readonly repair: string;
  readonly hands: number;
  readonly wait: number;
  readonly parts: readonly string[];
  /** Ids of guides/cautions.ts. */
  readonly cautions: readonly string[];
  /** What usually brings it on. */
  readonly usually: string;
  /** What it usually damages or brings on: fault kinds, how many times likelier than by chance. */
  readonly damages: readonly { readonly fault: string; readonly times: number; readonly words: string }[];
  readonly symptoms: readonly string[];
};

export type Fault = FaultRow & {
  /** `${side} ${kind}` where it has sides. */
  readonly key: string;
  readonly kind: string;
  readonly side: Side | null;
  readonly where: Place;
  readonly title: string;
};

export const sides = ['left', 'right'] as const;

export const expandFault = (row: FaultRow): Fault[] =>
  row.sided
    ? sides.map((side) => ({
        ...row,
        key: `${side} ${row.id}`,
        kind: row.id,
        side,
        where: makePlace({ side, part: row.part }),
        title: `${side} ${row.name}`,
      }))
    : [{ ...row, key: row.id, kind: row.id, side: null, where: row.part, title: row.name }];

/** Chances a fault is there, in words of the trade: common, occasional, rare. Estimates of ours. */
export const often = { common: 0.03, occasional: 0.012, rare: 0.004 } as const;
