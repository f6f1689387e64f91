/** Gauge and absolute: "what is 95 psi absolute up here at 5000 ft". */
import { absolute, atmosphereAt, gaugeOf } from '../../core/air.ts';
import { type AbsolutePressure, si } from '../../core/quantity.ts';
import { stepFromSi } from '../../core/units.ts';
import type { Unit } from '../../core/units.ts';
import type { Input } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import { amountInput, type Question, said, type Workout, type Worked } from './question.ts';

/** Where the question is put: at a height said in it, else the coach's own. */
export const hereIn = (q: Question): { p: AbsolutePressure; where: string; input: Input } => {
  const [height] = said(q, 'length');
  if (height)
    return { p: atmosphereAt(si(height.si)), where: `at ${height.text}`, input: amountInput('altitude', height) };
  const { p, input } = atmosphereOf(q.c);
  return { p, where: 'here', input };
};

const digits: Partial<Record<Unit, number>> = { psi: 1, kPa: 1, bar: 3, mbar: 0, inHg: 2 };
const text = (p: number, unit: Unit): string => `${stepFromSi(p, unit).toFixed(digits[unit] ?? 2)} ${unit}`;

const work = (q: Question): Worked | null => {
  if (!/\babsolute|\babs\b|\bpsi ?a\b|\bbar ?a\b|\bkpa ?a\b/.test(q.words)) return null;
  const [p] = said(q, 'pressure');
  if (!p) return null;
  const { p: atmosphere, where, input } = hereIn(q);
  const up = absolute(si(p.si), atmosphere);
  const down = p.si > atmosphere ? gaugeOf(si(p.si), atmosphere) : null;
  const name = p.text.replace(/\s*(?:absolute|abs)\b/i, '');
  const wanted = /\b(?:in|to|as)(?: an?)? (psi|kpa|bar)\b/.exec(q.words)?.[1];
  const other: Unit | null = wanted === 'kpa' ? 'kPa' : wanted === 'psi' || wanted === 'bar' ? wanted : null;
  const also = other && other !== p.unit ? ` (${text(up, other)})` : '';
  return {
    words: `${name} on the gauge is ${text(up, p.unit)} absolute${also} ${where}`,
    lines: [
      `the atmosphere ${where} is ${text(atmosphere, p.unit)} absolute: absolute = gauge + atmosphere`,
      down === null
        ? `${name} absolute would be below the atmosphere: a gauge cannot show it`
        : `${name} absolute would read ${text(down, p.unit)} on the gauge`,
      'weather moves the atmosphere by 3 %',
    ],
    why: {
      formula: 'absolute = gauge + atmosphere; atmosphere = 101325 (1 - 2.25577e-5 h)^5.2559',
      inputs: [amountInput('pressure', p), input],
      source: { kind: 'rule', words: 'standard atmosphere, ASHRAE Fundamentals 2017 ch. 1 eq. 3' },
      notes: [],
    },
  };
};

export const absolutes: Workout = { subject: 'absolute pressure', work };
