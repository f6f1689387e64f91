/**
 * One note, one reply: reads, folds, judges, weighs and words. Pure; the desk makes it durable.
 * A thing is judged once, when its note comes.
 */
import { blankContext, read } from '../../intents/read.ts';
import type { Fact, NoteId, Reading } from '../../intents/shapes.ts';
import { tell } from '../../intents/tell.ts';
import { afterRepair } from '../faults/after.ts';
import { nextBlock } from '../faults/next-block.ts';
import { suspectsOf } from '../faults/suspects.ts';
import { withdrawn } from '../faults/withdrawn.ts';
import { judge } from '../findings/judge.ts';
import type { Finding } from '../findings/finding.ts';
import type { Draft, Photo } from '../session/entry.ts';
import { foldOn, type Folded } from '../session/fold.ts';
import { pendingOf } from '../session/pending.ts';
import type { Sheet } from '../sheet/schema.ts';
import { benchBlock } from '../guides/bench-block.ts';
import { guideById, stepBlock } from '../guides/steps.ts';
import { aim } from './amends.ts';
import { answerAsk, answersAlone } from './answer.ts';
import { cautionBlocks, goesOn } from './cautions.ts';
import { circuitNow } from './circuit-now.ts';
import { contextOf } from './context.ts';
import { withCorners } from './corners.ts';
import { owner, practiceBlocks, practiceOpening } from './practice.ts';
import { alreadyAsked, questionBlocks } from './questions.ts';
import type { Block, Suspect } from './reply.ts';
import { teach } from './teach.ts';

export type NoteIn = { id: NoteId; text: string; at: number; seen: number; by: string; photos?: Photo[] };

/** Facts to judge: those of the note, and those whose findings a correction has felled. */
const freshFacts = (before: Folded, after: Folded, note: NoteId): Fact[] => {
  const felled = new Set(
    [...before.findings.values()].filter((f) => after.findings.get(f.key) !== f).flatMap((f) => f.because),
  );
  return after.facts.filter((h) => h.note === note || felled.has(h.fact.id)).map((h) => h.fact);
};

const changesEvidence = (read: Reading): boolean =>
  read.facts.some((f) => !f.held) || read.amends.some((a) => a.notes.length > 0 || a.drops.length > 0);

const withWas = (suspects: readonly Suspect[], before: readonly Suspect[]): Suspect[] =>
  suspects.map((s) => {
    const old = before.find((b) => b.fault === s.fault && b.where === s.where);
    return old ? { ...s, was: old.p } : s;
  });

export type Stepped = {
  note: Extract<Draft, { is: 'note' }>;
  reply: Extract<Draft, { is: 'reply' }>;
  standing: Folded;
};

