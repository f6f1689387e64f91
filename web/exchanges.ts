/** Entries and what still waits, as the exchanges that a job sheet shows. Pure. */
import type { Block, Taken } from '../server/chat/reply.ts';
import type { Entry, NoteEntry, ReplyEntry } from '../server/session/entry.ts';
import { droppedBy, voidNotes } from '../server/session/taken-back.ts';
import type { Pending } from './outbox.ts';

export type Remark = Extract<Entry, { is: 'remark' }>;
export type Exchange =
  | {
      is: 'note';
      key: string;
      at: number;
      by: string;
      text: string;
      state: 'waiting' | 'sent' | 'kept' | 'refused';
      /** Words of a refusal. */
      words?: string | undefined;
      note: NoteEntry | null;
      pending: Pending | null;
      reply: ReplyEntry | null;
      /** Taken back by a later note. */
      voided: boolean;
      remarks: readonly Remark[];
    }
  | { is: 'mark'; key: string; at: number; by: string; words: string; remarks: readonly Remark[] };
export type NoteExchange = Extract<Exchange, { is: 'note' }>;

/** Notes taken back, and facts withdrawn one by one, by the corrections in force. */
export const takenBack = (entries: readonly Entry[]): { notes: ReadonlySet<string>; facts: ReadonlySet<string> } => {
  const notes = entries.filter((e) => e.is === 'note');
  const gone = voidNotes(notes);
  return { notes: gone, facts: droppedBy(notes, gone) };
};

/** `line`: words of a line of the estimate, by its id. */
const markWords = (e: Exclude<Entry, NoteEntry | ReplyEntry | Remark>, line: ReadonlyMap<string, string>): string => {
  switch (e.is) {
    case 'opened':
      return e.practice ? 'practice opened' : 'opened';
    case 'sheet':
      return 'goes on by another version of the coach sheet';
    case 'closed':
      return `closed, signed ${e.signed}${e.words === '' ? '' : `: ${e.words}`}`;
    case 'estimate':
      return `estimate of ${e.lines.length} ${e.lines.length === 1 ? 'line' : 'lines'}`;
    case 'decided':
      return `${line.get(e.line) ?? e.line}: ${e.yes ? 'approved' : 'declined'} by ${e.name}${e.words === '' ? '' : `, ${e.words}`}`;
    case 'reopened':
      return `opened again${e.words === '' ? '' : `: ${e.words}`}`;
  }
};

export const exchangesOf = (entries: readonly Entry[], pending: readonly Pending[]): Exchange[] => {
  const out: Exchange[] = [];
  const replies = new Map<string, ReplyEntry>();
  const remarks = new Map<number, Remark[]>();
  for (const e of entries) {
    if (e.is === 'reply') replies.set(e.to, e);
    if (e.is === 'remark') remarks.set(e.about, [...(remarks.get(e.about) ?? []), e]);
  }
  const { notes: voided } = takenBack(entries);
  const about = (...seqs: (number | undefined)[]): Remark[] =>
    seqs.flatMap((s) => (s === undefined ? [] : (remarks.get(s) ?? [])));
  const kept = new Set<string>();
  const lines = new Map<string, string>();
  for (const e of entries) {
    if (e.is === 'reply' || e.is === 'remark') continue;
    if (e.is === 'note') {
      kept.add(e.id);
      const reply = replies.get(e.id) ?? null;
      out.push({
        is: 'note',
        key: e.id,
        at: e.at,
        by: e.by,
        text: e.text,
        state: 'kept',
        note: e,
        pending: null,
        reply,
        voided: voided.has(e.id),
        remarks: about(e.seq, reply?.seq),
      });
    } else {
      if (e.is === 'estimate') for (const l of e.lines) lines.set(l.id, l.words);
      const words = markWords(e, lines);
      out.push({ is: 'mark', key: `seq-${e.seq}`, at: e.kept, by: e.by, words, remarks: about(e.seq) });
    }
  }
  for (const p of pending)
    if (p.frame.is === 'note' && !kept.has(p.frame.id))
      out.push({
        is: 'note',
        key: p.frame.id,
        at: p.frame.at,
        by: p.frame.by,
        text: p.frame.text,
        state: p.state,
        words: p.words,
        note: null,
        pending: p,
        reply: null,
        voided: false,
        remarks: [],
      });
  return out;
};

/** A block in a few words: what is off before what is in order, the first suspect before the rest. */
const short = (block: Block): string => {
  if (block.is === 'step') return `${block.title}: ${block.words}`;
  if (block.is === 'suspects') {
    const [first, second] = block.list;
    if (!first) return block.words;
    // nothing said yet tells the sides apart: neither is named alone
    const across = first.name.replace(/^(?:left|right)\b/, (side) => (side === 'left' ? 'right' : 'left'));
    const tied = second && second.name === across && second.name !== first.name && second.rank === first.rank;
    return tied
      ? `${first.name.replace(/^(?:left|right)/, 'left or right')}, ${first.rank} each`
      : `${first.name}, ${first.rank}`;
  }
  if (block.is === 'findings') {
    const off = block.list.filter((f) => f.verdict === 'low' || f.verdict === 'high');
    return (off.length > 0 ? off : block.list.slice(0, 1)).map((f) => f.words).join('; ');
  }
  return block.words;
};

/** The strongest thing a reply said, in a few words, for its folded line; null when it said nothing. */
export const headline = (reply: ReplyEntry | null): string | null => {
  if (reply === null) return null;
  const order = [
    'caution',
    'question',
    'findings',
    'withdrawn',
    'step',
    'teach',
    'picture',
    'suspects',
    'check',
  ] as const;
  // a stop that an earlier note raised stands in front of every reply until it is answered: it says nothing of this note
  const repeated = (b: Block): boolean => b.is === 'caution' && b.id.startsWith('waiting-');
  for (const is of order) {
    const block = reply.blocks.find((b) => b.is === is && !repeated(b));
    if (block) return short(block);
  }
  const took = reply.blocks.find((b) => b.is === 'took') ?? reply.blocks.find(repeated);
  return took ? short(took) : null;
};

/** How a line of the read-back is marked beside its words; '' where it was said outright. */
export const takenMark = (t: Taken): string => {
  if (t.kind === 'unread') return 'not read';
  if (t.kind === 'ambiguous') return 'which?';
  if (t.kind === 'held') return 'not believed yet';
  if (t.kind === 'hunch') return 'hunch';
  if (t.from === 'assumed') return 'assumed';
  if (t.from === 'carried') return 'carried on';
  return '';
};
