/** "no volts at the switch", "nothing at the motor", "no power to the pump": nothing on the meter. */
import { push } from './push.ts';
import type { Settled } from './settled.ts';
import type { Measure, Said } from './shapes.ts';
import type { Loc, Walk } from './walk.ts';

/** Adds a reading of 0 V there; `what`: where volts were named. */
export const pushNoVolts = (
  w: Walk,
  item: Settled,
  loc: Loc,
  what: Said<Measure> = { v: 'voltage', from: 'assumed', spans: [item.span] },
): void => {
  const zero = { v: { si: 0, pm: 0.5, unit: 'V' as const, text: '0' }, from: 'assumed' as const, spans: [item.span] };
  push(w, { is: 'reading', what, amount: zero }, loc, item);
};
