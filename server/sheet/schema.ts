/**
 * The coach sheet: what the maker's manual or the owner says of one coach. Every amount is written with its unit
 * ("120 psi", "13 3/4 in"), read here into SI beside the writing. All but identity is optional: a value that is missing
 * is asked for when it is needed, never invented.
 */
import { z } from 'zod';
import { parseAmount } from '../core/amount.ts';
import { type Dimension, unitNames } from '../core/units.ts';

/** An amount of `dimension`, e.g. "13 3/4 in" for a length. Pressures are gauge. */
const amount = (dimension: Dimension, example: string) =>
  z.string().transform((text, ctx) => {
    const read = parseAmount(text, dimension);
    if (read) return read;
    ctx.addIssue({ code: 'custom', message: `"${text}" is not a ${dimension} with its unit, such as "${example}"` });
    return z.NEVER;
  });

const pressure = amount('pressure', '120 psi');
const length = amount('length', '13 3/4 in');
const volume = amount('volume', '5 gal');
const duration = amount('duration', '15 min');
const angle = amount('angle', '0.5 deg');
const current = amount('current', '22 A');
const voltage = amount('voltage', '11.5 V');
const mass = amount('mass', '4200 lb');
const area = amount('area', '62 in2');
const flow = amount('flow', '1.4 cfm');
const temperature = amount('temperature', '70 F');
const torque = amount('torque', '40 lbf ft');
const ratio = amount('ratio', '35 %');

const ordered = <T extends { si: number }>(schema: z.ZodType<T, string>) =>
  z
    .strictObject({ low: schema, high: schema })
    .refine((r) => r.low.si <= r.high.si, { message: 'low is above high', path: ['low'] });

const corner = z.strictObject({ nominal: length, tolerance: length });
const words = z.string().trim().min(1).max(200);

