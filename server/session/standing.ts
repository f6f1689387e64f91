/** What stands after folding all entries of a session: plain data, computed, never stored. Filled by fold.ts. */
import type { Condition, ConditionFact, Fact, NoteId, Open } from '../../intents/shapes.ts';
import type { Finding } from '../findings/finding.ts';
import type { Suspect, Block } from '../chat/reply.ts';

/** A fact in force, with the note it came from. */
export type Held = { fact: Fact; seq: number; note: NoteId; by: string };

/** State of the coach at one moment: what readings mean depends on it. null: unknown. */
export type CoachState = {
  key: boolean | null;
  engine: boolean | null;
  pump: boolean | null;
  panel: 'auto' | 'fill' | 'empty' | 'shut' | null;
  arm: { left: 'neutral' | 'fill' | 'exhaust' | null; right: 'neutral' | 'fill' | 'exhaust' | null };
  outletClosed: boolean | null;
  /** ms since the epoch of the last pumping or levelling known of. */
  pumpedAt: number | null;
  /** LIVE: at height, air in. DEAD: every store proved at zero, power cut, on stands. */
  mode: 'live' | 'dead' | null;
  /** Each with the fact that last said so. */
  because: Readonly<Partial<Record<string, Held & { fact: ConditionFact }>>>;
};

export type Standing = {
  session: string;
  coach: string;
  sheet: string;
  zone: string;
  practice: { seed: number; level: number } | null;
  closed: boolean;
  seq: number;
  /** In force, in order of their readings' time; held (implausible) ones are kept apart. */
  facts: readonly Held[];
  held: readonly Held[];
  /** Notes taken back. */
  voided: ReadonlySet<NoteId>;
  /** State as of now, and as it was when each fact was taken (by fact id). */
  state: CoachState;
  stateAt: ReadonlyMap<string, CoachState>;
  /** How many times work has been done on a part (canonical place): evidence about it from before no longer speaks. */
  situation: ReadonlyMap<string, { since: number; seq: number }>;
  complaint: { seq: number; words: string; standing: boolean } | null;
  open: Open | null;
  /** Gates answered (condition -> holds) in the present mode. */
  gates: ReadonlyMap<string, boolean>;
  /** Gates asked in a caution and not answered with yes since. */
  pending: readonly {
    what: Condition;
    words: string;
    keys: readonly { label: string; text: string }[];
    answered: boolean;
  }[];
  /** Checks that have been answered, with what was typed. */
  checksDone: readonly { id: string; words: string; outcome: string }[];
  /** Checks that cannot be made here, as somebody said. */
  skipped: ReadonlySet<string>;
  /** Checks asked for, with the last keys shown; done ones with their outcome. */
  checks: readonly { id: string; seq: number }[];
  /** As last judged and shown. */
  findings: ReadonlyMap<string, Finding>;
  suspects: readonly Suspect[];
  next: Block | null;
  guide: { id: string; step: number } | null;
};
