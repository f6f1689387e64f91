/**
 * The two states of a coach in which hands go near it, as data: LIVE (at height, air in, for measuring and soaping) and
 * DEAD (for opening anything). Each is a list of conditions, each with the question that is put once a state.
 * Common practice, no source; the maker's manual and local rules come first.
 */
import type { Condition } from '../../intents/shapes.ts';

export type Mode = 'live' | 'dead';
/** `yes` and `no` are whole notes; `or`: conditions that answer the question as well. */
export type Gate = {
  readonly what: Condition;
  readonly question: string;
  readonly more: string;
  readonly yes: string;
  readonly no: string;
  readonly or?: readonly Condition[];
};

const eyes: Gate = {
  what: 'eyes covered',
  question: 'Eyes covered?',
  more: 'Escaping air carries dirt and oil. Glasses or a shield on, for everyone near.',
  yes: 'eyes covered',
  no: 'eyes not covered',
};

export const live: readonly Gate[] = [
  {
    what: 'wheels chocked',
    question: 'Are the wheels chocked, both ways, on firm level ground?',
    more: 'Chocks before and behind a wheel that stays on the ground. A coach that settles also rolls.',
    yes: 'wheels chocked',
    no: 'wheels not chocked',
  },
  {
    what: 'people clear',
    question:
      'Is nobody under the coach or between body and wheels, and will it stay so while key, panel or a link moves?',
    more: 'The body can drop its whole travel in a second. Call out before key, panel or link is touched, and have an answer.',
    yes: 'people clear',
    no: 'people not clear',
  },
  eyes,
];

/** Asked besides LIVE where a step reaches under a coach that stands on its air. */
export const room: Gate = {
  what: 'over pit',
  question: 'Is the coach over a pit or ramps, or on rated cribbing that leaves room to live if the air goes?',
  more: "Air does not hold it up, nor does a jack. Without that room nothing under it is touched, not even with a bottle of soap water. The maker's manual says where cribbing may bear.",
  yes: 'over pit',
  no: 'not over pit',
  or: ['cribbed'],
};

export const dead: readonly Gate[] = [
  {
    what: 'on stands',
    question: 'Is the frame on rated stands, on firm level ground, under parts that do not move?',
    more: "Air is no support and a jack is none. Stands stand where the maker's manual puts them, wheels chocked, before any air is let out.",
    yes: 'on stands',
    no: 'not on stands',
  },
  {
    what: 'pump power cut',
    question: "Is the compressor's power cut at breaker or battery, not by the key?",
    more: 'A pump that rests can start by itself, and a welded relay ignores the key. Hang a tag on what you switched off.',
    yes: 'pump power cut',
    no: 'pump power not cut',
  },
  {
    what: 'tank drained',
    question: 'Is the tank drained, and does a gauge prove it at zero?',
    more: 'Open the drain from beside it, not below it. It empties this one store and no other.',
    yes: 'tank drained',
    no: 'tank not drained',
  },
  {
    what: 'bellows vented',
    question: 'Are left and right bellows both vented, each proved at zero?',
    more: 'From outside or by the panel, with the frame already on stands. The inlet checks hold them up when the tank is empty.',
    yes: 'bellows vented',
    no: 'bellows not vented',
  },
  {
    what: 'head vented',
    question: 'Are compressor head and discharge line at zero, and cool?',
    more: 'The line before the check valve keeps its own pressure with the tank at zero. Let it bleed at the unloader; wait until it can be touched.',
    yes: 'head vented',
    no: 'head not vented',
  },
  {
    what: 'air vented',
    question:
      'Is everything else proved at zero: valve-to-panel line in SHUT, dryer, all that lies behind a protection valve?',
    more: 'Put the panel through its positions with the tank empty and listen at the vents. What cannot be proved empty counts as full.',
    yes: 'air vented',
    no: 'air not vented',
  },
  eyes,
];

export const gatesFor = (mode: Mode): readonly Gate[] => (mode === 'live' ? live : dead);

/** Whether the answers so far say that it is so; not asked yet counts as no. */
export const gateHolds = (gate: Pick<Gate, 'what' | 'or'>, gates: ReadonlyMap<string, boolean>): boolean =>
  gates.get(gate.what) === true || (gate.or ?? []).some((other) => gates.get(other) === true);

/** Gates of `mode` that are not answered with yes, in the order in which they are to be met. */
export const openGates = (mode: Mode, gates: ReadonlyMap<string, boolean>): readonly Gate[] =>
  gatesFor(mode).filter((gate) => !gateHolds(gate, gates));
