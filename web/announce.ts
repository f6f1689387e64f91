/** What a screen reader is told when entries come: cautions at once, the rest when it pauses. Pure. */
import type { Entry } from '../server/session/entry.ts';
import { headline } from './exchanges.ts';

export type Announcement = { now: string; polite: string };

/** The newest reply after `heard`; null when none came. */
export const announcement = (entries: readonly Entry[], heard: number): Announcement | null => {
  const latest = entries.findLast((e) => e.is === 'reply');
  if (latest?.is !== 'reply' || latest.seq <= heard) return null;
  const cautions = latest.blocks.filter((b) => b.is === 'caution').map((b) => `${b.words} ${b.more}`);
  const check = latest.blocks.find((b) => b.is === 'check');
  const polite = [cautions.length > 0 ? null : headline(latest), check ? `Next: ${check.words}` : null];
  return { now: cautions.join(' '), polite: polite.filter((w) => w !== null).join('. ') };
};
