/** Pressure in the bellows: against the sheet, the load it carries, side against side, and what that says of the front. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { attitudeOf, corners, type Corner } from '../../core/heights.ts';
import { si } from '../../core/quantity.ts';
import { massCarried } from '../../core/spring.ts';
import {
  type Case,
  type Input,
  type Judge,
  inputOf,
  latest,
  middle,
  physics,
  practice,
  rangeOf,
  readings,
  sheetInput,
  spread,
  stateAt,
  touched,
  unitOf,
} from '../case.ts';
import { cornerPlace, heightRange, heightValue, nominalOf, setWith, tapeHalf } from '../corner-sheet.ts';
import type { Finding } from '../finding.ts';
import { againstRange } from '../limits.ts';
import { sheetUnit, shown, typed } from '../show.ts';

/** Sides that differ by less than this share of their mean are alike. An estimate of ours, no published source. */
const alikeShare = 0.1;

/** Mass that the side carries on its bellows, with the sheet's weight of that corner where it has one. */
const load = (c: Case, side: 'left' | 'right', p: number, pm: number): { note: string; inputs: Input[] } | null => {
  const { area, perSide, leverRatio } = c.sheet.springs ?? {};
  if (!area || !perSide) return null;
  const lever = leverRatio ?? 1;
  const mass = massCarried(si(p), si(area.si * perSide), lever);
  const unit = sheetUnit('mass', c.sheet);
  const weight = side === 'left' ? c.sheet.weights?.leftRear : c.sheet.weights?.rightRear;
  const told = weight
    ? `; the sheet's corner weight is ${weight.text}, of which wheels, axles and arms are not carried by the air`
    : '';
  return {
    note: `carries about ${shown(mass, unit, Math.max((mass * pm) / Math.max(p, 1), mass * 0.02)).text} at the wheels${told}`,
    inputs: [
      sheetInput('area of one bellows', area, 'springs.area'),
      { name: 'bellows a side', text: `${perSide}`, from: 'sheet: springs.perSide' },
      { name: 'lever ratio', text: `${lever}`, from: leverRatio ? 'sheet: springs.leverRatio' : 'assumed' },
      ...(weight ? [sheetInput('corner weight', weight, `weights.${side}Rear`)] : []),
    ],
  };
};

const one = (c: Case, fact: ReadingFact, side: 'left' | 'right'): Finding => {
  const range = rangeOf(
    c,
    'pressure',
    `${side} bellows`,
    c.sheet.springs?.pressure?.[side],
    `springs.pressure.${side}`,
  );
  const p = middle(fact.amount.v);
  const carried = load(c, side, p, spread(fact.amount.v));
  const height = latest(c, 'height', (place) => place === `${side} rear`);
  const nominal = nominalOf(heightRange(c, `${side}Rear`));
  const notes = carried ? [carried.note] : [];
  const low = height && nominal !== null && heightValue(height) < nominal - 2 * tapeHalf(c, height);
  // low at high pressure is not low at low pressure
  const standing =
    !low || Math.abs(height.at - fact.at) >= 3_600_000
      ? null
      : range?.low && p >= range.low.si
        ? 'low at full pressure: it carries its load and stands where the valve or its link leaves it'
        : range?.low
          ? 'low at low pressure: on its stops, or the load stands on something else'
          : 'it stands low';
  if (standing) notes.push(`${standing} (${side} rear at ${typed(height!.amount.v)}, ${height!.id})`);
  return againstRange(fact, range, {
    key: `pressure@${side} bellows`,
    name: `${side} bellows pressure`,
    words: (text, verdict, limits) =>
      `${side} bellows ${text}${verdict === 'no limit' ? '' : verdict === 'within' ? `, within ${limits}` : `, ${verdict}: should be ${limits} as the coach is weighed`}${standing ? `; ${standing}` : ''}`,
    formula: 'pressure times area times lever carries the side; against what the sheet gives as weighed',
    inputs: carried?.inputs ?? [],
    notes,
    wants: {
      field: `springs.pressure.${side}`,
      question: `What pressure do the ${side} bellows carry at ride height, lowest and highest?`,
    },
  });
};

