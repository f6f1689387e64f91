/** The finding for a side that sinks, holds or rises by the tape: how long it stays level, and the air it loses. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { effectiveArea, holeDiameter, massOfFreeAir, roomTemperature, sharpEdge } from '../core/air.ts';
import { sideLeak, timeToHeight } from '../core/bellows-leak.ts';
import { z95 } from '../core/line-fit.ts';
import { si } from '../core/quantity.ts';
import { readingDeviation } from '../core/reading-error.ts';
import { bellowsPressure } from './bellows-pressure.ts';
import { type Case, type Input, physics, sheetInput, stateAt } from './case.ts';
import { atmosphereOf } from './atmosphere.ts';
import { cornerOf, heightRange, nominalOf } from './corner-sheet.ts';
import type { Drawing, Finding } from './finding.ts';
import { spellRange } from './leak-times.ts';
import { sheetUnit, shown, spell } from './show.ts';
import { type WatchedSide, watchedSide } from './watched-side.ts';
import { isAsFound } from './as-found.ts';

/** A night's standing. */
const night = 10 * 3600;

export type Sink = {
  place: string;
  side: 'left' | 'right';
  /** The side was not said: worked out with the left's figures, held against no fault, asked. */
  unsided?: boolean;
  last: ReadingFact;
  /** m/s with its 95 % interval; positive sinks. */
  rate: number;
  low: number;
  high: number;
  span: number;
  half: number;
  /** Height now, m; null where only the fall was said. */
  now: number | null;
  /** `now` is the sheet's height, none having been read. */
  fromSheet?: boolean;
  inputs: Input[];
  because: string[];
  notes: string[];
  drawing?: Drawing;
};

/** Air that the side loses, with what it took to work it out. */
const airOf = (c: Case, s: Sink): { notes: string[]; inputs: Input[]; wants?: Finding['wants'] } => {
  const { area, perSide, leverRatio } = c.sheet.springs ?? {};
  if (!area)
    return {
      notes: [],
      inputs: [],
      wants: { field: 'springs.area', question: 'What is the effective area of one bellows? (gives the leak in air)' },
    };
  const bellows = bellowsPressure(c, s.side);
  if (!bellows)
    return {
      notes: [],
      inputs: [],
      wants: {
        field: `springs.pressure.${s.side}`,
        question: `What pressure do the ${s.side} bellows carry at ride height?`,
      },
    };
  const { p, input } = atmosphereOf(c);
  const all = area.si * (perSide ?? 1);
  const lever = leverRatio ?? 1;
  const leak = sideLeak(s.rate, lever, si(all), si(bellows.p), p);
  const unit = sheetUnit('flow', c.sheet);
  const pm = (leak * (s.high - s.rate)) / s.rate / 2;
  const hole = effectiveArea(massOfFreeAir(leak, p, roomTemperature), si(bellows.p + p), p, roomTemperature);
  const d = holeDiameter(hole, sharpEdge);
  return {
    notes: [
      `that side loses ${shown(leak, unit, pm).text} of free air (${shown(leak, unit === 'cfm' ? 'L/min' : 'cfm', pm).text}), as much as one hole of ${(d * 1000).toPrecision(2)} mm (${(d / 0.0254).toPrecision(2)} in), sharp edge, Cd ${sharpEdge}`,
      ...(perSide ? [] : ['assumed: one bellows a side']),
      ...(leverRatio ? [] : ['assumed: bellows travel equals frame travel']),
      'both bellows of a side share a line: the tape cannot say which of them it is',
    ],
    inputs: [
      sheetInput('area of one bellows', area, 'springs.area'),
      { name: 'bellows a side', text: `${perSide ?? 1}`, from: perSide ? 'sheet: springs.perSide' : 'assumed' },
      { name: 'lever ratio', text: `${lever}`, from: leverRatio ? 'sheet: springs.leverRatio' : 'assumed' },
      bellows.input,
      input,
    ],
  };
};

const whichSide = { field: 'side', question: 'Which side went down?' };

