import type { Guide } from '../guide.ts';

export const rideHeight: Guide = {
  id: 'ride height',
  title: 'Ride height: four corners, rear by valve arm, front by torsion bar',
  topics: [
    'height',
    'height off',
    'heights',
    'four corners',
    'torsion bar',
    'front height',
    'rear height',
    'leans',
    'lean',
    'level',
    'levelled',
    'low',
    'high',
    'turns',
    'rises first',
    'bellows pressures',
    'temperature',
    'floor',
    'load',
    'drive',
    'weighed',
    'set the height',
    'set height',
  ],
  what: 'Whether the four corners stand where the sheet wants them, and setting rear first, then front, then rear again.',
  tools: ['tape', 'level', 'tyre gauge', 'rated stands', "maker's tool for the torsion bar"],
  gate: 'live',
  minutes: { hands: 40, wait: 15 },
  steps: [
    {
      words:
        'Level floor, jacks up, tyres at {tyres.front} front and {tyres.rear} rear, usual load, full air, {panel.auto}, driven a little and settled. Heights mean nothing on stands.',
      expect: 'How it stands: "floor level, jacks up", "panel auto", "unloaded"',
      outcomes: [
        { when: 'floor slopes', means: 'turn the coach round and measure again; half the difference is the floor' },
        { when: 'unusual load or a full water tank', means: 'say so; a height without its load is no height' },
      ],
    },
    {
      words:
        'Four corners by tape, always from the same marks: {heights.measured}. Twice, walking round the other way.',
      expect: 'All four: "lf 15 1/4 rf 15 1/8 lr 13 3/4 rr 13 1/2"',
      outcomes: [
        { when: 'rear right, body leans', means: 'a front corner or torsion bar: compare both bellows pressures' },
        { when: 'one rear low, full tank', means: 'its link first, then its valve' },
        { when: 'right within {heights.leftRear.tolerance}', means: 'leave it alone' },
      ],
    },
    {
      words:
        'Both bellows pressures, by gauge at the ports meant for it. Unequal with equal heights: the body is twisted by a front corner, or loaded on one side.',
      expect: 'Both: "left bellows 58 psi, right bellows 52 psi"',
      outcomes: [
        { when: 'inside the sheet, both', means: 'front carries its share' },
        { when: 'one heavy, one light', means: 'front corner across from the light one is low or weak' },
      ],
      caution: 'eyes covered',
    },
    {
      words:
        'Rear by the arm, from outside, nobody under: clamp loosened, arm turned on its shaft, up for higher, a little at a time, clamp tight. Drive or rock it, wait out the delay ({valves.delay}), measure again, coming from below and from above.',
      expect: 'After each: "lr 13 3/4 rr 13 3/4"',
      outcomes: [
        { when: 'differs by direction', means: 'dead band or a dry joint: set the middle' },
        { when: 'will not go where it is set', means: 'valve, supply or load: not an adjustment' },
      ],
      caution: 'link pulled under',
    },
    {
      words:
        "Front last: {heights.frontBy}. The bar holds a loaded spring. Load off by the maker's method and tool, frame on rated stands, then a part of a turn, down on its wheels, rolled, measured. The sheet has {heights.torsionPerTurn} a turn.",
      expect: 'Turns and heights: "lf 15 1/4 rf 15 1/4"',
      outcomes: [
        { when: 'one side takes more than the other', means: 'bar set or broken, bushings: stop and look' },
        { when: 'at its end', means: 'the bar is tired: not another turn' },
      ],
      caution: 'torsion bar under load',
    },
    {
      words: 'Rear once more, as the front moved it; then all four, written down.',
      expect: 'All four: "lf 15 1/4 rf 15 1/4 lr 13 3/4 rr 13 3/4"',
      outcomes: [{ when: 'all inside', means: 'done; front height moved: the front alignment is to be checked' }],
    },
  ],
  after: ['Road, then all four once more.', 'Overnight in AUTO with tape marks, if the complaint was about standing.'],
};
