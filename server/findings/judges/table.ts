/** Every subject that is judged, in the order its findings are shown. A new one is one file and one line here. */
import type { Judge } from '../case.ts';
import { battery } from './battery.ts';
import { bellowsLeak } from './bellows-leak.ts';
import { bellowsPressures } from './bellows-pressures.ts';
import { duty } from './duty.ts';
import { heightOff } from './height-off.ts';
import { heights } from './heights.ts';
import { knee } from './knee.ts';
import { legs } from './legs.ts';
import { loadTest } from './load-test.ts';
import { overnight } from './overnight.ts';
import { plainRanges } from './plain-ranges.ts';
import { pressureSwitch } from './pressure-switch.ts';
import { pumpUp } from './pump-up.ts';
import { recheck } from './recheck.ts';
import { service } from './service.ts';
import { shims } from './shims.ts';
import { sideToSide } from './side-to-side.ts';
import { tankLeak } from './tank-leak.ts';
import { tankOvernight } from './tank-overnight.ts';
import { tankPressure } from './tank-pressure.ts';
import { temperature } from './temperature.ts';
import { tyres } from './tyres.ts';
import { volts } from './volts.ts';
import { water } from './water.ts';
import { wheels } from './wheels.ts';

export const judges: readonly Judge[] = [
  tankLeak,
  tankOvernight,
  knee,
  bellowsLeak,
  overnight,
  heights,
  heightOff,
  sideToSide,
  bellowsPressures,
  tankPressure,
  pressureSwitch,
  pumpUp,
  duty,
  volts,
  legs,
  battery,
  loadTest,
  wheels,
  shims,
  tyres,
  temperature,
  water,
  plainRanges,
  recheck,
  service,
];
