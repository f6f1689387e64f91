/** Numbers as they are shown: rounded to the digits they can carry, in the unit they were typed in or the sheet's. */
import { type Amount, showAmount } from '../core/amount.ts';
import { convertedHalf, convertedText } from '../core/limit-text.ts';
import { type Dimension, type Unit, dimensionOf, fromSi, stepFromSi, stepToSi } from '../core/units.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Shown } from './finding.ts';

type More = {
  /** A change, without a zero point. */ difference?: boolean;
  /** 95 % interval, SI. */ low?: number;
  high?: number;
};

/** Seconds from two minutes up as a person says them: "5 1/2 min", "5 min 37 s". Null where seconds or their unit stay. */
const minutesSaid = (value: number, unit: Unit, pm: number): string | null => {
  if (unit !== 's' || value < 119.5) return null;
  const whole = pm > 15 ? Math.round(value / 30) * 30 : Math.round(value);
  const [minutes, seconds] = [Math.floor(whole / 60), whole % 60];
  return seconds === 0 ? `${minutes} min` : seconds === 30 ? `${minutes} 1/2 min` : `${minutes} min ${seconds} s`;
};

const amountText = (value: number, unit: Unit, pm: number, difference: boolean): string =>
  minutesSaid(value, unit, pm) ?? showAmount(value, unit, pm, difference);

/** `value` (SI) as it is shown in `unit`; `pm` half the resolution it can carry, SI. */
export const shown = (value: number, unit: Unit, pm: number, more: More = {}): Shown => ({
  si: value,
  pm,
  unit,
  text: amountText(value, unit, pm, more.difference ?? false),
  ...(more.low === undefined ? {} : { low: more.low }),
  ...(more.high === undefined ? {} : { high: more.high }),
});

/** What was typed, said plainly with its unit: "95 psi", "10 to 12 psi", "about 90 psi". */
export const typed = (amount: Amount, difference = false): string => {
  const { unit, pm } = amount;
  const text = amountText(amount.si, unit, pm, difference);
  const about = amount.about ? `${amount.about} ` : '';
  return about + (amount.to === undefined ? text : `${text} to ${amountText(amount.to, unit, pm, difference)}`);
};

/** A sheet's or note's amount: its own writing where the unit is the wanted one, else converted. */
export const shownAmount = (amount: Amount, unit: Unit = amount.unit): Shown =>
  unit === amount.unit
    ? { si: amount.si, pm: amount.pm, unit, text: amount.text }
    : { si: amount.si, pm: convertedHalf(unit, amount.pm), unit, text: convertedText(amount.si, unit, amount.pm) };

/** The sheet's own unit for a dimension it names one for, else a plain one. */
export const sheetUnit = (dimension: Dimension, sheet: Sheet): Unit => {
  const { units } = sheet;
  const metric = units.length !== 'in' && units.length !== 'ft';
  const table: Record<Dimension, Unit> = {
    pressure: units.pressure,
    length: units.length,
    temperature: units.temperature,
    volume: units.volume,
    mass: units.mass,
    torque: units.torque,
    flow: metric ? 'L/min' : 'cfm',
    area: metric ? 'cm2' : 'in2',
    rate: rateUnit(units.pressure),
    angle: 'deg',
    duration: 'min',
    voltage: 'V',
    current: 'A',
    resistance: 'ohm',
    ratio: '%',
    frequency: 'Hz',
    turns: 'turn',
    count: 'count',
    density: 'SG',
    speed: 'm',
  };
  return table[dimension];
};

/** psi per minute for psi and inches of mercury, kPa per minute for the rest. */
export const rateUnit = (pressure: Unit): Unit => (pressure === 'psi' || pressure === 'inHg' ? 'psi/min' : 'kPa/min');

const plural = (n: string, unit: string): string => `${n} ${unit}${n === '1' ? '' : 's'}`;
const roundTo = (value: number, step: number): number => Math.round(value / step) * step;

/** Seconds in an owner's words: "40 minutes", "2 1/2 hours", "9 hours", "3 days". */
export const spell = (seconds: number): string => {
  if (!Number.isFinite(seconds)) return 'for good';
  const minutes = seconds / 60;
  if (minutes < 1) return plural(`${Math.max(0, Math.round(seconds))}`, 'second');
  if (minutes < 10) return plural(`${Math.round(minutes)}`, 'minute');
  if (minutes < 57.5) return plural(`${roundTo(minutes, 5)}`, 'minute');
  const hours = minutes / 60;
  if (hours < 5.75) {
    const halves = Math.round(hours * 2);
    const whole = Math.floor(halves / 2);
    return halves % 2 ? `${whole} 1/2 hours` : plural(`${whole}`, 'hour');
  }
  if (hours < 36) return plural(`${Math.round(hours)}`, 'hour');
  const days = hours / 24;
  if (days < 60) return plural(`${Math.round(days)}`, 'day');
  return plural(`${Math.round(days / 30.4)}`, 'month');
};

const clocks = new Map<string, Intl.DateTimeFormat>();

/** Clock time on the coach's wall, "9:35". */
export const clock = (at: number, zone: string): string => {
  let format = clocks.get(zone);
  if (!format) {
    // Making one costs more than all the judging of a note.
    format = new Intl.DateTimeFormat('en-GB', { timeZone: zone, hour: 'numeric', minute: '2-digit' });
    clocks.set(zone, format);
  }
  return format.format(at).replace(/^0/, '');
};

/** A distance on the road: whole miles or kilometres. */
export const distanceText = (metres: number, unit: Unit): string => showAmount(metres, unit, stepToSi(0.5, unit));

/** Digits for a plain number: three significant ones at most. */
export const plain = (value: number): string => `${Number(value.toPrecision(3))}`;

export const inUnit = (value: number, unit: Unit, difference = false): number =>
  difference ? stepFromSi(value, unit) : fromSi(value, unit);

export const sameDimension = (a: Unit, b: Unit): boolean => dimensionOf(a) === dimensionOf(b);

/** Turns to the quarter that a wrench can be trusted with: "4 turns", "about 5 1/4 turns". */
export const quarterTurns = (turns: number): string => {
  const size = Math.abs(turns);
  const quarters = Math.round(size * 4);
  if (quarters === 0) return 'less than 1/4 turn';
  const whole = Math.floor(quarters / 4);
  const part = ['', '1/4', '1/2', '3/4'][quarters % 4]!;
  const text = [whole > 0 ? `${whole}` : '', part].filter((t) => t !== '').join(' ');
  return `${Math.abs(quarters / 4 - size) > 0.01 ? 'about ' : ''}${text} turn${quarters > 4 ? 's' : ''}`;
};
