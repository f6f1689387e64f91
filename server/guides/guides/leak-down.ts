import type { Guide } from '../guide.ts';

export const leakDown: Guide = {
  id: 'leak-down',
  title: 'Timed leak-down, whole and by halves',
  topics: [
    'leak down',
    'leakdown',
    'leak test',
    'pressure fall',
    'height fall',
    'leaks',
    'sags',
    'drops',
    'holds',
    'leak',
    'settled',
    'settling time',
    'standing time',
    'hold shut',
    'hold auto',
    'outlet closed',
    'settle again',
    'overnight',
    'overnight tested',
    'warm up',
    'as found',
    'pump cycles',
    'inlet check',
    'supply line',
  ],
  what: 'Whether it leaks, how long it stays level, and in which half to look. The tape shows a bellows leak, the gauge a tank leak.',
  tools: [
    'tape and a mark on floor and body',
    'watch',
    'second gauge if there is one',
    'cock or plug for the tank outlet',
  ],
  gate: 'live',
  minutes: { hands: 15, wait: 105 },
  steps: [
    {
      words: 'Pump up to cut-out in {panel.auto}, at height, jacks up, level floor. Then key off, and note the time.',
      expect: 'That it is so: "just pumped, key off, panel auto"',
      outcomes: [{ when: 'it does not reach cut-out', means: 'the leak beats the pump: take the pump-up guide first' }],
    },
    {
      words:
        'Leave it about 15 minutes, until pressure and heights stand still. Just pumped air is hot and falls several psi by itself with no leak (common practice, no source). Use the wait for tyres or electrics.',
      expect: 'When it has come to rest: "settled"',
      outcomes: [
        { when: 'a fall that flattens', means: 'heat, not a leak' },
        { when: 'a fall that goes straight on', means: 'a leak; the next readings say where' },
      ],
    },
    {
      words:
        'In {panel.auto}, key off: tank and both rear heights now, by the same marks, and again after 30 minutes. A third time makes the figure sharper. The valves feed with the key off, so a bellows leak is topped up from the tank.',
      expect: 'Each reading with its time: "tank 112 at 9:20, 106 at 9:50" and "lr 13 3/4 at 9:50"',
      // valves at neutral: the gauge sees tank and supply, a leaking side is fed from them
      joins: 'neutral',
      outcomes: [
        { when: 'nothing moves', means: 'no leak that half an hour shows; an overnight test with tape marks is next' },
        { when: 'tank falls, coach stays level', means: 'tank, supply, valves or bellows: the halves tell' },
        { when: 'a side rises', means: 'the inlet seat of that side lets air in' },
        { when: 'the fall stops near the bellows pressure', means: 'the leak is after the inlet seats' },
      ],
    },
    {
      words:
        'Panel to {panel.shut}, both sides. Without a panel: link off and arm pinned at neutral, from outside with nobody under; then hands off. Tank and heights now and after 30 minutes.',
      expect:
        'With the panel said: "panel shut, tank 105 at 10:00, 105 at 10:30", then "left rear drops" or "both rear hold"',
      // behind the shut panel each side stands alone
      joins: 'shut',
      outcomes: [
        { when: 'tank falls', means: 'tank, its fittings, check valve, supply line or panel feed' },
        { when: 'a side sinks', means: 'that bellows, its line after the panel, or the panel leaking through' },
        {
          when: 'both sink a little after a cold night',
          means: 'cold: volume goes with the absolute temperature, nothing leaks',
        },
        { when: 'all hold, though it fell in {panel.auto}', means: 'height valve, or its line to the panel' },
      ],
      caution: 'link pulled under',
    },
    {
      words:
        'Only if the tank fell in {panel.shut}: close the cock at the tank outlet and read now and after 25 minutes. No cock: plugging it is DEAD work. Nylon line is never pinched.',
      expect: 'With the outlet said: "tank outlet closed, tank 104 at 10:40, 104 at 11:05", or "no plug"',
      joins: 'outlet closed',
      outcomes: [
        { when: 'holds', means: 'the supply line after the outlet, or what hangs on it' },
        {
          when: 'falls on',
          means: 'tank, drain, relief, gauge line, switch body, or back through the check valve',
        },
      ],
    },
    {
      words:
        'Only if one side sinks with the tank low: let the tank to zero by its drain, arm of that side just in fill (from outside, past the delay), and tape it for 15 minutes.',
      expect: 'What that side does: "tank drained, arm fill, left rear drops"',
      // the bellows run back into the tank wherever the check lets them
      joins: 'arms fill',
      outcomes: [
        { when: 'sinks', means: 'the inlet check of that side lets air back' },
        { when: 'holds', means: 'the inlet check is good' },
      ],
      caution: 'link pulled under',
    },
  ],
  after: [
    'Panel back to AUTO, outlet open, links on.',
    'Ask "what is the limit" to hold the fall against the sheet.',
    'Soap only the zone that was named.',
  ],
};
