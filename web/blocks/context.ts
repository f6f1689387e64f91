import type { Block } from '../../server/chat/reply.ts';

/** What a block needs besides itself to be drawn in its place. */
export type BlockContext = {
  /** In the newest exchange: its keys are live. */
  live: boolean;
  /** Answered gates by condition: their keys give way to the answer. */
  gates: ReadonlyMap<string, boolean>;
  /** Where answers to taps appear. */
  at: string;
  zone: string | undefined;
  /** Wide screens show suspects and the next check elsewhere: here a line is enough. */
  brief: boolean;
  /** Questions that stand in the same reply: not asked a second time under a finding. */
  asked: readonly string[];
  /** The "explain" of a block; null where nothing is explained. */
  explain: ((block: Block) => unknown) | null;
};
