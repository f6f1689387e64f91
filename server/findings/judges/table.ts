/** Every subject that is judged, in the order its findings are shown. A new one is one file and one line here. */
import type { Judge } from '../case.ts';
import { heights } from './heights.ts';
import { pressureSwitch } from './pressure-switch.ts';
import { pumpUp } from './pump-up.ts';
import { tankLeak } from './tank-leak.ts';
import { tankPressure } from './tank-pressure.ts';
import { volts } from './volts.ts';
import { wheels } from './wheels.ts';

export const judges: readonly Judge[] = [tankLeak, heights, tankPressure, pressureSwitch, pumpUp, volts, wheels];
