/** A fact said as a plain note: what the read-back's taps write into the line, and what reads back to the same fact. */
import { fromSi, stepFromSi, type Unit } from '../server/core/units.ts';
import { tapeInches } from '../server/core/amount.ts';
import type { Fact, Measure, ReadingFact, When } from './shapes.ts';

type AmountSaid = ReadingFact['amount']['v'];

/** Units as a note writes them, where that is not their name. */
const unitSaid: Readonly<Partial<Record<Unit, string>>> = {
  'lbf ft': 'ft lb',
  'lbf in': 'in lb',
  'N m': 'nm',
  F: 'deg F',
  C: 'deg C',
  K: 'deg C',
  rad: 'deg',
  Pa: 'kPa',
  m: 'metres',
  L: 'litres',
  t: 'tonnes',
  d: 'days',
  week: 'weeks',
  month: 'months',
  year: 'years',
  turn: 'turns',
  count: '',
  SG: '',
  mohm: 'milliohm',
};
/** Units no note writes, and the one it writes instead. */
const instead: Readonly<Partial<Record<Unit, Unit>>> = { K: 'C', rad: 'deg', Pa: 'kPa' };

const numberSaid = (value: number, unit: Unit): string => {
  const rounded = Number(value.toPrecision(9));
  if (unit === 'in' && rounded % 1 !== 0 && (rounded * 64) % 1 === 0) return tapeInches(rounded, 64);
  return String(rounded);
};

/** An amount as a note writes it: "about 90 psi", "between 13 1/4 and 13 3/8 in". `difference`: has no zero point. */
export const amountSaid = (a: AmountSaid, difference = false, sign: 'kept' | 'left out' = 'kept'): string => {
  const unit = instead[a.unit] ?? a.unit;
  const value = (si: number): number => {
    const v = difference ? stepFromSi(si, unit) : fromSi(si, unit);
    return sign === 'kept' ? v : Math.abs(v);
  };
  const words = unitSaid[unit] ?? unit;
  const tail = words === '' ? '' : ` ${words}`;
  if (a.to !== undefined) return `between ${numberSaid(value(a.si), unit)} and ${numberSaid(value(a.to), unit)}${tail}`;
  return `${a.about ? `${a.about} ` : ''}${numberSaid(value(a.si), unit)}${tail}`;
};

