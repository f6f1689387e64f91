import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const cloggedLine: Guide = {
  id: 'clogged line',
  title: 'Clogged or kinked line',
  topics: [
    'kinked',
    'plugged',
    'discharge line',
    'discharge look',
    'line',
    'lines look',
    'protection valve',
    'regulator',
    'regulated supply',
    'clogged',
    'blocked line',
    'kink',
  ],
  what: 'Why air does not arrive though the tank is full: kink, ice, dirt, carbon, or a valve that waits for more pressure.',
  tools: ['tee and gauge', 'lamp', 'caps for open ends', 'shop air with a regulator'],
  gate: 'dead',
  minutes: { hands: 30, wait: 15 },
  steps: [
    {
      words:
        'Look along the whole line from outside: kinks at brackets, flat spots, soft shiny nylon near exhaust or manifold, ice in the cold. Read the tank.',
      expect: 'What you see: "left bellows line kinked", "lines ok"',
      joins: 'now',
      outcomes: [
        { when: 'kink or flat spot', means: 'the tube is replaced there, not bent back' },
        {
          when: 'tank below {supply.protection}',
          means: 'a protection valve feeds the suspension nothing yet, and that is no fault',
        },
      ],
      gate: 'live',
    },
    makeDead('Next a gauge goes in where the air should arrive.'),
    {
      words:
        "Tee the gauge in at the valve's supply port. Cap what is open. Hands out, power on, pump up, stand clear, and read tank and tee together.",
      expect: 'Both: "tank 105 psi, 40 psi at left height valve"',
      outcomes: [
        { when: 'the same', means: 'the supply is open: look after this point' },
        { when: 'rises slowly', means: 'restricted: dirt, ice, carbon' },
        { when: 'nothing', means: 'blocked, or a protection valve or regulator that stays shut' },
      ],
      caution: 'open under pressure',
    },
    {
      words:
        'DEAD again. Take the piece off at both ends, look through it, blow it from the clean end into a rag in a bag, eyes covered, regulated, under 30 psi at a blocked end (29 CFR 1910.242(b)).',
      expect: 'What came out: "water in supply line", "discharge line plugged", "supply line cleaned"',
      outcomes: [
        { when: 'carbon', means: 'discharge line of a hot pump: renew line and check valve' },
        { when: 'dirt or tape shreds', means: 'they are in the valve too: bench test it' },
        { when: 'water', means: 'drain and moisture guide' },
      ],
      caution: 'shop air unregulated',
    },
    airBack('both ends'),
  ],
  after: ['Read the tee once more before it comes out, with the coach DEAD.', 'Caps off, ports counted.'],
};
