/** "which way do I turn the switch", "cut out is 126, which way?": from the sheet and the newest switch points. */
import { stepToSi } from '../../core/units.ts';
import type { Unit } from '../../core/units.ts';
import { type Case, latest, practice } from '../case.ts';
import type { Drawing } from '../finding.ts';
import { stripOf } from '../limits.ts';
import { sheetUnit, shown, typed } from '../show.ts';
import { type Point, adviceFor, limitsSaid, nutNotes, oneSided, pointOf } from '../switch-advice.ts';
import { switchRange } from '../judges/tank-pressure.ts';
import type { Question, Workout, Worked } from './question.ts';

type Which = 'cut-in' | 'cut-out';
const named: Readonly<Record<Which, RegExp>> = {
  'cut-in': /\b(?:cut.?in|comes? on|kicks? in)\b\D{0,12}(\d+(?:\.\d+)?)/,
  'cut-out': /\b(?:cut.?out|shuts? off|stops?)\b\D{0,12}(\d+(?:\.\d+)?)/,
};

/** A point said in the question itself stands before the newest reading. */
const pointIn = (q: Question, which: Which): Point | null => {
  const told = named[which].exec(q.words)?.[1];
  if (told !== undefined) {
    const unit = q.c.sheet.units.pressure;
    const amount = q.amounts.find((a) => a.text.startsWith(told) && a.unit !== 'count');
    const p = amount?.si ?? stepToSi(Number(told), unit);
    return { p, pm: stepToSi(0.5, amount?.unit ?? unit), from: 'said in the question', text: `${told} ${unit}` };
  }
  const fact = latest(q.c, which);
  return fact ? pointOf(fact, typed(fact.amount.v)) : null;
};

const change = (pa: number, unit: Unit): string =>
  shown(Math.abs(pa), unit, stepToSi(0.5, unit), { difference: true }).text;
const at = (p: number, unit: Unit): string => shown(p, unit, stepToSi(0.5, unit)).text;

/** The gauge was found wrong: what it says of the switch is not the switch's. */
const gaugeWrong = (c: Case): string[] => {
  const gauge = c.standing.findings.get('gauges@tank');
  return gauge && (gauge.verdict === 'low' || gauge.verdict === 'high')
    ? [`${gauge.words}: take both points by the second gauge before the nut is touched`]
    : [];
};

const howFar =
  'how far: no sheet gives a figure for a turn. A quarter turn, one whole cycle, both points read again: then you know';

const strip = (c: Case, unit: Unit, now: Point, by: number): Drawing =>
  stripOf(switchRange(c, 'cut-out'), unit, [
    { si: now.p, pm: now.pm, label: `now ${at(now.p, unit)}` },
    ...(by === 0 ? [] : [{ si: now.p + by, pm: now.pm, label: `then ${at(now.p + by, unit)}` }]),
  ]);

const both = (q: Question, cutIn: Point, cutOut: Point): Worked | null => {
  const { c } = q;
  const unit = sheetUnit('pressure', c.sheet);
  const why: Worked['why'] = {
    formula: 'one shift of both points that brings both into their limits, the middle of those that do',
    inputs: [
      { name: 'cut-in', text: cutIn.text, from: cutIn.from },
      { name: 'cut-out', text: cutOut.text, from: cutOut.from },
      { name: 'cut-in limits', text: limitsSaid(c, 'cut-in', unit), from: 'sheet or note' },
      { name: 'cut-out limits', text: limitsSaid(c, 'cut-out', unit), from: 'sheet or note' },
    ],
    source: practice(),
    notes: [...nutNotes],
  };
  if (cutOut.p <= cutIn.p)
    return {
      words: `cut-out ${cutOut.text} is not above cut-in ${cutIn.text}: one of the two readings is wrong, read both again`,
      lines: [],
      why,
    };
  const advice = adviceFor(c, cutIn, cutOut);
  if (!advice) return null;
  const apart = `they stay ${change(cutOut.p - cutIn.p, unit)} apart: the nut moves both alike`;
  const limits = [
    `cut-in should be ${limitsSaid(c, 'cut-in', unit)}`,
    `cut-out should be ${limitsSaid(c, 'cut-out', unit)}`,
  ];
  if (advice.do === 'leave')
    return {
      words: `leave the nut: cut-in ${cutIn.text} and cut-out ${cutOut.text} are both in their limits`,
      lines: limits,
      why,
      drawing: strip(c, unit, cutOut, 0),
    };
  if (advice.do === 'renew')
    return {
      words: `neither way: cut-in ${cutIn.text} and cut-out ${cutOut.text} are ${advice.why}, and the nut moves both alike. Renew the switch`,
      lines: [
        ...limits,
        ...gaugeWrong(c),
        'before it is renewed: the second gauge, and the port and line of the switch clear',
      ],
      why,
      drawing: strip(c, unit, cutOut, 0),
    };
  const up = advice.by > 0;
  return {
    words: `turn the nut ${up ? 'in' : 'out'}: both points go about ${change(advice.by, unit)} ${up ? 'up' : 'down'}, cut-in to ${at(cutIn.p + advice.by, unit)} and cut-out to ${at(cutOut.p + advice.by, unit)}`,
    lines: [apart, ...limits, howFar, ...gaugeWrong(c), 'pump power cut before the cover comes off'],
    why,
    drawing: strip(c, unit, cutOut, advice.by),
  };
};

