/**
 * The fields of a coach sheet as a person fills them in: what each is called, what it holds, in which unit by default.
 * Data only; the shape itself and its rules are schema.ts. Every field of the shape stands here once.
 */
import type { Dimension, Unit } from '../core/units.ts';

/** `unit`: what a bare number is taken in; 'distance' is the sheet's unit for the road; left out, the sheet's own. */
export type Cell =
  | { is: 'amount'; dimension: Dimension; unit?: Unit | 'distance'; example: string }
  | { is: 'words'; long?: true }
  | { is: 'number'; whole?: true }
  | { is: 'yes' }
  | { is: 'choice'; of: readonly string[] };
export type Part = { readonly key: string; readonly name: string; readonly cell: Cell; readonly must?: true };
export type Field = { readonly path: string; readonly name: string; readonly help?: string } & (
  | { readonly is: 'one'; readonly cell: Cell; readonly must?: true }
  /** Several cells that stand or fall together. */
  | { readonly is: 'set'; readonly parts: readonly Part[] }
  /** Any number of rows of the same cells. */
  | { readonly is: 'rows'; readonly parts: readonly Part[]; readonly row: string }
  /** Any number of the same. */
  | { readonly is: 'list'; readonly cell: Cell; readonly row: string }
);
export type Group = { readonly name: string; readonly help?: string; readonly fields: readonly Field[] };

const amount = (dimension: Dimension, example: string, unit?: Unit | 'distance'): Cell => ({
  is: 'amount',
  dimension,
  example,
  ...(unit === undefined ? {} : { unit }),
});
const pressure = amount('pressure', '120 psi');
const length = amount('length', '13 3/4 in');
const volume = amount('volume', '5 gal');
const minutes = amount('duration', '15 min', 'min');
const seconds = amount('duration', '10 s', 's');
const days = amount('duration', '182 d', 'd');
const angle = amount('angle', '0.5 deg');
const current = amount('current', '22 A');
const voltage = amount('voltage', '11.5 V');
const mass = amount('mass', '4200 lb');

const one = (path: string, name: string, cell: Cell, more: { help?: string; must?: true } = {}): Field => ({
  is: 'one',
  path,
  name,
  cell,
  ...more,
});
const range = (path: string, name: string, cell: Cell, help?: string): Field => ({
  is: 'set',
  path,
  name,
  ...(help === undefined ? {} : { help }),
  parts: [
    { key: 'low', name: 'from', cell, must: true },
    { key: 'high', name: 'to', cell, must: true },
  ],
});
const corner = (path: string, name: string): Field => ({
  is: 'set',
  path,
  name,
  parts: [
    { key: 'nominal', name: 'should be', cell: length, must: true },
    { key: 'tolerance', name: 'more or less', cell: amount('length', '1/4 in'), must: true },
  ],
});
const cable = (path: string, name: string): Field => ({
  is: 'set',
  path,
  name,
  parts: [
    { key: 'awg', name: 'gauge (AWG)', cell: { is: 'number', whole: true }, must: true },
    { key: 'length', name: 'length', cell: amount('length', '24 ft', 'ft'), must: true },
  ],
});
const words: Cell = { is: 'words' };
const yes: Cell = { is: 'yes' };
const units = (of: readonly string[]): Cell => ({ is: 'choice', of });

