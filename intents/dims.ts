/** Which dimensions a measure may have, which measure a dimension means, and which parts carry what. Data only. */
import type { Dimension, Unit } from '../server/core/units.ts';
import { dimensionOf } from '../server/core/units.ts';
import { dimension, type Amounting } from './amount-item.ts';
import { heightRange } from './limits.ts';
import type { PlaceParts } from './place.ts';
import type { Context, Measure } from './shapes.ts';

export const measureDims: Readonly<Partial<Record<Measure, readonly Dimension[]>>> = {
  pressure: ['pressure'],
  'cut-in': ['pressure'],
  'cut-out': ['pressure'],
  'pump-up': ['pressure'],
  'pressure fall': ['pressure'],
  'pressure rise': ['pressure'],
  height: ['length'],
  'height fall': ['length'],
  'height off': ['length'],
  voltage: ['voltage'],
  'voltage drop': ['voltage'],
  current: ['current'],
  resistance: ['resistance'],
  temperature: ['temperature'],
  humidity: ['ratio'],
  toe: ['length', 'angle'],
  camber: ['angle', 'length'],
  thrust: ['angle', 'length'],
  'tyre diameter': ['length'],
  'rim diameter': ['length'],
  torque: ['torque'],
  load: ['mass'],
  'on time': ['duration'],
  'off time': ['duration'],
  'run time': ['duration'],
  'restart time': ['duration'],
  'standing time': ['duration'],
  'settling time': ['duration'],
  delay: ['duration'],
  'dead band': ['length'],
  'arm length': ['length'],
  'distance driven': ['length'],
  odometer: ['length'],
  'wire length': ['length'],
  'wire gauge': ['count'],
  flow: ['flow'],
  altitude: ['length'],
  barometer: ['pressure'],
  'specific gravity': ['density'],
  'load test': ['voltage'],
  'free play': ['length'],
  'shim thickness': ['length'],
  'bubble size': ['length'],
  'water drained': ['volume'],
  turns: ['turns'],
  count: ['count'],
};
export const byDimension: Readonly<Partial<Record<Dimension, Measure>>> = {
  pressure: 'pressure',
  length: 'height',
  voltage: 'voltage',
  current: 'current',
  resistance: 'resistance',
  temperature: 'temperature',
  mass: 'load',
  torque: 'torque',
  volume: 'water drained',
  flow: 'flow',
  turns: 'turns',
};
export const timeMeasures: readonly Measure[] = [
  'on time',
  'off time',
  'run time',
  'standing time',
  'settling time',
  'restart time',
  'delay',
];
export const voltParts: ReadonlySet<string> = new Set([
  'battery',
  'motor',
  'relay',
  'relay coil',
  'relay output',
  'switch input',
  'switch output',
  'feed cable',
  'fuse',
  'breaker',
  'key switch',
  'ground',
  'solenoid',
]);
export const pressureParts: ReadonlySet<string> = new Set([
  'tank',
  'bellows',
  'tyre',
  'gauge',
  'test port',
  'supply line',
  'panel port',
  'regulator',
  'protection valve',
  'relief',
  'bellows line',
  'height valve',
  'panel feed',
  'discharge line',
  'pump head',
  'dryer',
]);
export const coachSides = (p: PlaceParts): boolean => !p.part && Boolean(p.side ?? p.end);
/** 13 1/4, 3/8: written as a tape is read. */
export const tapeLike = (n: Amounting): boolean =>
  n.step < 1 && Number.isInteger(1 / n.step) && n.step !== 0.1 && n.step !== 0.01;
export const heightUnit = (n: Amounting, context: Context): Unit => (tapeLike(n) ? 'in' : context.lengthUnit);
export const heightLike = (n: Amounting, context: Context): boolean => {
  const unit = heightUnit(n, context);
  const range = heightRange[unit === 'mm' || unit === 'cm' ? unit : 'in'];
  return n.value >= range[0] && n.value <= range[1];
};
/** A length, or a bare number that can be one beside "low" or "high". */
export const lengthy = (n: Amounting, context: Context): boolean => {
  const d = dimension(n);
  return d === 'length' || (d === null && (tapeLike(n) || context.lengthUnit === 'mm' || n.value < 4));
};

/** The coach's own unit for a measure; null where none can be taken for granted. */
export const measureUnit = (
  measure: Measure | null,
  context: Context,
  n: Amounting | null,
  last: Unit | null,
): Unit | null => {
  if (!measure) return null;
  const metric = context.lengthUnit === 'mm';
  switch (measureDims[measure]?.[0]) {
    case 'pressure':
      return pressureUnit(context, n, last);
    case 'length':
      if (measure === 'altitude') return metric ? 'm' : 'ft';
      if (measure === 'odometer' || measure === 'distance driven') return metric ? 'km' : 'mi';
      if (measure === 'height') return n ? heightUnit(n, context) : context.lengthUnit;
      if (
        measure === 'dead band' ||
        measure === 'free play' ||
        measure === 'shim thickness' ||
        measure === 'height off'
      )
        return n && tapeLike(n) ? 'in' : null;
      return null;
    case 'voltage':
      return 'V';
    case 'current':
      return 'A';
    case 'resistance':
      return 'ohm';
    case 'temperature':
      return metric ? 'C' : 'F';
    case 'ratio':
      return '%';
    case 'torque':
      return metric ? 'N m' : 'lbf ft';
    case 'mass':
      return metric ? 'kg' : 'lb';
    case 'count':
      return 'count';
    case 'turns':
      return 'turn';
    case 'density':
      return 'SG';
    default:
      return null;
  }
};
/** The pressure unit said last, else the coach's; a kPa coach's "7.2" is bar. */
export const pressureUnit = (context: Context, n: Amounting | null, last: Unit | null): Unit => {
  const unit = last && dimensionOf(last) === 'pressure' ? last : context.pressureUnit;
  if (!n || n.value <= 0) return unit;
  if (unit === 'kPa' && n.value < 13) return 'bar';
  if (unit === 'bar' && n.value > 99 && context.pressureUnit === 'kPa') return 'kPa';
  // no tank holds so many bar: the coach's own unit
  if (unit === 'bar' && n.value > 13 && context.pressureUnit === 'psi') return 'psi';
  return unit;
};
