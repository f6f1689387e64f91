/** The finding for a fall of the tank: fit, interval, how long it lasts, limit, drawing. */
import { effectiveArea, holeDiameter, massOfFreeAir, roomTemperature, sharpEdge } from '../core/air.ts';
import { fallRate, fitDecay, freeAirOfFall } from '../core/decay.ts';
import { z95 } from '../core/line-fit.ts';
import { type AbsolutePressure, type Temperature, si } from '../core/quantity.ts';
import { higherBellows } from './bellows-pressure.ts';
import { type Case, type Input, benchmark, benchmarkRate, latest } from './case.ts';
import type { Finding } from './finding.ts';
import { lasts, spellRange } from './leak-times.ts';
import { clock, rateUnit, sheetUnit, shown, spell, typed } from './show.ts';
import { type Episode, type Timed, divisionOf, fitPoints } from './tank-episode.ts';
import { seesFall } from './tank-state.ts';
import { waitFor } from './wait.ts';
import { switchRange } from './judges/tank-pressure.ts';
import { leakLimit } from './leak-limit.ts';
import { joinedVolume } from './tank-volume.ts';
import { chart, shapeOf } from './fall-drawing.ts';

const temperatureOf = (c: Case): { t: Temperature; input: Input } => {
  const read = latest(c, 'temperature', (p) => p === 'ambient' || p === '' || p === 'tank');
  return read
    ? { t: si(read.amount.v.si), input: { name: 'temperature', text: typed(read.amount.v), from: read.id } }
    : { t: roomTemperature, input: { name: 'temperature', text: '20 C', from: 'assumed' } };
};

export type Fall = {
  c: Case;
  episode: Episode;
  points: readonly Timed[];
  atmosphere: AbsolutePressure;
  atmosphereInput: Input;
  notes: string[];
  because: string[];
  /** The fall has come to rest since: the readings of the level stretch, and its pressure. */
  stopped?: { readonly points: readonly Timed[]; readonly at: number };
};

/** The finding for points that belong together; `fall` words of the fall itself. */
export const fallFinding = ({
  c,
  episode,
  points,
  atmosphere,
  atmosphereInput,
  notes,
  because,
  stopped,
}: Fall): Finding => {
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
  if (limit.source.kind !== 'rule')
    notes.push(
      `${benchmark().words}; this fall is ${low > benchmarkRate ? 'over' : high < benchmarkRate ? 'under' : 'too close to tell from'} it (${shown(benchmarkRate, perMinute, benchmarkRate * 0.005).text})`,
    );
  const shape = falls && seen.feeds ? shapeOf(points, fit.chi2) : null;
  if (shape) notes.push(shape);
  const stepped = shape !== null && shape.includes('in steps');
  if (!stepped && fit.chi2 > 3.84 + 2 * points.length)
    notes.push('the readings do not lie on one steady fall: heat settling, a valve acting, or a fall that stops');

  const text = (v: number): string => shown(v, perMinute, sd).text;
  const fallWords = `tank ${seen.where}loses ${text(rate)}${stepped ? ' in steps' : ''}`;
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
    drawing: chart(
      points,
      fit,
      unit,
      atmosphere,
      [
        ...(cutIn?.low ? [{ si: cutIn.low.si, label: 'cut-in' }] : []),
        ...(bellows && seen.feeds ? [{ si: bellows.p, label: 'bellows' }] : []),
      ],
      stopped,
    ),
    ...(wants ? { wants } : {}),
    ...(outcome && seen.see ? { evidence: [{ see: seen.see, outcome }] } : {}),
  };
};
