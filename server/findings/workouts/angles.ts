/** Toe and camber between inches and degrees, and shims for them. */
import { angleOver, offsetOver } from '../../core/toe.ts';
import { fitShims, shimFor } from '../../core/shims.ts';
import { type Angle, si } from '../../core/quantity.ts';
import { stepToSi } from '../../core/units.ts';
import type { Amount } from '../../core/amount.ts';
import { type Input, physics, sheetInput } from '../case.ts';
import { asWorked } from './suppose.ts';
import { judge } from '../judge.ts';
import { stackText } from '../shim-text.ts';
import { sheetUnit, shown } from '../show.ts';
import { amountInput, bare, lengthUnit, type Question, said, type Workout, type Worked } from './question.ts';

/** "12 minutes" of toe are of arc. */
const ofArc = (q: Question): Amount | undefined => {
  const [time] = said(q, 'duration');
  if (time?.unit !== 'min' || !/\btoe|camber|\bover\b|\barc\b/.test(q.words)) return undefined;
  const minutes = time.si / 60;
  return {
    ...time,
    si: stepToSi(minutes / 60, 'deg'),
    pm: stepToSi(0.5 / 60, 'deg'),
    unit: 'arcmin',
    text: `${minutes} minutes of arc`,
  };
};

const convert = (q: Question): Worked | null => {
  const lengths = said(q, 'length');
  const angle = said(q, 'angle')[0] ?? ofArc(q);
  const spanAmount = angle ? lengths[0] : lengths[1];
  const rim = /camber|rim/.test(q.words);
  const onSheet = rim ? q.c.sheet.tyres?.rim : q.c.sheet.tyres?.diameter;
  const span = spanAmount ?? onSheet;
  const wanted = /\b(?:degrees?|deg|inch(?:es)?|minutes?|mm|toe|camber)\b/.test(q.words);
  if (!angle && (!lengths[0] || (!spanAmount && !/toe|camber|degree/.test(q.words)))) return null;
  if (angle && !spanAmount && !/\bin (?:inches|mm)|toe|camber/.test(q.words)) return null;
  if (!wanted && !spanAmount) return null;
  if (!span)
    return {
      words: 'over what diameter?',
      lines: [],
      wants: { field: rim ? 'tyres.rim' : 'tyres.diameter', question: 'Over what diameter is it measured?' },
    };
  const input: Input = spanAmount
    ? amountInput('over', spanAmount)
    : sheetInput('over', onSheet!, rim ? 'tyres.rim' : 'tyres.diameter');
  const why = (inputs: Input[], formula: string): NonNullable<Worked['why']> => ({
    formula,
    inputs,
    source: physics('geometry'),
    notes: ['per wheel: a total toe is shared by the two wheels of an axle'],
  });
  if (angle) {
    const offset = offsetOver(si(angle.si), si(span.si));
    const text = (u: 'in' | 'mm'): string =>
      u === 'in' ? `${(offset / 0.0254).toFixed(3)} in` : shown(offset, 'mm', 0.00005).text;
    const first = q.metric ? text('mm') : text('in');
    return {
      words: `${angle.text} over ${input.text} is ${first} (${q.metric ? text('in') : text('mm')})`,
      lines: [],
      why: why([amountInput('angle', angle), input], 'x = D tan(angle)'),
    };
  }
  const x = lengths[0]!;
  const a = angleOver(si(x.si), si(span.si));
  return {
    words: `${x.text} over ${input.text} is ${((a * 180) / Math.PI).toFixed(3)} degrees (${((a * 10_800) / Math.PI).toFixed(1)} minutes of arc)`,
    lines: [],
    why: why([amountInput('x', x), input], 'angle = atan(x / D)'),
  };
};

/** The number that goes with toe or camber in the words: the one nearest to the word, before or after. */
const near = (q: Question, what: 'toe' | 'camber'): Amount | null => {
  const at = q.words.indexOf(what);
  if (at < 0) return null;
  let best: { far: number; amount: Amount } | null = null;
  for (const amount of q.amounts) {
    const from = q.words.indexOf(amount.text.toLowerCase());
    if (from < 0) continue;
    const far = Math.min(Math.abs(from - at), Math.abs(from + amount.text.length - at));
    if (!best || far < best.far) best = { far, amount };
  }
  return best?.amount ?? null;
};

/** As an angle: degrees as said, a length over the tyre (toe) or rim (camber), a bare number by the habit of each. */
const asAngle = (q: Question, amount: Amount | null, what: 'toe' | 'camber'): number | null => {
  if (!amount) return null;
  const across = what === 'toe' ? q.c.sheet.tyres?.diameter : q.c.sheet.tyres?.rim;
  if (said(q, 'angle').includes(amount)) return amount.si;
  if (said(q, 'length').includes(amount)) return across ? angleOver(si(amount.si), si(across.si)) : null;
  if (!bare(q).includes(amount)) return null;
  if (what === 'camber') return stepToSi(amount.si, 'deg');
  return across ? angleOver(si(stepToSi(amount.si, lengthUnit(q, amount))), si(across.si)) : null;
};

