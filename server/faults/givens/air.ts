/** Rows for faults that the twin does not simulate, on checks of the air side: estimates, each with its reason. */
import { type GivenRow, row } from './given.ts';

const dead = 'no current reaches the motor';
export const airGivens: Readonly<Record<string, readonly GivenRow[]>> = {
  'pump-up': [
    row(['reeds broken'], [0.02, 0.5, 0.48], 'it pumps against itself'),
    row(['discharge clogged'], [0.05, 0.75, 0.2], 'air cannot get to the tank'),
    row(['discharge fitting leak'], [0.1, 0.7, 0.2], 'part of the delivery is lost before the tank'),
    row(['motor worn'], [0.4, 0.4, 0.2], 'it turns slowly'),
    row(['switch resistance'], [0.35, 0.55, 0.1], 'it turns slowly on few volts'),
    row(['wire shorted', 'key feed dead'], [0.01, 0.02, 0.97], dead),
    row(['switch line plugged'], [0.5, 0.1, 0.4], 'the switch does not know the pressure'),
  ],
  'pump-up shut': [
    row(['reeds broken'], [0.02, 0.5, 0.48], 'it pumps against itself'),
    row(['discharge clogged'], [0.05, 0.75, 0.2], 'air cannot get to the tank'),
    row(['discharge fitting leak'], [0.1, 0.7, 0.2], 'part of the delivery is lost before the tank'),
    row(['motor worn'], [0.4, 0.4, 0.2], 'it turns slowly'),
    row(['wire shorted', 'key feed dead'], [0.01, 0.02, 0.97], dead),
  ],
  'pump called': [
    row(['motor worn'], [0.35, 0.05, 0.05, 0.45, 0.1], 'weak at the start'),
    row(['switch resistance'], [0.7, 0.08, 0.1, 0.11, 0.01], 'it starts on few volts, or not'),
    row(['wire shorted'], [0.01, 0.09, 0.02, 0.01, 0.87], 'a dead short'),
    row(['key feed dead'], [0.02, 0.96, 0.01, 0.005, 0.005], dead),
    row(['switch line plugged'], [0.65, 0.33, 0.01, 0.005, 0.005], 'the switch may not feel the pressure gone'),
    row(['pump rests'], [0.97, 0.02, 0.005, 0.0025, 0.0025], 'it starts once the tank is below cut-in'),
  ],
  'pump restart': [
    row(['motor worn'], [0.3, 0.5, 0.2], 'weak against pressure'),
    row(['switch resistance'], [0.6, 0.35, 0.05], 'few volts against pressure'),
    row(['discharge check leak'], [0.25, 0.35, 0.4], 'the tank stands on the piston'),
    row(['wire shorted'], [0.02, 0.03, 0.95], 'a dead short'),
    row(['key feed dead'], [0.02, 0.96, 0.02], dead),
  ],
  'pump past cut-out': [row(['switch line plugged'], [0.5, 0.5], 'the pressure does not get to the switch')],
  'cut-in': [row(['switch line plugged'], [0.15, 0.45, 0.2, 0.2], 'the pressure gets to the switch late')],
  'cut-out': [row(['switch line plugged'], [0.15, 0.05, 0.5, 0.3], 'the pressure gets to the switch late')],
  'pump cycles auto': [row(['discharge fitting leak'], [0.97, 0.03], 'it leaks only while it pumps')],
  'pump duty': [
    row(['reeds broken', 'discharge clogged'], [0.6, 0.1, 0.3], 'it may never get to cut-out'),
    row(['wire shorted', 'key feed dead'], [0.97, 0.02, 0.01], dead),
    row(['tank water', 'dryer spent'], [0.6, 0.38, 0.02], 'water takes the room of air: the pump comes on more often'),
  ],
  'quits hot': [
    row(['discharge clogged', 'reeds broken'], [0.5, 0.5], 'it works against itself'),
    row(['pump worn', 'motor worn'], [0.75, 0.25], 'long runs heat it'),
  ],
  'motor volts': [
    row(['wire shorted', 'key feed dead'], [0.02, 0.03, 0.95], dead),
    row(['motor worn'], [0.75, 0.24, 0.01], 'it draws more and pulls the volts down'),
    row(['switch resistance'], [0.35, 0.63, 0.02], 'what the contacts lose the motor lacks'),
  ],
  'motor current': [
    row(['motor worn'], [0.3, 0.05, 0.63, 0.02], 'tight or shorted turns draw more'),
    row(['discharge clogged'], [0.4, 0.02, 0.57, 0.01], 'it pushes against a wall'),
    row(['reeds broken'], [0.4, 0.57, 0.02, 0.01], 'it moves little air'),
    row(['wire shorted', 'key feed dead'], [0.01, 0.01, 0.01, 0.97], dead),
  ],
  'tank water': [row(['dryer spent'], [0.1, 0.9], 'what the dryer lets through ends here')],
  'regulated supply': [row(['regulator low'], [0.05, 0.9, 0.05], 'it is what is measured')],
  driving: [
    row(['bellows torn'], [0.15, 0.05, 0.79, 0.01], 'more goes out than the valve lets in'),
    row(['regulator low'], [0.35, 0.3, 0.34, 0.01], 'not enough pressure to lift the load'),
    row(['line frozen'], [0.5, 0.15, 0.25, 0.1], 'depends on which line'),
    row(['tyre low'], [0.6, 0.38, 0.02, 0], 'the whole side stands lower, by a part of the tyre'),
  ],
  'valve fills': [
    row(['regulator low'], [0.3, 0.6, 0.1, 0], 'little pressure to fill with'),
    row(['line frozen'], [0.45, 0.05, 0.5, 0], 'depends on which line'),
  ],
  'rear height': [
    row(['bellows torn'], [0.15, 0.05, 0.79, 0.01], 'more goes out than the valve lets in'),
    row(['line frozen'], [0.5, 0.15, 0.25, 0.1], 'depends on which line'),
    row(['regulator low'], [0.35, 0.3, 0.34, 0.01], 'not enough pressure to lift the load'),
    row(['tyre low'], [0.4, 0.57, 0.03, 0], 'the whole side stands lower, by a part of the tyre'),
  ],
  'front height': [row(['frame bent'], [0.3, 0.35, 0.35], 'the frame holds a twist')],
  overnight: [
    row(['bellows torn'], [0.02, 0.03, 0.95], 'it stands on its stops'),
    row(
      ['inlet check bad'],
      [0.6, 0.3, 0.1],
      'once the tank is below the bellows, which any seepage brings about in time',
    ),
  ],
  'as found': [
    row(['bellows torn'], [0.02, 0.03, 0.15, 0.8], 'it stands on its stops'),
    row(['line frozen'], [0.6, 0.12, 0.18, 0.1], 'depends on which line'),
    row(
      ['inlet check bad'],
      [0.6, 0.12, 0.18, 0.1],
      'once the tank is below the bellows, which any seepage brings about in time',
    ),
    row(['tyre low'], [0.6, 0.38, 0.02, 0], 'the whole side stands lower, by a part of the tyre'),
  ],
  'soap tank': [
    row(['gauge line leak'], [0.85, 0.15], 'its fittings at the tank may be dry while the line leaks elsewhere'),
  ],
  'tank fall outlet closed': [],
};
