import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const pressureSwitch: Guide = {
  id: 'pressure switch',
  title: 'Pressure switch: renew and set',
  topics: [
    'governor',
    'set the pressure switch',
    'adjust the pressure switch',
    'replace the pressure switch',
    'set cut-in',
    'set cut in',
    'set cut-out',
    'set cut out',
    'adjust cut-out',
    'adjust cut out',
    'welded',
    'burnt',
  ],
  what: 'A switch with burnt, welded or drifting contacts is renewed, and the new one set by a gauge that is trusted.',
  tools: ['second gauge', 'new switch of the range on the sheet', 'insulated tools', 'hand on the breaker'],
  gate: 'dead',
  minutes: { hands: 35, wait: 15 },
  steps: [
    makeDead(
      'First know that it is the switch: second gauge agreed, its line not plugged, volts in and none out below cut-in, or volts out above cut-out. Read cut-in and cut-out as they are.',
    ),
    {
      words:
        'Wires off, marked. Switch off its port, spanner on its own flats. Look into the port: water, dirt and ice there make a good switch lie.',
      expect: 'What you find: "pressure switch burnt", "pressure switch welded", "pressure switch plugged"',
      outcomes: [
        { when: 'contacts burnt or welded', means: 'it carried the whole motor: a relay belongs in' },
        { when: 'port plugged', means: 'clean port and line, drain the tank, and try the old one again' },
      ],
      caution: 'open under pressure',
    },
    {
      words:
        "New one in, sealed as its maker says, wires by their marks, relay if the motor's current is more than its contacts bear.",
      expect: 'What was done: "pressure switch replaced"',
      outcomes: [{ when: 'range does not cover the sheet', means: 'wrong switch; it is not bent to fit' }],
    },
    {
      words:
        'Set it: power on, stand clear of the relief, one at the breaker. Note cut-out and cut-in. A spring nut turned in raises both, backed off lowers both (common practice, no source); power cut before each turn, a quarter turn at a time. Aim: in {supply.cutIn}, out {supply.cutOut}.',
      expect: 'Both: "cut in 88 cut out 117"',
      outcomes: [
        { when: 'both inside', means: 'lock the nut and read them twice more' },
        { when: 'goes past cut-out', means: 'cut the power now, not by the key' },
        { when: 'band too narrow or too wide', means: 'the difference is built in on most: another switch' },
      ],
      gate: null,
      caution: 'people clear',
    },
    airBack('the switch and its port'),
  ],
  after: ['Three cycles watched to the end.', 'Write down cut-in and cut-out, and by which gauge.'],
};
