/**
 * Whether the tank leaks and how fast, from all readings that belong together, or from a fall said with its time. First
 * how long the coach stays level, then the rate against the sheet's limit, or the benchmark where it has none.
 */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { effectiveArea, holeDiameter, massOfFreeAir, roomTemperature, sharpEdge } from '../../core/air.ts';
import { type DecayFit, fallRate, fitDecay, freeAirOfFall } from '../../core/decay.ts';
import { fitLine, z95 } from '../../core/line-fit.ts';
import { kneeOf } from '../../core/fall-shape.ts';
import { type AbsolutePressure, type Temperature, type Volume, si } from '../../core/quantity.ts';
import { readingDeviation } from '../../core/reading-error.ts';
import { higherBellows } from '../bellows-pressure.ts';
import {
  type Case,
  type Input,
  type Judge,
  atmosphereOf,
  benchmark,
  benchmarkRate,
  latest,
  middle,
  sheetInput,
  sheetSource,
  stateAt,
} from '../case.ts';
import type { Drawing, Finding, Source } from '../finding.ts';
import { lasts, spellRange } from '../leak-times.ts';
import { clock, rateUnit, sheetUnit, shown, spell, typed } from '../show.ts';
import {
  type Episode,
  type Timed,
  divisionOf,
  episodeOf,
  fitPoints,
  settleSeconds,
  tankSide,
} from '../tank-episode.ts';
import { seesFall } from '../tank-state.ts';
import { waitFor } from '../wait.ts';
import { switchRange } from './tank-pressure.ts';

type Limit = { rate: number; words: string; source: Source; inputs: Input[] };

const leakLimit = (c: Case): Limit => {
  const limit = c.sheet.supply?.leakLimit;
  return limit
    ? {
        rate: limit.fall.si / limit.over.si,
        words: `${limit.fall.text} in ${limit.over.text}`,
        source: sheetSource('supply.leakLimit'),
        inputs: [{ name: 'limit', text: `${limit.fall.text} in ${limit.over.text}`, from: 'sheet: supply.leakLimit' }],
      }
    : {
        rate: benchmarkRate,
        words: '3 psi in 5 min',
        source: benchmark(),
        inputs: [{ name: 'limit', text: '3 psi in 5 min', from: benchmark().words }],
      };
};

/** Volume that the tank gauge sees in this state, and what it is made of. */
export const joinedVolume = (c: Case, panel: Episode['state']['panel']): { v: Volume; inputs: Input[] } | null => {
  const { tank, lines } = c.sheet.supply ?? {};
  if (!tank) return null;
  const inputs = [sheetInput('tank', tank, 'supply.tank')];
  let v = tank.si;
  if (lines) {
    v += lines.si;
    inputs.push(sheetInput('lines', lines, 'supply.lines'));
  }
  const { volume, perSide } = c.sheet.springs ?? {};
  if (panel === 'fill' && volume && perSide) {
    v += 2 * perSide * volume.si;
    inputs.push(sheetInput(`${2 * perSide} bellows, panel in fill, each`, volume, 'springs.volume'));
  }
  return { v: si(v), inputs };
};

const temperatureOf = (c: Case): { t: Temperature; input: Input } => {
  const read = latest(c, 'temperature', (p) => p === 'ambient' || p === '' || p === 'tank');
  return read
    ? { t: si(read.amount.v.si), input: { name: 'temperature', text: typed(read.amount.v), from: read.id } }
    : { t: roomTemperature, input: { name: 'temperature', text: '20 C', from: 'assumed' } };
};

/** Cooling between first and last reading, where both temperatures are known: ratio T/T0 at each point. */
const cooling = (c: Case, points: readonly Timed[]): { factor: (at: number) => number; note: string } | null => {
  const first = points[0]!.at;
  const last = points.at(-1)!.at;
  const near = (at: number): ReadingFact | undefined =>
    c.facts.find(
      (f): f is ReadingFact =>
        f.is === 'reading' &&
        f.what.v === 'temperature' &&
        /^(?:ambient|tank|)$/.test(f.where.v) &&
        Math.abs(f.at - at) <= 900_000,
    );
  const a = near(first);
  const b = near(last);
  if (!a || !b || a === b || last === first) return null;
  const [t0, t1] = [a.amount.v.si, b.amount.v.si];
  return {
    factor: (at) => (t0 + ((t1 - t0) * (at - first)) / (last - first)) / t0,
    note: `cooling taken out by Gay-Lussac: ${typed(a.amount.v)} at the start (${a.id}), ${typed(b.amount.v)} at the end (${b.id})`,
  };
};

type Case2 = {
  c: Case;
  episode: Episode;
  points: readonly Timed[];
  atmosphere: AbsolutePressure;
  atmosphereInput: Input;
  notes: string[];
  because: string[];
  /** The fall has come to rest since. */
  stopped?: boolean;
};

