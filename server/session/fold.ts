/**
 * Folds the entries of a session into what stands. Pure; nothing is judged again, only present standing is computed. A
 * note that only adds, in order of time, is folded onto what stands; one that takes back, corrects or speaks of an earlier
 * time makes it anew. Both give the same (a property in tests/session).
 */
import type { FactId, NoteId } from '../../intents/shapes.ts';
import { stateAfter, unknownState } from './coach-state.ts';
import type { Entry, EstimateEntry, NoteEntry, ReplyEntry } from './entry.ts';
import { pendingOf } from './pending.ts';
import { type Row, inForce, later } from './in-force.ts';
import { droppedBy, voidNotes } from './taken-back.ts';
import type { CoachState, Standing } from './standing.ts';
import { type Walk, copyOf, freshWalk, passNote, passReply } from './walk.ts';
import { doneMeaning } from './works.ts';

/** What a fold needs to go on: entries for a correction that makes all anew, the rest to add to. Newest last. */
type Tape = {
  readonly notes: readonly NoteEntry[];
  readonly replies: ReadonlyMap<NoteId, ReplyEntry>;
  readonly dropped: ReadonlySet<FactId>;
  readonly newest: Row | null;
  readonly walk: Walk;
};
export type Folded = Standing & {
  readonly tape: Tape;
  /** The newest one: what a decision must be about. */
  readonly estimate: EstimateEntry | null;
};

const blank: Folded = {
  session: '',
  coach: '',
  sheet: '',
  zone: 'UTC',
  practice: null,
  closed: false,
  seq: 0,
  facts: [],
  held: [],
  voided: new Set(),
  state: unknownState,
  stateAt: new Map(),
  situation: new Map(),
  complaint: null,
  open: null,
  gates: new Map(),
  pending: [],
  checksDone: [],
  skipped: new Set(),
  checks: [],
  findings: new Map(),
  suspects: [],
  next: null,
  guide: null,
  estimate: null,
  tape: { notes: [], replies: new Map(), dropped: new Set(), newest: null, walk: freshWalk() },
};

/** `from` with rows that come after all it has, and with the walk gone on by `pass`. */
const added = (
  from: Folded,
  rows: readonly Row[],
  tape: Tape,
  pass: (walk: Walk, ids: Folded['stateAt']) => void,
): Folded => {
  let { state } = from;
  const stateAt = new Map<FactId, CoachState>(from.stateAt);
  const situation = new Map(from.situation);
  const facts = [...from.facts];
  const kept = [...from.held];
  for (const { held } of rows) {
    if (held.fact.held) {
      kept.push(held);
      continue;
    }
    facts.push(held);
    state = stateAfter(state, held);
    stateAt.set(held.fact.id, state);
    if (doneMeaning(held.fact, 'part') && held.fact.where.v !== '')
      situation.set(held.fact.where.v, { since: held.fact.at, seq: held.seq });
  }
  const walk = copyOf(tape.walk);
  pass(walk, stateAt);
  const gates = new Map<string, boolean>();
  for (const [name, held] of Object.entries(state.because)) if (held) gates.set(name, held.fact.holds);
  const pending = pendingOf(walk.asked, { state, gates, facts, findings: walk.findings });
  const { asked: _asked, waiting: _waiting, ...shown } = walk;
  return {
    ...from,
    ...shown,
    facts,
    held: kept,
    state,
    stateAt,
    situation,
    gates,
    pending,
    tape: { ...tape, newest: rows.at(-1) ?? tape.newest, walk },
  };
};

/** All anew from the tape's notes and replies. */
const derive = (from: Folded, notes: readonly NoteEntry[], replies: ReadonlyMap<NoteId, ReplyEntry>): Folded => {
  const voided = voidNotes(notes);
  const dropped = droppedBy(notes, voided);
  const { facts, held, state, stateAt, situation } = blank;
  return added(
    { ...from, voided, facts, held, state, stateAt, situation },
    inForce(notes, voided, dropped),
    { notes, replies, dropped, newest: null, walk: freshWalk() },
    (walk, ids) => {
      for (const note of notes) {
        const alive = !voided.has(note.id);
        passNote(walk, note, alive);
        const reply = replies.get(note.id);
        if (reply) passReply(walk, note, reply, alive, ids);
      }
    },
  );
};

/** The same by adding; null where a new entry reaches back and all must be made anew. */
const goOn = (
  from: Folded,
  notes: readonly NoteEntry[],
  replies: ReadonlyMap<NoteId, ReplyEntry>,
  fresh: readonly (NoteEntry | ReplyEntry)[],
): Folded | null => {
  const { voided, tape } = from;
  const written = fresh.filter((e): e is NoteEntry => e.is === 'note');
  if (written.some((note) => note.read.amends.length > 0)) return null;
  let current = tape.notes.at(-1);
  for (const entry of fresh)
    if (entry.is === 'note') current = entry;
    else if (entry.to !== current?.id) return null;
    else if (tape.replies.has(entry.to)) return null;
  const rows = inForce(written, voided, tape.dropped);
  if (tape.newest && rows[0] && later(tape.newest, rows[0]) > 0) return null;
  return added(from, rows, { ...tape, notes, replies }, (walk, ids) => {
    let note = tape.notes.at(-1);
    for (const entry of fresh)
      if (entry.is === 'note') {
        note = entry;
        passNote(walk, note, !voided.has(note.id));
      } else if (note) passReply(walk, note, entry, !voided.has(note.id), ids);
  });
};

/** `before` with `entries` that follow it: gapless, in order. */
export const foldOn = (before: Folded, entries: readonly Entry[]): Folded => {
  let out: Folded = before;
  const notes = [...before.tape.notes];
  const replies = new Map(before.tape.replies);
  const fresh: (NoteEntry | ReplyEntry)[] = [];
  for (const entry of entries) {
    if (out.seq !== 0 && entry.seq !== out.seq + 1)
      throw new RangeError(`entry ${entry.seq} does not follow ${out.seq}`);
    out = { ...out, seq: entry.seq, session: entry.session };
    switch (entry.is) {
      case 'opened':
        out = { ...out, coach: entry.coach, sheet: entry.sheet, zone: entry.zone, practice: entry.practice ?? null };
        break;
      case 'sheet':
        out = { ...out, sheet: entry.sheet };
        break;
      case 'note':
        notes.push(entry);
        fresh.push(entry);
        break;
      case 'reply':
        replies.set(entry.to, entry);
        fresh.push(entry);
        break;
      case 'closed':
        out = { ...out, closed: true };
        break;
      case 'reopened':
        out = { ...out, closed: false };
        break;
      case 'estimate':
        out = { ...out, estimate: entry };
        break;
      case 'decided':
      case 'remark':
        break;
    }
  }
  if (fresh.length === 0) return out;
  return goOn(out, notes, replies, fresh) ?? derive(out, notes, replies);
};

/** All entries of a session, from the first on. */
export const fold = (entries: readonly Entry[]): Folded => foldOn(blank, entries);
