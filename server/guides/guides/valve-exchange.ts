import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const valveExchange: Guide = {
  id: 'height valve exchange',
  title: 'Height valve out, overhaul or exchange, and back',
  topics: [
    'replace the height valve',
    'replace height valve',
    'change the height valve',
    'replace the levelling valve',
    'replace the leveling valve',
    'overhaul the height valve',
    'overhaul the valve',
    'rebuild the height valve',
    'remove the height valve',
    'exchange',
    'overhaul',
  ],
  what: 'Taking a proved-bad valve out clean, mending or exchanging it, and putting it back so that it finds the same height.',
  tools: ['labels', 'caps and plugs', 'tape or rule', "exchange valve or the maker's kit", 'hand tools'],
  gate: 'dead',
  minutes: { hands: 60, wait: 20 },
  steps: [
    makeDead(
      'First, still on its air, measure and write down: rear height of that side, arm length between centres, link length, angle of the arm, which way it points.',
    ),
    {
      words:
        'Clean round every port first. Label supply, bellows line and exhaust. Loosen each a turn from beside it, wait, then off; caps on at once.',
      expect: 'What was done: "left height valve removed"',
      outcomes: [
        { when: 'one hisses on', means: 'a store was not at zero: nip it up, prove all of them again' },
        { when: 'dirt or water in it', means: 'the other side has it too; drain and filters next' },
      ],
      caution: 'open under pressure',
    },
    {
      words:
        "Exchange is the rule. Overhaul only with the maker's kit and manual: springs inside are loaded, seats must not be scratched, every rubber new, its lubricant and no other.",
      expect: 'What it will be: "left height valve replaced" or "left height valve rebuilt"',
      outcomes: [
        { when: 'overhauled', means: 'bench test before it goes back, at both pressures' },
        { when: 'exchanged', means: 'hold it beside the old one: ports, arm side, shaft' },
      ],
      caution: 'eyes covered',
    },
    {
      words:
        "Back on: arm the same way round, the same hole, link straight, bolts as the sheet's torques or the manual say. Thread tape here: {valves.threadTape}; where nothing is said, none, as shreds ruin the valve. Lines by their labels.",
      expect: 'What was done: "left height valve refitted", "link on"',
      outcomes: [
        { when: 'arm reversed', means: 'it would run away to a stop: check before air' },
        { when: 'old link bent or its rubber worn', means: 'new link now' },
      ],
    },
    airBack('three ports and the cover'),
    {
      words:
        'On its wheels, level floor, {panel.auto}, nobody under: does it fill and dump the right way past its delay, and stop at its height?',
      expect: 'Heights: "lr 13 3/4 rr 13 3/4"',
      outcomes: [
        { when: 'comes to its height', means: 'ride height guide for the last quarter inch' },
        { when: 'runs away', means: 'arm reversed or link on the wrong side: empty that side by the panel' },
      ],
      gate: 'live',
      caution: 'link pulled under',
    },
  ],
  after: [
    'Ride height both sides, then front: a changed rear changes the front.',
    'Overnight in AUTO with tape marks proves it.',
  ],
};