const chart = (
  points: readonly Timed[],
  fit: DecayFit,
  unit: Extract<Drawing, { is: 'chart' }>['unit'],
  limits: { si: number; label: string }[],
): Drawing => {
  const t0 = points[0]!.at;
  const span = (points.at(-1)!.at - t0) / 1000;
  return {
    is: 'chart',
    unit,
    points: points.map((p) => ({ t: (p.at - t0) / 1000, si: p.p, pm: z95 * p.sd })),
    fit: Array.from({ length: 13 }, (_, i) => ({
      t: (span * 1.5 * i) / 12,
      si: fit.pressureAt((span * 1.5 * i) / 12),
    })),
    limits,
  };
};

/** Whether the fall is straight (a bellows fed from the tank) or slows with the pressure (a hole on the tank), if it shows. */
const shapeOf = (points: readonly Timed[], decayChi2: number): string | null => {
  if (points.length < 4) return null;
  const t0 = points[0]!.at;
  const straight = fitLine(points.map((p) => ({ x: (p.at - t0) / 1000, y: p.p, sd: p.sd }))).chi2;
  if (Math.abs(straight - decayChi2) < 6) return null;
  return straight < decayChi2
    ? 'the fall is straight, as of a tank that feeds a leaking side at constant pressure'
    : 'the fall slows with the pressure, as of a hole on the tank side';
};

