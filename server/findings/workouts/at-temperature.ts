/** Tyre and tank at another temperature, and the cooling that looks like a leak. */
import { atTemperature, coolingThatImitates } from '../../core/gas-law.ts';
import { si } from '../../core/quantity.ts';
import { toSi } from '../../core/units.ts';
import { type Input, latest, middle, physics } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import { shown, typed } from '../show.ts';
import { tankSide } from '../tank-episode.ts';
import { amountInput, bare, type Question, said, type Workout, type Worked } from './question.ts';

const stepHalf = (unit: string): number => (unit === 'psi' ? 3447 : unit === 'kPa' ? 500 : 1000);

/** Two temperatures: from and to, K; a bare number beside one takes its unit. */
const temperatures = (q: Question): [number | null, number | null, 'F' | 'C' | 'K'] => {
  const all = said(q, 'temperature');
  const unit = (all[0]?.unit ?? q.c.sheet.units.temperature) as 'F' | 'C' | 'K';
  const numbers = q.amounts
    .filter((a) => all.includes(a) || bare(q).includes(a))
    .map((a) => (all.includes(a) ? a.si : toSi(a.si, unit)));
  // "at 50 F from 70 F": the one it comes from stands last
  if (numbers.length >= 2 && /\bat\b.*\bfrom\b/.test(q.words)) return [numbers[1]!, numbers[0]!, unit];
  return numbers.length >= 2 ? [numbers[0]!, numbers[1]!, unit] : [null, numbers[0] ?? null, unit];
};

const atAnother = (q: Question): Worked | null => {
  const tyre = /tyre|tire/.test(q.words);
  // a pressure at a temperature, of nothing named: the tank's, which is no tyre's
  const tank =
    /\btank|reservoir|\b(?:it|gauge) (?:read|be|show|become|drop|fall|go)\b/.test(q.words) ||
    (said(q, 'pressure').length > 0 && said(q, 'temperature').length > 0);
  if (!tyre && !tank) return null;
  if (said(q, 'temperature').length === 0) return null;
  const [from, to, unit] = temperatures(q);
  if (to === null) return null;
  const { p: atmosphere, input } = atmosphereOf(q.c);
  const pressureUnit = q.c.sheet.units.pressure;
  const degrees = (t: number): string => shown(t, unit, 0.5).text;
  const pressed = said(q, 'pressure')[0];
  const line = (
    name: string,
    p: number,
    base: number,
    from2: string,
    text: string,
  ): { text: string; input: Input } => ({
    text: `${name}: ${shown(atTemperature(si(p), si(base), si(to), atmosphere), pressureUnit, stepHalf(pressureUnit)).text} at ${degrees(to)} (${text} at ${degrees(base)})`,
    input: { name, text: `${text} at ${degrees(base)}`, from: from2 },
  });
  const rows: { text: string; input: Input }[] = [];
  if (tyre) {
    const { tyres } = q.c.sheet;
    const base = from ?? tyres?.at?.si;
    if (base === undefined)
      return {
        words: 'at what temperature does the tyre figure hold?',
        lines: [],
        wants: { field: 'tyres.at', question: "At what temperature do the sheet's tyre pressures hold?" },
      };
    if (pressed) rows.push(line('tyre', pressed.si, base, 'said in the question', pressed.text));
    else
      for (const end of ['front', 'rear'] as const) {
        const p = tyres?.[end];
        if (p && (!/front|rear/.test(q.words) || q.words.includes(end)))
          rows.push(line(`${end} tyres`, p.si, base, `sheet: tyres.${end}, tyres.at`, p.text));
      }
    if (rows.length === 0)
      return {
        words: 'the sheet has no tyre pressures',
        lines: [],
        wants: { field: 'tyres.rear', question: 'What cold pressure should the tyres have, and at what temperature?' },
      };
  } else {
    const read = latest(q.c, 'pressure', tankSide);
    const warm = latest(q.c, 'temperature', (p) => p === 'ambient' || p === '' || p === 'tank');
    const base = from ?? warm?.amount.v.si;
    const p = pressed?.si ?? (read ? middle(read.amount.v) : q.c.sheet.supply?.cutOut?.high.si);
    if (base === undefined)
      return {
        words: 'from what temperature?',
        lines: [],
        wants: { field: 'ambient', question: 'How warm is it now?' },
      };
    if (p === undefined)
      return {
        words: 'from what pressure?',
        lines: [],
        wants: { field: 'tank pressure', question: 'What does the tank read now?' },
      };
    rows.push(
      line(
        'tank',
        p,
        base,
        pressed ? 'said in the question' : (read?.id ?? 'sheet: supply.cutOut'),
        pressed?.text ?? (read ? typed(read.amount.v) : q.c.sheet.supply!.cutOut!.high.text),
      ),
    );
  }
  return {
    words: rows.map((r) => r.text).join('; '),
    lines: tyre
      ? [
          'cold: never bleed a warm tyre',
          'by absolute pressure: the 1 psi for 10 F of common talk is for car tyres, a coach tyre moves twice that',
        ]
      : ['by temperature alone, without a leak'],
    why: {
      formula: 'p2 = (p1 + pa) T2/T1 - pa, at constant volume',
      inputs: [...rows.map((r) => r.input), input],
      source: physics('gas law of Gay-Lussac'),
      notes: [],
    },
  };
};

const imitates = (q: Question): Worked | null => {
  if (
    !/(?:degree|temp|cool|cold).*(?:psi|kpa|bar|leak|fall|drop)|(?:psi|kpa|bar).*(?:degree|temp|cool|cold)/.test(
      q.words,
    )
  )
    return null;
  const [fall] = said(q, 'pressure');
  const { p: atmosphere, input } = atmosphereOf(q.c);
  const read = latest(q.c, 'pressure', tankSide);
  const p = read ? middle(read.amount.v) : 6.894757e5;
  const text = read ? typed(read.amount.v) : '100 psi (690 kPa), assumed';
  if (!fall || fall.si > p) return null;
  const k = coolingThatImitates(si(p), fall.si, si(293.15), atmosphere);
  return {
    words: `cooling by ${k.toFixed(1)} K (${(k * 1.8).toFixed(1)} F) alone lowers ${text} by ${fall.text}`,
    lines: ['so a cold night looks like a leak: compare at the same temperature'],
    why: {
      formula: 'dT = T dp / p absolute',
      inputs: [
        amountInput('fall', fall),
        { name: 'tank', text, from: read?.id ?? 'assumed' },
        { name: 'temperature', text: '20 C', from: 'assumed' },
        input,
      ],
      source: physics('gas law of Gay-Lussac'),
      notes: [],
    },
  };
};

export const atTemperatures: Workout = { subject: 'temperature', work: (q) => imitates(q) ?? atAnother(q) };
