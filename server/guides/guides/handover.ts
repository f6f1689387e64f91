import type { Guide } from '../guide.ts';

export const handover: Guide = {
  id: 'handover',
  title: 'Handover: what to recheck and write down',
  topics: ['hand over', 'hand it over', 'finish', 'give it back', 'recheck', 'road test', 'road tested', 'sign off'],
  what: 'That the complaint is proved gone, nothing is left loose, and the owner knows what comes next.',
  tools: ['tape', 'lamp', 'the session'],
  gate: 'live',
  minutes: { hands: 30, wait: 720 },
  steps: [
    {
      words:
        'Walk round: links on, pins and hoses out, caps off, drain and outlet as they belong, panel {panel.auto}, jumpers out, fuse of the right size, stands and tools away, tags off.',
      expect: 'How it stands: "links ok", "panel auto", "fuse ok"',
      outcomes: [{ when: 'anything is missing', means: 'find it before the wheels turn' }],
    },
    {
      words: 'Before and after, by the same gauge and tape: tank, cut-in, cut-out, pump-up, four heights.',
      expect: 'The readings after: "tank 115 psi", "lf 15 1/4 rf 15 1/4 lr 13 3/4 rr 13 3/4"',
      outcomes: [{ when: 'one is out', means: 'it is not done; say so rather than hope' }],
    },
    {
      words:
        'The proof that fits the complaint. Sank standing: overnight in {panel.auto}, key off, tape marks. Bellows, arms, shocks: road test and look again.',
      expect: 'What came of it: "overnight test holds", "road tested ok"',
      outcomes: [
        { when: 'holds', means: 'proved' },
        { when: 'lower than its mark', means: 'reopened: a second leak, or the first was not the one' },
      ],
    },
    {
      words:
        'What killed it, and what else did that? A leak wears the pump and burns the switch; dirt went into both valves; bellows of one age fail together; a short or broken shock tears a bellows.',
      expect: 'What you looked at: "right bellows ok", "right height valve ok"',
      outcomes: [{ when: 'the same wear next door', means: 'tell the owner now, in writing' }],
    },
    {
      words:
        'What was declined or left, and whether it is safe to drive. Not safe stays not safe, whoever is in a hurry.',
      expect: 'What was declined, if anything: "customer declined right bellows"',
      outcomes: [
        { when: 'out of service', means: "does not leave on its wheels; towing by the maker's method" },
        { when: 'all proved', means: 'close the session with your initials' },
      ],
    },
  ],
  after: ['"close" with your initials; print the transcript for the owner.', 'Set the next service in the plan.'],
};