/** The finding for points that belong together; `fall` words of the fall itself. */
const leakOf = ({
  c,
  episode,
  points,
  atmosphere,
  atmosphereInput,
  notes,
  because,
  stopped = false,
}: Case2): Finding => {
  const unit = points.at(-1)!.fact.amount.v.unit;
  const perMinute = rateUnit(unit);
  const fit = fitDecay(fitPoints(points), atmosphere);
  const t0 = points[0]!.at;
  const span = (points.at(-1)!.at - t0) / 1000;
  const middleP = fit.pressureAt(span / 2);
  const nowP = Math.max(0, fit.pressureAt(span));
  const perK = fallRate(si(Math.max(0, middleP)), 1, atmosphere);
  const rate = fit.k * perK;
  const sd = fit.kSd * perK;
  const low = rate - z95 * sd;
  const high = rate + z95 * sd;
  const limit = leakLimit(c);
  const falls = low > 0;
  const seen = seesFall(c, episode.state);
  const verdict: Finding['verdict'] =
    low > limit.rate ? 'high' : high < limit.rate ? 'within' : falls && rate > limit.rate ? 'high' : 'cannot tell';
  const wait = verdict === 'cannot tell' ? waitFor(fitPoints(points), limit.rate, rate) : 0;

  const { t, input: tInput } = temperatureOf(c);
  const volume = joinedVolume(c, episode.state.panel);
  const leak = volume ? freeAirOfFall(Math.max(0, rate), volume.v, atmosphere) : null;
  const flowUnit = sheetUnit('flow', c.sheet);
  const other = flowUnit === 'cfm' ? 'L/min' : 'cfm';
  if (leak && volume && falls) {
    const flow = (u: typeof flowUnit): string => shown(leak, u, (leak * sd) / rate / 2).text;
    const area = effectiveArea(massOfFreeAir(leak, atmosphere, t), si(middleP + atmosphere), atmosphere, t);
    notes.push(
      `that is ${flow(flowUnit)} of free air (${flow(other)}), as much as one round hole of ${(holeDiameter(area, sharpEdge) * 1000).toPrecision(2)} mm (${(holeDiameter(area, sharpEdge) / 0.0254).toPrecision(2)} in), sharp edge, Cd ${sharpEdge}`,
    );
  }

  const k = { low: Math.max(0, fit.k - z95 * fit.kSd), mid: fit.k, high: fit.k + z95 * fit.kSd };
  const bellows = higherBellows(c);
  const cutIn = switchRange(c, 'cut-in');
  const until = (name: string, target: number) =>
    lasts(name, nowP, target, k, (kk) => fallRate(si(nowP), kk, atmosphere), atmosphere);
  const toBellows = bellows && seen.feeds ? until('bellows pressure', bellows.p) : null;
  const toCutIn = cutIn?.low ? until('cut-in', cutIn.low.si) : null;
  const toZero = until('empty', 0);
  if (falls && !stopped) {
    if (toBellows && toBellows.straight > 0)
      notes.push(
        `tank down to bellows pressure in ${spellRange(toBellows.earliest, toBellows.latest)}; from then on a side that leaks sinks, a tight side stays up`,
      );
    if (toCutIn && toCutIn.decay > 0)
      notes.push(
        `tank down to cut-in in ${spellRange(toCutIn.earliest, toCutIn.latest)}: with the key on the pump starts again`,
      );
    if (Number.isFinite(toZero.decay))
      notes.push(`empty, if it is a hole on the tank side, in about ${spell(toZero.decay)}`);
  }
  const shape = falls && seen.feeds ? shapeOf(points, fit.chi2) : null;
  if (shape) notes.push(shape);
  if (fit.chi2 > 3.84 + 2 * points.length)
    notes.push('the readings do not lie on one steady fall: heat settling, a valve acting, or a fall that stops');

  const text = (v: number): string => shown(v, perMinute, sd).text;
  const fallWords = `tank ${seen.where}loses ${text(rate)}`;
  const words = !falls
    ? verdict === 'within'
      ? `tank ${seen.where}holds: ${text(high)} at most, limit ${limit.words}`
      : `cannot tell yet on this gauge whether the tank leaks: read again in ${spell(wait)}`
    : verdict === 'cannot tell'
      ? `${fallWords}; too early to say whether that is over ${limit.words}: read again in ${spell(wait)}`
      : stopped
        ? `${fallWords}, limit ${limit.words}, until it stopped`
        : toBellows && toBellows.straight > 0
          ? `stays level about ${spell(toBellows.straight)} as it falls now; ${fallWords}, limit ${limit.words}`
          : toBellows
            ? `tank is down at bellows pressure: from here a leaking side sinks; ${fallWords}, limit ${limit.words}`
            : toCutIn && toCutIn.decay > 0
              ? `${fallWords}, limit ${limit.words}; down to cut-in in about ${spell(toCutIn.decay)}`
              : `${fallWords}, limit ${limit.words}`;

  const outcome = falls ? (rate > limit.rate ? 'fast' : 'slow') : verdict === 'within' ? 'none' : null;
  const wants = !volume
    ? { field: 'supply.tank', question: 'What is the volume of the air tank? (gives the leak in cfm or L/min)' }
    : seen.ask
      ? { field: 'panel position', question: seen.ask }
      : seen.feeds && !bellows && falls
        ? {
            field: 'springs.pressure',
            question: 'What pressure do the bellows carry at ride height? (gives how long it stays level)',
          }
        : undefined;
  return {
    key: `${seen.key}@tank`,
    verdict,
    words,
    amount: shown(rate, perMinute, sd, { low, high }),
    limit: { high: shown(limit.rate, perMinute, limit.rate * 0.02), source: limit.source },
    because,
    why: {
      formula:
        'G(p/pa) = G(p0/pa) - k t fitted to all readings, each weighted by what the gauge and the clock can carry (95 % interval); rate = k p while choked, less below about 13 psi (0.9 bar); free air = V dp/dt / pa',
      inputs: [
        ...points.map((p) => ({
          name: `tank at ${clock(p.at, c.standing.zone)}`,
          text: shown(p.p, unit, p.fact.amount.v.pm).text,
          from: p.fact.id,
        })),
        {
          name: 'division of the gauge',
          text: shown(divisionOf(c, points.at(-1)!.fact), unit, divisionOf(c, points.at(-1)!.fact) / 2, {
            difference: true,
          }).text,
          from: c.sheet.supply?.gaugeStep ? 'sheet: supply.gaugeStep, or what was typed if coarser' : 'what was typed',
        },
        ...(volume?.inputs ?? []),
        ...(bellows && seen.feeds ? [bellows.input] : []),
        atmosphereInput,
        tInput,
        ...limit.inputs,
      ],
      source: { kind: 'physics', words: 'isothermal discharge of a store through a nozzle, choked then subsonic' },
      notes: [`95 % interval ${text(low)} to ${text(high)}`, ...seen.notes, ...notes],
    },
    drawing: chart(points, fit, unit, [
      ...(cutIn?.low ? [{ si: cutIn.low.si, label: 'cut-in' }] : []),
      ...(bellows && seen.feeds ? [{ si: bellows.p, label: 'bellows' }] : []),
    ]),
    ...(wants ? { wants } : {}),
    ...(outcome && seen.see ? { evidence: [{ see: seen.see, outcome }] } : {}),
  };
};

/** Hot air: readings sooner after pumping than it takes to settle are left out, or waited for. */
const settled = (
  episode: Episode,
  zone: string,
): { points: readonly Timed[]; notes: string[]; until: number | null } => {
  const pumpedAt = episode.state.pumpedAt;
  if (pumpedAt === null)
    return { points: episode.points, notes: ['assumed: 15 min or more since the last pumping'], until: null };
  const from = pumpedAt + settleSeconds * 1000;
  const late = episode.points.filter((p) => p.at >= from);
  if (late.length === episode.points.length) return { points: late, notes: [], until: null };
  if (late.length >= 2)
    return { points: late, notes: [`readings before ${clock(from, zone)} left out: hot air settling`], until: null };
  return { points: late, notes: [], until: from };
};

