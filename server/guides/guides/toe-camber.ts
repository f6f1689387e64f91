import type { Guide } from '../guide.ts';

export const toeCamber: Guide = {
  id: 'rear toe and camber',
  title: 'Rear toe and camber with shims',
  topics: [
    'toe',
    'camber',
    'thrust',
    'toe camber',
    'string check',
    'shim',
    'shimmed',
    'shim thickness',
    'bracket',
    'wheel',
    'tyre',
    'tire',
    'tyres',
    'tyre wear look',
    'tyre diameter',
    'rim diameter',
    'wheelbase difference',
    'worn inside',
    'worn outside',
    'feathered',
    'cupped',
    'scrubbed',
    'wanders',
    'alignment',
    'align',
    'tread wear',
  ],
  what: "Each rear wheel to the frame's centreline, by shims between bracket and frame. A side has two wheels: always say which.",
  tools: [
    'strings or gauges',
    'camber gauge',
    'shims of known thickness',
    'turn or slip plates',
    'rule',
    'torque wrench',
  ],
  gate: 'live',
  minutes: { hands: 150, wait: 20 },
  steps: [
    {
      words:
        'Order, as each spoils the next: tyres at {tyres.rear}, load and level floor, bearings and pins, rear heights, front heights, rear again. Empty coach, full weight on the wheels.',
      expect: 'That it is so: "floor level, unloaded", "lr 13 3/4 rr 13 3/4"',
      outcomes: [
        { when: 'play in a bearing or pin', means: 'mend that first: a shim does not cure play' },
        { when: 'inside edges worn', means: 'pins and bearings, then camber and toe of that wheel' },
        { when: 'feathered one way on one side', means: 'toe or thrust' },
        { when: 'cupped', means: 'shock, bearing play, balance' },
      ],
    },
    {
      words:
        "Find the frame's centreline from the same holes left and right, and stretch strings beside the wheels parallel to it. Before every reading chocks out, nobody near, roll the coach forward a wheel's turn so that it settles, chocks back.",
      expect: 'Thrust, if it is out: "thrust 0.1 deg"',
      outcomes: [{ when: 'all wheels point the same way off the line', means: 'thrust: the tandem, not one wheel' }],
      reads: { what: 'thrust', where: '' },
    },
    {
      words:
        'Toe of each wheel: front and back of the rim to the string at the same height, then wheel turned half round and again, to take out the rim. Smaller in front is in.',
      expect: 'Which wheel, how much, and over what length if it is not the rim: "left rear forward wheel toe 1/16 in"',
      outcomes: [
        { when: 'inside {alignment.toe}', means: 'leave it' },
        { when: 'outside', means: 'ask "what shim" with bolt spacing known: {alignment.bracket.toeBolts}' },
      ],
      drawing: {
        is: 'bracket',
        where: '',
        unit: 'in',
        shims: [
          { bolt: 'one end of the bracket', si: 0.001, text: 'changes toe' },
          { bolt: 'the other end', si: 0, text: 'left as it is' },
        ],
      },
      reads: { what: 'toe', where: '' },
    },
    {
      words: 'Camber of each wheel by gauge on the rim, wheel turned half round and again. Top out is positive.',
      expect: 'Which wheel and how much: "left rear aft wheel camber 0.5 deg"',
      outcomes: [
        { when: 'inside {alignment.camber}', means: 'leave it' },
        { when: 'outside', means: 'shim at top or bottom bolts: {alignment.bracket.camberBolts} apart' },
      ],
      drawing: {
        is: 'bracket',
        where: '',
        unit: 'in',
        shims: [
          { bolt: 'top bolts', si: 0.001, text: 'changes camber' },
          { bolt: 'bottom bolts', si: 0.001, text: 'the other way' },
        ],
      },
      reads: { what: 'camber', where: '' },
    },
    {
      words:
        'Shim: behind one end of the bracket for toe, behind top or bottom for camber (common practice, no source). Frame on rated stands, weight off the arm by the manual, bolts loosened, never out while loaded; not more than {alignment.bracket.most} at a bolt. Torque from sheet or manual.',
      expect: 'What went where: "added a shim at left bracket", "shim 1/16 in"',
      outcomes: [
        { when: 'needs more than is allowed', means: 'bent or worn: bracket, pin, frame. No more shims' },
        { when: 'the other angle moved too', means: 'expected: measure both again' },
      ],
      caution: 'under unsupported',
    },
    {
      words: 'On its wheels, rolled, settled: both wheels of that side, both angles, then the other side, then thrust.',
      expect: 'Each wheel again: "left rear forward wheel toe 1/32 in"',
      outcomes: [
        { when: 'all inside', means: 'front alignment next: it follows the rear' },
        { when: 'moved the wrong way', means: 'shim at the other end' },
      ],
    },
  ],
  after: [
    'Every shim written down: wheel, bolt, thickness.',
    'Road test for pull; look at the tread after a thousand miles.',
  ],
};
