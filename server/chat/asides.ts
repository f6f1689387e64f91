/** Courtesy, other systems, help, and whether it may be driven. */
import type { Folded } from '../session/fold.ts';
import type { Block } from './reply.ts';

const say = (words: string, lines: readonly string[] = []): Block => ({
  is: 'teach',
  words,
  lines: [...lines],
  terms: [],
});

export const talkBlocks = (): Block[] => [say('Right. Type what you see, or "what next".')];

export const elsewhereBlocks = (system: string): Block[] => [
  say(
    system === 'brakes'
      ? "Brakes are outside my word: the maker's manual, and a licensed technician where the law asks for one."
      : `That is another system (${system}). I keep to the air suspension and took nothing from it.`,
  ),
];

export const helpBlocks = (): Block[] => [
  say('Type as you would on a notepad; several things in one line are fine.', [
    'Readings: "tank 112 at 9:05, 104 at 9:35" · "LR 13 1/4 RR 14" · "cut in 88 cut out 117" · "10.4 v at motor"',
    'What you see: "bubbles at rh bag crimp" · "comp wont run" · "sags overnight"',
    'State: "panel shut" · "key off" · "on stands"',
    'Mend: "make that 105" · "no, right side" · "undo"',
    'Ask: "what next" · "why the check valve" · "what does 95 mean" · "how do i check cut in" · "what if the left was 14" · "summary"',
  ]),
];

const stops: readonly (readonly [string, string])[] = [
  ['cords showing', 'cord shows on a bellows'],
  ['torn', 'a bellows or line is torn'],
  ['on stops', 'it sits on its stops'],
  ['flat', 'a bellows is flat'],
  ['runs on', 'the pump does not stop'],
];

/** Never clears a coach for the road; names what stands against it. */
export const safeBlocks = (standing: Folded): Block[] => {
  const against = stops.flatMap(([sign, words]) =>
    standing.facts.some(({ fact }) => fact.is === 'sign' && fact.there && fact.what.v === sign) ? [words] : [],
  );
  const gates = standing.pending.map((g) => g.words);
  return [
    say(
      against.length > 0
        ? `No: ${against.join(', ')}. Do not move it; keep clear; towing by the maker's method.`
        : "I cannot clear a coach to drive, or a place to be safe. That is the word of the one who signs for it, by the maker's manual and the local rules.",
      [
        ...gates.map((g) => `Not answered yet: ${g}`),
        'Level at ride height, tank between cut-in and cut-out, no leak found and proved by the test that fits the complaint: then it may be signed for.',
      ],
    ),
  ];
};
