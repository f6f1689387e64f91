/** How the page writes times and figures. */
import { showAmount } from '../server/core/amount.ts';
import { unitNames, type Unit } from '../server/core/units.ts';

export const isUnit = (name: string): name is Unit => (unitNames as readonly string[]).includes(name);

/** "13 1/4" and "in" apart, so that the figure can stand large and the unit small. */
export const figureOf = (si: number, unit: string, pm: number): { figure: string; unit: string } => {
  if (!isUnit(unit)) return { figure: String(si), unit };
  const text = showAmount(si, unit, pm);
  return text.endsWith(` ${unit}`) ? { figure: text.slice(0, -unit.length - 1), unit } : { figure: text, unit: '' };
};

const clocks = new Map<string, Intl.DateTimeFormat>();
const format = (zone: string | undefined, options: Intl.DateTimeFormatOptions, name: string): Intl.DateTimeFormat => {
  const key = `${name} ${zone ?? ''}`;
  let f = clocks.get(key);
  if (!f) {
    try {
      f = new Intl.DateTimeFormat('en-GB', { ...options, timeZone: zone });
    } catch {
      f = new Intl.DateTimeFormat('en-GB', options);
    }
    clocks.set(key, f);
  }
  return f;
};

/** "9:05" on the coach's wall clock. */
export const clock = (at: number, zone?: string): string =>
  format(zone, { hour: 'numeric', minute: '2-digit', hourCycle: 'h23' }, 'clock')
    .format(at)
    .replace(/^0(?=\d)/, '');

/** "Tue 3 Feb". */
export const day = (at: number, zone?: string): string =>
  format(zone, { weekday: 'short', day: 'numeric', month: 'short' }, 'day').format(at).replace(',', '');

export const date = (at: number, zone?: string): string =>
  format(zone, { day: 'numeric', month: 'long', year: 'numeric' }, 'date').format(at);

export type Verdict = 'within' | 'low' | 'high' | 'cannot tell' | 'no limit';
/** Shape first, word beside it: the mark has to be told apart in one colour. */
export const verdictMark = (v: Verdict | undefined): { mark: string; words: string } => {
  switch (v) {
    case 'low':
      return { mark: '▼', words: 'low' };
    case 'high':
      return { mark: '▲', words: 'high' };
    case 'within':
      return { mark: '■', words: 'in limits' };
    case 'cannot tell':
      return { mark: '?', words: 'cannot tell yet' };
    case 'no limit':
    case undefined:
      return { mark: '', words: '' };
  }
};

/** "5 min", "1 h 20", "40 s". */
export const minutes = (m: number): string => {
  if (m < 1) return `${Math.max(1, Math.round(m * 60))} s`;
  const whole = Math.round(m);
  if (whole < 60) return `${whole} min`;
  const rest = whole % 60;
  return rest === 0 ? `${whole / 60} h` : `${Math.floor(whole / 60)} h ${rest}`;
};
