/** Shims at the bracket bolts of one rear wheel that bring toe and camber right together, and what remains. */
import { takePlace } from '../../../intents/place.ts';
import { type Bolt, fitShims } from '../../core/shims.ts';
import { type Angle, si } from '../../core/quantity.ts';
import {
  type Case,
  type Judge,
  type Range,
  latest,
  physics,
  sheetInput,
  sheetSource,
  touched,
  verdictOf,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { rangeInputs } from '../limits.ts';
import { stackText } from '../shim-text.ts';
import { sheetUnit, shown } from '../show.ts';
import { wheelAngle, wheelRange } from '../wheel-angle.ts';

const bolts: readonly Bolt[] = ['front top', 'front bottom', 'rear top', 'rear bottom'];

/** Change wanted, rad: to the middle of the range when it is outside beyond what was read (`pm`), else none. */
const wanted = (
  angle: number,
  pm: number,
  range: Range | null,
): { change: number; tolerance: number; outside: boolean } | null => {
  if (!range?.low || !range.high) return null;
  const outside = verdictOf(angle, pm, range) !== 'within';
  return {
    change: outside ? (range.low.si + range.high.si) / 2 - angle : 0,
    tolerance: Math.max((range.high.si - range.low.si) / 2, 1e-4),
    outside,
  };
};

const solve = (c: Case, place: string): Finding | null => {
  const toeFact = latest(c, 'toe', (p) => p === place);
  const camberFact = latest(c, 'camber', (p) => p === place);
  if (!toeFact || !camberFact) return null;
  const toe = wheelAngle(c, toeFact, 'toe');
  const camber = wheelAngle(c, camberFact, 'camber');
  if ('missing' in toe || 'missing' in camber) return null;
  const toeRange = wheelRange(c, 'toe', place);
  const camberRange = wheelRange(c, 'camber', place);
  const a = wanted(toe.angle, toe.pm, toeRange);
  const b = wanted(camber.angle, camber.pm, camberRange);
  if (!a || !b || (!a.outside && !b.outside)) return null;
  const because = [toeFact.id, camberFact.id];
  const base = {
    key: `shims@${place}`,
    because,
    why: {
      formula:
        'shim = L tan(change), L between the bolts; toe and camber stacks added where a bolt serves both; the four bolts stay in one plane',
      inputs: [
        ...toe.inputs,
        ...camber.inputs,
        ...rangeInputs(toeRange, 'deg', 'toe wanted'),
        ...rangeInputs(camberRange, 'deg', 'camber wanted'),
      ],
      source: physics('geometry of a flat bracket'),
      notes: [] as string[],
    },
  };
  const bracket = c.sheet.alignment?.bracket;
  if (!bracket)
    return {
      ...base,
      verdict: 'cannot tell',
      words: `${place}: shims can be worked out once the bracket is known`,
      wants: {
        field: 'alignment.bracket',
        question: 'How far apart are the bracket bolts, fore and aft and up and down, and which shims are there?',
      },
    };
  const sizes = bracket.shims.map((s) => s.si);
  const most = bracket.most?.si ?? Math.max(...sizes) * 2;
  const fit = fitShims(
    si<Angle>(a.change),
    si<Angle>(b.change),
    {
      toeBolts: si(bracket.toeBolts.si),
      camberBolts: si(bracket.camberBolts.si),
      shims: sizes.map((s) => si(s)),
      most: si(most),
    },
    { toe: si(a.tolerance), camber: si(b.tolerance) },
  );
  const unit = sheetUnit('length', c.sheet);
  const toeAfter = toe.angle + fit.toe;
  const camberAfter = camber.angle + fit.camber;
  const inside = (v: number, r: Range): boolean => v >= r.low!.si - 1e-9 && v <= r.high!.si + 1e-9;
  const done = inside(toeAfter, toeRange!) && inside(camberAfter, camberRange!);
  const sum = (bolt: Bolt): number => fit.stacks[bolt].reduce((t, s) => t + s, 0);
  // a step of the shims wider than the range: with them no nearer to it than without
  const far = (v: number, r: Range): number => Math.max(0, r.low!.si - v, v - r.high!.si);
  const nearer =
    far(toeAfter, toeRange!) + far(camberAfter, camberRange!) <
    far(toe.angle, toeRange!) + far(camber.angle, camberRange!);
  const put = done || nearer ? bolts.filter((bolt) => sum(bolt) > 0) : [];
  const full = bolts.some((bolt) => sum(bolt) > most - Math.min(...sizes));
  const said = put.map((bolt) => `${stackText(fit.stacks[bolt], unit)} ${bolt}`).join(', ');
  const degrees = (v: number): string => shown(v, 'deg', 0.0005).text;
  return {
    ...base,
    verdict: done ? 'within' : 'cannot tell',
    words:
      put.length === 0
        ? `${place}: leave it, no shim at hand comes nearer to the middle without overshooting (thinnest ${bracket.shims.map((s) => s.text)[sizes.indexOf(Math.min(...sizes))]})`
        : `${place}: add ${said}; comes to toe ${degrees(toeAfter)}, camber ${degrees(camberAfter)}${done ? '' : full ? ', still outside: the stack allows no more' : ', still outside: the next shim overshoots'}`,
    amount: shown(Math.max(0, ...bolts.map(sum)), unit, 0.00005, { difference: true }),
    limit: {
      high: shown(most, unit, 0.00005, { difference: true }),
      source: bracket.most
        ? sheetSource('alignment.bracket.most')
        : { kind: 'practice', words: 'assumed: two of the thickest shim' },
    },
    why: {
      ...base.why,
      inputs: [
        ...base.why.inputs,
        sheetInput('bolts fore and aft', bracket.toeBolts, 'alignment.bracket.toeBolts'),
        sheetInput('bolts up and down', bracket.camberBolts, 'alignment.bracket.camberBolts'),
        { name: 'shims', text: bracket.shims.map((s) => s.text).join(', '), from: 'sheet: alignment.bracket.shims' },
        bracket.most
          ? sheetInput('thickest stack', bracket.most, 'alignment.bracket.most')
          : { name: 'thickest stack', text: shown(most, unit, 0.0002).text, from: 'assumed: two of the thickest shim' },
      ],
      notes: [
        `remains against the middle of the range: toe ${degrees(fit.toeLeft)}, camber ${degrees(fit.camberLeft)}`,
        'assumed: a shim pushes its edge outboard, so rear bolts give toe in and top bolts camber top out; taking the same out at the opposite bolts does the same. Where the manual says otherwise it is right',
        'shims already in are not known: add to what is there',
        'after it: roll the coach its length, measure both again, then the other wheel of that side, thrust of the pair, and the heights (common practice, no source)',
      ],
    },
    drawing: {
      is: 'bracket',
      where: place,
      unit,
      shims: put.map((bolt) => ({ bolt, si: sum(bolt), text: stackText(fit.stacks[bolt], unit) })),
    },
  };
};

export const shims: Judge = {
  subject: 'shims',
  judge: (c) => {
    const places = new Set([...touched(c, 'toe'), ...touched(c, 'camber')].map((f) => f.where.v));
    return [...places].flatMap((place) => {
      const p = takePlace(place);
      if (!p?.side || p.end === 'front' || !p.wheel) return [];
      const found = solve(c, place);
      return found ? [found] : [];
    });
  },
};