export const Sheet = z.strictObject({
  v: z.literal(1),
  id: z.string().regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'lower-case letters, digits and dashes, at most 40'),
  coach: words,
  /** Where these figures come from: "maker's manual section 8", "owner's card", "measured here". */
  source: words,
  units: z.strictObject({
    pressure: z.enum(unitNames),
    length: z.enum(unitNames),
    temperature: z.enum(unitNames),
    volume: z.enum(unitNames),
    distance: z.enum(unitNames),
    mass: z.enum(unitNames),
    torque: z.enum(unitNames),
  }),
  traffic: z.enum(['right', 'left']).optional(),
  zone: z.string().refine(
    (zone) => {
      try {
        return Intl.DateTimeFormat('en', { timeZone: zone }) !== undefined;
      } catch {
        return false;
      }
    },
    { message: 'not an IANA time zone such as "America/Denver"' },
  ),
  altitude: length.optional(),
  supply: z
    .strictObject({
      tank: volume.optional(),
      /** Volume of lines and valve bodies that the tank gauge sees in AUTO at neutral. */
      lines: volume.optional(),
      cutIn: ordered(pressure).optional(),
      cutOut: ordered(pressure).optional(),
      relief: pressure.optional(),
      /** Suspension is fed only above this, where there is a protection valve. */
      protection: pressure.optional(),
      regulator: pressure.optional(),
      /** One division of the tank gauge. */
      gaugeStep: pressure.optional(),
      /** Largest fall of the tank that the maker allows, over the time given. */
      leakLimit: z.strictObject({ fall: pressure, over: duration }).optional(),
      dryer: z.boolean().optional(),
      unloader: z.boolean().optional(),
      relay: z.boolean().optional(),
      drainEvery: duration.optional(),
    })
    .optional(),
  pump: z
    .strictObject({
      /** Free-air delivery at tank pressures, rising pressures. */
      delivery: z
        .array(z.strictObject({ at: pressure, flow }))
        .min(2)
        .refine((rows) => rows.every((r, i) => i === 0 || r.at.si > rows[i - 1]!.at.si), {
          message: 'pressures must rise from row to row',
        })
        .optional(),
      pumpUp: z.strictObject({ from: pressure, to: pressure, time: duration }).optional(),
      current: ordered(current).optional(),
      minVolts: voltage.optional(),
      runLimit: duration.optional(),
      rest: duration.optional(),
      duty: ratio.optional(),
      fuse: current.optional(),
    })
    .optional(),
  valves: z
    .strictObject({
      /** Travel at the arm's end, either side of neutral, that does nothing. */
      deadBand: length.optional(),
      delay: ordered(duration).optional(),
      armLength: length.optional(),
      /** Change of height at the measuring point for a change at the arm's end. */
      heightPerArm: z.number().positive().optional(),
      /** A solenoid closes the suspension off with the key. */
      solenoid: z.boolean().optional(),
      threadTape: z.boolean().optional(),
    })
    .optional(),
  /** null: this coach has none. Labels are this coach's own words for the four positions by function. */
  panel: z
    .strictObject({
      auto: words,
      fill: words,
      empty: words,
      shut: words,
      /** FILL goes through a check of its own, so that the bellows cannot run back into the tank. */
      ownCheck: z.boolean().optional(),
    })
    .nullable()
    .optional(),
  springs: z
    .strictObject({
      perSide: z.number().int().min(1).max(4).optional(),
      /** Of one bellows at ride height. */
      area: area.optional(),
      volume: volume.optional(),
      /** Plate to plate at ride height and fully down on its stops. */
      rideLength: length.optional(),
      stopLength: length.optional(),
      /** Bellows pressure of each side as the coach is weighed. */
      pressure: z.strictObject({ left: ordered(pressure), right: ordered(pressure) }).optional(),
      /** Travel of the bellows for a travel at the wheel. */
      leverRatio: z.number().positive().optional(),
      foldPressure: pressure.optional(),
    })
    .optional(),
  heights: z
    .strictObject({
      /** From where to where, in the coach's own words. */
      measured: words,
      leftFront: corner.optional(),
      rightFront: corner.optional(),
      leftRear: corner.optional(),
      rightRear: corner.optional(),
      sideToSide: length.optional(),
      /** How far the rear comes down from ride height to its stops. */
      toStops: length.optional(),
      tapeStep: length.optional(),
      torsionPerTurn: length.optional(),
      frontBy: words.optional(),
    })
    .optional(),
  weights: z
    .strictObject({
      leftFront: mass.optional(),
      rightFront: mass.optional(),
      leftRear: mass.optional(),
      rightRear: mass.optional(),
      waterTank: volume.optional(),
    })
    .optional(),
  tyres: z
    .strictObject({
      front: pressure.optional(),
      rear: pressure.optional(),
      at: temperature.optional(),
      diameter: length.optional(),
      rim: length.optional(),
      /** How far a corner rises from the floor for so much more in its tyres, measured on this coach near the pressures above. */
      rise: z
        .strictObject({
          height: length.refine((a) => a.si > 0, { message: 'must be above nothing' }),
          pressure: pressure.refine((a) => a.si > 0, { message: 'must be above nothing' }),
        })
        .optional(),
    })
    .optional(),
  alignment: z
    .strictObject({
      /** Per wheel; in is positive. */
      toe: ordered(angle).optional(),
      /** Top out is positive. */
      camber: ordered(angle).optional(),
      thrust: angle.optional(),
      track: length.optional(),
      wheelbase: length.optional(),
      tandemSpacing: length.optional(),
      bracket: z
        .strictObject({
          /** Between the bolts that change toe (fore and aft) and camber (up and down). */
          toeBolts: length,
          camberBolts: length,
          shims: z.array(length).min(1),
          most: length.optional(),
        })
        .optional(),
    })
    .optional(),
  electrics: z
    .strictObject({
      battery: z.strictObject({ kind: z.enum(['flooded', 'AGM', 'gel']), cca: current.optional() }).optional(),
      feed: z.strictObject({ awg: z.number().int().min(0).max(24), length }).optional(),
      ground: z.strictObject({ awg: z.number().int().min(0).max(24), length }).optional(),
      /** Largest drop allowed, battery to motor, both legs. */
      drop: voltage.optional(),
    })
    .optional(),
  torques: z.array(z.strictObject({ what: words, torque })).optional(),
  lines: z.array(z.strictObject({ what: words, label: words, od: length.optional() })).optional(),
  service: z.array(z.strictObject({ what: words, every: duration.optional(), distance: length.optional() })).optional(),
  shop: z
    .strictObject({ name: words.optional(), labour: z.number().nonnegative().optional(), currency: words.optional() })
    .optional(),
});
export type Sheet = z.infer<typeof Sheet>;
/** The sheet as written in its file. */
export type SheetText = z.input<typeof Sheet>;