export const sinkFinding = (c: Case, s: Sink): Finding => {
  const unit = s.last.amount.v.unit;
  // a side, or the coach as a whole, is held against its rear corner
  const corner = cornerOf(s.place) ?? cornerOf(`${s.side} rear`);
  const range = corner ? heightRange(c, corner) : null;
  const nominal = nominalOf(range);
  const stops = c.sheet.heights?.toStops;
  const sinks = s.low > 0;
  const rises = s.high < 0;
  const tolerance = corner ? c.sheet.heights?.[corner]?.tolerance.si : undefined;
  const settles = s.high * night < Math.max(tolerance ?? 0, 2 * s.half);
  const told = watchedSide(c, s.side, stateAt(c, s.last), s.span);
  const watched: WatchedSide = s.unsided ? { ...told, see: null, ask: whichSide } : told;
  // slower than the tape shows in an hour: by the day
  const [every, per] =
    Math.abs(s.rate) * 3600 < 2 * s.half ? ([86_400, 'a day'] as const) : ([3600, 'an hour'] as const);
  const perHour = `${shown(Math.abs(s.rate) * every, unit, Math.max(s.half / 2, 0), { difference: true }).text} ${per}`;
  const notes = [...watched.notes, ...s.notes];
  const toEdge = sinks && s.now !== null && range?.low ? timeToHeight(si(s.now), si(range.low.si), s.rate) : null;
  const toStops =
    sinks && s.now !== null && nominal !== null && stops
      ? timeToHeight(si(s.now), si(nominal - stops.si), s.rate)
      : null;
  if (toEdge !== null && toEdge > 0)
    notes.push(
      `out of tolerance after ${spellRange(timeToHeight(si(s.now!), si(range!.low!.si), s.high), timeToHeight(si(s.now!), si(range!.low!.si), s.low))}`,
    );
  if (toStops !== null && toStops > 0)
    notes.push(
      `on its stops after ${spellRange(timeToHeight(si(s.now!), si(nominal! - stops!.si), s.high), timeToHeight(si(s.now!), si(nominal! - stops!.si), s.low))}`,
    );
  const air = sinks ? airOf(c, s) : { notes: [], inputs: [] };
  const tail =
    toStops === null ? '' : toStops > 0 ? `, on its stops after about ${spell(toStops)}` : ', on its stops now';
  const words = sinks
    ? `${s.place} sinks${watched.where}: ${toEdge === null ? perHour : toEdge > 0 ? `level for about ${spell(toEdge)}${s.fromSheet ? ' from its sheet height' : ' more'}${tail} (${perHour})` : `out of level now${tail} (${perHour})`}`
    : rises
      ? `${s.place} rises${watched.where}, ${perHour}: air is coming in`
      : settles
        ? `${s.place} holds${watched.where}: no fall the tape can show in ${spell(s.span)}`
        : `${s.place}${watched.where}: no fall the tape can show in ${spell(s.span)}, too short to say it stays level a night`;
  const overnight = watched.see?.endsWith('overnight') === true;
  // a cold night alone takes a little height: less than this is no sign of a leak (as the simulated coach counts it)
  const coldNight = Math.max(0.013, (range?.high?.si ?? 0) - (range?.low?.si ?? 0));
  const cold = overnight && sinks && s.rate * s.span < coldNight;
  if (cold) notes.push('a cold night alone may take this much: no leak is claimed from it');
  const outcome = cold ? 'holds' : sinks ? 'drops' : rises ? 'rises' : s.span >= 1200 ? 'holds' : null;
  const said = outcome === 'rises' && overnight ? null : overnight && toStops === 0 ? 'on stops' : outcome;
  // As found, the same night is already said by the height itself.
  const see =
    watched.see !== null && said !== null && !(overnight && isAsFound(c, s.last))
      ? [{ see: watched.see, outcome: said }]
      : [];
  const fall = s.rate * s.span;
  const canTell = z95 * Math.SQRT2 * readingDeviation(2 * s.half);
  const wants = watched.ask ?? ('wants' in air ? air.wants : undefined);
  return {
    key: `sink ${watched.see?.replace(/^(left|right) /, '') ?? 'standing'}@${s.place}`,
    verdict: sinks ? 'low' : rises ? 'high' : settles ? 'within' : 'cannot tell',
    words,
    amount: {
      ...shown(-fall, unit, s.half, { difference: true, low: -s.high * s.span, high: -s.low * s.span }),
      text: `${shown(Math.abs(fall), unit, s.half, { difference: true }).text} ${fall < 0 ? 'up' : 'down'}`,
    },
    limit: {
      high: shown(canTell, unit, s.half, { difference: true }),
      source: physics(`what two readings of this tape can tell (95 %)`),
    },
    because: s.because,
    why: {
      formula:
        'straight line through all readings of the tape, weighted (95 % interval); q = A (dh/dt) lever p_abs / p_atm at constant load',
      inputs: [
        ...s.inputs,
        {
          name: 'read to',
          text: shown(2 * s.half, unit, s.half, { difference: true }).text,
          from: c.sheet.heights?.tapeStep ? 'sheet: heights.tapeStep, or as typed' : 'as typed',
        },
        ...air.inputs,
      ],
      source: physics('load over area sets the pressure: volume lost at constant pressure'),
      notes: [...notes, ...air.notes],
    },
    ...(s.drawing ? { drawing: s.drawing } : {}),
    ...(wants ? { wants } : {}),
    ...(see.length > 0 ? { evidence: see } : {}),
  };
};
