/**
 * Branded SI quantities. A plain number cannot be handed in where one of these is asked for, and a gauge pressure
 * cannot be handed in for an absolute one: that mistake is worth a factor of two at 15 psi.
 */
declare const kind: unique symbol;
export type Quantity<K extends string> = number & { readonly [kind]: K };

/** Pa above the local atmosphere, as every gauge on a coach reads. */
export type GaugePressure = Quantity<'gauge pressure'>;
/** Pa above vacuum; what gas laws and orifices need. */
export type AbsolutePressure = Quantity<'absolute pressure'>;
/** Pa between two pressures; neither gauge nor absolute. */
export type PressureChange = Quantity<'pressure change'>;
/** K */
export type Temperature = Quantity<'temperature'>;
/** m */
export type Length = Quantity<'length'>;
/** m2 */
export type Area = Quantity<'area'>;
/** m3 */
export type Volume = Quantity<'volume'>;
/** s */
export type Duration = Quantity<'duration'>;
/** rad */
export type Angle = Quantity<'angle'>;
/** V */
export type Voltage = Quantity<'voltage'>;
/** A */
export type Current = Quantity<'current'>;
/** ohm */
export type Resistance = Quantity<'resistance'>;
/** kg/s */
export type MassFlow = Quantity<'mass flow'>;
/** m3/s of free air, at the reference named by the function that returns it. */
export type FreeAirFlow = Quantity<'free air flow'>;
/** N */
export type Force = Quantity<'force'>;
/** kg */
export type Mass = Quantity<'mass'>;
/** N/m */
export type Stiffness = Quantity<'stiffness'>;
/** Hz */
export type Frequency = Quantity<'frequency'>;
/** N m */
export type Torque = Quantity<'torque'>;

/** Names a plain SI number as a quantity; the caller answers for the unit. */
// oxlint-disable-next-line typescript/no-unnecessary-type-parameters -- the caller names the quantity
export const si = <Q extends Quantity<string>>(value: number): Q => value as Q;

/** Writes an SI value of the input for whoever reads the words. */
export type Write = (si: number, limit?: boolean) => string;
/** What the input must be; a limit with a number in it is written like the input itself. */
export type Must = string | ((write: (si: number) => string) => string);

/** Raised when an input cannot be: negative absolute pressure, time running backwards, zero volume. Names the input. */
export class ImpossibleInput extends Error {
  readonly input: string;
  readonly value: number;
  readonly must: Must;
  constructor(input: string, value: number, must: Must) {
    super(saying(input, value, must, (bare) => String(bare)));
    this.name = 'ImpossibleInput';
    this.input = input;
    this.value = value;
    this.must = must;
  }

  /** The message with its numbers as `write` writes them; `message` has them bare, in SI. */
  said(write: Write): string {
    return saying(this.input, this.value, this.must, write);
  }
}

const saying = (input: string, value: number, must: Must, write: Write): string =>
  `${input} ${write(value)} cannot be: ${typeof must === 'string' ? must : must((limit) => write(limit, true))}`;

/** Returns `value` when it is finite and above zero, else raises ImpossibleInput naming `input`. */
export const positive = <Q extends number>(input: string, value: Q): Q => {
  if (!Number.isFinite(value) || value <= 0)
    throw new ImpossibleInput(input, value, (write) => `it must be a number above ${value <= 0 ? write(0) : 'zero'}`);
  return value;
};

/** Returns `value` when it is finite, else raises ImpossibleInput naming `input`. */
export const finite = <Q extends number>(input: string, value: Q): Q => {
  if (!Number.isFinite(value)) throw new ImpossibleInput(input, value, 'it must be a finite number');
  return value;
};
