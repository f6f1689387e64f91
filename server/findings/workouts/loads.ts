/** What a pressure carries, what a weight presses, a full water tank, natural frequency. */
import { gravity, massCarried, naturalFrequency, pressureFor, rideExponent, springRate } from '../../core/spring.ts';
import { si } from '../../core/quantity.ts';
import { bellowsPressure } from '../bellows-pressure.ts';
import { type Input, physics, sheetInput } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import { shown, sheetUnit } from '../show.ts';
import { amountInput, type Question, said, type Workout, type Worked } from './question.ts';

type Side = { area: number; lever: number; perSide: number; inputs: Input[] };

const sideOf = (q: Question): Side | null => {
  const { area, perSide, leverRatio } = q.c.sheet.springs ?? {};
  if (!area) return null;
  return {
    area: area.si * (perSide ?? 1),
    lever: leverRatio ?? 1,
    perSide: perSide ?? 1,
    inputs: [
      sheetInput('area of one bellows', area, 'springs.area'),
      { name: 'bellows a side', text: `${perSide ?? 1}`, from: perSide ? 'sheet: springs.perSide' : 'assumed' },
      { name: 'lever ratio', text: `${leverRatio ?? 1}`, from: leverRatio ? 'sheet: springs.leverRatio' : 'assumed' },
    ],
  };
};

const needArea: Worked = {
  words: 'the area of the bellows is needed for that',
  lines: [],
  wants: { field: 'springs.area', question: 'What is the effective area of one bellows?' },
};

/** Gauge pressure that `mass` more on one side adds, Pa. */
const pressureOf = (mass: number, side: Side): number => pressureFor(si((mass * gravity) / side.lever), si(side.area));

const waterTank = (q: Question): Worked | null => {
  const carried = said(q, 'volume')[0];
  const inTank = /(?:water|fresh).*tank|tank.*(?:water|fresh)|full (?:of )?(?:water|fresh)/.test(q.words);
  // more water than the air tank holds is a load
  const load = carried && /\bwater\b/.test(q.words) && carried.si > (q.c.sheet.supply?.tank?.si ?? Infinity);
  if (!inTank && !load) return null;
  // a pump-up with water in the air tank is another sum
  if (/\btakes?\b|pump/.test(q.words)) return null;
  const volume = said(q, 'volume')[0] ?? q.c.sheet.weights?.waterTank;
  if (!volume)
    return {
      words: 'how big is the water tank?',
      lines: [],
      wants: { field: 'weights.waterTank', question: 'How much does the fresh-water tank hold?' },
    };
  const side = sideOf(q);
  if (!side) return needArea;
  const mass = volume.si * 998;
  const unit = sheetUnit('pressure', q.c.sheet);
  const weight = sheetUnit('mass', q.c.sheet);
  return {
    words: `${carried ? `${carried.text} of water weighs` : 'full it weighs'} ${shown(mass, weight, 2).text}: up to ${shown(pressureOf(mass, side), unit, 1500).text} more in one side's bellows if it all stands there, ${shown(pressureOf(mass / 2, side), unit, 1500).text} in each if it is shared`,
    lines: [
      'the valves keep the height; the pressure shows the load',
      "weigh and measure with it as the sheet's figures were taken",
      'assumed: it stands over the rear axles; further forward the rear carries less of it',
    ],
    why: {
      formula: 'm g / (lever x area of the side)',
      inputs: [
        said(q, 'volume')[0] ? amountInput('water', volume) : sheetInput('water tank', volume, 'weights.waterTank'),
        ...side.inputs,
      ],
      source: physics('F = p A'),
      notes: [],
    },
  };
};