export const sheetGroups: readonly Group[] = [
  {
    name: 'The coach',
    fields: [
      one('id', 'short name', words, { must: true, help: 'lower-case letters, digits and dashes; it never changes' }),
      one('coach', 'name of the coach', words, { must: true }),
      one('source', 'where these figures come from', words, {
        must: true,
        help: "maker's manual section 8, owner's card",
      }),
      one('zone', 'time zone', words, { must: true, help: 'such as America/Denver' }),
      one('traffic', 'built to drive on the', units(['right', 'left']), { help: 'what "curb side" means' }),
      one('altitude', 'altitude of the shop', amount('length', '1200 ft', 'ft')),
    ],
  },
  {
    name: 'Units',
    help: 'A bare number typed below is taken in these.',
    fields: [
      one('units.pressure', 'pressure', units(['psi', 'kPa', 'bar']), { must: true }),
      one('units.length', 'heights', units(['in', 'mm', 'cm']), { must: true }),
      one('units.temperature', 'temperature', units(['F', 'C']), { must: true }),
      one('units.volume', 'volume', units(['gal', 'L']), { must: true }),
      one('units.distance', 'distance', units(['mi', 'km']), { must: true }),
      one('units.mass', 'weight', units(['lb', 'kg']), { must: true }),
      one('units.torque', 'torque', units(['lbf ft', 'N m']), { must: true }),
    ],
  },
  {
    name: 'Heights',
    fields: [
      one('heights.measured', 'measured from where to where', words, { must: true }),
      corner('heights.leftFront', 'left front height'),
      corner('heights.rightFront', 'right front height'),
      corner('heights.leftRear', 'left rear height'),
      corner('heights.rightRear', 'right rear height'),
      one('heights.sideToSide', 'side to side, at most', amount('length', '1/4 in')),
      one('heights.toStops', 'ride height down to the stops', length),
      one('heights.tapeStep', 'finest mark of the tape', amount('length', '1/8 in')),
      one('heights.torsionPerTurn', 'front height for a turn of the adjuster', amount('length', '3/16 in')),
      one('heights.frontBy', 'front height is set by', words),
    ],
  },
  {
    name: 'Air supply',
    fields: [
      range('supply.cutIn', 'cut-in pressure', pressure),
      range('supply.cutOut', 'cut-out pressure', pressure),
      one('supply.tank', 'volume of the air tank', volume),
      one('supply.lines', 'volume of lines and valve bodies', volume),
      one('supply.relief', 'relief opens at', pressure),
      one('supply.protection', 'protection valve opens at', pressure, { help: 'the suspension is fed only above it' }),
      one('supply.regulator', 'regulator set at', pressure),
      one('supply.gaugeStep', 'finest mark of the tank gauge', amount('pressure', '2 psi')),
      {
        is: 'set',
        path: 'supply.leakLimit',
        name: 'largest fall of the tank allowed',
        parts: [
          { key: 'fall', name: 'fall', cell: amount('pressure', '3 psi'), must: true },
          { key: 'over', name: 'in', cell: minutes, must: true },
        ],
      },
      one('supply.dryer', 'has an air dryer', yes),
      one('supply.unloader', 'has an unloader', yes),
      one('supply.relay', 'pump is switched by a relay', yes),
      one('supply.drainEvery', 'tank drained every', days),
    ],
  },
  {
    name: 'Pump',
    fields: [
      {
        is: 'rows',
        path: 'pump.delivery',
        name: 'free air delivered',
        row: 'delivery',
        help: 'two rows or more, pressures rising',
        parts: [
          { key: 'at', name: 'at', cell: pressure, must: true },
          { key: 'flow', name: 'flow', cell: amount('flow', '1.4 cfm'), must: true },
        ],
      },
      {
        is: 'set',
        path: 'pump.pumpUp',
        name: 'pump-up time',
        parts: [
          { key: 'from', name: 'from', cell: pressure, must: true },
          { key: 'to', name: 'to', cell: pressure, must: true },
          { key: 'time', name: 'in', cell: minutes, must: true },
        ],
      },
      range('pump.current', 'current of the motor', current),
      one('pump.minVolts', 'volts at the motor, at least', voltage),
      one('pump.runLimit', 'runs at a stretch, at most', minutes),
      one('pump.rest', 'rest after that', minutes),
      one('pump.duty', 'share of the time it may run', amount('ratio', '35 %')),
      one('pump.fuse', 'fuse', current),
    ],
  },
  {
    name: 'Height valves',
    fields: [
      one('valves.deadBand', 'dead band at the end of the arm, either side', amount('length', '5/16 in')),
      range('valves.delay', 'delay', seconds),
      one('valves.armLength', 'length of the arm', length),
      one('valves.heightPerArm', 'height for a travel of the arm, times', { is: 'number' }),
      one('valves.solenoid', 'a solenoid shuts it off with the key', yes),
      one('valves.threadTape', 'thread tape is allowed on fittings', yes),
    ],
  },
  {
    name: 'Levelling panel',
    help: 'The words that stand on this panel. Leave all empty where it is not known; say so where there is none.',
    fields: [
      one('panel.auto', 'drives itself, for the road', words, { must: true }),
      one('panel.fill', 'fills', words, { must: true }),
      one('panel.empty', 'empties', words, { must: true }),
      one('panel.shut', 'shut, holds what it has', words, { must: true }),
      one('panel.ownCheck', 'fills through a check of its own', yes),
    ],
  },
  {
    name: 'Bellows',
    fields: [
      one('springs.perSide', 'bellows on a side', { is: 'number', whole: true }),
      one('springs.area', 'working area of one bellows', amount('area', '42 in2')),
      one('springs.volume', 'volume of one bellows at ride height', amount('volume', '420 in3')),
      one('springs.rideLength', 'plate to plate at ride height', length),
      one('springs.stopLength', 'plate to plate on the stops', length),
      range('springs.pressure.left', 'pressure of the left bellows', pressure),
      range('springs.pressure.right', 'pressure of the right bellows', pressure),
      one('springs.leverRatio', 'travel of the bellows for travel at the wheel', { is: 'number' }),
      one('springs.foldPressure', 'least pressure to keep the fold', pressure),
    ],
  },
  {
    name: 'Weights and tyres',
    fields: [
      one('weights.leftFront', 'weight left front', mass),
      one('weights.rightFront', 'weight right front', mass),
      one('weights.leftRear', 'weight left rear', mass),
      one('weights.rightRear', 'weight right rear', mass),
      one('weights.waterTank', 'fresh water tank holds', volume),
      one('tyres.front', 'front tyres', pressure),
      one('tyres.rear', 'rear tyres', pressure),
      one('tyres.at', 'cold, at', amount('temperature', '68 F')),
      one('tyres.diameter', 'diameter of the tyre', length),
      one('tyres.rim', 'diameter of the rim', length),
      {
        is: 'set',
        path: 'tyres.rise',
        name: 'a corner rises from the floor with its tyres',
        help: 'tape it, let 10 psi or 50 kPa more into its cold tyres, tape it again',
        parts: [
          { key: 'height', name: 'by', cell: amount('length', '1/8 in'), must: true },
          { key: 'pressure', name: 'for this much more in the tyre', cell: amount('pressure', '10 psi'), must: true },
        ],
      },
    ],
  },
  {
    name: 'Alignment',
    fields: [
      range('alignment.toe', 'toe of a wheel', angle, 'in is positive'),
      range('alignment.camber', 'camber of a wheel', angle, 'top out is positive'),
      one('alignment.thrust', 'thrust angle, at most', angle),
      one('alignment.track', 'track', length),
      one('alignment.wheelbase', 'wheelbase', length),
      one('alignment.tandemSpacing', 'between the tandem axles', length),
      one('alignment.bracket.toeBolts', 'bracket: between the bolts that change toe', length, { must: true }),
      one('alignment.bracket.camberBolts', 'bracket: between the bolts that change camber', length, { must: true }),
      {
        is: 'list',
        path: 'alignment.bracket.shims',
        name: 'bracket: shims there are',
        cell: amount('length', '1/32 in'),
        row: 'shim',
      },
      one('alignment.bracket.most', 'bracket: most shims at a bolt', amount('length', '1/4 in')),
    ],
  },
  {
    name: 'Electrics',
    fields: [
      one('electrics.battery.kind', 'battery', units(['flooded', 'AGM', 'gel']), { must: true }),
      one('electrics.battery.cca', 'cold cranking current', amount('current', '850 A')),
      cable('electrics.feed', 'feed cable of the pump'),
      cable('electrics.ground', 'ground cable of the pump'),
      one('electrics.drop', 'voltage drop, both legs, at most', amount('voltage', '0.6 V')),
    ],
  },
  {
    name: 'Torques, lines, service',
    fields: [
      {
        is: 'rows',
        path: 'torques',
        name: 'torques',
        row: 'torque',
        parts: [
          { key: 'what', name: 'of what', cell: words, must: true },
          { key: 'torque', name: 'torque', cell: amount('torque', '22 lbf ft'), must: true },
        ],
      },
      {
        is: 'rows',
        path: 'lines',
        name: 'air lines',
        row: 'line',
        parts: [
          { key: 'what', name: 'which line', cell: words, must: true },
          { key: 'label', name: 'its colour or label', cell: words, must: true },
          { key: 'od', name: 'outside', cell: amount('length', '1/4 in') },
        ],
      },
      {
        is: 'rows',
        path: 'service',
        name: 'service',
        row: 'service item',
        help: 'what, and every so many days or so far, whichever comes first',
        parts: [
          { key: 'what', name: 'what', cell: words, must: true },
          { key: 'every', name: 'every', cell: days },
          { key: 'distance', name: 'or every', cell: amount('length', '5000 mi', 'distance') },
        ],
      },
    ],
  },
  {
    name: 'Shop',
    help: "Used where the shop's own settings do not say.",
    fields: [
      one('shop.name', 'name of the shop', words),
      one('shop.labour', 'labour an hour', { is: 'number' }),
      one('shop.currency', 'currency', words),
    ],
  },
];

export const sheetFields: readonly Field[] = sheetGroups.flatMap((g) => g.fields);

/** A path as the shape names it ("heights.leftRear.nominal") in words: "left rear height, should be". */
export const fieldName = (path: string): string => {
  const field = sheetFields.find((f) => path === f.path || path.startsWith(`${f.path}.`));
  if (!field) {
    const group = sheetFields.find((f) => f.path.startsWith(`${path}.`));
    return path === '' ? 'whole sheet' : group ? `${path} as a whole` : path;
  }
  const rest = path
    .slice(field.path.length + 1)
    .split('.')
    .filter(Boolean);
  if (rest.length === 0 || field.is === 'one') return field.name;
  const parts = field.is === 'list' ? [] : field.parts;
  const row = field.is === 'rows' || field.is === 'list' ? `, row ${Number(rest.shift()) + 1}` : '';
  const part = parts.find((p) => p.key === rest[0]);
  return `${field.name}${row}${part ? `, ${part.name}` : ''}`;
};