const single = (q: Question, which: Which, point: Point): Worked | null => {
  const { c } = q;
  const unit = sheetUnit('pressure', c.sheet);
  const other: Which = which === 'cut-in' ? 'cut-out' : 'cut-in';
  const found = oneSided(c, which, point);
  if (!found) return null;
  const helps = `${other} must now stand between ${at(found.other.low, unit)} and ${at(found.other.high, unit)} for that: outside it the nut cannot bring both right, and the switch is renewed`;
  return {
    words:
      found.way === null
        ? `${which} ${point.text} is in its limits: read ${other} before the nut is touched`
        : `${found.way} with the nut, if at all: ${which} ${point.text} wants about ${change(found.by, unit)} ${found.by > 0 ? 'more' : 'less'}, and ${other} moves as much. Read ${other} first`,
    lines: [
      `${which} should be ${limitsSaid(c, which, unit)}`,
      ...(found.way === null ? [] : [helps, howFar]),
      ...gaugeWrong(c),
    ],
    why: {
      formula: 'the middle of the shifts that bring this point into its limits; the other point moves as much',
      inputs: [
        { name: which, text: point.text, from: point.from },
        { name: `${which} limits`, text: limitsSaid(c, which, unit), from: 'sheet or note' },
        { name: `${other} limits`, text: limitsSaid(c, other, unit), from: 'sheet or note' },
      ],
      source: practice(),
      notes: [...nutNotes],
    },
    ...(which === 'cut-out' ? { drawing: strip(c, unit, point, found.by) } : {}),
    wants: { field: other, question: `At what pressure does the pump ${other === 'cut-in' ? 'start' : 'stop'} now?` },
  };
};

const asks = (q: Question): boolean => {
  const way = /\bwhich (?:way|direction)\b|\bhow (?:far|much|many turns)\b.*\b(?:turn|screw|wind|adjust|move|nut)/;
  if (!way.test(q.words)) return /\b(?:adjust|turn|renew|replace|change|set)\b.*\b(?:pressure )?switch\b/.test(q.words);
  // "which way do I turn it": the switch where nothing else is named
  return (
    /\bswitch\b|\bcut.?(?:in|out)\b|\bnut\b/.test(q.words) ||
    !/\b(?:link|arm|rod|bar|torsion|adjuster|valve|shim|bolt|front|rear|bracket|tie|height|toe|camber)\b/.test(q.words)
  );
};

export const switchNut: Workout = {
  subject: 'switch',
  work: (q) => {
    if (!asks(q)) return null;
    const [cutIn, cutOut] = [pointIn(q, 'cut-in'), pointIn(q, 'cut-out')];
    const missing = (['cut-in', 'cut-out'] as const).find((which) => !switchRange(q.c, which));
    const named = /\bswitch\b|\bcut.?(?:in|out)\b|\bnut\b/.test(q.words);
    if (!cutIn && !cutOut)
      return named
        ? {
            words:
              'read both points first: watch the gauge through one whole cycle, where the pump starts and where it stops',
            lines: [...nutNotes],
            wants: { field: 'cut-in', question: 'At what pressure does the pump start, and at what does it stop?' },
          }
        : /\bturn\b.*\b(?:it|that|this)\b/.test(q.words)
          ? {
              words: 'turn what? The nut of the pressure switch, the link of a height valve, or the front adjuster',
              lines: ['"which way do I turn the switch", "how far do I turn the adjuster for 3/8"'],
            }
          : null;
    if (missing)
      return {
        words: `the sheet does not say where the pump ${missing === 'cut-in' ? 'starts' : 'stops'}: without it no way is right`,
        lines: [...nutNotes],
        wants: {
          field: missing === 'cut-in' ? 'supply.cutIn' : 'supply.cutOut',
          question: `At what pressure should the pump ${missing === 'cut-in' ? 'start' : 'stop'} (lowest and highest)?`,
        },
      };
    if (cutIn && cutOut) return both(q, cutIn, cutOut);
    return cutIn ? single(q, 'cut-in', cutIn) : single(q, 'cut-out', cutOut!);
  },
};
