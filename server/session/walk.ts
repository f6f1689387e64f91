/** Walks notes and replies in order: what was asked, checked, found and shown, as it stands after the last of them. Pure. */
import type { Condition, Fact, FactId, Open } from '../../intents/shapes.ts';
import type { Block, Suspect } from '../chat/reply.ts';
import type { Finding } from '../findings/finding.ts';
import type { NoteEntry, ReplyEntry } from './entry.ts';
import type { Standing } from './standing.ts';

export type Asked = {
  readonly seq: number;
  /** The caution that asked for it first, and when. */
  readonly id: string;
  readonly since: number;
  readonly words: string;
  readonly keys: readonly { label: string; text: string }[];
};
/** Grown in place by the functions below; a fold copies it before it goes on. */
export type Walk = {
  findings: Map<string, Finding>;
  checks: { id: string; seq: number }[];
  checksDone: { id: string; words: string; outcome: string }[];
  /** Checks that cannot be made here, as somebody said. */
  skipped: Set<string>;
  suspects: readonly Suspect[];
  next: Block | null;
  open: Open | null;
  guide: Standing['guide'];
  complaint: Standing['complaint'];
  /** Gates asked in cautions. */
  asked: Map<Condition, Asked>;
  /** The check shown last, until a note with facts answers it. */
  waiting: Extract<Block, { is: 'check' }> | null;
};

export const freshWalk = (): Walk => ({
  findings: new Map(),
  checks: [],
  checksDone: [],
  skipped: new Set(),
  suspects: [],
  next: null,
  open: null,
  guide: null,
  complaint: null,
  asked: new Map(),
  waiting: null,
});
export const copyOf = (walk: Walk): Walk => ({
  ...walk,
  findings: new Map(walk.findings),
  checks: [...walk.checks],
  checksDone: [...walk.checksDone],
  skipped: new Set(walk.skipped),
  asked: new Map(walk.asked),
});

const openOf = (blocks: readonly Block[]): Open | null => {
  for (const block of blocks) if (block.is === 'caution' && block.gate?.open) return block.gate.open;
  for (const is of ['question', 'step', 'check'] as const)
    for (const block of blocks) if (block.is === is && block.open) return block.open;
  return null;
};

const standingSign = (fact: Fact): boolean =>
  fact.is === 'sign' &&
  fact.there &&
  (fact.often === 'standing' || fact.what.v === 'sags' || fact.what.v === 'comes up driving');

export const passNote = (walk: Walk, note: NoteEntry, alive: boolean): void => {
  if (alive && !walk.complaint && note.read.facts.some((f) => f.is === 'sign'))
    walk.complaint = { seq: note.seq, words: note.text, standing: note.read.facts.some(standingSign) };
  if (walk.waiting && alive && note.read.asks.some((a) => a.ask === 'command' && a.about === 'skip check')) {
    walk.skipped.add(walk.waiting.id);
    walk.waiting = null;
  }
  if (walk.waiting && alive && note.read.facts.length > 0) {
    walk.checksDone.push({ id: walk.waiting.id, words: walk.waiting.words, outcome: note.text });
    walk.waiting = null;
  }
};

/** `inForce`: facts that stand; a finding with a fact that fell is not taken. */
export const passReply = (
  walk: Walk,
  note: NoteEntry,
  reply: ReplyEntry,
  alive: boolean,
  inForce: { has: (id: FactId) => boolean },
): void => {
  walk.open = openOf(reply.blocks) ?? (note.read.facts.length > 0 ? null : walk.open);
  for (const block of reply.blocks) {
    if (block.is === 'findings' && alive)
      for (const f of block.list) if (f.because.every((id) => inForce.has(id))) walk.findings.set(f.key, f);
    if (block.is === 'suspects') walk.suspects = block.list;
    if (block.is === 'check') {
      walk.checks.push({ id: block.id, seq: reply.seq });
      walk.next = block;
      walk.waiting = block;
    }
    if (block.is === 'caution' && block.gate) {
      // asked for again, it is what was asked first
      const had = /^(?:waiting|not-yet)-/.test(block.id) ? walk.asked.get(block.gate.what) : undefined;
      const { words, gate } = block;
      const { id, since } = had ?? { id: block.id, since: note.seq };
      walk.asked.set(gate.what, { seq: note.seq, words, keys: gate.keys, id, since });
    }
    if (block.is === 'step') walk.guide = { id: block.guide, step: block.step };
    if (block.is === 'teach' && block.words.startsWith('Guide ended')) walk.guide = null;
  }
};
