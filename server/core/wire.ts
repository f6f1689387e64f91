/** Copper wire: size, resistance, and what a leg of a 12 V circuit should lose. SI; lengths one way unless named. */
import {
  type Area,
  type Current,
  ImpossibleInput,
  type Length,
  type Resistance,
  type Temperature,
  type Voltage,
  finite,
  positive,
  si,
} from './quantity.ts';

/** ohm m at 20 C: 10.371 ohm circular mil per foot, the standard annealed copper of NBS Handbook 100. */
export const copper20 = 1.72411e-8;
/** Per K, referred to 20 C; annealed copper. */
export const copperPerKelvin = 0.00393;
/** Smallest to largest size that the wire of such a circuit has: 24 up to 4/0 (written -3). */
export const smallestWire = 24;
export const largestWire = -3;

/** Diameter, m, of AWG `n` (0 is 1/0, -1 is 2/0): 0.005 in * 92^((36 - n)/39), ASTM B258. Raises outside 40 to -3. */
export const wireDiameter = (n: number): Length => {
  if (!Number.isInteger(n) || n > 40 || n < largestWire)
    throw new ImpossibleInput('wire gauge', n, 'it must be a whole AWG number from 40 to 4/0');
  return si(0.000127 * 92 ** ((36 - n) / 39));
};

export const wireArea = (n: number): Area => si((Math.PI / 4) * wireDiameter(n) ** 2);

/** Resistance, ohm, of `length` m of AWG `n` copper at `temperature`: rho L / A (1 + 0.00393 (T - 20 C)). */
export const wireResistance = (n: number, length: Length, temperature: Temperature): Resistance => {
  if (!(length >= 0)) throw new ImpossibleInput('wire length', length, 'it cannot be below zero');
  positive('temperature', temperature);
  return si(((copper20 * length) / wireArea(n)) * (1 + copperPerKelvin * (temperature - 293.15)));
};

/** V lost over a resistance: I R. */
export const dropOf = (current: Current, resistance: Resistance): Voltage =>
  si(finite('current', current) * finite('resistance', resistance));

/** What a leg lost turned into ohms: V / I. Raises ImpossibleInput without current: a drop needs a load. */
export const resistanceOf = (drop: Voltage, current: Current): Resistance =>
  si(finite('drop', drop) / positive('current', current));

/**
 * Smallest wire (largest AWG number) whose `roundTrip` m of copper at `temperature` loses no more than `allowed` V at
 * `current`; null when not even 4/0 serves. Heating of the wire by its own current is not looked at: the fuse's and the
 * code's table of ampacity still apply.
 */
export const smallestWireFor = (
  current: Current,
  roundTrip: Length,
  allowed: Voltage,
  temperature: Temperature,
): number | null => {
  positive('current', current);
  positive('wire length', roundTrip);
  positive('allowed drop', allowed);
  // Even sizes are what a shop stocks above 1/0.
  for (let n = smallestWire; n >= largestWire; n -= n > 0 ? 2 : 1)
    if (current * wireResistance(n, roundTrip, temperature) <= allowed) return n;
  return null;
};

/** AWG as it is written: "8", "1/0", "2/0". */
export const gaugeName = (n: number): string => (n > 0 ? `${n}` : `${1 - n}/0`);
