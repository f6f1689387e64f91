/** A fact held against sheet and physics: the shapes. Stored with the reply that showed them. */
import * as z from 'zod/mini';
import { AmountShape, FactId, Place } from '../../intents/shapes.ts';

/** Whose limit or formula: shown beside every number. */
export const Source = z.object({
  /** sheet: this coach's; note: given in this session; rule: a published document; practice: common practice, no source; physics. */
  kind: z.enum(['sheet', 'note', 'rule', 'practice', 'physics']),
  /** "sheet: heights.leftRear", "49 CFR 393.207(f)", "common practice, no source". */
  words: z.string(),
});
export type Source = z.infer<typeof Source>;

/** One number as it is shown: SI beside the text with its unit, already rounded to the digits it can carry. */
export const Shown = z.object({ ...AmountShape.shape, low: z.optional(z.number()), high: z.optional(z.number()) });
export type Shown = z.infer<typeof Shown>;

/** How a result was reached: the formula in words and symbols, each input with where it came from. */
export const Why = z.object({
  formula: z.string(),
  inputs: z.array(z.object({ name: z.string(), text: z.string(), from: z.string() })),
  source: Source,
  notes: z.array(z.string()),
});
export type Why = z.infer<typeof Why>;

/** What the page draws; coordinates are never stored, only what is to be shown. All numbers SI with the unit to show. */
const Marked = z.object({ si: z.number(), pm: z.number(), label: z.string() });
export const Drawing = z.discriminatedUnion('is', [
  /** Strip of tape: window for the limits, pin for the reading, whiskers for its resolution. */
  z.object({
    is: z.literal('strip'),
    unit: AmountShape.shape.unit,
    low: z.optional(z.number()),
    high: z.optional(z.number()),
    /** The limits as the words beside it write them; absent in older logs. */
    lowText: z.optional(z.string()),
    highText: z.optional(z.string()),
    nominal: z.optional(z.number()),
    pins: z.array(Marked),
  }),
  /** Pressure (or height) over time with fit and limits; t in s from the first point. */
  z.object({
    is: z.literal('chart'),
    unit: AmountShape.shape.unit,
    points: z.array(z.object({ t: z.number(), si: z.number(), pm: z.number() })),
    fit: z.array(z.object({ t: z.number(), si: z.number() })),
    limits: z.array(z.object({ si: z.number(), label: z.string() })),
  }),
  /** Coach from above with corner heights; `off` is against the sheet, absent where the sheet has none. */
  z.object({
    is: z.literal('plan'),
    unit: AmountShape.shape.unit,
    corners: z.array(z.object({ where: Place, si: z.number(), text: z.string(), off: z.optional(z.number()) })),
    notes: z.array(z.string()),
  }),
  /** Bracket with shims at its bolts: thickness to add (negative: take out), m. */
  z.object({
    is: z.literal('bracket'),
    where: Place,
    unit: AmountShape.shape.unit,
    shims: z.array(z.object({ bolt: z.string(), si: z.number(), text: z.string() })),
  }),
  /** Electric circuit, leg by leg, the guilty one marked. */
  z.object({
    is: z.literal('legs'),
    legs: z.array(z.object({ name: z.string(), text: z.string(), guilty: z.boolean() })),
  }),
  /** Height valve on the bench: where the air is put on, how the arm stands, which port lets it out at this setting. */
  z.object({
    is: z.literal('valve'),
    airOn: z.enum(['inlet', 'bellows port']),
    arm: z.enum(['neutral', 'fill', 'exhaust']),
    watch: z.array(z.enum(['inlet port', 'bellows port', 'exhaust port', 'cover'])),
  }),
  /** Air circuit with parts lit; names are parts or places. */
  z.object({
    is: z.literal('circuit'),
    lit: z.array(z.string()),
    joined: z.array(z.string()),
    /** Whether the coach has a levelling panel; by the names of the parts where it is not said. */
    panel: z.optional(z.boolean()),
  }),
]);
export type Drawing = z.infer<typeof Drawing>;

export const Finding = z.object({
  /** `${measure}@${place}` or `${kind}@${place}`; the newest finding of a key stands for it. */
  key: z.string(),
  verdict: z.enum(['within', 'low', 'high', 'cannot tell', 'no limit']),
  /** What a tech reads first: short, owner's words, ends without a full stop ("1/2 in low left rear"). */
  words: z.string(),
  amount: z.optional(Shown),
  limit: z.optional(z.object({ low: z.optional(Shown), high: z.optional(Shown), source: Source })),
  /** Facts it rests on. */
  because: z.array(FactId),
  why: Why,
  drawing: z.optional(Drawing),
  /** A sheet value that is missing and would make it sharper: its field and the question to put. */
  wants: z.optional(z.object({ field: z.string(), question: z.string() })),
  /** What it says to the diagnosis, when it says anything (faults/observables). */
  evidence: z.optional(z.array(z.object({ see: z.string(), outcome: z.string() }))),
});
export type Finding = z.infer<typeof Finding>;
