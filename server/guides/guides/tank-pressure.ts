import type { Guide } from '../guide.ts';

export const tankPressure: Guide = {
  id: 'tank pressure',
  title: 'Tank pressure, cut-in and cut-out',
  topics: [
    'cut-in',
    'cut in',
    'cut-out',
    'cut out',
    'pressure',
    'tank',
    'gauge',
    'test port',
    'relief',
    'second gauge',
    'switch points',
    'runs on',
    'relief look',
    'tank below cut-in',
    'reservoir',
    'reservoir pressure',
    'air pressure',
  ],
  what: 'Whether the pump starts and stops where the sheet wants it, by a gauge that can be trusted.',
  tools: ['second gauge that fits the test port', 'watch', 'ear protection'],
  gate: null,
  minutes: { hands: 12, wait: 10 },
  steps: [
    {
      words:
        'Before key or drain is touched, read the tank as found. If the coach came in for sinking, take the four heights too: three minutes of pumping wipe them out.',
      expect: 'The tank as it stands: "tank 104 psi, key off"',
      outcomes: [
        {
          when: 'above {supply.cutIn}',
          means: 'a silent pump is healthy; it rests until the pressure is below cut-in',
        },
        { when: 'at zero with the coach level', means: 'the inlet checks hold the bellows up; the store is empty' },
      ],
      reads: { what: 'pressure', where: 'tank' },
    },
    {
      words:
        'Second gauge on the test port. A port with a valve of its own takes it as it is; one without is opened only with the tank drained, proved at zero and the power cut, then pumped up again. Wait a minute, then read both.',
      expect: 'Both figures or how they compare: "test port 103 psi" or "gauges agree"',
      outcomes: [
        { when: 'they agree within a division or two', means: 'the tank gauge can be trusted here' },
        {
          when: 'they differ',
          means: 'every tank reading so far is in doubt; go on by the second gauge and read again what mattered',
        },
      ],
      caution: 'eyes covered',
    },
    {
      words:
        'Stand clear of the relief. Key on, let it pump, one hand near the breaker, and note where the pump stops: {supply.cutOut}.',
      expect: 'The pressure at which it stops: "cut out 117 psi"',
      outcomes: [
        { when: 'inside the band', means: 'switch and relay let go as they should' },
        { when: 'below it', means: 'switch set low, its line restricted, or a gauge that reads low' },
        {
          when: 'goes past it',
          means:
            'cut its power at breaker or battery at once; switch, relay, a plugged switch line, or a gauge that lies',
        },
      ],
      caution: 'people clear',
      reads: { what: 'cut-out', where: '' },
    },
    {
      words:
        'Let the pressure down slowly by the drain, from beside it, eyes covered, and note where the pump starts: {supply.cutIn}. Close the drain.',
      expect: 'The pressure at which it starts: "cut in 88 psi", or "pump wont run"',
      outcomes: [
        { when: 'inside the band', means: 'the switch closes as it should' },
        { when: 'does not start below it', means: 'electrics next, while the tank is still below cut-in' },
        {
          when: 'starts only a little below where it stopped',
          means: 'a narrow band or a restricted switch line; the pump will short cycle',
        },
      ],
      caution: 'people clear',
      reads: { what: 'cut-in', where: '' },
    },
  ],
  after: [
    'Take the second gauge off with the tank at zero; soap the port when it is back up.',
    'Write down cut-in, cut-out and by which gauge.',
  ],
};
