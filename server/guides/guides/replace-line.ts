import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const replaceLine: Guide = {
  id: 'replace a line',
  title: 'Replacing a nylon line',
  topics: [
    'nylon',
    'nylon line',
    'nylon tube',
    'tubing',
    'air line',
    'airline',
    'replace line',
    'replace the line',
    'new line',
    'bellows line',
    'valve to panel line',
    'rerouted',
    'chafed',
  ],
  what: 'A tube that is chafed, pricked, kinked or baked is replaced end to end, by one of the same size and kind.',
  tools: [
    'tube of the size on the sheet or on the old one',
    'tube cutter',
    'new inserts, sleeves, nuts',
    'clips, grommets',
    'tape for labels',
  ],
  gate: 'dead',
  minutes: { hands: 35, wait: 10 },
  steps: [
    makeDead(
      "Label both ends. Line colours are this coach's own: the sheet's list or your label, never memory. Note the outside diameter and how it runs.",
    ),
    {
      words:
        'Loosen one end a turn from beside it and wait. Silent: off with it, caps on both ports at once. Pull it out along its way and keep it for measuring.',
      expect: 'What you find: "left bellows line chafed", "left bellows line removed"',
      outcomes: [
        { when: 'it hisses', means: 'nip it up again: a store was not at zero; prove all of them again' },
        { when: 'rub mark', means: 'find what rubbed it, else the new one goes the same way' },
      ],
      caution: 'open under pressure',
    },
    {
      words:
        'Cut the new one square, a little long. Insert right home, nut, sleeve, then into the seat until it stops, nut by hand, then as the fitting maker says. No burrs, nothing on the seat; thread tape only where the sheet or the manual has it, and none at a height valve unless it says so.',
      expect: 'What was done: "left bellows line replaced"',
      outcomes: [
        {
          when: 'the tube turns in the made-up fitting',
          means: 'not home, or no insert: cut it off and make it again',
        },
      ],
    },
    {
      words:
        'Run it as the old one ran, but clear: away from exhaust and manifold, edges behind grommets, no tight bends, room for the suspension to move its whole travel, clips snug and not crushing. Never weld near it.',
      expect: 'How it lies: "left bellows line rerouted"',
      outcomes: [{ when: 'it touches anything at full travel', means: 'move it now' }],
      caution: 'weld near line',
    },
    airBack('both ends'),
  ],
  after: [
    'Look at its twin on the other side: same age, same bracket.',
    'Road, then soap again: heat and shaking seat a fitting.',
  ],
};
