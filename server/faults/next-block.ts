/** The next check or repair as a block of the reply. Pure. */
import type { Block } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { nextStep } from './next.ts';

type CheckBlock = Extract<Block, { is: 'check' }>;

export const nextBlock = (standing: Standing, sheet: Sheet): CheckBlock | null => {
  const next = nextStep(standing, sheet);
  if (!next) return null;
  if (next.is === 'check')
    return {
      is: 'check',
      id: next.check.key,
      words: next.check.words,
      why: next.why,
      hands: next.hands,
      wait: next.wait,
      keys: next.keys,
      guide: next.check.guide,
      ...(next.check.destroys ? { destroys: `It spoils ${next.check.destroys}: write that down first.` } : {}),
    };
  if (next.is === 'close')
    return {
      is: 'check',
      id: 'close',
      words: `${next.words} Sign it off with "close", or "not safe to move" if something else stands against it.`,
      why: 'What was complained of was mended, and the proof that fits it was brought.',
      hands: 1,
      wait: 0,
      keys: next.keys,
    };
  const { fault } = next;
  return {
    is: 'check',
    id: `repair ${fault.key}`,
    words: fault.innocent
      ? `${fault.title[0]?.toUpperCase()}${fault.title.slice(1)}: ${fault.repair}.`
      : `Repair: ${fault.repair}.`,
    why: next.why,
    hands: next.hands,
    wait: next.wait,
    keys: next.keys,
  };
};