const shimsFor = (q: Question): Worked | null => {
  const bracket = q.c.sheet.alignment?.bracket;
  if (!bracket)
    return {
      words: 'the sheet has no bracket',
      lines: [],
      wants: {
        field: 'alignment.bracket',
        question: 'How far apart are the bracket bolts, and which shims are there?',
      },
    };
  const toeAmount = near(q, 'toe');
  const camberAmount = near(q, 'camber');
  let toe = asAngle(q, toeAmount, 'toe') ?? 0;
  let camber =
    camberAmount === toeAmount &&
    toeAmount !== null &&
    said(q, 'angle').length + bare(q).length + said(q, 'length').length < 2
      ? 0
      : (asAngle(q, camberAmount, 'camber') ?? 0);
  const [angle] = said(q, 'angle');
  const unit = sheetUnit('length', q.c.sheet);
  const thick = (v: number): string => (unit === 'in' ? `${(v / 0.0254).toFixed(3)} in` : shown(v, 'mm', 0.00005).text);
  if (toe === 0 && camber === 0) {
    if (!angle)
      return (
        asWorked(judge(q.c.facts, q.c.standing, q.c.sheet).filter((f) => f.key.startsWith('shims@'))) ?? {
          words: 'for which wheel? type its toe and camber',
          lines: ['"toe left rear forward 1/8 out, camber 0.2"'],
        }
      );
    return {
      words: `${thick(shimFor(si(angle.si), si(bracket.toeBolts.si)))} across the fore and aft bolts for toe, ${thick(shimFor(si(angle.si), si(bracket.camberBolts.si)))} across the upper and lower for camber`,
      lines: [`shims at hand: ${bracket.shims.map((s) => s.text).join(', ')}`],
      why: {
        formula: 'shim = L tan(angle)',
        inputs: [
          amountInput('angle', angle),
          sheetInput('bolts fore and aft', bracket.toeBolts, 'alignment.bracket.toeBolts'),
          sheetInput('bolts up and down', bracket.camberBolts, 'alignment.bracket.camberBolts'),
        ],
        source: physics('geometry of a flat bracket'),
        notes: [],
      },
    };
  }
  // What is said to be off is to be taken out again.
  const out = /\btoe(?:d)? ?out|out\b/.test(q.words);
  if (/\b(?:out|in)\b/.test(q.words)) toe = out ? toe : -toe;
  if (/top (?:out|in)/.test(q.words)) camber = /top out/.test(q.words) ? -camber : camber;
  const most = bracket.most?.si ?? 2 * Math.max(...bracket.shims.map((s) => s.si));
  const fit = fitShims(
    si<Angle>(toe),
    si<Angle>(camber),
    {
      toeBolts: si(bracket.toeBolts.si),
      camberBolts: si(bracket.camberBolts.si),
      shims: bracket.shims.map((s) => si(s.si)),
      most: si(most),
    },
    { toe: si(stepToSi(0.05, 'deg')), camber: si(stepToSi(0.2, 'deg')) },
  );
  const put = Object.entries(fit.stacks).filter(([, stack]) => stack.length > 0);
  const sum = (stack: readonly number[]): number => stack.reduce((a, b) => a + b, 0);
  return {
    words:
      put.length === 0
        ? 'no shim at hand comes nearer'
        : `add ${put.map(([bolt, stack]) => `${stackText(stack, unit)} ${bolt}`).join(', ')}`,
    lines: [
      `changes toe by ${((fit.toe * 180) / Math.PI).toFixed(2)} and camber by ${((fit.camber * 180) / Math.PI).toFixed(2)} degrees (in and top out positive); remains ${((fit.toeLeft * 180) / Math.PI).toFixed(2)} and ${((fit.camberLeft * 180) / Math.PI).toFixed(2)}`,
      'assumed: a shim pushes its edge outboard; toe said as out is taken in again, camber as the change wanted unless top in or out was said',
      'roll the coach its length and measure again after it',
    ],
    why: {
      formula: 'shim = L tan(change); stacks for toe and camber added where a bolt serves both',
      inputs: [
        sheetInput('bolts fore and aft', bracket.toeBolts, 'alignment.bracket.toeBolts'),
        sheetInput('bolts up and down', bracket.camberBolts, 'alignment.bracket.camberBolts'),
      ],
      source: physics('geometry of a flat bracket'),
      notes: [],
    },
    drawing: {
      is: 'bracket',
      where: '',
      unit,
      shims: put.map(([bolt, stack]) => ({ bolt, si: sum(stack), text: stackText(stack, unit) })),
    },
  };
};

export const angles: Workout = {
  subject: 'angles and shims',
  work: (q) => {
    if (/\bshim/.test(q.words)) return shimsFor(q);
    if (/turn|arm\b|link|lean/.test(q.words)) return null;
    return convert(q);
  },
};
