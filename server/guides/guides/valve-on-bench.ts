import type { Guide } from '../guide.ts';

export const valveOnBench: Guide = {
  id: 'height valve on the bench',
  title: 'Height valve on the bench',
  topics: ['bench', 'bench test', 'bench valve', 'bench test the height valve', 'bench test the valve'],
  what: 'Which seat, check or gasket leaks, by where the air is put on, where the arm stands and where bubbles come.',
  tools: ['tub of clean water', 'shop air with regulator and gauge', 'plugs', 'means to pin the arm', 'watch'],
  gate: null,
  minutes: { hands: 20, wait: 5 },
  steps: [
    {
      words:
        'The valve is off the coach, clean outside, ports plugged against dirt. Regulator at zero, then about 100 psi (common practice, no source), never above what its maker allows. Eyes covered.',
      expect: 'That it is so: "eyes covered"',
      outcomes: [{ when: 'no regulator', means: 'this test is not done: shop air can burst it' }],
      caution: 'shop air unregulated',
    },
    {
      words: 'Air on the inlet, arm pinned at neutral, the whole valve under water, one minute.',
      expect: 'Where bubbles come: "bubbles at the bellows port, air on the inlet", or "no bubbles"',
      outcomes: [
        { when: 'bellows port', means: 'inlet seat' },
        { when: 'exhaust port', means: 'inlet seat and exhaust seat' },
        { when: 'cover', means: 'gasket' },
        { when: 'none', means: 'inlet seat tight at this pressure' },
      ],
      bench: { airOn: 'inlet', arm: 'neutral' },
      caution: 'eyes covered',
    },
    {
      words: 'Air on the bellows port, arm at neutral, under water, one minute.',
      expect: 'Where bubbles come: "bubbles at the inlet port, air on the bellows port", or "no bubbles"',
      outcomes: [
        { when: 'inlet port', means: 'inlet check' },
        { when: 'exhaust port', means: 'exhaust seat' },
        { when: 'none', means: 'exhaust seat tight; a tight inlet seat can hide a bad check: next step' },
      ],
      bench: { airOn: 'bellows port', arm: 'neutral' },
    },
    {
      words: 'Air still on the bellows port, arm in fill, past the delay ({valves.delay}), inlet open.',
      expect: 'Where bubbles come: "arm fill, bubbles at the inlet port", or "no bubbles"',
      outcomes: [
        { when: 'inlet port', means: 'inlet check, now proved' },
        { when: 'none', means: 'inlet check tight' },
      ],
      bench: { airOn: 'bellows port', arm: 'fill' },
    },
    {
      words:
        'Does it work: air on the inlet, arm up past the dead band, count the seconds until it delivers; then air on the bellows port, arm down, count until it dumps.',
      expect: 'How long and what: "delay 8 sec", "height valve fills", "height valve empties"',
      outcomes: [
        { when: 'no delay', means: 'its damping is gone: it levels at every bump and eats air' },
        { when: 'does not fill or dump', means: 'plugged or worn: exchange or overhaul' },
      ],
    },
    {
      words: 'All once more at about 20 psi: some seats leak only at low pressure (common practice, no source).',
      expect: 'Where bubbles come: "bubbles at the exhaust port", or "no bubbles"',
      outcomes: [
        { when: 'leaks at 20 only', means: 'the coach will sink slowly when it is light: exchange or overhaul' },
        { when: 'tight at both', means: 'the valve is good: look at link, line and supply again' },
      ],
    },
    {
      words: 'Regulator to zero, hose off, blow it dry with little air, away from people, plugs back in.',
      expect: 'What was done: "height valve ok" or "height valve leaks"',
      outcomes: [{ when: 'water stays in', means: 'it freezes or rusts: dry it before it goes back' }],
      caution: 'air at person',
    },
  ],
  after: [
    'Write down port, arm and pressure of every bubble: they name the seat.',
    'Good or bad, the other side breathed the same air.',
  ],
};
