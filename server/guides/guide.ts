/** A guide as data: what for, tools, the state it needs, steps one at a time. Own words; common practice, no source. */
import type { Measure, Place } from '../../intents/shapes.ts';
import type { Block } from '../chat/reply.ts';
import type { BenchSet } from './bench-verdict.ts';
import type { Mode } from './gates.ts';
import type { Joining } from './joined.ts';

/** What comes back, and what it says about the coach. */
export type Outcome = { readonly when: string; readonly means: string };

export type Step = {
  /** What to do. `{supply.cutOut}` stands for that field of the coach's sheet, filled in when the step is shown. */
  readonly words: string;
  /** What to type back; a note in double quotes is an example that the reader takes whole. */
  readonly expect: string;
  readonly outcomes: readonly Outcome[];
  /** Id of a caution said before this step, besides those of the guide's gate. */
  readonly caution?: string;
  /** State this step needs, where it is not the guide's: null for a step that needs none. */
  readonly gate?: Mode | null;
  /** What a bare number typed back is. */
  readonly reads?: { readonly what: Measure; readonly where: Place };
  /** A picture where position matters; a step on the bench draws its valve by itself. */
  readonly drawing?: Extract<Block, { is: 'picture' }>['drawing'];
  /** The air circuit is drawn, with what is joined in this state; `now`: the coach's present one. Suspects are lit. */
  readonly joins?: Joining | 'now';
  /** How the valve stands on the bench in this step: what a note leaves out. */
  readonly bench?: BenchSet;
};

export type Guide = {
  readonly id: string;
  readonly title: string;
  /** Parts, measures, check ids and plain words people ask with; lower case, each in one guide only. */
  readonly topics: readonly string[];
  /** What it is for. */
  readonly what: string;
  readonly tools: readonly string[];
  readonly gate: Mode | null;
  /** Estimates: at hand, and waiting. */
  readonly minutes: { readonly hands: number; readonly wait: number };
  readonly steps: readonly Step[];
  /** What to do when it is through: to put back, to prove, to write down. */
  readonly after: readonly string[];
};
