import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const checkUnloader: Guide = {
  id: 'check valve and unloader',
  title: 'Check valve and unloader: telling them apart, and renewing one',
  topics: [
    'check valve',
    'discharge check',
    'unloader',
    'unloader tripped',
    'hiss after stop',
    'hiss running',
    'trip unloader',
    'restart',
    'soap discharge',
  ],
  what: 'The same hiss comes from either. Timing tells: at the stop only, while running too, or on and on.',
  tools: ['watch', 'soapy water', 'spanners for cold fittings', 'new valve'],
  gate: 'dead',
  minutes: { hands: 25, wait: 20 },
  steps: [
    {
      words:
        'Before anything is opened: let it pump to cut-out, stand beside the pump, hands off it as it is hot, and listen while it runs, at the stop, and 30 seconds after.',
      expect: 'What and when: "pump off, hiss at unloader", "no hiss"',
      joins: 'pumping',
      outcomes: [
        { when: 'one puff at the stop', means: 'the unloader at its work: nothing to mend' },
        { when: 'hisses while it runs, gone seconds after', means: 'the unloader seat' },
        { when: 'goes on after 30 seconds', means: 'the check valve: the tank runs back through the head' },
        { when: 'goes on at a port of its own', means: 'a switch or unloader diaphragm fed from the tank' },
      ],
      gate: null,
      caution: 'people clear',
    },
    {
      words:
        'Restart test: tank just below cut-in, engine running for full volts. If it hums or blows the fuse, power off at the breaker before a hand goes near; trip the unloader by its lever, from beside it, and call it again.',
      expect: 'What it does now: "unloader tripped, pump starts", or "pump stalls"',
      outcomes: [
        {
          when: 'starts once the head is empty',
          means: 'pressure in the head: check valve or unloader, not the motor',
        },
        { when: 'stalls all the same', means: 'volts or a tight pump: electrics guide' },
      ],
      gate: null,
      caution: 'people clear',
    },
    makeDead(
      'To renew one, let the pump cool until it can be touched. The line before the check valve may be charged with the tank at zero.',
    ),
    {
      words:
        'Note which way the arrow points. Loosen the discharge fitting a turn from beside it, wait, then take it off; valve out, look for carbon, water and oil.',
      expect: 'What you find: "check valve dirty", "oil at the discharge line", "check valve replaced"',
      outcomes: [
        { when: 'carbon', means: 'it ran hot and long: find the leak that made it, and look at the line too' },
        { when: 'oil', means: 'worn rings' },
        { when: 'seat clean and free', means: 'perhaps not this one: think again before fitting a new one' },
      ],
      caution: 'open under pressure',
    },
    airBack('the discharge line and both fittings'),
  ],
  after: [
    'Listen once more at the stop: one puff, then silence.',
    'Write down what was found, and what it did to the motor or fuse.',
  ],
};
