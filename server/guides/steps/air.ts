/** Guides for pressure, leaks and soap. Minutes are estimates; common practice, no source. */
import type { Guide } from '../guide.ts';
import { key } from '../key.ts';

export const airGuides: readonly Guide[] = [
  {
    id: 'tank pressure',
    title: 'Tank pressure, cut-in and cut-out',
    what: 'Says whether the pump starts and stops where the sheet wants it, by a gauge that can be trusted.',
    minutes: '10 at hand, 10 waiting',
    tools: ['second gauge for the test port', 'watch'],
    gate: 'none',
    cautions: ['over-pressure', 'eyes bare'],
    topics: ['cut-in', 'cut-out', 'pressure', 'gauge', 'pressure switch', 'tank', 'test port', 'relief'],
    steps: [
      {
        title: 'Second gauge',
        words:
          'Fit the second gauge to the test port with the tank drained, eyes covered. Let the air stand still for a minute and read both.',
        expect: 'both figures, e.g. "tank 104 psi, test port 103 psi"',
        keys: [key('agree', 'gauges agree'), key('disagree', 'gauges disagree')],
        outcomes: [
          { seen: 'they agree', means: 'the tank gauge can be trusted here' },
          { seen: 'they disagree', means: 'earlier tank readings are in doubt: go on by the better gauge' },
        ],
        cautions: ['eyes bare'],
      },
      {
        title: 'Cut-out',
        words: 'Key on, stand clear of the relief, let it pump. Note the pressure at which the pump stops.',
        expect: 'cut-out, e.g. "cut out 117 psi", or "pump wont shut off"',
        outcomes: [
          { seen: 'stops within the sheet', means: 'switch and relay let go as they should' },
          { seen: 'runs past it', means: 'cut its power at breaker or battery at once: switch, relay or gauge' },
        ],
        cautions: ['over-pressure'],
      },
      {
        title: 'Cut-in',
        words:
          'Key on, open the drain a little, let the pressure down slowly. Note where the pump starts, close the drain.',
        expect: 'cut-in, e.g. "cut in 88 psi", or "pump wont run"',
        outcomes: [
          { seen: 'starts within the sheet', means: 'the switch closes as it should' },
          { seen: 'does not start', means: 'electrics next, with the tank below cut-in' },
        ],
        cautions: ['eyes bare'],
      },
    ],
  },
  {
    id: 'leak-down',
    title: 'Timed leak-down, whole and by halves',
    what: 'Says whether there is a leak, how long the coach stays level, and in which half to look.',
    minutes: '12 at hand, up to 100 waiting: use the waits for electrics and tyres',
    tools: ['tape', 'watch', 'second gauge if there is one', 'plug or cock for the tank outlet'],
    gate: 'live',
    cautions: ['live', 'people clear'],
    topics: [
      'pressure fall',
      'height fall',
      'leaks',
      'sags',
      'drops',
      'holds',
      'settling time',
      'standing time',
      'ambient',
    ],
    steps: [
      {
        title: 'Pump up and let it settle',
        words:
          'Pump to cut-out in AUTO, at height, then key off. Wait 15 minutes: just pumped air cools and falls by itself.',
        expect: '"key off, pumped up at 9:05"',
        cautions: ['people clear'],
      },
      {
        title: 'AUTO, first reading',
        words: 'Panel in AUTO, nobody touching it. Read the tank, tape both rear heights.',
        expect: 'e.g. "tank 112 at 9:20, lr 13 3/4, rr 13 3/4, panel auto"',
      },
      {
        title: 'AUTO, after 30 minutes',
        words: 'Read the same three again, same gauge, same marks.',
        expect: 'e.g. "tank 106 at 9:50, lr 13 3/4, rr 13 1/2"',
        keys: [key('tank holds', 'key off, panel auto, tank holds')],
        outcomes: [
          { seen: 'nothing falls', means: 'no leak that shows in half an hour' },
          { seen: 'tank falls', means: 'tank, supply, valves or bellows: the next half tells' },
          { seen: 'a side rises', means: 'that valve\u2019s inlet seat lets air in' },
        ],
      },
      {
        title: 'SHUT, first and second reading',
        words:
          'Panel SHUT on both sides (no panel: both arms pinned at neutral, link off, nobody under). Read tank and heights now and after 30 minutes.',
        expect: 'e.g. "panel shut, tank 105 at 10:00, lr 13 3/4"',
        keys: [
          key('all hold', 'both rear hold, panel shut'),
          key('left drops', 'left rear drops, panel shut'),
          key('right drops', 'right rear drops, panel shut'),
        ],
        outcomes: [
          { seen: 'tank falls', means: 'tank, its fittings, check valve or supply line' },
          { seen: 'a side sinks', means: 'that bellows, its line after the panel, or the panel leaking through' },
          { seen: 'all hold, AUTO fell', means: 'between: height valve or its line to the panel' },
        ],
        cautions: ['link pulled under'],
      },
      {
        title: 'Tank outlet closed',
        words: 'Only if the tank fell in SHUT: close or plug the tank outlet, read now and after 25 minutes.',
        expect: 'e.g. "tank outlet closed, tank 104 at 10:40"',
        keys: [key('holds', 'tank outlet closed, tank holds'), key('drops', 'tank outlet closed, tank drops')],
        outcomes: [
          { seen: 'holds', means: 'the supply line after the outlet leaks' },
          { seen: 'falls', means: 'tank, drain, relief, gauge, switch, or back through the check valve' },
        ],
        cautions: ['open under pressure'],
      },
    ],
  },
  {
    id: 'soap check',
    title: 'Soap check, in the order that wastes least',
    what: 'Finds the leak in the zone that the leak-down named.',
    minutes: '10 to 25 at hand',
    tools: ['soapy water and brush or bottle', 'lamp', 'mirror'],
    gate: 'live',
    cautions: ['live', 'eyes bare'],
    topics: [
      'bubbles',
      'soaped',
      'fitting',
      'bellows',
      'supply line',
      'valve to panel line',
      'bellows line',
      'gauge line',
      'drain',
    ],
    steps: [
      {
        title: 'Only the zone that was named',
        words:
          'Tank up, at height, quiet shop. Soap only what the leak-down left over; wet each joint all round and wait half a minute.',
        expect: 'what you soap, e.g. "soaping the left side"',
        cautions: ['eyes bare'],
      },
      {
        title: 'Fittings first',
        words:
          'Fittings, then line where it touches something, then valve cover. Not the exhaust: that is for the hose in water.',
        expect: 'e.g. "no bubbles at left bellows line", "bubbles at left valve cover"',
        outcomes: [
          { seen: 'bubbles that grow', means: 'a leak: note it, and go on to the end of the zone' },
          { seen: 'none', means: 'weak evidence only: slow, cold-only or hidden leaks make none' },
        ],
      },
      {
        title: 'Bellows last: plates, wall, crimp, fold',
        words: 'From outside with lamp and mirror, hands clear of fold and wheel. Crimp and fold last.',
        expect: 'e.g. "bubbles at rh bag crimp, none on the left"',
        keys: [
          key('none left', 'no bubbles at left bellows'),
          key('none right', 'no bubbles at right bellows'),
          key('left bubbles', 'bubbles at left bellows'),
          key('right bubbles', 'bubbles at right bellows'),
        ],
        outcomes: [{ seen: 'cord showing', means: 'out of service: do not drive, vent it before going near' }],
        cautions: ['cords driven'],
      },
    ],
  },
];
