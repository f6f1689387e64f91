/** Pump cycles: what on and off times say of the leak and of the pump. Free air at the atmosphere; gauge pressures. */
import {
  type AbsolutePressure,
  type Duration,
  type FreeAirFlow,
  ImpossibleInput,
  type Volume,
  positive,
  si,
} from './quantity.ts';

/** Share of the time that the pump runs: on / (on + off), 0 to 1. */
export const dutyOf = (on: Duration, off: Duration): number => {
  if (!(on >= 0)) throw new ImpossibleInput('on time', on, 'it cannot be below zero');
  if (!(off >= 0)) throw new ImpossibleInput('off time', off, 'it cannot be below zero');
  return on / positive('on and off time together', on + off);
};

/** Leak that empties `volume` by `band` (cut-out less cut-in, Pa) in `off`: q = V band / (pa off). */
export const leakFromOff = (volume: Volume, band: number, off: Duration, atmosphere: AbsolutePressure): FreeAirFlow =>
  si(
    (positive('volume', volume) * positive('switch band', band)) /
      (positive('atmosphere', atmosphere) * positive('off time', off)),
  );

/** Delivery that fills the band in `on` against the leak of `off`: V band / (pa on) + q. */
export const deliveryFromCycle = (
  volume: Volume,
  band: number,
  on: Duration,
  off: Duration,
  atmosphere: AbsolutePressure,
): FreeAirFlow => si(leakFromOff(volume, band, on, atmosphere) + leakFromOff(volume, band, off, atmosphere));

/** On and off times of a pump of constant `delivery` against a leak; on is Infinity where it does not get past the leak. */
export const cycleOf = (
  volume: Volume,
  band: number,
  delivery: FreeAirFlow,
  leak: FreeAirFlow,
  atmosphere: AbsolutePressure,
): { on: Duration; off: Duration } => {
  const air = (positive('volume', volume) * positive('switch band', band)) / positive('atmosphere', atmosphere);
  if (!(leak >= 0)) throw new ImpossibleInput('leak', leak, 'it cannot be below zero');
  return { on: si(delivery > leak ? air / (delivery - leak) : Infinity), off: si(leak > 0 ? air / leak : Infinity) };
};
