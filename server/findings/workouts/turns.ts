/** What to turn or move for a change of height; lean. */
import { armChange, leanOf, torsionTurns } from '../../core/heights.ts';
import { si } from '../../core/quantity.ts';
import { stepToSi } from '../../core/units.ts';
import { middle, physics, practice, sheetInput } from '../case.ts';
import { cornerOf, heightRange, heightValue, nominalOf } from '../corner-sheet.ts';
import { judge } from '../judge.ts';
import { quarterTurns, sheetUnit, shown } from '../show.ts';
import { amountInput, bare, lengthUnit, type Question, said, type Workout, type Worked } from './question.ts';

type Change = { si: number; pm: number; text: string; from?: string };

const change = (q: Question): Change | null => {
  const [length] = said(q, 'length');
  if (length) return length;
  const [number] = bare(q);
  if (!number) return null;
  const unit = lengthUnit(q, number);
  return { si: stepToSi(number.si, unit), pm: stepToSi(number.pm, unit), text: `${number.text} ${unit}` };
};

/** No height said: how far the newest reading of a corner at that end is from the sheet. */
const lastOff = (q: Question, end: 'front' | 'rear'): Change | null => {
  for (const fact of q.c.facts.toReversed()) {
    if (fact.is !== 'reading') continue;
    const corner = cornerOf(fact.where.v);
    if (!corner || !fact.where.v.endsWith(end)) continue;
    const off =
      fact.what.v === 'height off'
        ? middle(fact.amount.v)
        : fact.what.v === 'height'
          ? heightValue(fact) - (nominalOf(heightRange(q.c, corner)) ?? heightValue(fact))
          : null;
    if (off === null || Math.abs(off) < fact.amount.v.pm) continue;
    const { unit, pm } = fact.amount.v;
    const size = shown(Math.abs(off), unit, pm, { difference: true }).text;
    return {
      si: Math.abs(off),
      pm,
      text: `${size} that ${fact.where.v} is ${off < 0 ? 'low' : 'high'}`,
      from: fact.id,
    };
  }
  return null;
};

const order: Worked = {
  words: 'tyres and floor first, then rear heights, front heights, and the rear again',
  lines: [
    'alignment after the heights, thrust of each pair last: a height moves toe and camber',
    'roll the coach its length and settle the valves before each measuring',
  ],
  why: {
    formula: 'each step moves what comes after it, not what came before',
    inputs: [],
    source: practice(),
    notes: [],
  },
};

/** Lean of each end as last taped. */
const leans = (q: Question): Worked | null => {
  const found = judge(q.c.facts, q.c.standing, q.c.sheet).filter((f) => /^side to side@(?:front|rear)$/.test(f.key));
  const said = found.map((f) => {
    const degrees = f.why.notes.find((n) => n.startsWith('lean '));
    return `${f.words}${degrees ? ` (${degrees.replace(/,.*/, '')})` : ''}`;
  });
  const [first, ...rest] = said;
  if (!first) return { words: 'not known yet: tape left and right of one end', lines: ['"LR 13 1/4 RR 13 3/4"'] };
  return { words: first, lines: rest, why: found[0]!.why };
};

const torsion = (q: Question, h: Change): Worked => {
  const per = q.c.sheet.heights?.torsionPerTurn;
  if (!per)
    return {
      words: 'the sheet does not give the height for a turn',
      lines: ['turn it once, measure, and you know'],
      wants: { field: 'heights.torsionPerTurn', question: 'How much height does one turn of the front adjuster give?' },
    };
  return {
    words: `${quarterTurns(torsionTurns(si(h.si), si(per.si)))} of the front adjuster for ${h.from ? 'the ' : ''}${h.text}`,
    lines: [
      "load off the bar by the maker's method: never backed off by hand under load",
      'both front corners, then the rear again; check the front alignment after',
    ],
    why: {
      formula: 'change of height over height for a turn',
      inputs: [
        { name: 'change', text: h.text, from: h.from ?? 'said in the question' },
        sheetInput('for a turn', per, 'heights.torsionPerTurn'),
      ],
      source: physics('linear for small changes'),
      notes: [],
    },
  };
};

const arm = (q: Question, h: Change): Worked => {
  const per = q.c.sheet.valves?.heightPerArm;
  if (!per)
    return {
      words: 'the sheet does not give height for arm travel',
      lines: [],
      wants: {
        field: 'valves.heightPerArm',
        question: "How much does the height change for a change at the arm's end?",
      },
    };
  const unit = sheetUnit('length', q.c.sheet);
  return {
    words: `${shown(armChange(si(h.si), per), unit, unit === 'in' ? 0.0254 / 32 : 0.0005, { difference: true }).text} at the arm's end for ${h.from ? `the ${h.text}` : `${h.text} of height`}`,
    lines: [
      'towards fill to raise, towards exhaust to lower; nobody under or between while link or arm moves',
      "measure again after the valve's delay",
    ],
    why: {
      formula: 'height over height for arm travel',
      inputs: [
        { name: 'change', text: h.text, from: h.from ?? 'said in the question' },
        { name: 'height for arm travel', text: `${per}`, from: 'sheet: valves.heightPerArm' },
      ],
      source: physics('ratio of the linkage'),
      notes: [],
    },
  };
};

export const turns: Workout = {
  subject: 'height adjustment',
  work: (q) => {
    const lean = /\blean|tilt/.test(q.words) && said(q, 'length').length > 0;
    const track = q.c.sheet.alignment?.track;
    if (lean && track) {
      const h = said(q, 'length')[0]!;
      return {
        words: `${h.text} side to side is ${((leanOf(si(0), si(h.si), si(track.si)) * 180) / Math.PI).toFixed(2)} degrees of lean`,
        lines: [],
        why: {
          formula: 'atan(difference / track)',
          inputs: [amountInput('difference', h), sheetInput('track', track, 'alignment.track')],
          source: physics('geometry'),
          notes: [],
        },
      };
    }
    if (/\blean|tilt/.test(q.words) && /degree|how (?:much|far)/.test(q.words)) return leans(q);
    if (/\border\b/.test(q.words) && /\b(?:adjust|set|heights?|level|align|correct|do)\b/.test(q.words)) return order;
    const ofArm = /\barm\b|\blink|\brod\b|linkage/.test(q.words);
    const ofBar = /torsion|adjuster/.test(q.words);
    const h = change(q) ?? (ofBar ? lastOff(q, 'front') : ofArm ? lastOff(q, 'rear') : null);
    if (!h)
      return ofBar || ofArm
        ? {
            words: 'for how much height? Read the corners, or say it',
            lines: ['"how far do I turn the adjuster for 3/8", "how far do I move the arm for 10 mm"'],
          }
        : null;
    if (ofBar || (!ofArm && /\bturns?\b/.test(q.words))) return torsion(q, h);
    return ofArm ? arm(q, h) : null;
  },
};