const spanOf = (seconds: number): string =>
  seconds % 3600 === 0 ? `${seconds / 3600} h` : seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`;

/** " at 9:05", " 20 min ago", " yesterday"; empty where no time was said. */
export const whenSaid = (when: When | undefined): string => {
  if (!when) return '';
  const day = when.today
    ? ' today'
    : when.day === undefined
      ? ''
      : when.day === 1
        ? ' yesterday'
        : ` ${when.day} days ago`;
  if (when.clock !== undefined) {
    const minutes = String(when.clock % 60).padStart(2, '0');
    return ` at ${Math.floor(when.clock / 60)}:${minutes}${day}`;
  }
  if (when.ago !== undefined) return ` ${spanOf(when.ago)} ago`;
  if (when.after !== undefined) return ` ${spanOf(when.after)} later`;
  return day;
};

export const oftenSaid: Readonly<Record<NonNullable<Fact['often']>, string>> = {
  always: 'every time',
  sometimes: 'sometimes',
  standing: 'overnight',
  driving: 'when driving',
  cold: 'when cold',
  hot: 'when hot',
  wet: 'when wet',
  restart: 'on restart',
  loaded: 'when loaded',
};

/** Signs that a note says in other words than their name. */
const signSaid: Readonly<Partial<Record<string, string>>> = {
  disconnected: 'came off',
  stops: 'shuts off',
  cold: 'stone cold',
};

/** How a measure stands in a note: words before the place and after it; most need none, the unit says it. */
const frames: Readonly<Partial<Record<Measure, (where: string, amount: string) => string>>> = {
  // a gauge is named for the tank; its own reading counts beside another's
  pressure: (where, amount) => `${where === 'gauge' ? 'gauge itself' : where} ${amount}`,
  voltage: (where, amount) => `${where} ${amount}`,
  current: (where, amount) => `${where} ${amount}`,
  height: (where, amount) => `${where} ${amount}`,
  'pressure fall': (where, amount) => `${where} drops ${amount}`,
  'height fall': (where, amount) => `${where} drops ${amount}`,
  'pressure rise': (where, amount) => `${where} rises ${amount}`,
  'cut-in': (_, amount) => `cut in ${amount}`,
  'cut-out': (_, amount) => `cut out ${amount}`,
  'standing time': (_, amount) => `stood ${amount}`,
  'settling time': (_, amount) => `settled for ${amount}`,
  'on time': (_, amount) => `pump on for ${amount}`,
  'off time': (_, amount) => `pump off for ${amount}`,
  'run time': (_, amount) => `pump ran ${amount}`,
  'restart time': (_, amount) => `pump restarts after ${amount}`,
  'water drained': (where, amount) => `${amount} of water out of the ${where || 'tank'}`,
  'distance driven': (_, amount) => `drove ${amount}`,
  temperature: (where, amount) => `${where} ${amount}`,
  load: (where, amount) => `${where} weighs ${amount}`,
  torque: (where, amount) => `${where} torqued to ${amount}`,
  turns: (where, amount) => `${where} ${amount}`,
};

const readingSaid = (fact: ReadingFact): string => {
  const where = fact.where.v;
  const what = fact.what.v;
  const over = fact.over ? ` in ${amountSaid(fact.over.v)}` : '';
  if (fact.from) {
    const from = amountSaid(fact.from.v);
    const to = amountSaid(fact.amount.v);
    if (what === 'pump-up') return `tank ${from} to ${to}${over.replace(' in ', ' took ')}`;
    return `${where} from ${from} to ${to}${over}`;
  }
  if (what === 'height off')
    return `${where} ${amountSaid(fact.amount.v, true, 'left out')} ${fact.amount.v.si < 0 ? 'low' : 'high'}`;
  if (what === 'toe')
    return `toe ${where} ${amountSaid(fact.amount.v, true, 'left out')} ${fact.amount.v.si < 0 ? 'out' : 'in'}${
      fact.across ? ` over ${amountSaid(fact.across.v)}` : ''
    }`;
  const change = what.endsWith('fall') || what.endsWith('rise') || what === 'camber' || what === 'thrust';
  const amount = amountSaid(fact.amount.v, change);
  const frame = frames[what];
  if ((what === 'run time' || what === 'on time') && fact.over)
    return `pump ${what === 'on time' ? 'on' : 'runs'} ${amount} every ${amountSaid(fact.over.v)}`;
  if (what === 'bubble size') return `${amount} bubble${over} at ${where}`;
  return `${frame ? frame(where, amount) : `${where} ${what} ${amount}`}${over}`;
};

/** The note that says this fact plainly, in words that read to the same fact. */
export const plain = (fact: Fact): string => {
  const told = fact.word === 'hunch' ? 'think ' : fact.word === 'told' ? 'driver says ' : '';
  const often = fact.often ? ` ${oftenSaid[fact.often]}` : '';
  const where = fact.where.v;
  const body = ((): string => {
    switch (fact.is) {
      case 'reading':
        return `${readingSaid(fact)}${often}${whenSaid(fact.when)}`;
      case 'sign':
        // "right ok" is what people say to each other
        return `${where === 'right' ? 'right side' : where} ${fact.there ? (signSaid[fact.what.v] ?? fact.what.v) : `no ${fact.what.v}`}${often}${whenSaid(fact.when)}`;
      case 'work':
        return `${fact.done ? '' : 'not '}${fact.what.v} ${where}${whenSaid(fact.when)}`;
      case 'condition':
        return `${fact.holds ? '' : 'not '}${fact.what.v}${where ? ` ${where}` : ''}${whenSaid(fact.when)}`;
      case 'spec':
        if (fact.over) return `spec ${where} ${amountSaid(fact.high)} in ${amountSaid(fact.over)}`;
        if (fact.low.si === fact.high.si) return `spec ${fact.what.v} ${where} ${amountSaid(fact.high)}`;
        return `spec ${fact.what.v} ${where} between ${amountSaid(fact.low)} and ${amountSaid(fact.high)}`;
    }
  })();
  return `${told}${body}`.replace(/\s+/g, ' ').trim();
};
