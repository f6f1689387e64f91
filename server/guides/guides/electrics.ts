import type { Guide } from '../guide.ts';

export const electrics: Guide = {
  id: 'compressor electrics',
  title: 'Compressor electrics, leg by leg',
  topics: [
    'voltage',
    'voltage drop',
    'volt drop',
    'current',
    'resistance',
    'relay',
    'fuse',
    'breaker',
    'battery',
    'ground',
    'feed cable',
    'key switch',
    'solenoid',
    'motor',
    'brushes',
    'wont run',
    'clicks',
    'hums',
    'stalls',
    'blows fuse',
    'quits hot',
    'volts',
    'volts called',
    'motor current',
    'motor legs',
    'fuse look',
    'fuse test lamp',
    'switch volts',
    'relay volts',
    'wire length',
    'wire gauge',
    'specific gravity',
    'electrics',
    'wiring',
  ],
  what: 'Which leg between battery and motor loses the volts. Asked first: is the tank below cut-in? A pump above it is right to rest.',
  tools: ['voltmeter with long leads', 'clamp meter', 'test lamp', 'second gauge'],
  gate: null,
  minutes: { hands: 20, wait: 0 },
  steps: [
    {
      words:
        'Tank below {supply.cutIn} by a gauge that is trusted, key on, engine off: the pump is called. Is it silent, does it click, hum, or run?',
      expect: 'The tank and what it does: "tank 60 psi, comp wont run", "pump clicks", "pump hums"',
      outcomes: [
        { when: 'tank above cut-in', means: 'nothing is wrong yet: let the pressure down first' },
        { when: 'silent', means: 'fuse, breaker, switch contacts, relay or its ground, brushes, thermal cut-out' },
        { when: 'clicks', means: 'the relay works; volts under load, its contacts, ground' },
        { when: 'hums', means: 'power off at once: pressure in the head, seized, or low volts' },
      ],
      caution: 'people clear',
    },
    {
      words:
        'Fuse or breaker: power off, out, look at it and at its holder for heat marks. Blows at once with the tank empty: motor lead off, test lamp in the holder. The size is {pump.fuse} and never more.',
      expect: 'What you see: "fuse blown", "fuse ok", "breaker tripped"',
      outcomes: [
        { when: 'lamp lights with the motor lead off', means: 'the wire is shorted' },
        { when: 'lamp dark with it off, fuse blows with it on', means: 'the motor or a seized pump' },
        { when: 'blows on restart only', means: 'pressure left in the head: check valve and unloader' },
      ],
      caution: 'fuse enlarged',
    },
    {
      words:
        'Battery, then motor, read at the same moment while the pump is called. A wire without current shows full volts however bad it is.',
      expect: 'Both: "12.4 v at battery", "10.4 v at motor"',
      outcomes: [
        { when: 'battery low under load', means: 'battery or its clamps; charge and read again' },
        { when: 'the two far apart', means: 'a bad leg: the sheet allows {electrics.drop} in both legs together' },
        { when: 'full volts at the motor, no turn', means: 'brushes, winding, thermal cut-out, or seized' },
      ],
      caution: 'spark at battery',
      reads: { what: 'voltage', where: 'motor' },
    },
    {
      words:
        'Drop leg by leg, called: battery to fuse, across the fuse, key feed, across the pressure switch, across the relay contacts, cable to motor, motor case to battery ground. One lead each side of the joint. No jumper stays in.',
      expect: 'Each leg: "voltage drop 0.2 v at relay", "voltage drop 1.1 v at ground"',
      outcomes: [
        { when: 'one leg has most of it', means: 'clean, remake or renew that one, and read again' },
        { when: 'full volts across a switch or relay', means: 'its contacts are open: burnt, or not called' },
        { when: 'all legs small, motor slow', means: 'motor or pump, not the wiring' },
      ],
      reads: { what: 'voltage drop', where: '' },
    },
    {
      words:
        'Current by clamp on the motor lead while it pumps, hands off head and discharge line as they burn, at a tank pressure you note: the sheet has {pump.current}.',
      expect: 'Amps at the motor: "pump draws 22 amps"',
      outcomes: [
        { when: 'high', means: 'tight pump, head pressure, worn brushes' },
        { when: 'low and no air', means: 'it turns without working: intake, reed' },
        { when: 'quits hot and comes back', means: 'thermal cut-out from a long run: find what made it run long' },
      ],
      caution: 'people clear',
      reads: { what: 'current', where: 'motor' },
    },
  ],
  after: [
    'No jumper left in, fuse of the right size in, covers on.',
    'A switch that burnt carrying the whole motor wants a relay; a relay that stuck is renewed, not tapped.',
  ],
};
