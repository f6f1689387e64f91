/**
 * What is said before anything else when someone is about to be hurt, as data: one caution a hazard, and one a state.
 * Common practice, no source. Each defers to the maker's manual and local rules; none gives a limp-home advice.
 */
import type { Condition } from '../../intents/shapes.ts';
import { airCautions } from './cautions/air.ts';
import { bodyCautions } from './cautions/body.ts';
import { gateKeys } from './cautions/gate.ts';
import { powerCautions } from './cautions/power.ts';
import { dead, type Gate, live, room } from './gates.ts';

export type CautionGate = {
  readonly what: Condition;
  /** Notes that say it in full. */
  readonly yes: string;
  readonly no: string;
  readonly keys: readonly { readonly label: string; readonly text: string }[];
  /** Conditions that answer it as well. */
  readonly or?: readonly Condition[];
};
export type Caution = {
  readonly id: string;
  /** One line of plain stop words. */
  readonly words: string;
  readonly more: string;
  readonly gate?: CautionGate;
};

/** A gate put as a caution; its id is the condition asked for. */
export const gateCaution = (gate: Gate): Caution => ({
  id: gate.what,
  words: gate.question,
  more: `${gate.more} The maker's manual and local rules come first.`,
  gate: {
    what: gate.what,
    yes: gate.yes,
    no: gate.no,
    keys: gateKeys(gate),
    ...(gate.or ? { or: gate.or } : {}),
  },
});

const states: readonly Caution[] = [
  {
    id: 'dead',
    words: 'Stop. Nothing is opened before the coach is DEAD: is the frame on rated stands?',
    more: "DEAD: frame on rated stands under parts that do not move, compressor's power cut at breaker or battery, and every store proved at zero: tank, both bellows, head and discharge line, valve-to-panel line, dryer, all behind a protection valve. Draining the tank empties one of them. The maker's manual and local rules come first.",
    gate: { ...gateCaution(dead[0]!).gate! },
  },
  {
    id: 'live',
    words: 'The coach stands on its air: are the wheels chocked?',
    more: "LIVE: at height, wheels chocked, over a pit or ramps or on rated cribbing that leaves room to live; nobody under or between body and wheel while key, panel or a link moves. The maker's manual and local rules come first.",
    gate: { ...gateCaution(live[0]!).gate! },
  },
  {
    id: 'under live',
    words: 'Stop. Reaching under a coach on its air: is it over a pit or ramps, or on rated cribbing?',
    more: gateCaution(room).more,
    gate: { ...gateCaution(room).gate! },
  },
];

/** One a condition: LIVE and DEAD share some. */
const asked: readonly Caution[] = [...new Map([...dead, ...live, room].map((g) => [g.what, gateCaution(g)])).values()];

export const allCautions: readonly Caution[] = [...bodyCautions, ...airCautions, ...powerCautions, ...states, ...asked];

const byId = new Map(allCautions.map((c) => [c.id, c]));
/** The caution of a hazard, a state ("dead", "live", "under live") or a gate ("people clear"). */
export const cautionFor = (id: string): Caution | undefined => byId.get(id);
