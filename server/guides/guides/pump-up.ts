import type { Guide } from '../guide.ts';

export const pumpUp: Guide = {
  id: 'pump-up',
  title: 'Pump-up time',
  topics: [
    'pump up',
    'pumped up',
    'slow build',
    'pump',
    'compressor',
    'flow',
    'run time',
    'on time',
    'off time',
    'restart time',
    'pump-up shut',
    'pump call',
    'hand at intake',
    'no air',
    'short cycles',
    'runs constantly',
    'duty',
    'pump running',
    'build time',
  ],
  what: 'Whether the pump delivers what it should, apart from whatever leaks: timed with the bellows shut off and the tank dry.',
  tools: ['second gauge', 'watch', 'bucket for the drain', 'voltmeter'],
  gate: null,
  minutes: { hands: 12, wait: 15 },
  steps: [
    {
      words:
        'Nobody under. Drain the tank to zero, water too, from beside the drain, eyes covered: water takes the room of air and makes the time look good. It wipes out an as-found reading, so take that first.',
      expect: 'That it is so: "tank drained", and what came out: "water from the drain" or "no water"',
      outcomes: [{ when: 'much water', means: 'earlier times and short cycling were of a smaller tank' }],
      caution: 'people clear',
    },
    {
      words:
        'Panel to {panel.shut}, so that only tank and supply are filled; without a panel, close the tank outlet. Engine running for full volts, drain closed.',
      expect: 'That it is so: "panel shut, engine running"',
      joins: 'shut',
      outcomes: [{ when: 'neither can be closed', means: 'the time then holds the bellows too: say so with it' }],
    },
    {
      words:
        'Key on and start the watch with the pump. Time it to a round figure below cut-out; {pump.pumpUp.to} where the sheet has a time for it. Stay by the breaker, and give it the rest it needs: not longer than {pump.runLimit} at a stretch.',
      expect: 'From, to and how long: "0 to 90 psi in 4 min 20 sec"',
      outcomes: [
        { when: 'near {pump.pumpUp.time}', means: 'pump and volts are good: a tank that falls has a leak elsewhere' },
        { when: 'much longer, still rising', means: 'worn pump, intake blocked, low volts, or a leak on this side' },
        { when: 'stalls below cut-out', means: 'what leaks equals what it delivers there' },
        { when: 'runs and makes none', means: 'intake, reed, discharge fitting off; all cold and with the power cut' },
      ],
      caution: 'people clear',
    },
    {
      words:
        'While it runs, read the volts at the motor, hands off head and discharge line: they burn. A pump on ten and a half volts is slow with nothing wrong in it.',
      expect: 'At the motor, running: "11.8 v at motor"',
      outcomes: [
        { when: 'below {pump.minVolts}', means: 'electrics first: the time says nothing about the pump yet' },
        { when: 'good volts and a long time', means: 'intake filter, then reeds and rings' },
      ],
      caution: 'people clear',
      reads: { what: 'voltage', where: 'motor' },
    },
    {
      words: 'Watch three cycles at rest, if it cycles: seconds on, minutes off.',
      expect: 'One cycle: "on for 25 sec, off for 6 min"',
      outcomes: [
        { when: 'on short, off short', means: 'narrow switch band, water in the tank, or a leak at the tank' },
        { when: 'on long, off short', means: 'a real leak: find it before the pump dies of it' },
      ],
    },
  ],
  after: ['Panel back to AUTO, tank outlet open.', 'Write down from, to, time, volts and what was shut off.'],
};