const frequency = (q: Question): Worked | null => {
  if (!/frequenc|\bhz\b|bounc|natural|cycles a (?:second|minute)|stiff|spring rate/.test(q.words)) return null;
  const side = sideOf(q);
  const { volume } = q.c.sheet.springs ?? {};
  const bellows = bellowsPressure(q.c, 'left');
  if (!side) return needArea;
  if (!volume)
    return {
      words: 'the volume of the bellows is needed for that',
      lines: [],
      wants: { field: 'springs.volume', question: 'What is the volume of one bellows at ride height?' },
    };
  if (!bellows)
    return {
      words: "the bellows' pressure is needed for that",
      lines: [],
      wants: { field: 'springs.pressure', question: 'What pressure do the bellows carry at ride height?' },
    };
  const { p, input } = atmosphereOf(q.c);
  // At the wheel: stiffness goes with the square of the lever ratio, load with the lever ratio.
  const rate = (n: number): number =>
    springRate(si(bellows.p), si(side.area), si(volume.si * side.perSide), n, p) * side.lever ** 2;
  const mass = massCarried(si(bellows.p), si(side.area), side.lever);
  const ride = naturalFrequency(si(rate(rideExponent)), mass);
  const slow = naturalFrequency(si(rate(1)), mass);
  return {
    words: `about ${ride.toFixed(1)} Hz (${Math.round(ride * 60)} cycles a minute) on the road`,
    lines: [
      `${slow.toFixed(1)} Hz pushed slowly by hand`,
      'nearly the same empty and laden, as air springs are',
      'goes on bouncing more than a cycle and a half: look at the shocks (common practice, no source)',
    ],
    why: {
      formula: 'k = n p_abs A^2 / V; f = sqrt(k/m)/2 pi, at the wheel by the lever ratio',
      inputs: [
        ...side.inputs,
        sheetInput('volume of one bellows', volume, 'springs.volume'),
        bellows.input,
        { name: 'n', text: `${rideExponent}`, from: 'usual for a ride motion, from memory' },
        input,
      ],
      source: physics('air spring on a straight piston, dA/dx = 0'),
      notes: ['tyres not counted'],
    },
  };
};

const load = (q: Question): Worked | null => {
  const [asked] = said(q, 'mass');
  if (!/\bload|weigh|heavy|carr(?:y|ies)/.test(q.words) && !(asked && /pressure|\bpsi\b|\bkpa\b|\bbar\b/.test(q.words)))
    return null;
  const side = sideOf(q);
  if (!side) return needArea;
  const [mass] = said(q, 'mass');
  const unit = sheetUnit('pressure', q.c.sheet);
  if (mass)
    return {
      words: `${mass.text} at the wheels of one side takes ${shown(pressureOf(mass.si, side), unit, 1500).text} in its bellows`,
      lines: ['carried by the air: wheels, axles and arms are not'],
      why: {
        formula: 'p = m g / (lever x area of the side)',
        inputs: [amountInput('mass', mass), ...side.inputs],
        source: physics('F = p A'),
        notes: [],
      },
    };
  const [pressure] = said(q, 'pressure');
  const rows = (['left', 'right'] as const).flatMap((s) => {
    const b = pressure ? { p: pressure.si, input: amountInput('pressure', pressure) } : bellowsPressure(q.c, s);
    return b ? [{ s, ...b }] : [];
  });
  const first = rows[0];
  if (!first)
    return {
      words: "the bellows' pressure is needed for that",
      lines: [],
      wants: { field: 'springs.pressure', question: 'What do the bellows read at ride height?' },
    };
  const kilos = (p: number): string =>
    shown(massCarried(si(p), si(side.area), side.lever), sheetUnit('mass', q.c.sheet), 5).text;
  return {
    words: pressure
      ? `${pressure.text} carries ${kilos(pressure.si)} at the wheels of one side`
      : rows.map((r) => `${r.s} side carries ${kilos(r.p)} at the wheels`).join(', '),
    lines: ['carried by the air: wheels, axles and arms come on top'],
    why: {
      formula: 'm = p A lever / g',
      inputs: [...(pressure ? [first.input] : rows.map((r) => r.input)), ...side.inputs],
      source: physics('F = p A'),
      notes: [],
    },
  };
};

export const loads: Workout = { subject: 'air spring', work: (q) => waterTank(q) ?? frequency(q) ?? load(q) };