/** `engine`: hash of code and tables, stamped on the reply. */
export const step = (standing: Folded, sheet: Sheet, note: NoteIn, engine: string): Omit<Stepped, 'standing'> => {
  const context = contextOf(standing, sheet, note);
  const aimed = aim(withCorners(read(note.text, context)), standing, note.seen);
  const noteDraft: Stepped['note'] = { is: 'note', ...note, read: aimed.read };
  const folded = foldOn(standing, [{ v: 1, session: standing.session, seq: standing.seq + 1, kept: 0, ...noteDraft }]);

  if (standing.practice) {
    const blocks: Block[] = [...practiceBlocks(aimed.read, note.text, standing, folded, sheet)];
    for (const ask of aimed.read.asks) if (ask.ask !== 'command') blocks.push(...answerAsk(ask, folded, sheet, note));
    if (blocks.length === 0) blocks.push(teach('Say what to look at, read, soap, set or wait for; "reveal" ends it.'));
    return { note: noteDraft, reply: { is: 'reply', by: 'soapwater', to: note.id, engine, blocks } };
  }

  const found: Finding[] = judge(freshFacts(standing, folded, note.id), folded, sheet);
  const findings = new Map([...folded.findings, ...found.map((f) => [f.key, f] as const)]);
  const now: Folded = { ...folded, findings, pending: pendingOf(folded.tape.walk.asked, { ...folded, findings }) };

  const evidence = changesEvidence(aimed.read);
  const suspects = evidence ? withWas(suspectsOf(now, sheet), standing.suspects) : [];
  const judged: Folded = evidence ? { ...now, suspects } : now;

  const cautions = cautionBlocks(aimed.read, judged, standing, sheet);
  const waits = cautions.some((b) => b.is === 'caution' && b.gate);
  const questions = questionBlocks(aimed, judged, found, sheet);
  const blocks: Block[] = [...cautions];
  // what must be asked has its own question below, with the taps
  const took = tell(aimed.read, context, note.text).map((t) => (t.kind === 'ambiguous' ? { ...t, mends: [] } : t));
  if (took.length > 0) blocks.push({ is: 'took', words: took.map((t) => t.words).join(' · '), list: took });
  if (evidence) for (const words of withdrawn(standing, judged, sheet)) blocks.push({ is: 'withdrawn', words });
  blocks.push(...questions);
  if (found.length > 0) blocks.push({ is: 'findings', words: found.map((f) => f.words).join('; '), list: found });
  for (const ask of aimed.read.asks) if (!waits || !goesOn(ask)) blocks.push(...answerAsk(ask, judged, sheet, note));
  if (suspects.length > 0)
    blocks.push({ is: 'suspects', words: suspects.map((s) => `${s.name}: ${s.rank}`).join('; '), list: suspects });
  // a repair asks what brought it on and what else it did, once
  if (aimed.read.facts.some((f) => f.is === 'work' && f.done) && !waits)
    blocks.push(...afterRepair(judged, sheet).filter((q) => !alreadyAsked(standing, q.id)));
  const bench = benchBlock(note.text, standing.guide);
  if (bench) blocks.push(bench);
  // a gate answered in the middle of a guide: its step again, now open
  const guide = standing.guide ? guideById(standing.guide.id) : undefined;
  const opened = standing.pending.some((g) => !judged.pending.some((p) => p.what === g.what));
  if (guide && opened && !waits && !blocks.some((b) => b.is === 'step'))
    blocks.push(...stepBlock(guide, standing.guide!.step, sheet, judged.gates, circuitNow(judged, sheet)));
  const asked = blocks.some((b) => b.is === 'check' || b.is === 'step');
  if (evidence && !waits && !asked) {
    const next = nextBlock(judged, sheet);
    if (next) blocks.push(next);
  }
  return { note: noteDraft, reply: { is: 'reply', by: 'soapwater', to: note.id, engine, blocks } };
};

/** A question that is only asked: nothing of it is kept. `standing` null: outside any session, from the glossary. */
export const answer = (
  standing: Folded | null,
  sheet: Sheet | null,
  ask: { id: NoteId; text: string; at: number },
): Block[] => {
  if (!standing || !sheet) {
    const alone = read(ask.text, blankContext(ask.id, { at: ask.at }));
    const asks = alone.asks.length > 0 ? alone.asks : [plainQuestion(ask.text)];
    return asks.flatMap(answersAlone);
  }
  const reading = withCorners(read(ask.text, contextOf(standing, sheet, { ...ask, seen: standing.seq })));
  const asks = reading.asks.length > 0 ? reading.asks : [plainQuestion(ask.text)];
  const blocks = asks.flatMap((a) => answerAsk(a, standing, sheet, ask));
  const cautions = reading.hazards.filter((h) => h.mode === 'asked');
  if (cautions.length > 0) return [...cautionBlocks(reading, standing, standing, sheet), ...blocks];
  return blocks.length > 0 ? blocks : [teach('I have no answer to that.')];
};

/** Words that are no question as they stand: a glossary term tapped in a reply. */
const plainQuestion = (words: string): Reading['asks'][number] => ({
  ask: 'what is',
  words,
  facts: [],
  amounts: [],
  spans: [[0, words.length]],
});

/** The complaint a practice session begins with, and what may be done. */
export const opening = (
  practice: { seed: number; level: number },
  sheet: Sheet,
  id: NoteId,
  at: number,
  engine: string,
): [Draft, Draft] => {
  const { complaint, blocks } = practiceOpening(practice.seed, practice.level, sheet);
  const note: Draft = {
    is: 'note',
    id,
    text: complaint,
    at,
    seen: 1,
    by: owner,
    read: read(complaint, blankContext(id, { at })),
  };
  return [note, { is: 'reply', by: 'soapwater', to: id, engine, blocks }];
};
