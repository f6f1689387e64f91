/** Types notes on a demo coach through the real desk with a log in memory, and hands back the replies. */
import { readFileSync } from 'node:fs';
import type { Block } from '../../server/chat/reply.ts';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import type { Folded } from '../../server/session/fold.ts';
import { loadSheet } from '../../server/sheet/load.ts';

const sheets = new Map(
  ['juniper-38', 'larkfield-11'].map((name) => [
    name,
    loadSheet(readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8'), name),
  ]),
);

export type Typing = {
  /** Types a note `after` minutes after the one before; its blocks. */
  type: (text: string, after?: number) => Promise<Block[]>;
  ask: (text: string) => Promise<Block[]>;
  standing: () => Promise<Folded>;
};

/** Begins at 9:45 on the coach's wall clock. */
export const typingOn = async (coach = 'juniper-38', own?: ReturnType<typeof loadSheet>): Promise<Typing> => {
  let clock = coach === 'juniper-38' ? Date.UTC(2026, 9, 6, 15, 45) : Date.UTC(2026, 9, 6, 8, 45);
  let n = 0;
  const desk = makeDesk({
    log: memoryLog(),
    sheets: own ? new Map([[coach, own]]) : sheets,
    engine: 'test',
    now: () => clock,
  });
  await desk.open({ session: 'typing', coach, by: 'KD' });
  return {
    type: async (text, after = 1) => {
      clock += after * 60_000;
      n += 1;
      const standing = await desk.standing('typing');
      const [, reply] = await desk.note('typing', { id: `typed-${n}`, text, at: clock, seen: standing.seq, by: 'KD' });
      return reply?.is === 'reply' ? reply.blocks : [];
    },
    ask: (text) => desk.ask('typing', { id: 'asked-only', text }),
    standing: () => desk.standing('typing'),
  };
};

type Of<K extends Block['is']> = Extract<Block, { is: K }>;
export const block = <K extends Block['is']>(blocks: readonly Block[], is: K): Of<K> | undefined =>
  blocks.find((b): b is Of<K> => b.is === is);
export const words = (blocks: readonly Block[]): string => JSON.stringify(blocks);
