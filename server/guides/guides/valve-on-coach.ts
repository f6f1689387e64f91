import type { Guide } from '../guide.ts';

export const valveOnCoach: Guide = {
  id: 'height valve on the coach',
  title: 'Height valve on the coach: link, dead band, delay, fill, dump, seats',
  topics: [
    'height valve',
    'levelling valve',
    'leveling valve',
    'ride height valve',
    'dead band',
    'delay',
    'arm length',
    'fills',
    'does not fill',
    'empties',
    'does not empty',
    'link',
    'arm',
    'linkage',
    'link off',
    'links look',
    'inlet seat',
    'exhaust seat',
    'exhaust port',
    'puffs',
    'exhausts',
    'hose exhaust',
    'exhaust tank zero',
    'arm neutral',
    'reversed',
  ],
  what: 'Whether the valve or what moves it is at fault. The link is named most often, the valve condemned most often.',
  tools: [
    'second hand or watch',
    'hose that fits the exhaust, jar of water',
    'tape',
    'rod to move the arm from outside',
  ],
  gate: 'live',
  minutes: { hands: 20, wait: 15 },
  steps: [
    {
      words:
        'Look before touching: link on at both ends, straight, clamp not slipped on the shaft, rubber whole, arm the right way round, the same on both sides.',
      expect: 'What you see: "left link bent", "left link disconnected", "links ok"',
      outcomes: [
        { when: 'bent, slipped or off', means: 'mend that, then measure again: the valve has done what it was told' },
        { when: 'new valve, side runs away to a stop', means: 'arm reversed' },
      ],
    },
    {
      words:
        'Tank up, link off at its lower end, nobody under or between, arm moved from outside with a rod. Up past the dead band ({valves.deadBand}) and hold: wait out the delay ({valves.delay}) before you judge.',
      expect: 'What happens and after how long: "link off, left bellows fills", "delay 8 sec"',
      joins: 'arms fill',
      outcomes: [
        { when: 'fills after the delay', means: 'inlet and line are open: linkage or setting was wrong' },
        { when: 'nothing, tank full', means: 'supply, valve or line: clogged line guide, tee at its supply port' },
        { when: 'dumps instead', means: 'arm reversed, or the lines changed over' },
      ],
      caution: 'link pulled under',
    },
    {
      words: 'Down past the dead band and hold. Stand clear: that side comes down.',
      expect: 'What happens: "left bellows empties", or "left height valve does not empty"',
      outcomes: [
        { when: 'exhausts after the delay', means: 'exhaust seat opens, exhaust is not plugged' },
        { when: 'nothing', means: 'exhaust plugged, line kinked, panel not in {panel.auto}' },
      ],
      caution: 'link pulled under',
    },
    {
      words: 'Arm back to neutral and pinned. Hose from the exhaust into the jar. Watch for five minutes, tank up.',
      expect:
        'What the jar shows: "left exhaust port puffs", "bubbles at left exhaust port", "no bubbles at left exhaust port"',
      joins: 'neutral',
      outcomes: [
        { when: 'nothing', means: 'both seats are tight at this pressure' },
        { when: 'steady', means: 'exhaust seat; it goes on with the tank at zero' },
        { when: 'puffs, that side slowly rising', means: 'inlet seat; it ends when the tank is at zero' },
        { when: 'once, after unloading or filling', means: 'normal levelling' },
      ],
      caution: 'people clear',
    },
    {
      words:
        'To tell the seats apart: let the tank to zero by its drain, arm still at neutral, and look at the jar again. This ends any leak-down you had running.',
      expect: 'With the tank said: "tank drained, bubbles at left exhaust port"',
      outcomes: [
        { when: 'goes on', means: 'exhaust seat: it is the bellows that empties' },
        { when: 'has stopped', means: 'inlet seat: it was the tank that came through' },
      ],
    },
    {
      words: 'Hose off, link back on, nobody under while it finds its height. Measure both rear heights.',
      expect: 'Both: "link on", "lr 13 3/4 rr 13 3/4"',
      outcomes: [
        { when: 'side comes to its height', means: 'the valve works: whatever moved it was the fault' },
        {
          when: 'leans though the valve works',
          means: 'arm length, link length, front corner, load: ride height guide',
        },
      ],
      caution: 'people clear',
    },
  ],
  after: [
    'Both links on, pins out, panel in AUTO.',
    'A valve that failed two of these goes on the bench; its neighbour breathed the same dirt.',
  ],
};