const hotAir = (c: Case, episode: Episode, until: number): Finding => {
  const last = episode.points.at(-1)!;
  const unit = last.fact.amount.v.unit;
  const fall = episode.points[0]!.p - last.p;
  return {
    key: 'settling@tank',
    verdict: 'cannot tell',
    words: `hot air just pumped falls by itself: wait, read the tank at ${clock(Math.max(until, last.at), c.standing.zone)} and again later`,
    amount: shown(fall, unit, divisionOf(c, last.fact) / 2, { difference: true }),
    because: episode.points.map((p) => p.fact.id),
    why: {
      formula: 'p/T constant: air that cools falls without a leak; 14 F (8 K) colder is 3 psi at 100 psi',
      inputs: episode.points.map((p) => ({
        name: `tank at ${clock(p.at, c.standing.zone)}`,
        text: shown(p.p, unit, p.fact.amount.v.pm).text,
        from: p.fact.id,
      })),
      source: { kind: 'practice', words: 'common practice, no source: 15 min to settle' },
      notes: [],
    },
  };
};

const judgeEpisode = (c: Case, last: ReadingFact): Finding[] => {
  const episode = episodeOf(c, last);
  if (episode.points.length < 2 || episode.points.at(-1)!.at - episode.points[0]!.at < 1000) return [];
  const { points, notes, until } = settled(episode, c.standing.zone);
  if (until !== null) return [hotAir(c, episode, until)];
  if (points.filter((p) => p.p > 2 * p.sd).length < 2) return [];
  const { p: atmosphere, input } = atmosphereOf(c);
  // Past a knee the fall says nothing of the rate.
  const stop = kneeOf(fitPoints(points), atmosphere);
  const falling = stop ? points.slice(0, stop.from) : points;
  if (stop)
    notes.push(
      `readings from ${clock(points[stop.from]!.at, c.standing.zone)} on left out: the fall has stopped there`,
    );
  const cool = cooling(c, falling);
  const right = cool ? falling.map((p) => ({ ...p, p: (p.p + atmosphere) / cool.factor(p.at) - atmosphere })) : falling;
  return [
    leakOf({
      c,
      episode,
      points: right,
      atmosphere,
      atmosphereInput: input,
      notes: [...notes, ...(cool ? [cool.note] : [])],
      because: [...new Set(falling.map((p) => p.fact.id))],
      stopped: stop !== null,
    }),
  ];
};

/** "drops 6 psi in 10 min": two readings, the later one at the tank's last known pressure where there is one. */
const saidFall = (c: Case, fact: ReadingFact): Finding[] => {
  if (!fact.over || fact.over.v.si <= 0) return [];
  const fall = middle(fact.amount.v);
  const state = stateAt(c, fact);
  const known = latest(c, 'pressure', tankSide);
  const cutOut = switchRange(c, 'cut-out');
  const start = known ? middle(known.amount.v) : (cutOut?.high?.si ?? null);
  const { p: atmosphere, input } = atmosphereOf(c);
  const from = Math.max(start ?? 7e5, fall * 1.2);
  const sd = readingDeviation(divisionOf(c, fact));
  const at = fact.at;
  const points: Timed[] = [
    { fact, at: at - fact.over.v.si * 1000, p: from, sd, tSd: 0 },
    { fact, at, p: from - fall, sd, tSd: Math.sqrt(1 / 3) * fact.over.v.pm },
  ];
  const notes = [
    known
      ? `fall taken from the tank's last reading of ${typed(known.amount.v)} (${known.id})`
      : `assumed: the fall began at ${shown(from, fact.amount.v.unit, fact.amount.v.pm).text}${start === null ? '' : ', cut-out'}; the start was not said`,
    'assumed: 15 min or more since the last pumping',
  ];
  const found = leakOf({
    c,
    episode: { points, state },
    points,
    atmosphere,
    atmosphereInput: input,
    notes,
    because: [fact.id, ...(known ? [known.id] : [])],
  });
  return [
    {
      ...found,
      why: {
        ...found.why,
        inputs: [
          { name: 'fall', text: `${typed(fact.amount.v, true)} in ${typed(fact.over.v)}`, from: fact.id },
          ...found.why.inputs.slice(2),
        ],
      },
      ...(known ? {} : { wants: found.wants ?? { field: 'tank pressure', question: 'What does the tank read now?' } }),
    },
  ];
};

export const tankLeak: Judge = {
  subject: 'tank leak',
  judge: (c) => {
    const fresh = c.fresh.filter((f): f is ReadingFact => f.is === 'reading');
    const last = fresh.filter((f) => f.what.v === 'pressure' && tankSide(f.where.v)).at(-1);
    const falls = fresh.filter((f) => f.what.v === 'pressure fall' && tankSide(f.where.v));
    return [...(last ? judgeEpisode(c, last) : []), ...falls.flatMap((f) => saidFall(c, f))];
  },
};
