/** "what should the tank be", "whats the limit on leak down": straight from the sheet or what was given in the session. */
import { type Case, type Range, benchmark, noteSource, sheetSource } from '../case.ts';
import { cornerPlace } from '../corner-sheet.ts';
import { rangeWords, stripOf } from '../limits.ts';
import { switchRange } from '../judges/tank-pressure.ts';
import { type Question, type Workout, type Worked } from './question.ts';
import { rows } from './limit-rows.ts';
import { type Row, cornerIn } from './limit-row.ts';

const torque = (c: Case, words: string): Worked | null => {
  if (!/torque|how tight/.test(words)) return null;
  const all = c.sheet.torques ?? [];
  const hit = all.filter(
    (t) =>
      t.what
        .toLowerCase()
        .split(/\W+/)
        .some((w) => w.length > 3 && words.includes(w.replace(/s$/, ''))) ||
      (/\bbags?\b/.test(words) && /bellows/.test(t.what)),
  );
  if (hit.length === 0)
    return {
      words: 'no torque on this sheet for that',
      lines: all.map((t) => `${t.what}: ${t.torque.text}`),
      wants: { field: 'torques', question: 'What torque does the manual give for this bolt?' },
    };
  return {
    words: hit.map((t) => `${t.what}: ${t.torque.text} (sheet: torques)`).join('; '),
    lines: ["the maker's manual comes first"],
  };
};

const leakLimit = (c: Case): Worked => {
  const limit = c.sheet.supply?.leakLimit;
  return {
    words: limit
      ? `the tank may fall ${limit.fall.text} in ${limit.over.text} (sheet: supply.leakLimit)`
      : 'this sheet has no limit for the fall of the tank',
    lines: [`for comparison: ${benchmark().words}`, 'pump off, settled 15 min'],
    ...(limit
      ? {}
      : {
          wants: { field: 'supply.leakLimit', question: 'How far may the tank fall on this coach, and in what time?' },
        }),
  };
};

const tank = (c: Case): Worked => {
  const [a, b] = [switchRange(c, 'cut-in'), switchRange(c, 'cut-out')];
  const unit = c.sheet.units.pressure;
  const missing = !a ? 'cutIn' : !b ? 'cutOut' : null;
  const band: Range | null =
    a?.low && b?.high
      ? {
          low: a.low,
          high: b.high,
          source: a.source.kind === 'note' ? noteSource() : sheetSource('supply.cutIn, supply.cutOut'),
          because: [],
        }
      : null;
  return {
    words: band
      ? `tank ${rangeWords(band, unit)}: the pump starts at ${rangeWords(a!, unit)} and stops at ${rangeWords(b!, unit)} (${band.source.words})`
      : `the sheet does not say where the pump ${missing === 'cutIn' ? 'starts' : 'stops'}`,
    lines: c.sheet.supply?.relief ? [`relief opens at ${c.sheet.supply.relief.text} (sheet: supply.relief)`] : [],
    ...(band
      ? { drawing: stripOf(band, unit, []) }
      : {
          wants: {
            field: `supply.${missing ?? 'cutIn'}`,
            question: `At what pressure should the pump ${missing === 'cutIn' ? 'start' : 'stop'}?`,
          },
        }),
  };
};

const answer = (q: Question, row: Row): Worked => {
  const range = row.range(q.c, q.words);
  if (!range)
    return {
      words: `this sheet does not say: ${row.name}`,
      lines: [],
      wants: { field: row.field, question: row.question },
    };
  const unit = (range.low ?? range.high)!.unit;
  const place =
    row.name === 'height'
      ? `${cornerPlace[cornerIn(q.words) ?? (/\bfronts?\b/.test(q.words) ? 'leftFront' : 'leftRear')]} height`
      : row.name;
  return {
    words: `${place}: ${rangeWords(range, unit)} (${range.source.words})`,
    lines: row.lines?.(q.c) ?? [],
    why: {
      formula: 'as given',
      inputs: [{ name: row.name, text: rangeWords(range, unit), from: range.because[0] ?? range.source.words }],
      source: range.source,
      notes: [],
    },
    drawing: stripOf(range, unit, []),
  };
};

/** A question for a limit; `how long` ones only where they name a limit of time. */
export const limits: Workout = {
  subject: 'limits',
  work: (q) => {
    const { ask } = q.ask;
    if (
      ask !== 'limit' &&
      !(ask === 'how long' && /delay|run/.test(q.words)) &&
      !(ask === 'what is' && /should|limit|spec|max|min/.test(q.words))
    )
      return null;
    const about = `${q.words} ${q.ask.about ?? ''}`;
    const bolts = torque(q.c, about);
    if (bolts) return bolts;
    if (/leak|bleed|fall|loss|lose/.test(q.words) || q.ask.about === 'pressure fall') return leakLimit(q.c);
    const row =
      rows.find((r) => r.asks.test(q.words)) ?? rows.find((r) => q.ask.about !== undefined && r.asks.test(q.ask.about));
    if (row) return answer(q, row);
    return /tank|pressure|psi|kpa|bar|reservoir/.test(about) ? tank(q.c) : null;
  },
};
