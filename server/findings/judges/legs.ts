/** The circuit of the pump leg by leg: which leg loses more than its copper or contact should. */
import { takePlace } from '../../../intents/place.ts';
import type { ReadingFact } from '../../../intents/shapes.ts';
import { roomTemperature } from '../../core/air.ts';
import { type Leg, guiltyLeg } from '../../core/circuit-legs.ts';
import { si } from '../../core/quantity.ts';
import { dropOf, gaugeName, wireResistance } from '../../core/wire.ts';
import { type Case, type Input, type Judge, inputOf, latest, middle, practice, readings, spread } from '../case.ts';
import type { Finding } from '../finding.ts';
import { shown } from '../show.ts';

/** The order in which current passes: points at which volts are read against ground. */
const chain = [
  'battery',
  'breaker',
  'fuse',
  'key switch',
  'switch input',
  'pressure switch',
  'switch output',
  'relay',
  'relay output',
  'motor',
] as const;
/** A good switch, fuse or joint loses about this much at a pump's current. Common practice, no source. */
const contact = 0.1;
const moment = 10 * 60_000;

type Read = { name: string; drop: number; pm: number; because: string[]; inputs: Input[] };

/** Drops measured over a leg (one told from battery to motor is the whole way, no leg), and differences of points along the feed, newest first come. */
const legsOf = (c: Case, near: number): Read[] => {
  const out: Read[] = [];
  const drops = new Map<string, ReadingFact>();
  for (const f of readings(
    c,
    'voltage drop',
    (p) => takePlace(p)?.part !== undefined && !/^(motor|pump|battery)$/.test(p),
  ))
    if (Math.abs(f.at - near) <= moment) drops.set(f.where.v, f);
  for (const [place, f] of drops)
    out.push({
      name: place,
      drop: middle(f.amount.v),
      pm: spread(f.amount.v),
      because: [f.id],
      inputs: [inputOf(`drop over ${place}`, f)],
    });
  const points = chain.flatMap((part) => {
    const f = readings(c, 'voltage', (p) => p === part).findLast((r) => Math.abs(r.at - near) <= moment);
    return f ? [{ part, f }] : [];
  });
  if (points.length >= 3)
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1]!, points[i]!];
      out.push({
        name: `${a.part} to ${b.part}`,
        drop: middle(a.f.amount.v) - middle(b.f.amount.v),
        pm: Math.hypot(spread(a.f.amount.v), spread(b.f.amount.v)),
        because: [a.f.id, b.f.id],
        inputs: [inputOf(`volts at ${a.part}`, a.f), inputOf(`volts at ${b.part}`, b.f)],
      });
    }
  return out;
};

/** What a good leg of that name loses, V. */
const due = (c: Case, name: string, current: number): { v: number; input: Input } => {
  const wire =
    name === 'ground'
      ? c.sheet.electrics?.ground
      : /feed cable|to motor/.test(name)
        ? c.sheet.electrics?.feed
        : undefined;
  if (!wire)
    return {
      v: contact,
      input: { name: `${name} should lose`, text: `${contact} V`, from: 'common practice, no source' },
    };
  const field = name === 'ground' ? 'electrics.ground' : 'electrics.feed';
  const v = dropOf(si(current), wireResistance(wire.awg, si(wire.length.si), roomTemperature));
  return {
    v,
    input: {
      name: `${name} should lose`,
      text: `${shown(v, 'V', 0.005).text}: ${wire.length.text} of AWG ${gaugeName(wire.awg)}, 20 C assumed`,
      from: `sheet: ${field}`,
    },
  };
};

/**
 * What a guilty leg is to the diagnosis. A leg between two points is the cable that leads there, its joints and what it
 * ends in: past a relay read at one point only, mostly cable and joints.
 */
const guiltyAs: readonly (readonly [leg: RegExp, outcome: string])[] = [
  [/^ground/, 'ground'],
  [/^(?:relay|relay to relay output)$/, 'relay'],
  [/^(?:pressure switch|key switch)$|^(?:switch input|pressure switch) to /, 'switch'],
  [/^(?:feed cable|fuse|breaker|battery)\b| to /, 'feed'],
];

