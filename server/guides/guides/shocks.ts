import type { Guide } from '../guide.ts';

export const shocks: Guide = {
  id: 'shocks',
  title: 'Shocks and their bushings',
  topics: [
    'shock',
    'shock bushing',
    'shock absorber',
    'damper',
    'shocks after drive',
    'shock length',
    'bounces',
    'bottoms',
    'bangs',
    'leaks oil',
  ],
  what: 'Which shock no longer works, and whether one pulls the bellows too long. Springs carry, shocks damp.',
  tools: ['infrared thermometer or back of the hand', 'tape', 'pry bar', 'lamp'],
  gate: 'live',
  minutes: { hands: 25, wait: 20 },
  steps: [
    {
      words:
        'Drive twenty minutes on a road with some bumps, then stop and chock. From outside, compare the shocks at once, bodies only.',
      expect: 'Each, warm or cold: "left rear shock warm"',
      outcomes: [
        { when: 'warm', means: 'it has worked' },
        { when: 'cold after that', means: 'it did nothing: that is the dead one' },
        { when: 'far hotter than its twin', means: 'it did the work of both' },
      ],
    },
    {
      words:
        'Look: oil runs, dents, bent rod, bushings squeezed out, bracket cracks. A damp bloom is not a leak, a run is.',
      expect: 'What you see: "left rear shock leaks oil", "right rear shock bushing worn", "shocks ok"',
      outcomes: [
        { when: 'runs of oil', means: 'renew in pairs' },
        { when: 'bushing gone', means: 'that was the bang' },
      ],
      caution: 'under live',
    },
    {
      words:
        'Bushings and pins with the pry bar, frame on rated stands, nobody else near: play, clunk, egg-shaped eyes.',
      expect: 'What moves: "left rear shock bushing loose", "right rear shock ok"',
      outcomes: [{ when: 'play', means: 'bushing or eye; look at the bracket too' }],
      caution: 'under unsupported',
    },
    {
      words:
        "Length at full droop by the maker's figures: on many coaches the shock is the stop that keeps the bellows from being pulled out. A new one longer than the old is a torn bellows.",
      expect: 'What you find: "left rear shock ok", or "left rear shock broken"',
      outcomes: [
        { when: 'longer than the maker says', means: 'wrong shock: out with it before the bellows tears' },
        { when: 'broken or off', means: 'the bellows has been pulled: look at its plates' },
      ],
      caution: 'under unsupported',
    },
    {
      words:
        "Renewing: in pairs, of the maker's kind for that place, frame on stands and the axle held, torque from sheet or manual with the coach at ride height where it says so.",
      expect: 'What was done: "left rear shock replaced", "right rear shock replaced"',
      outcomes: [{ when: 'one side only', means: 'it will pull and lean in bends: the other one too' }],
      caution: 'under unsupported',
    },
  ],
  after: ['Road test, then feel them again.', 'Cupped tyres do not come back: say so to the owner.'],
};
