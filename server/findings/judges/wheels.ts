/** Toe and camber of each wheel, in degrees whatever they were measured in. */
import { takePlace } from '../../../intents/place.ts';
import type { ReadingFact } from '../../../intents/shapes.ts';
import { angleOver, offsetOver, thrustOf, totalToe } from '../../core/toe.ts';
import { type Length, si } from '../../core/quantity.ts';
import { dimensionOf } from '../../core/units.ts';
import {
  type Case,
  type Judge,
  type Range,
  inputOf,
  middle,
  physics,
  readings,
  sheetInput,
  sheetSource,
  spread,
  touched,
  verdictOf,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { limitOf, rangeInputs, stripOf } from '../limits.ts';
import { sheetUnit, shown, typed } from '../show.ts';
import { isWheel, wheelAngle, way, wheelRange } from '../wheel-angle.ts';

export const one = (c: Case, fact: ReadingFact, what: 'toe' | 'camber'): Finding => {
  const place = fact.where.v;
  const read = wheelAngle(c, fact, what);
  const base = { key: `${what}@${place}`, because: [fact.id] };
  if ('missing' in read)
    return {
      ...base,
      verdict: 'no limit',
      words: `${what} ${typed(fact.amount.v)} at the ${place}: no angle without the diameter`,
      amount: shown(middle(fact.amount.v), fact.amount.v.unit, spread(fact.amount.v), { difference: true }),
      why: { formula: 'angle = atan(x / D)', inputs: [inputOf(what, fact)], source: physics('geometry'), notes: [] },
      wants: read.missing,
    };
  const said = wheelRange(c, what, place);
  // A limit typed as a length is one over the same diameter.
  const angular = (a: Range['low']): Range['low'] =>
    a && dimensionOf(a.unit) === 'length' && read.diameter
      ? { ...a, si: angleOver(si(a.si), si(read.diameter)), pm: a.pm / read.diameter, unit: 'deg' }
      : a;
  const range: Range | null = said
    ? {
        source: said.source,
        because: said.because,
        ...(said.low ? { low: angular(said.low)! } : {}),
        ...(said.high ? { high: angular(said.high)! } : {}),
      }
    : null;
  const verdict = !range
    ? 'no limit'
    : range.low && read.angle < range.low.si - read.pm * 1.0001
      ? 'low'
      : range.high && read.angle > range.high.si + read.pm * 1.0001
        ? 'high'
        : 'within';
  const degrees = shown(Math.abs(read.angle), 'deg', read.pm / 2).text;
  const length = sheetUnit('length', c.sheet);
  const span = what === 'toe' ? read.diameter : (c.sheet.tyres?.rim?.si ?? read.diameter);
  const notes = [
    `${shown(Math.abs(read.angle), 'arcmin', Math.max(read.pm, 0.00015)).text.replace('arcmin', 'minutes')} of arc`,
  ];
  if (span !== null && what === 'toe')
    notes.push(
      `${shown(Math.abs(offsetOver(read.angle, si<Length>(span))), length, Math.max(0.0001, read.pm * span), { difference: true }).text} over ${shown(span, length, 0.0005).text}`,
    );
  const limits =
    range?.low && range.high
      ? `${shown(range.low.si, 'deg', 0.0005).text.replace(' deg', '')} to ${shown(range.high.si, 'deg', 0.0005).text}`
      : '';
  return {
    ...base,
    verdict,
    words: `${place} ${what} ${degrees} ${way(what, read.angle)}${verdict === 'within' ? `, within ${limits}` : verdict === 'no limit' ? '' : `: should be ${limits}`}`,
    amount: shown(read.angle, 'deg', read.pm),
    ...(range ? { limit: limitOf(range, 'deg') } : {}),
    because: [fact.id, ...(range?.because ?? [])],
    why: {
      formula:
        read.inputs.length > 1
          ? `${what} = atan(x / D), per wheel; ${what === 'toe' ? 'in' : 'top out'} is positive`
          : `${what} per wheel as read; ${what === 'toe' ? 'in' : 'top out'} is positive`,
      inputs: [...read.inputs, ...rangeInputs(range, 'deg')],
      source: range?.source ?? physics('geometry'),
      notes: [
        ...notes,
        'before it counts: tyres at the sheet pressure, level floor, full weight, heights right, bearings adjusted (common practice, no source)',
      ],
    },
    drawing: stripOf(range, 'deg', [{ si: read.angle, pm: read.pm, label: degrees }]),
    ...(range
      ? {}
      : {
          wants: { field: `alignment.${what}`, question: `What ${what} should the ${place} have, lowest and highest?` },
        }),
  };
};

/** Total toe and thrust of a pair, where both its wheels have been read. */
const pair = (c: Case, fact: ReadingFact): Finding | null => {
  const p = takePlace(fact.where.v);
  if (!p?.side) return null;
  const mate = fact.where.v.replace(/^(left|right)/, p.side === 'left' ? 'right' : 'left');
  const other = readings(c, 'toe', (place) => place === mate).at(-1);
  if (!other) return null;
  const [left, right] = p.side === 'left' ? [fact, other] : [other, fact];
  const [a, b] = [wheelAngle(c, left, 'toe'), wheelAngle(c, right, 'toe')];
  if ('missing' in a || 'missing' in b) return null;
  const total = totalToe(a.angle, b.angle);
  const thrust = thrustOf(a.angle, b.angle);
  const pm = a.pm + b.pm;
  const limit = c.sheet.alignment?.thrust;
  const name = fact.where.v.replace(/^(left|right) /, '').replace(/ wheel$/, '') || 'axle';
  const verdict: Finding['verdict'] = limit ? (Math.abs(thrust) > limit.si + pm / 2 ? 'high' : 'within') : 'no limit';
  return {
    key: `thrust@${name}`,
    verdict,
    words: `${name} pair: total toe ${shown(Math.abs(total), 'deg', pm).text} ${total < 0 ? 'out' : 'in'}, thrust ${shown(Math.abs(thrust), 'deg', pm / 2).text} ${Math.abs(thrust) < pm / 4 ? 'straight' : thrust > 0 ? 'to the left' : 'to the right'}${verdict === 'within' ? ', within the limit' : ''}`,
    amount: shown(thrust, 'deg', pm / 2),
    ...(limit ? { limit: { high: shown(limit.si, 'deg', limit.pm), source: sheetSource('alignment.thrust') } } : {}),
    because: [left.id, right.id],
    why: {
      formula: 'total = left + right; thrust = (right - left)/2, positive to the left',
      inputs: [...a.inputs, ...b.inputs, ...(limit ? [sheetInput('thrust limit', limit, 'alignment.thrust')] : [])],
      source: limit ? sheetSource('alignment.thrust') : physics('geometry'),
      notes: [],
    },
    ...(limit
      ? {}
      : { wants: { field: 'alignment.thrust', question: 'What thrust angle is allowed for each rear pair?' } }),
  };
};

/** Total toe of a pair, measured across both wheels: twice the limits of one. */
const total = (c: Case, fact: ReadingFact): Finding => {
  const read = wheelAngle(c, fact, 'toe');
  const name = fact.where.v.replace(/ (?:wheel|axle|tyre)$/, '') || 'axle';
  const base = { key: `total toe@${name}`, because: [fact.id] };
  if ('missing' in read)
    return {
      ...base,
      verdict: 'no limit',
      words: `total toe ${typed(fact.amount.v)} of the ${name} pair: no angle without the diameter`,
      why: { formula: 'angle = atan(x / D)', inputs: [inputOf('toe', fact)], source: physics('geometry'), notes: [] },
      wants: read.missing,
    };
  const wheel = wheelRange(c, 'toe', fact.where.v);
  const twice = (a: Range['low']): Range['low'] =>
    a && dimensionOf(a.unit) === 'angle'
      ? { ...a, si: 2 * a.si, pm: 2 * a.pm, text: shown(2 * a.si, 'deg', 0.0005).text }
      : undefined;
  const [low, high] = [twice(wheel?.low), twice(wheel?.high)];
  const range: Range | null = wheel && low && high ? { low, high, source: wheel.source, because: wheel.because } : null;
  const verdict = verdictOf(read.angle, read.pm, range);
  const degrees = shown(Math.abs(read.angle), 'deg', read.pm / 2).text;
  const limits = range ? `${range.low!.text.replace(' deg', '')} to ${range.high!.text}` : '';
  return {
    ...base,
    verdict,
    words: `${name} pair: total toe ${degrees} ${way('toe', read.angle)}${verdict === 'within' ? `, within ${limits}` : range ? `: should be ${limits}` : ''}; measure each wheel to the frame's centreline: a total hides a pair that points aside`,
    amount: shown(read.angle, 'deg', read.pm),
    ...(range ? { limit: limitOf(range, 'deg') } : {}),
    because: [fact.id, ...(range?.because ?? [])],
    why: {
      formula: 'total = left + right = atan(x / D), against twice the limits of one wheel',
      inputs: [...read.inputs, ...rangeInputs(range, 'deg')],
      source: range?.source ?? physics('geometry'),
      notes: [
        `each wheel has half of it, ${shown(Math.abs(read.angle) / 2, 'deg', read.pm / 2).text}, only where the pair stands straight`,
      ],
    },
    drawing: stripOf(range, 'deg', [{ si: read.angle, pm: read.pm, label: degrees }]),
  };
};

export const wheels: Judge = {
  subject: 'toe and camber',
  judge: (c) => {
    const out: Finding[] = [];
    const seen = new Set<string>();
    for (const fact of touched(c, 'toe').filter(isWheel)) {
      out.push(one(c, fact, 'toe'));
      const both = pair(c, fact);
      if (both && !seen.has(both.key)) {
        seen.add(both.key);
        out.push(both);
      }
    }
    for (const fact of touched(c, 'toe').filter((f) => !isWheel(f))) out.push(total(c, fact));
    for (const fact of touched(c, 'camber').filter(isWheel)) out.push(one(c, fact, 'camber'));
    return out;
  },
};
