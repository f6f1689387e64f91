/** Cautions a reply opens with: hazards in the note, dangers that stand, gates not answered. */
import type { HazardName, Reading } from '../../intents/shapes.ts';
import { cautionFor } from '../guides/cautions.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Block } from './reply.ts';

type Stop = Extract<Block, { is: 'caution' }>;

/** Signs that are a danger in themselves, whatever else the note says. */
const dangerous: Readonly<Record<string, HazardName>> = { 'runs on': 'over-pressure', 'cords showing': 'cords driven' };

const blockFor = (id: string, standing: Folded): Stop | null => {
  const caution = cautionFor(id);
  if (!caution) return null;
  const { gate } = caution;
  // a gate is asked once a state: one that stands answered with yes is not asked again
  const answered = gate && [gate.what, ...(gate.or ?? [])].find((what) => standing.gates.get(what) === true);
  return {
    is: 'caution',
    id,
    words: caution.words,
    more:
      answered === undefined
        ? caution.more
        : `Answered already: ${answered}. Say so if that no longer holds. ${caution.more}`,
    ...(gate && !answered
      ? {
          gate: {
            what: gate.what,
            keys: [...gate.keys],
            open: { id: `gate-${gate.what}`, yes: gate.yes, no: gate.no },
          },
        }
      : {}),
  };
};

/** Asks for the next thing to do: not while a stop is unanswered. Other questions are answered all the same. */
export const goesOn = (ask: Reading['asks'][number]): boolean =>
  ask.ask === 'next' || (ask.ask === 'command' && ask.about === 'next step');

/** `standing`: with this note folded in; `before`: without it. */
export const cautionBlocks = (read: Reading, standing: Folded, before: Folded, sheet: Sheet): Stop[] => {
  const ids = new Set<string>();
  for (const hazard of read.hazards) if (hazard.mode !== 'warned') ids.add(hazard.hazard);
  for (const fact of read.facts) {
    if (fact.is === 'sign' && fact.there && fact.word !== 'hunch') {
      const id = dangerous[fact.what.v];
      if (id) ids.add(id);
    }
    if (fact.is === 'reading' && !fact.held && fact.what.v === 'pressure' && fact.where.v === 'tank') {
      const stop = sheet.supply?.cutOut?.high.si;
      const relief = sheet.supply?.relief?.si;
      if (
        (relief !== undefined && fact.amount.v.si >= relief) ||
        (stop !== undefined && standing.state.pump === true && fact.amount.v.si > stop * 1.05)
      )
        ids.add('over-pressure');
    }
  }
  const out = [...ids].flatMap((id) => blockFor(id, standing) ?? []);
  // a gate that was asked and neither answered nor overtaken stays in front
  const waiting = before.pending.find(
    (g) => !g.answered && standing.pending.some((p) => p.what === g.what) && !out.some((b) => b.gate?.what === g.what),
  );
  const answeredNow =
    waiting !== undefined && read.facts.some((f) => f.is === 'condition' && f.what.v === waiting.what);
  if (waiting && !answeredNow && read.asks.every(goesOn))
    out.push({
      is: 'caution',
      id: `waiting-${waiting.what}`,
      words: waiting.words,
      more: 'Not answered yet; until it is, nothing under or in the air circuit goes on.',
      gate: { what: waiting.what, keys: [...waiting.keys] },
    });
  const refused = read.facts.find(
    (f) => f.is === 'condition' && !f.holds && before.pending.some((g) => g.what === f.what.v),
  );
  if (refused?.is === 'condition' && out.length === 0) {
    const asked = before.pending.find((g) => g.what === refused.what.v)!;
    out.push({
      is: 'caution',
      id: `not-yet-${asked.what}`,
      words: 'Then leave it. Keep clear until it is so.',
      more: asked.words,
      gate: { what: refused.what.v, keys: [...asked.keys] },
    });
  }
  return out;
};