/** A twist of the coach with unlike bellows points to one weak front corner: its load goes to its neighbours. */
const frontCorner = (c: Case, height: ReadingFact | undefined, apart: number): string | null => {
  if (!height) return null;
  const set = setWith(c, height);
  const off: Partial<Record<Corner, number>> = {};
  for (const k of corners) {
    const nominal = nominalOf(heightRange(c, k));
    const fact = set[k];
    if (nominal === null || !fact) return null;
    off[k] = heightValue(fact) - nominal;
  }
  const a = attitudeOf(off as Record<Corner, number>);
  const half = tapeHalf(c, height);
  // A weak left front lets its corner down and hands load to the left rear and the right front.
  if (apart > 0 && off.leftFront! < -2 * half && a.twist < 0) return cornerPlace.leftFront;
  if (apart < 0 && off.rightFront! < -2 * half && a.twist > 0) return cornerPlace.rightFront;
  return null;
};

const both = (c: Case): Finding[] => {
  const left = latest(c, 'pressure', (p) => p === 'left bellows');
  const right = latest(c, 'pressure', (p) => p === 'right bellows');
  if (!left || !right || Math.abs(left.at - right.at) > 3_600_000) return [];
  const unit = unitOf(right);
  const [l, r] = [middle(left.amount.v), middle(right.amount.v)];
  // Sides that the sheet weighs unlike are to read unlike.
  const { left: onLeft, right: onRight } = c.sheet.springs?.pressure ?? {};
  const weighed = onLeft && onRight ? (onLeft.low.si + onLeft.high.si - onRight.low.si - onRight.high.si) / 2 : 0;
  const apart = l - r - weighed;
  const pm = spread(left.amount.v) + spread(right.amount.v);
  const alike = Math.abs(apart) <= Math.max(pm, (alikeShare * (l + r)) / 2);
  const weak = alike ? null : frontCorner(c, readings(c, 'height').at(-1), apart);
  const atHeight = stateAt(c, right).panel !== 'empty' && l > 0 && r > 0;
  const text = shown(Math.abs(apart), unit, pm / 2, { difference: true }).text;
  const light = apart < 0 ? 'left' : 'right';
  return [
    {
      key: 'side to side@bellows',
      verdict: alike ? 'within' : 'high',
      words: alike
        ? `both sides carry alike (${text} apart)`
        : `${light} side carries less: ${text} lower${weak ? `; with the twist of the heights that points to a weak ${weak} corner` : ''}`,
      amount: shown(Math.abs(apart), unit, pm / 2, { difference: true }),
      limit: {
        high: shown((alikeShare * (l + r)) / 2, unit, pm / 2, { difference: true }),
        source: { kind: 'practice', words: 'one tenth of their mean: an estimate, no source' },
      },
      because: [left.id, right.id],
      why: {
        formula: 'left less right, less what the sheet weighs them apart; load over area sets each',
        inputs: [inputOf('left bellows', left), inputOf('right bellows', right)],
        source: physics('F = p A'),
        notes: [
          'at ride height on a level floor; uneven loading (a full tank on one side) does the same',
          ...(weak ? [`a weak ${weak} spring lets that corner down and hands load to its neighbours`] : []),
        ],
      },
      ...(atHeight ? { evidence: [{ see: 'bellows pressures', outcome: alike ? 'alike' : `${light} light` }] } : {}),
    },
  ];
};

/** "left bag drops 5 psi in 10 min": the wrong gauge for a bellows under load. */
const fallOf = (fact: ReadingFact): Finding => ({
  key: `pressure fall@${fact.where.v}`,
  verdict: 'cannot tell',
  words: `a bellows under load leaks at steady pressure: watch the ${fact.where.v.replace(/ ?bellows.*/, '')} height by tape`,
  amount: shown(middle(fact.amount.v), unitOf(fact), spread(fact.amount.v), { difference: true }),
  because: [fact.id],
  why: {
    formula: 'p = F/A while it carries its load; it falls only once it is on its stops',
    inputs: [{ name: 'fall', text: typed(fact.amount.v, true), from: fact.id }],
    source: practice(),
    notes: ['pressure that does fall: the load has gone to the stops, or was taken off'],
  },
});

export const bellowsPressures: Judge = {
  subject: 'bellows pressures',
  judge: (c) => {
    const out: Finding[] = [];
    const fresh = touched(c, 'pressure').filter((f) => /^(left|right) bellows$/.test(f.where.v));
    for (const fact of new Map(fresh.map((f) => [f.where.v, f])).values())
      out.push(one(c, fact, fact.where.v.startsWith('left') ? 'left' : 'right'));
    if (fresh.length > 0) out.push(...both(c));
    for (const f of c.fresh)
      if (f.is === 'reading' && f.what.v === 'pressure fall' && /bellows/.test(f.where.v)) out.push(fallOf(f));
    return out;
  },
};
