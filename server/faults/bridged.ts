/**
 * Notes in which the pump was run past its own switch: what it does then is not its own call, but says where the current
 * stopped. Pure.
 */
import type { NoteId } from '../../intents/shapes.ts';
import type { Standing } from '../session/standing.ts';
import type { Measured } from './measured.ts';

type Told = Standing & {
  tape?: {
    notes: readonly {
      id: NoteId;
      text: string;
      read: { hazards: readonly { hazard: string; mode: string }[] };
    }[];
  };
};

const told = (standing: Told): { id: NoteId; text: string }[] =>
  (standing.tape?.notes ?? []).filter((n) =>
    n.read.hazards.some((h) => h.hazard === 'interlock defeated' && (h.mode === 'done' || h.mode === 'doing')),
  );

export const bridgedNotes = (standing: Standing): ReadonlySet<NoteId> => new Set(told(standing).map((n) => n.id));

/** What a pump that is run past its switch does not say about a pump that is called. */
export const notItsOwnCall: ReadonlySet<string> = new Set([
  'pump called',
  'pump quiet',
  'motor current',
  'motor volts',
  'battery volts',
  'switch volts',
]);

const overRelay = /\b(?:jump|jumped|jumper|jumpered|bridged?|bypass(?:ed)?)\b[^.;:]{0,24}\brelay\b/i;
/** Battery put on the switch's input, not across its contacts. */
const ontoInput =
  /\b(?:jump|jumped|jumper|jumpered|put|fed)\b[^.;:]{0,40}\b(?:to|on|onto|into)\b[^.;:]{0,12}\b(?:switch|sw) (?:input|feed)\b/i;

export const bridgedEvidence = (standing: Standing): Measured[] =>
  told(standing).flatMap(({ id, text }) => {
    const mine = standing.facts.flatMap((h, clock) => (h.note === id ? [{ ...h, clock }] : []));
    const said = mine.find(
      ({ fact }) =>
        (fact.is === 'condition' && fact.what.v === 'pump running') ||
        (fact.is === 'sign' && ['starts', 'works', 'wont run', 'not working'].includes(fact.what.v)),
    );
    if (!said) return [];
    const { fact } = said;
    const runs =
      fact.is === 'condition'
        ? fact.holds
        : fact.is === 'sign' && fact.there === (fact.what.v === 'starts' || fact.what.v === 'works');
    const see = overRelay.test(text) ? 'relay bridged' : ontoInput.test(text) ? 'switch fed' : 'switch bridged';
    return [
      {
        see,
        outcome: runs ? 'runs' : 'no change',
        because: [fact.id],
        seq: said.seq,
        words: `${see}: ${runs ? 'it runs' : 'no change'}`,
        clock: said.clock,
      },
    ];
  });
