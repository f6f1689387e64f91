/** A reading of a wheel as an angle, and the limit it is held against. */
import { takePlace } from '../../intents/place.ts';
import type { ReadingFact } from '../../intents/shapes.ts';
import { angleOver } from '../core/toe.ts';
import { type Angle, si } from '../core/quantity.ts';
import { dimensionOf } from '../core/units.ts';
import { type Case, type Input, type Range, inputOf, latest, middle, rangeOf, sheetInput, spread } from './case.ts';
import { typed } from './show.ts';

export type WheelAngle = {
  readonly angle: Angle;
  readonly pm: number;
  readonly inputs: Input[];
  readonly diameter: number | null;
};

type Missing = { readonly missing: { field: string; question: string } };

/** The reading as an angle of one wheel. A length needs the diameter it spans: said, read, else the sheet's. */
export const wheelAngle = (c: Case, fact: ReadingFact, what: 'toe' | 'camber'): WheelAngle | Missing => {
  const value = middle(fact.amount.v);
  // Toe in inches is read to a sixteenth, however coarse the fraction that was written.
  const pm = fact.amount.v.unit === 'in' ? Math.min(spread(fact.amount.v), 0.0254 / 32) : spread(fact.amount.v);
  const inputs = [inputOf(what, fact)];
  if (dimensionOf(fact.amount.v.unit) === 'angle')
    return { angle: si(value), pm, inputs, diameter: c.sheet.tyres?.diameter?.si ?? null };
  const read = what === 'toe' ? latest(c, 'tyre diameter') : latest(c, 'rim diameter');
  const onSheet = what === 'toe' ? c.sheet.tyres?.diameter : c.sheet.tyres?.rim;
  const field = what === 'toe' ? 'tyres.diameter' : 'tyres.rim';
  const across = fact.across?.v ?? read?.amount.v ?? onSheet;
  if (!across)
    return {
      missing: {
        field,
        question:
          what === 'toe'
            ? 'Over what diameter was the toe measured (tyre diameter)?'
            : 'Over what diameter was the camber measured (rim)?',
      },
    };
  inputs.push(
    fact.across
      ? { name: 'measured over', text: typed(fact.across.v), from: fact.id }
      : read
        ? inputOf('measured over', read)
        : sheetInput(`measured over (assumed: ${what === 'toe' ? 'tyre' : 'rim'})`, onSheet!, field),
  );
  const angle = angleOver(si(value), si(across.si));
  return { angle, pm: pm / across.si, inputs, diameter: across.si };
};

export const way = (what: 'toe' | 'camber', angle: number): string =>
  what === 'toe' ? (angle < 0 ? 'out' : 'in') : angle < 0 ? 'top in' : 'top out';

export const wheelRange = (c: Case, what: 'toe' | 'camber', place: string): Range | null => {
  const rear = takePlace(place)?.end !== 'front';
  return rangeOf(c, what, place, rear ? c.sheet.alignment?.[what] : undefined, `alignment.${what}`);
};

/** Of one wheel, not of an axle or the coach. */
export const isWheel = (fact: ReadingFact): boolean => {
  const p = takePlace(fact.where.v);
  return p?.side === 'left' || p?.side === 'right';
};
