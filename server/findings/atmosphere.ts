/** The local atmosphere, absolute, and where it comes from. Pure. */
import { absolute, atmosphereAt, atmosphereFrom, standardAtmosphere } from '../core/air.ts';
import { type AbsolutePressure, si } from '../core/quantity.ts';
import { typed } from './show.ts';
import { type Input, type Case, latest } from './case.ts';

const kPa = (p: number): string => `${(p / 1000).toFixed(1)} kPa absolute`;

/** The local atmosphere, absolute, and where it comes from. */
export const atmosphereOf = (c: Case): { p: AbsolutePressure; input: Input } => {
  const told = latest(c, 'barometer');
  const height = latest(c, 'altitude');
  const altitude = height?.amount.v.si ?? c.sheet.altitude?.si;
  const from = height ? height.id : 'sheet: altitude';
  if (told && told.amount.v.si > 50_000) {
    const value = si<AbsolutePressure>(told.amount.v.si);
    const reduced = altitude !== undefined && value > 95_000;
    const p = reduced ? atmosphereFrom(value, si(altitude)) : value;
    const heightText = height ? typed(height.amount.v) : c.sheet.altitude?.text;
    return {
      p,
      input: {
        name: 'atmosphere',
        text: `${kPa(p)}, barometer ${typed(told.amount.v)}${reduced ? `, taken as a weather report's, at sea level, and brought to ${heightText}` : ', as read here'}`,
        from: told.id,
      },
    };
  }
  if (altitude !== undefined) {
    const p = atmosphereAt(si(altitude));
    return { p, input: { name: 'atmosphere', text: kPa(p), from } };
  }
  return {
    p: standardAtmosphere,
    input: { name: 'atmosphere', text: kPa(standardAtmosphere), from: 'assumed: sea level' },
  };
};

export const toAbsolute = (gauge: number, p: AbsolutePressure): AbsolutePressure => absolute(si(gauge), p);
