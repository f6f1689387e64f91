/** Tank, its fittings and what its pressure says of the pump. Chances are estimates, each with its reason. */
import { type Given, row } from './given.ts';

export const tankGivens: readonly Given[] = [
  {
    see: 'tank bubbles at',
    outcomes: ['none', 'a fitting', 'the drain', 'the relief', 'the switch', 'the gauge'],
    nominal: true,
    state: 'tank up; soaped all round',
    healthy: [0.96, 0.015, 0.015, 0.002, 0.003, 0.005],
    because: 'a stray bubble',
    rows: [
      row(['tank leak'], [0.04, 0.93, 0.01, 0.005, 0.005, 0.01], 'it is what is soaped'),
      row(['drain leak'], [0.04, 0.02, 0.93, 0.003, 0.003, 0.004], 'it is what is soaped'),
      row(['relief weak'], [0.5, 0.01, 0.01, 0.47, 0.005, 0.005], 'it may leak only near its setting'),
      row(['switch body leak'], [0.06, 0.02, 0.01, 0.005, 0.9, 0.005], 'it is what is soaped'),
      row(['gauge line leak'], [0.6, 0.06, 0.01, 0.005, 0.005, 0.32], 'the leak may be in the cab'),
    ],
  },
  {
    see: 'soap gauge line',
    outcomes: ['none', 'bubbles'],
    state: 'tank up; gauge line to the cab, behind the dash',
    healthy: [0.98, 0.02],
    because: 'a stray bubble',
    rows: [row(['gauge line leak'], [0.08, 0.92], 'it is what is soaped; parts are out of reach')],
  },
  {
    see: 'filled too soon',
    outcomes: ['no', 'yes'],
    nominal: true,
    state: 'pump-up timed; under three quarters of the time that the sheet gives',
    healthy: [0.98, 0.02],
    because: 'a pump does no better than new: a time or a pressure was misread',
    rows: [
      row(['tank water'], [0.45, 0.55], 'water takes the room of air, and less air fills it'),
      row(['gauge high', 'gauge low', 'gauge stuck'], [0.8, 0.2], 'one of the two pressures is not what it says'),
    ],
  },
  {
    see: 'relief look',
    outcomes: ['quiet', 'leaks'],
    state: 'tank near cut-out',
    healthy: [0.985, 0.015],
    because: 'a sound relief is quiet below its setting',
    rows: [
      row(['relief weak'], [0.08, 0.92], 'it opens early'),
      row(['switch high', 'relay welded', 'switch welded'], [0.6, 0.4], 'the pressure gets up to its setting'),
      row(['switch line plugged'], [0.75, 0.25], 'the pressure may get up to its setting'),
    ],
  },
  {
    see: 'dryer look',
    outcomes: ['fine', 'spent'],
    state: 'age of the cartridge against the service plan, water or oil at its outlet',
    healthy: [0.94, 0.06],
    because: 'an old one may still dry',
    rows: [row(['dryer spent'], [0.04, 0.96], 'it is what is looked at')],
  },
  {
    see: 'tank below cut-in',
    outcomes: ['starts', 'stays silent'],
    state: 'key on, tank let down below cut-in by a gauge that can be trusted',
    healthy: [0.985, 0.015],
    because: 'a sound pump starts',
    rows: [
      row(['pump rests'], [0.985, 0.015], 'it was only resting'),
      row(
        ['fuse blown', 'relay dead', 'switch burnt', 'motor open', 'key feed dead', 'pump seized', 'wire shorted'],
        [0.02, 0.98],
        'it cannot start',
      ),
      row(['switch low', 'gauge low'], [0.7, 0.3], 'not yet at its own cut-in'),
      row(['gauge stuck', 'gauge high', 'switch line plugged'], [0.65, 0.35], 'the tank may not be where it says'),
      row(['motor worn'], [0.6, 0.4], 'weak at the start'),
    ],
  },
  {
    see: 'quiet at',
    outcomes: ['below cut-in', 'above cut-in'],
    nominal: true,
    state: 'where the tank stood when the pump was said not to run',
    healthy: [0.1, 0.9],
    because: 'a sound pump is quiet above cut-in only',
    rows: [
      row(['pump rests'], [0.02, 0.98], 'it is why it rests'),
      row(
        [
          'fuse blown',
          'relay dead',
          'switch burnt',
          'motor open',
          'key feed dead',
          'pump seized',
          'wire shorted',
          'motor worn',
        ],
        [0.85, 0.15],
        'looked at when the tank is down',
      ),
      row(
        ['switch low', 'gauge low', 'thermal cut-out', 'switch line plugged'],
        [0.8, 0.2],
        'below cut-in by the sheet',
      ),
    ],
  },
];
