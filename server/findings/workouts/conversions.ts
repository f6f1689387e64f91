/** One number in another unit. */
import { type Unit, dimensionOf, fromSi, toSi } from '../../core/units.ts';
import type { Amount } from '../../core/amount.ts';
import { physics } from '../case.ts';
import { bare, type Workout } from './question.ts';

const spoken: readonly (readonly [RegExp, Unit])[] = [
  [/l\/min|lpm|lit(?:re|er)s? (?:a|per) min/, 'L/min'],
  [/cfm|cubic feet (?:a|per) min/, 'cfm'],
  [/kpa|kilopascals?/, 'kPa'],
  [/psi|pounds per/, 'psi'],
  [/\bbars?\b/, 'bar'],
  [/inhg|inches of mercury/, 'inHg'],
  [/kg\/?cm2?/, 'kg/cm2'],
  [/\bdeg(?:rees)? f\b|\bf\b|fahrenheit/, 'F'],
  [/\bdeg(?:rees)? c\b|\bc\b|celsius|centigrade/, 'C'],
  [/degrees?|\bdeg\b/, 'deg'],
  [/minutes of arc|arc ?min(?:ute)?s?/, 'arcmin'],
  [/\bmm\b|millimet(?:re|er)s?/, 'mm'],
  [/\bcm\b|centimet(?:re|er)s?/, 'cm'],
  [/\binch(?:es)?\b|\bin$/, 'in'],
  [/\bfeet\b|\bft\b|\bfoot\b/, 'ft'],
  [/miles?|\bmi\b/, 'mi'],
  [/\bkm\b|kilomet(?:re|er)s?/, 'km'],
  [/lit(?:re|er)s?|\bl\b/, 'L'],
  [/gallons?|\bgal\b/, 'gal'],
  [/cubic inch(?:es)?|\bin3\b|\bcu in\b/, 'in3'],
  [/\bml\b|millilit/, 'ml'],
  [/pounds?|\blbs?\b/, 'lb'],
  [/\bkg\b|kilos?|kilograms?/, 'kg'],
  [/newton|\bn ?m\b/, 'N m'],
  [/(?:ft|foot|lbf|pound).?(?:lb|ft|foot|pound)s?/, 'lbf ft'],
];

/** The unit a phrase ends in or asks for: after "to", "in", "into", "how many". */
const wantedIn = (words: string): Unit | null => {
  const tail =
    /\b(?:to|into|as)\s+([^?]+?)\s*\??\s*$|\bin\s+([a-z/ ]+?)\s*\??\s*$|\bhow (?:many|much) ([a-z/ ]+?) (?:is|are|in|does|makes?)\b/.exec(
      words,
    );
  const phrase = tail?.[1] ?? tail?.[2] ?? tail?.[3];
  return phrase === undefined ? null : (spoken.find(([re]) => re.test(phrase))?.[1] ?? null);
};

const digits = (value: number): string => `${Number(value.toPrecision(4))}`;

export const conversions: Workout = {
  subject: 'units',
  work: (q) => {
    const unit = wantedIn(q.words);
    if (!unit) return null;
    const amount: Amount | undefined = q.amounts.find(
      (a) => dimensionOf(a.unit) === dimensionOf(unit) && a.unit !== unit,
    );
    if (!amount || bare(q).includes(amount)) return null;
    const value = fromSi(amount.si, unit);
    const gauge = dimensionOf(unit) === 'pressure';
    return {
      words: `${amount.text} is ${digits(value)} ${unit}`,
      lines: gauge ? ['gauge stays gauge, absolute stays absolute'] : [],
      why: {
        formula:
          dimensionOf(unit) === 'temperature'
            ? 'by the zero and degree of each scale'
            : `1 ${amount.unit} = ${digits(toSi(1, amount.unit) / toSi(1, unit))} ${unit}`,
        inputs: [{ name: 'value', text: amount.text, from: 'said in the question' }],
        source: physics('exact definitions, as in NIST SP 811 appendix B'),
        notes: [],
      },
    };
  },
};
