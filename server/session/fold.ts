/** Folds the entries of a session into what stands. Pure; nothing is judged again, only present standing is computed. */
import type { Condition, Fact, FactId, NoteId, Open } from '../../intents/shapes.ts';
import type { Block, Suspect } from '../chat/reply.ts';
import type { Finding } from '../findings/finding.ts';
import { stateAfter, unknownState } from './coach-state.ts';
import type { Entry, NoteEntry, ReplyEntry } from './entry.ts';
import type { CoachState, Held, Standing } from './standing.ts';

/** The entries a fold needs again when a correction comes: kept with the standing, newest last. */
type Tape = { notes: readonly NoteEntry[]; replies: ReadonlyMap<NoteId, ReplyEntry> };
export type Folded = Standing & { readonly tape: Tape };

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
  checks: [],
  findings: new Map(),
  suspects: [],
  next: null,
  guide: null,
  tape: { notes: [], replies: new Map() },
};

/** Notes taken back: a note is void when a later note that is not itself void undoes it. */
export const voidNotes = (notes: readonly NoteEntry[]): ReadonlySet<NoteId> => {
  const gone = new Set<NoteId>();
  for (const note of notes.toReversed()) {
    if (gone.has(note.id)) continue;
    for (const amend of note.read.amends) for (const id of amend.notes) gone.add(id);
  }
  return gone;
};

const works = new Set([
  'replaced',
  'repaired',
  'rebuilt',
  'cleaned',
  'tightened',
  'adjusted',
  'set',
  'refitted',
  'rerouted',
  'connected',
  'shimmed',
  'inflated',
  'reset',
]);

/** Facts in force, in order of time; conditions of a note count from its earliest reading on. */
const inForce = (notes: readonly NoteEntry[], gone: ReadonlySet<NoteId>): Held[] => {
  const dropped = new Set<FactId>();
  for (const note of notes)
    if (!gone.has(note.id))
      for (const amend of note.read.amends)
        if (amend.do === 'drop' || amend.do === 'put') for (const id of amend.drops) dropped.add(id);
  const out: { held: Held; from: number; order: number }[] = [];
  for (const note of notes) {
    if (gone.has(note.id)) continue;
    const facts = [...note.read.facts, ...note.read.amends.flatMap((a) => (a.do === 'put' ? a.puts : []))].filter(
      (f) => !dropped.has(f.id),
    );
    const earliest = facts.reduce((t, f) => Math.min(t, f.at), note.at);
    for (const fact of facts) {
      const states = fact.is === 'condition' || fact.is === 'work';
      out.push({
        held: { fact, seq: note.seq, note: note.id, by: note.by },
        from: fact.is === 'condition' && !fact.when ? earliest : fact.at,
        order: note.seq * 2 + (states ? 0 : 1),
      });
    }
  }
  return out.toSorted((a, b) => a.from - b.from || a.order - b.order).map((row) => row.held);
};

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

const derive = (from: Folded): Folded => {
  const { notes, replies } = from.tape;
  const gone = voidNotes(notes);
  const all = inForce(notes, gone);
  const facts = all.filter((h) => !h.fact.held);
  const ids = new Set(facts.map((h) => h.fact.id));

  let state: CoachState = unknownState;
  const stateAt = new Map<FactId, CoachState>();
  const situation = new Map<string, { since: number; seq: number }>();
  for (const held of facts) {
    state = stateAfter(state, held);
    stateAt.set(held.fact.id, state);
    if (held.fact.is === 'work' && held.fact.done && works.has(held.fact.what.v) && held.fact.where.v !== '')
      situation.set(held.fact.where.v, { since: held.fact.at, seq: held.seq });
  }

  const findings = new Map<string, Finding>();
  const checks: { id: string; seq: number }[] = [];
  let suspects: readonly Suspect[] = [];
  let next: Block | null = null;
  let open: Open | null = null;
  let guide: Standing['guide'] = null;
  const asked = new Map<Condition, { seq: number; words: string; keys: readonly { label: string; text: string }[] }>();
  const checksDone: { id: string; words: string; outcome: string }[] = [];
  let waiting: Extract<Block, { is: 'check' }> | null = null;
  let complaint: Standing['complaint'] = null;
  for (const note of notes) {
    const reply = replies.get(note.id);
    const alive = !gone.has(note.id);
    if (alive && !complaint && note.read.facts.some((f) => f.is === 'sign'))
      complaint = { seq: note.seq, words: note.text, standing: note.read.facts.some(standingSign) };
    if (waiting && alive && note.read.facts.length > 0) {
      checksDone.push({ id: waiting.id, words: waiting.words, outcome: note.text });
      waiting = null;
    }
    if (!reply) continue;
    open = openOf(reply.blocks) ?? (note.read.facts.length > 0 ? null : open);
    for (const block of reply.blocks) {
      if (block.is === 'findings' && alive)
        for (const f of block.list) if (f.because.every((id) => ids.has(id))) findings.set(f.key, f);
      if (block.is === 'suspects') suspects = block.list;
      if (block.is === 'check') {
        checks.push({ id: block.id, seq: reply.seq });
        next = block;
        waiting = block;
      }
      if (block.is === 'caution' && block.gate)
        asked.set(block.gate.what, { seq: note.seq, words: block.words, keys: block.gate.keys });
      if (block.is === 'step') guide = { id: block.guide, step: block.step };
      if (block.is === 'teach' && block.words.startsWith('Guide ended')) guide = null;
    }
  }
  const gates = new Map<string, boolean>();
  for (const [name, held] of Object.entries(state.because)) if (held) gates.set(name, held.fact.holds);
  const pending = [...asked]
    .filter(([what, { keys }]) => gates.get(what) !== true && !keys.some((k) => gates.get(k.text) === true))
    .map(([what, { seq, words, keys }]) => ({ what, words, keys, answered: (state.because[what]?.seq ?? 0) > seq }));

  return {
    ...from,
    facts,
    held: all.filter((h) => h.fact.held),
    voided: gone,
    state,
    stateAt,
    situation,
    complaint,
    open,
    gates,
    pending,
    checksDone,
    checks,
    findings,
    suspects,
    next,
    guide,
  };
};

/** `before` with `entries` that follow it: gapless, in order. */
export const foldOn = (before: Folded, entries: readonly Entry[]): Folded => {
  let out: Folded = before;
  const notes = [...before.tape.notes];
  const replies = new Map(before.tape.replies);
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
        break;
      case 'reply':
        replies.set(entry.to, entry);
        break;
      case 'closed':
        out = { ...out, closed: true };
        break;
      case 'reopened':
        out = { ...out, closed: false };
        break;
      case 'remark':
        break;
    }
  }
  return derive({ ...out, tape: { notes, replies } });
};

/** All entries of a session, from the first on. */
export const fold = (entries: readonly Entry[]): Folded => foldOn(blank, entries);
