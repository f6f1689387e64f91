/** A check as data: what it settles, what it costs, what it needs, and how its outcomes are typed. Minutes are estimates. */
import type { Condition, Side } from '../../intents/shapes.ts';
import type { Feature } from './fault.ts';
import { sides } from './fault.ts';

/** State that a check starts from; getting there costs minutes that are counted unless the coach is there already. */
export type Setting =
  | 'as found'
  | 'panel untouched'
  | 'key off, settled'
  | 'shut, settled'
  | 'outlet closed, settled'
  | 'tank up'
  | 'tank empty'
  | 'link off'
  | 'pump called'
  | 'pump running'
  | 'after a drive'
  | 'ride height'
  | 'standing'
  | 'off the coach';

/** `S` in see, label and text stands for the side. */
export type CheckKey = {
  readonly label: string;
  readonly text: string;
  readonly gives: readonly (readonly [see: string, outcome: string])[];
};

export type CheckRow = {
  readonly id: string;
  readonly sided?: true;
  /** What to do, in one or two sentences. */
  readonly words: string;
  readonly settles: readonly string[];
  readonly setting: Setting;
  readonly hands: number;
  readonly wait: number;
  /** What can be done meanwhile. */
  readonly meanwhile?: string;
  readonly gate: 'none' | 'live' | 'dead';
  /** A condition that says the kit for it is not at hand. */
  readonly lacks?: Condition;
  readonly needs?: Feature;
  readonly without?: Feature;
  /** Only where that observable was told of: it means nothing without. */
  readonly onlyAfter?: string;
  /** What it spoils for later. */
  readonly destroys?: string;
  readonly keys: readonly CheckKey[];
  readonly guide: string;
};

export type Check = CheckRow & { readonly key: string; readonly side: Side | null };

const put = (text: string, side: Side): string => text.replace(/\bS\b/g, side);

export const expandCheck = (row: CheckRow): Check[] =>
  row.sided
    ? sides.map((side) => ({
        ...row,
        key: `${side} ${row.id}`,
        side,
        words: put(row.words, side),
        settles: row.settles.map((s) => put(s, side)),
        keys: row.keys.map((k) => ({
          label: put(k.label, side),
          text: put(k.text, side),
          gives: k.gives.map(([see, outcome]) => [put(see, side), outcome] as const),
        })),
      }))
    : [{ ...row, key: row.id, side: null }];

export const key = (label: string, text: string, ...gives: CheckKey['gives']): CheckKey => ({ label, text, gives });
