import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const bellowsGuide: Guide = {
  id: 'bellows',
  title: 'Bellows: inspect, out, fold over the piston, back',
  topics: [
    'air spring',
    'air bag',
    'airbag',
    'bag',
    'bellows look',
    'bellows fold',
    'bead plate',
    'piston',
    'bump stop',
    'cracked',
    'cords showing',
    'torn',
    'swollen',
    'off line',
    'replace the bellows',
    'replace the air bag',
    'replace the air spring',
  ],
  what: 'Whether a bellows may go on working, and changing one without trapping, tearing or bursting it.',
  tools: ['lamp, mirror', 'rated stands', 'torque wrench', 'new bellows of the same kind', 'caps'],
  gate: 'dead',
  minutes: { hands: 90, wait: 15 },
  steps: [
    {
      words:
        'Look from outside with lamp and mirror, at height, hands out of fold and wheel: cracks along the wall and at the fold, cover gone, cord, rub marks, bulges, lean, crimp and plates.',
      expect:
        'What you see: "left bellows cracked", "cords showing at left bellows", "right bellows chafed", "bellows ok"',
      outcomes: [
        { when: 'cord or cover gone', means: 'out of service: do not drive, keep clear, vent before going near' },
        { when: 'hairlines in the cover only', means: "the maker's limits say; note them and the date" },
        { when: 'rub mark', means: 'find what rubbed it before the new one goes in' },
        { when: 'torn at a plate', means: 'pulled too long: shock length, bump and rebound stops, height' },
      ],
      gate: 'live',
    },
    makeDead(
      'To take it out: frame at the height the manual gives for it, axle held so that nothing pulls the bellows long.',
    ),
    {
      words:
        'Air line off from beside it, loosened a turn first, cap on. Lower fastening, then upper. It comes out limp; if it springs, stop: there is air in it.',
      expect: 'What was done: "left bellows removed"',
      outcomes: [
        { when: 'it springs or hisses', means: 'a store was not at zero: leave it and prove all again' },
        { when: 'piston rusted or scored', means: 'clean it smooth or renew it, else the new fold wears through' },
      ],
      caution: 'open under pressure',
    },
    {
      words:
        'New one the same kind. Fold it over its piston as its maker shows, by hand; if a little air is needed for it, no more than {springs.foldPressure}, held between its plates and never loose on the bench.',
      expect: 'How it goes: "left bellows replaced"',
      outcomes: [
        { when: 'it will not roll', means: 'not more air: warmth of a room, a drop of soapy water, patience' },
        { when: 'no pressure on sheet or in the manual', means: 'fold it without air' },
      ],
      caution: 'bellows unrestrained',
    },
    {
      words:
        "Upper fastening by hand, lower, line; straight, not twisted. Nuts to the sheet's torques or the manual, in turns; studs strip easily. Free of shock, line and bracket over its whole travel.",
      expect: 'What was done: "left bellows refitted"',
      outcomes: [{ when: 'twisted or leaning', means: 'loosen and turn it straight: it wears off line in a season' }],
    },
    {
      words:
        'First air with the frame still on its stands and nobody near: a little, look that the fold rolls right all round, then more.',
      expect: 'What you see: "left bellows fills", "left bellows ok"',
      outcomes: [{ when: 'fold stands off or pinches', means: 'air out again by the panel, DEAD, fold it anew' }],
      gate: null,
      caution: 'people clear',
    },
    airBack('fitting, crimp and plates'),
  ],
  after: [
    'Ride height; the other bellows of the side and of the same age looked at.',
    'Overnight in AUTO with tape marks; road, then look again.',
  ],
};
