import type { Guide } from '../guide.ts';

export const servicePlan: Guide = {
  id: 'service plan',
  title: 'Service plan by date and mileage',
  topics: [
    'service',
    'maintenance',
    'odometer',
    'distance driven',
    'intervals',
    'service interval',
    'next service',
    'how often',
  ],
  what: 'What is done when, by what the sheet says; where it says nothing, by common practice, marked so.',
  tools: ['sheet', 'odometer', 'calendar'],
  gate: null,
  minutes: { hands: 45, wait: 30 },
  steps: [
    {
      words: "Odometer and date first. The sheet's service list counts from here; the maker's manual comes before it.",
      expect: 'The odometer: "odometer 41200 miles"',
      outcomes: [{ when: 'no figure from last time', means: 'the plan begins today' }],
      reads: { what: 'odometer', where: '' },
    },
    {
      words:
        'Drain the tank: {supply.drainEvery}; monthly at least, and daily in hard cold (common practice, no source). Amount and look written down.',
      expect: 'What came out: "drained 2 oz of water"',
      outcomes: [
        { when: 'more than last time', means: 'drain sooner; look at the dryer and at how long the pump runs' },
      ],
      caution: 'eyes covered',
    },
    {
      words:
        'Intake filter cleaned or renewed twice a year, or each 6,000 miles if that comes first (common practice, no source), unless the sheet has its own. Power cut.',
      expect: 'What was done: "intake filter replaced", "intake filter cleaned"',
      outcomes: [{ when: 'filthy early', means: 'move where it draws from, or do it sooner' }],
      caution: 'pump may start',
    },
    {
      words:
        'Look over bellows, links, lines and shocks from outside with a lamp; twice a year (common practice, no source).',
      expect: 'What you see: "bellows ok", "links ok", "lines ok"',
      outcomes: [{ when: 'cord or cover gone', means: 'out of service now, not at the next date' }],
      gate: 'live',
    },
    {
      words:
        'Cut-in, cut-out, pump-up, a half-hour leak-down and four heights: the figures of a well coach, to compare with one day.',
      expect: 'The readings: "cut in 88 cut out 117", "0 to 90 psi in 4 min 20 sec"',
      outcomes: [{ when: 'drifting from year to year', means: 'wear you can plan for' }],
      gate: 'live',
    },
  ],
  after: [
    'Next date and mileage written down, whichever comes first; the calendar file can be saved from the session.',
  ],
};
