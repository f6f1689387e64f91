/** All guides, in the order of a day's work. */
import type { Guide } from './guide.ts';
import { bellowsGuide } from './guides/bellows.ts';
import { checkUnloader } from './guides/check-unloader.ts';
import { cloggedLine } from './guides/clogged-line.ts';
import { controlArm } from './guides/control-arm.ts';
import { electrics } from './guides/electrics.ts';
import { handover } from './guides/handover.ts';
import { intakeInternals } from './guides/intake-internals.ts';
import { leakDown } from './guides/leak-down.ts';
import { moisture } from './guides/moisture.ts';
import { levellingPanel } from './guides/panel.ts';
import { pressureSwitch } from './guides/pressure-switch.ts';
import { pumpUp } from './guides/pump-up.ts';
import { replaceLine } from './guides/replace-line.ts';
import { rideHeight } from './guides/ride-height.ts';
import { servicePlan } from './guides/service-plan.ts';
import { shocks } from './guides/shocks.ts';
import { soapCheck } from './guides/soap-check.ts';
import { tankPressure } from './guides/tank-pressure.ts';
import { toeCamber } from './guides/toe-camber.ts';
import { valveExchange } from './guides/valve-exchange.ts';
import { valveOnBench } from './guides/valve-on-bench.ts';
import { valveOnCoach } from './guides/valve-on-coach.ts';

export const guides: readonly Guide[] = [
  tankPressure,
  leakDown,
  soapCheck,
  pumpUp,
  electrics,
  checkUnloader,
  intakeInternals,
  moisture,
  cloggedLine,
  replaceLine,
  valveOnCoach,
  valveOnBench,
  valveExchange,
  pressureSwitch,
  levellingPanel,
  rideHeight,
  bellowsGuide,
  shocks,
  controlArm,
  toeCamber,
  handover,
  servicePlan,
];