const judgeLegs = (c: Case, fresh: ReadingFact): Finding | null => {
  const amps = latest(c, 'current', (p) => /^(?:motor|pump|)$/.test(p));
  const near = amps && Math.abs(amps.at - fresh.at) <= moment ? amps : null;
  const range = c.sheet.pump?.current;
  const current = near ? middle(near.amount.v) : range ? (range.low.si + range.high.si) / 2 : null;
  const read = legsOf(c, fresh.at);
  if (read.length === 0) return null;
  const because = [...new Set([...read.flatMap((r) => r.because), ...(near ? [near.id] : [])])];
  if (current === null || !(current > 0))
    return {
      key: 'legs@circuit',
      verdict: 'cannot tell',
      words: 'the legs cannot be judged without the current: read amps at the same moment',
      because,
      why: {
        formula: 'drop over a leg against I R of its copper',
        inputs: read.flatMap((r) => r.inputs),
        source: practice(),
        notes: [],
      },
      wants: { field: 'pump.current', question: 'How many amps does the pump draw as it runs?' },
    };
  const dues = read.map((r) => due(c, r.name, current));
  const legs = read.map((r, i): Leg => ({ name: r.name, drop: si(r.drop), due: si(dues[i]!.v) }));
  const slack = Math.max(0.1, ...read.map((r) => r.pm));
  const guilt = guiltyLeg(legs, si(current), slack);
  const text = (v: number): string => shown(v, 'V', 0.05, { difference: true }).text;
  return {
    key: 'legs@circuit',
    verdict: guilt ? 'high' : 'within',
    words: guilt
      ? `${guilt.leg.name} loses ${text(guilt.leg.drop)}, should be about ${text(guilt.leg.due)}: the bad leg`
      : `no leg measured loses more than it should (${read.map((r) => `${r.name} ${text(r.drop)}`).join(', ')})`,
    ...(guilt ? { amount: shown(guilt.leg.drop, 'V', 0.05, { difference: true }) } : {}),
    limit: {
      high: shown((guilt?.leg.due ?? contact) + slack, 'V', 0.05, { difference: true }),
      source:
        guilt && /ground|feed|motor/.test(guilt.leg.name)
          ? { kind: 'physics', words: `I R of the copper, and ${text(slack)} for joints (common practice, no source)` }
          : practice(),
    },
    because,
    why: {
      formula: 'drop of each leg less I R of its copper at that current; the largest excess is guilty',
      inputs: [
        ...read.flatMap((r) => r.inputs),
        near
          ? inputOf('current', near)
          : {
              name: 'current',
              text: `${shown(current, 'A', 0.5).text}, middle of the range`,
              from: 'sheet: pump.current',
            },
        ...dues.map((d) => d.input),
      ],
      source: practice(),
      notes: [
        'all read with the pump running, at the same moment',
        ...(guilt
          ? [`${shown(guilt.ohm, 'mohm', Math.max(0.0005, guilt.ohm * 0.05)).text} more than it should have`]
          : []),
      ],
    },
    ...(guilt
      ? {
          evidence: guiltyAs
            .filter(
              ([leg], i) => leg.test(guilt.leg.name) && !guiltyAs.slice(0, i).some(([l]) => l.test(guilt.leg.name)),
            )
            .map(([, outcome]) => ({ see: 'motor legs', outcome })),
        }
      : {}),
    drawing: {
      is: 'legs',
      legs: legs.map((l) => ({ name: l.name, text: `${text(l.drop)} (${text(l.due)})`, guilty: l === guilt?.leg })),
    },
  };
};

export const legs: Judge = {
  subject: 'legs of the circuit',
  judge: (c) => {
    const isLeg = (f: ReadingFact): boolean =>
      (f.what.v === 'voltage drop' &&
        takePlace(f.where.v)?.part !== undefined &&
        !/^(motor|pump|battery)$/.test(f.where.v)) ||
      (f.what.v === 'voltage' &&
        (chain as readonly string[]).includes(f.where.v) &&
        !/^(motor|battery)$/.test(f.where.v));
    const fresh = c.fresh.filter((f): f is ReadingFact => f.is === 'reading').filter(isLeg);
    const last = fresh.at(-1);
    const found = last ? judgeLegs(c, last) : null;
    return found ? [found] : [];
  },
};
