import type { Guide } from '../guide.ts';

export const moisture: Guide = {
  id: 'drain and moisture',
  title: 'Draining, and where the water comes from',
  topics: [
    'drain',
    'drained',
    'drain tank',
    'water',
    'water drained',
    'wet',
    'dryer',
    'moisture',
    'humidity',
    'frozen',
    'milky',
    'ice',
    'condensate',
    'freeze',
  ],
  what: 'How much water the air makes, whether the dryer still takes it out, and what froze.',
  tools: ['measuring cup', 'gloves', 'lamp'],
  gate: null,
  minutes: { hands: 10, wait: 5 },
  steps: [
    {
      words:
        'Key off or power cut, wheels chocked, nobody under, eyes covered. Open the drain a little, from beside it, cup under it; let it run until only air comes. Measure, look, smell.',
      expect: 'How much and what: "drained 4 oz of water", "milky water from drain", "no water"',
      outcomes: [
        { when: 'clear water', means: 'no drain habit, or wet weather; note the days since the last time' },
        { when: 'milky', means: 'oil in it: worn rings, or a dryer that is full' },
        { when: 'rust', means: 'the tank from inside: look at it, and never weld it' },
        { when: 'dry', means: 'good; or the drain is plugged: is the tank really at zero?' },
      ],
      caution: 'people clear',
    },
    {
      words:
        'With a dryer: look at the purge and at the date of its cartridge. A dryer that lets water through is full, or the pump runs so long that it is never purged.',
      expect: 'What you find: "dryer wet", "dryer replaced", "dryer ok"',
      outcomes: [
        { when: 'water after it', means: "cartridge by the maker's manual, coach DEAD; then find the long running" },
      ],
    },
    {
      words:
        'Frozen line or valve: the whole coach goes somewhere warm. No flame, heat gun or fluid. Once thawed, drain again and work each valve through fill and exhaust from outside.',
      expect: 'What it was: "left bellows line frozen", and after: "left height valve works"',
      outcomes: [
        { when: 'works when warm', means: 'water was there: drain habit or dryer, and a low spot in the line' },
        { when: 'dead when warm too', means: 'not ice: valve or clogged line guide' },
      ],
      caution: 'heat on line',
    },
    {
      words: 'Drain closed, power back, pump up, soap the drain.',
      expect: 'What soap shows: "no bubbles at the drain"',
      outcomes: [{ when: 'bubbles', means: 'grit on its seat: tank to zero, open, let it blow clear, close' }],
      caution: 'people clear',
    },
  ],
  after: [
    'Write down amount and date: the next drain day comes from it.',
    'The service plan says how often; in hard cold more often.',
  ],
};
