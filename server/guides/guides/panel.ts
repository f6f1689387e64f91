import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const levellingPanel: Guide = {
  id: 'levelling panel',
  title: 'Levelling panel: test, out, and back',
  topics: ['panel', 'leveling panel', 'panel look', 'panel port', 'panel feed', 'panel valve', 'manual panel'],
  what: 'Whether each side does what its position says, and whether it leaks through itself in SHUT.',
  tools: ['tape', 'soapy water', 'labels', 'caps'],
  gate: 'live',
  minutes: { hands: 40, wait: 30 },
  steps: [
    {
      words:
        'Look where it stands, both sides, before anything else. Both flat with a full tank is most often a panel left in {panel.empty} or {panel.shut}.',
      expect: 'How it stands: "panel auto", "panel shut", "panel empty"',
      outcomes: [{ when: 'not in {panel.auto}', means: 'put it there, stand clear, wait, and measure again' }],
      gate: null,
    },
    {
      words:
        'Tank up, nobody under. One side at a time through {panel.fill}, {panel.empty}, back to {panel.auto}, waiting after each.',
      expect: 'What that side does: "panel fill, left rear rises", "panel empty, left bellows empties"',
      joins: 'fill',
      outcomes: [
        { when: 'does as it says', means: 'that way through it is open' },
        { when: 'other side moves', means: 'lines changed over' },
        { when: 'nothing', means: 'stuck, or no air at it: gauge at its feed, DEAD first' },
      ],
    },
    {
      words:
        '{panel.shut} on both, key off, settled: tape both sides now and after 30 minutes. Then soap its ports, and listen at its vent.',
      expect:
        'What you find: "panel shut, left rear drops", "bubbles at left panel port", "no bubbles at the panel port"',
      joins: 'shut',
      outcomes: [
        { when: 'sinks, bubbles at its vent or port', means: 'the panel leaks through itself' },
        { when: 'sinks, panel quiet', means: 'bellows or its line after the panel' },
        { when: 'sinks in {panel.fill} only', means: 'a tank or supply leak, if the fill goes round the inlet check' },
      ],
    },
    makeDead('To take it out: photograph and label every line at both ends.'),
    {
      words:
        "Each fitting loosened a turn from beside it, wait, then off, caps on at once. Panel out, valve exchanged, or overhauled with the maker's kit.",
      expect: 'What was done: "panel removed", "panel replaced"',
      outcomes: [{ when: 'one hisses on', means: 'the line in SHUT was not vented: nip it up and prove all again' }],
      gate: 'dead',
      caution: 'open under pressure',
    },
    {
      words: 'Back in, lines by their labels, no tube under strain, positions stop where the plate says.',
      expect: 'What was done: "panel refitted"',
      outcomes: [{ when: 'a label is missing', means: 'trace the line; do not guess which side it is' }],
      gate: 'dead',
    },
    airBack('every port of the panel'),
  ],
  after: ['Through all four positions once more, both sides, stand clear.', 'Left in AUTO.'],
};
