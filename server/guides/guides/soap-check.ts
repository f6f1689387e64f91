import type { Guide } from '../guide.ts';

export const soapCheck: Guide = {
  id: 'soap check',
  title: 'Soap check, in the order that wastes least',
  topics: [
    'soap',
    'soaped',
    'bubbles',
    'bubble size',
    'hiss',
    'fitting',
    'bellows crimp',
    'valve cover',
    'gauge line',
    'soap tank',
    'soap supply',
    'soap gauge line',
    'soap panel',
    'soap valve',
    'soap valve to panel',
    'soap delivery',
    'soap bellows',
    'soapy water',
    'find a leak',
    'find the leak',
  ],
  what: 'Where in the zone named by the leak-down the air gets out. Soap before that is an hour wasted.',
  tools: ['soapy water that does not attack brass or nylon', 'brush or spray', 'lamp and mirror', 'marker'],
  gate: 'live',
  minutes: { hands: 20, wait: 5 },
  steps: [
    {
      words:
        'Tank up, coach at height, pump off, shop quiet. First listen and look with the engine off: rub marks, oil rings, dust blown clean. Touch nothing yet.',
      expect: 'What you hear or see: "hiss at left height valve", or "no hiss"',
      outcomes: [
        {
          when: 'hiss in puffs at an exhaust',
          means: 'the valve is levelling or its inlet seat leaks: no soap needed',
        },
        { when: 'one puff at the pump when it stops', means: 'the unloader at its work, nothing to mend' },
      ],
    },
    {
      words:
        'Soap only the zone that was named. Fell in {panel.shut}: tank fittings, drain, relief, gauge line, switch, supply line. Fell in {panel.auto} only: height valve, cover, valve-to-panel line. A side sank in {panel.shut}: panel ports, bellows line, bellows.',
      expect: 'Each place, with or without: "no bubbles at the drain", "bubbles at left valve cover"',
      joins: 'now',
      outcomes: [
        { when: 'bubbles that grow', means: 'a leak; mark it and go on, there is often a second one' },
        { when: 'foam that only creeps', means: 'a small one: wipe, wet again, wait a minute' },
        { when: 'none', means: 'weak evidence: slow, cold-only and hidden leaks make none' },
      ],
      caution: 'under live',
    },
    {
      words:
        'In the zone: fittings first, then lines where they touch something, then valve covers. Leave the exhaust ports out, they are for the hose in water.',
      expect: 'Each with its place: "bubbles at right bellows line", "no bubbles at the fitting"',
      outcomes: [
        { when: 'bubbles at a nut', means: 'it is not nipped up under air: DEAD first, then look at tube and sleeve' },
        { when: 'bubbles along a tube', means: 'chafed or pricked: the tube is replaced' },
      ],
      caution: 'under live',
    },
    {
      words:
        'Bellows last, from outside with lamp and mirror, hands out of fold and wheel: top plate, wall, crimp, fold, bottom. Crimp and fold last of all.',
      expect: 'Each side: "bubbles at rh bag crimp", "no bubbles at left bellows"',
      outcomes: [
        { when: 'bubbles at crimp or fold', means: 'the bellows is done; look at its fellow of the same age' },
        { when: 'cord showing', means: 'out of service: keep clear, do not drive, vent before going near' },
      ],
      caution: 'under live',
    },
    {
      words:
        'Rinse the soap off with clean water, not with a jet, and read tank and heights once more before you call it found.',
      expect: 'The tank as it stands now: "tank 101 psi"',
      outcomes: [
        {
          when: 'the leak found is far smaller than the fall',
          means: 'there is another one; go back to the halves',
        },
      ],
      reads: { what: 'pressure', where: 'tank' },
    },
  ],
  after: ['Nothing is tightened under air.', 'Write down every leak with its place, also the ones left for later.'],
};
