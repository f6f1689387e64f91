/**
 * How long a pump takes to raise the joined volumes from one pressure to another, from its delivery curve (free air at
 * tank pressures): t = integral of V dp / (p_atm Q(p)), at constant temperature. Gauge pressures, SI.
 */
import {
  type AbsolutePressure,
  type Duration,
  type FreeAirFlow,
  type GaugePressure,
  ImpossibleInput,
  type Voltage,
  type Volume,
  positive,
  si,
} from './quantity.ts';

/** One row of a delivery curve: free air per second into a tank at gauge pressure `at`. Rows rise in pressure. */
export type Delivery = { readonly at: GaugePressure; readonly flow: FreeAirFlow };

/**
 * Delivery at gauge pressure `p`, straight between rows; flat below the first; past the last the last slope goes on,
 * never below zero. Raises ImpossibleInput for a curve of less than two rows or falling pressures.
 */
export const deliveryAt = (curve: readonly Delivery[], p: GaugePressure): FreeAirFlow => {
  if (curve.length < 2) throw new ImpossibleInput('rows of the delivery curve', curve.length, 'it needs two or more');
  for (let i = 1; i < curve.length; i++)
    if (curve[i]!.at <= curve[i - 1]!.at)
      throw new ImpossibleInput('pressure of a delivery row', curve[i]!.at, 'pressures must rise from row to row');
  if (p <= curve[0]!.at) return curve[0]!.flow;
  let i = 1;
  while (i < curve.length - 1 && p > curve[i]!.at) i++;
  const a = curve[i - 1]!;
  const b = curve[i]!;
  const flow = a.flow + ((b.flow - a.flow) * (p - a.at)) / (b.at - a.at);
  return si(Math.max(0, flow));
};

/**
 * Seconds to pump `volume` from `from` to `to` (gauge) with `leak` m3/s of free air lost meanwhile. Infinity where the
 * delivery does not get past the leak. `share`: delivery as a share of the curve. Simpson's rule between the rows.
 */
export const pumpUpTime = (
  curve: readonly Delivery[],
  volume: Volume,
  from: GaugePressure,
  to: GaugePressure,
  atmosphere: AbsolutePressure,
  share = 1,
  leak: FreeAirFlow = si(0),
): Duration => {
  positive('volume', volume);
  positive('atmosphere', atmosphere);
  positive('share of delivery', share);
  if (to < from) throw new ImpossibleInput('end pressure', to, 'it cannot be below the start of a pump-up');
  const edges = [from, ...curve.map((r) => r.at).filter((at) => at > from && at < to), to];
  let time = 0;
  const pace = (p: number): number => {
    const net = share * deliveryAt(curve, si(p)) - leak;
    return net > 0 ? volume / (atmosphere * net) : Infinity;
  };
  for (let i = 1; i < edges.length; i++) {
    const a = edges[i - 1]!;
    const steps = 32;
    const h = (edges[i]! - a) / steps;
    for (let j = 0; j < steps; j += 2)
      time += (h / 3) * (pace(a + j * h) + 4 * pace(a + (j + 1) * h) + pace(a + (j + 2) * h));
  }
  return si(time);
};

/** Mean free-air delivery, m3/s, that a pump-up in `time` shows: V (p2 - p1) / (p_atm t). */
export const meanDelivery = (
  volume: Volume,
  from: GaugePressure,
  to: GaugePressure,
  time: Duration,
  atmosphere: AbsolutePressure,
): FreeAirFlow => {
  if (to < from) throw new ImpossibleInput('end pressure', to, 'it cannot be below the start of a pump-up');
  return si((positive('volume', volume) * (to - from)) / (positive('atmosphere', atmosphere) * positive('time', time)));
};

/** Volume left for air in a tank that holds water. Raises ImpossibleInput when the water fills it. */
export const airVolume = (tank: Volume, water: Volume): Volume => {
  if (!(water >= 0)) throw new ImpossibleInput('water', water, 'it cannot be below zero');
  return positive('volume left for air', si<Volume>(positive('tank volume', tank) - water));
};

/**
 * Share of the delivery at full voltage that a permanent-magnet motor keeps at `volts`: its speed goes about as the
 * voltage behind its winding, (V - drop)/(V0 - drop), `windingDrop` I times the winding's resistance. Rule of the
 * machine, an estimate: with 0 it is plain proportion.
 */
export const speedShare = (volts: Voltage, full: Voltage, windingDrop: Voltage = si(0)): number =>
  Math.max(0, (positive('volts', volts) - windingDrop) / positive('full volts less winding drop', full - windingDrop));

/** Volts a 12 V motor's delivery is taken to be given at, where the sheet names none. Common practice, no source. */
export const ratedVolts = si<Voltage>(12);
