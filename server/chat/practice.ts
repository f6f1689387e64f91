/**
 * Practice in the chat: a session whose coach is simulated. Its deeds are the notes in force, done again in order each
 * time, so that nothing but notes is kept and undo takes a deed back. Pure.
 */
import type { Reading } from '../../intents/shapes.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import { actionOf } from '../twin/practice-actions.ts';
import type { Level } from '../twin/practice-case.ts';
import { act, startPractice, type Practice } from '../twin/practice.ts';
import { reveal } from '../twin/reveal.ts';
import type { Block } from './reply.ts';

const say = (words: string, lines: readonly string[] = []): Block => ({
  is: 'teach',
  words,
  lines: [...lines],
  terms: [],
});
const minutes = (n: number): string => `${Math.round(n)} min`;
const ending =
  /^\W*(?:reveal|i give up|give up|show me the (?:fault|answer)|what was it|the answer|end practi[sc]e|solution)\W*$/i;

const levelOf = (n: number): Level => Math.min(5, Math.max(1, Math.round(n))) as Level;

/** The coach as the notes of `standing` have left it; notes after `upTo` are not done. */
const stateAfter = (standing: Folded, sheet: Sheet, upTo: number): Practice | null => {
  if (!standing.practice) return null;
  let state = startPractice(standing.practice.seed, levelOf(standing.practice.level), sheet);
  for (const note of standing.tape.notes) {
    if (note.seq > upTo || standing.voided.has(note.id) || note.by === owner) continue;
    for (const action of actionOf(note.read, note.text) ?? []) state = act(state, action).state;
  }
  return state;
};

/** Who brings the practice coach in: the first note of a practice session is the complaint in these words. */
export const owner = 'owner';

export const practiceOpening = (seed: number, level: number, sheet: Sheet): { complaint: string; blocks: Block[] } => {
  const state = startPractice(seed, levelOf(level), sheet);
  return {
    complaint: state.case.complaint,
    blocks: [
      say(
        'A practice coach: something is wrong with it, and it is yours to find. Nothing of it enters a coach’s history.',
        [
          'Do as on a real coach, one thing or several a note: "read the tank", "measure all four corners", "panel shut, wait 30 min, tank and left height", "soap the left crimp", "hose from both exhausts", "key on".',
          'Time runs at your word. Dangers cost minutes and are explained. "undo" takes a deed back, "reveal" ends it.',
        ],
      ),
    ],
  };
};

const lessons = (state: Practice): Block[] => {
  const r = reveal(state);
  return [
    say(`It was: ${r.faults.map((f) => f.words).join(' and ')}.`, [
      `You used ${minutes(r.minutes.hands)} hands-on, ${minutes(r.minutes.elapsed)} in all${r.minutes.hazards > 0 ? `, and ${minutes(r.minutes.hazards)} for dangers` : ''}.`,
      `Best order found: ${r.best.steps.map((s) => s.see).join(', then ') || 'nothing left to check'} (${minutes(r.best.minutes)}).`,
      ...r.risks.map((risk) => `Danger: ${risk.why}`),
    ]),
    say(
      'What each check told, and what it could not:',
      r.lessons.map(
        (l) =>
          `${l.see}: ${l.outcome}${l.misled ? ', and that misled' : ''}${l.couldNotTell.length > 0 ? `; could not tell from ${l.couldNotTell.slice(0, 3).join(', ')}` : ''}`,
      ),
    ),
  ];
};

/** What the practice coach answers to a note; `before`: what stood when it was typed. */
export const practiceBlocks = (read: Reading, text: string, before: Folded, after: Folded, sheet: Sheet): Block[] => {
  const state = stateAfter(before.voided.size === after.voided.size ? before : after, sheet, before.seq);
  if (!state) return [];
  if (ending.test(text)) return lessons(state);
  if (read.amends.some((a) => a.do !== 'put')) return [say('The coach stands as it did before that.')];
  const actions = actionOf(read, text);
  if (!actions) {
    if (read.asks.length > 0) return [];
    return [
      say('I do not know how to do that on the practice coach.', [
        'Say what to look at, read, soap, set or wait for; "reveal" ends it.',
      ]),
    ];
  }
  const lines: string[] = [];
  const risks: Block[] = [];
  let at = state;
  let spent = 0;
  for (const action of actions) {
    const answer = act(at, action);
    at = answer.state;
    spent += answer.minutes.elapsed;
    lines.push(...answer.said.map((s) => s.words), ...answer.notes);
    for (const risk of answer.risks)
      risks.push({
        is: 'caution',
        id: `practice-${risk.hazard}`,
        words: `On a real coach this is how people are hurt: ${risk.hazard}.`,
        more: `${risk.why} It costs ${minutes(risk.minutes)} here.`,
      });
  }
  return [
    ...risks,
    say(lines.length > 0 ? lines[0]! : 'Done.', [
      ...lines.slice(1),
      `${minutes(spent)} for this, ${minutes(at.minutes.elapsed)} in all.`,
    ]),
  ];
};
