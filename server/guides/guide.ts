/** A guide as data: what for, tools, gates, steps one at a time. */
import type { Key } from './key.ts';

export type Outcome = { readonly seen: string; readonly means: string };
export type Step = {
  readonly title: string;
  readonly words: string;
  /** What to type back. */
  readonly expect: string;
  readonly keys?: readonly Key[];
  readonly outcomes?: readonly Outcome[];
  /** Caution ids said before this step. */
  readonly cautions?: readonly string[];
};
export type Guide = {
  readonly id: string;
  readonly title: string;
  readonly what: string;
  readonly minutes: string;
  readonly tools: readonly string[];
  readonly gate: 'none' | 'live' | 'dead';
  readonly cautions: readonly string[];
  /** Canonical words (parts, measures, works) it answers "how do I ..." for. */
  readonly topics: readonly string[];
  readonly steps: readonly Step[];
};
