/** "what should the tank be", "whats the limit on leak down": straight from the sheet or what was given in the session. */
import type { Measure } from '../../../intents/shapes.ts';
import type { Amount } from '../../core/amount.ts';
import { type Case, type Range, benchmark, noteSource, rangeOf, sheetSource } from '../case.ts';
import { cornerPlace, heightRange } from '../corner-sheet.ts';
import type { Corner } from '../../core/heights.ts';
import { rangeWords, stripOf } from '../limits.ts';
import { switchRange } from '../judges/tank-pressure.ts';
import { type Question, type Workout, type Worked } from './question.ts';

type Row = {
  /** In the words, or as the reader's topic. */
  asks: RegExp;
  name: string;
  range: (c: Case, words: string) => Range | null;
  field: string;
  question: string;
  lines?: (c: Case) => string[];
};

const of =
  (
    what: Measure,
    place: string,
    pick: (c: Case) => { low?: Amount | undefined; high?: Amount | undefined } | undefined,
    field: string,
  ) =>
  (c: Case): Range | null =>
    rangeOf(c, what, place, pick(c), field);
const most = (amount: Amount | undefined) => (amount ? { high: amount } : undefined);
const least = (amount: Amount | undefined) => (amount ? { low: amount } : undefined);
const exactly = (amount: Amount | undefined) => (amount ? { low: amount, high: amount } : undefined);

const cornerIn = (words: string): Corner | null => {
  const left = /\b(?:left|lr|lf|lh|nearside|driver)/.test(words);
  const right = /\b(?:right|rr|rf|rh|offside|kerb|curb)/.test(words);
  const front = /\b(?:front|lf|rf|fronts)\b/.test(words);
  if (left === right) return null;
  return `${left ? 'left' : 'right'}${front ? 'Front' : 'Rear'}`;
};

const heightOf = (c: Case, words: string): Range | null => {
  const corner = cornerIn(words) ?? (/\bfronts?\b/.test(words) ? 'leftFront' : 'leftRear');
  return heightRange(c, corner);
};

const rows: readonly Row[] = [
  {
    asks: /cut.?in|(?:pump|comp\w*) (?:should )?(?:start|come on|kick in)/,
    name: 'cut-in',
    range: (c) => switchRange(c, 'cut-in'),
    field: 'supply.cutIn',
    question: 'At what pressure should the pump start (lowest and highest)?',
  },
  {
    asks: /cut.?out|(?:pump|comp\w*) (?:should )?(?:stop|shut off)/,
    name: 'cut-out',
    range: (c) => switchRange(c, 'cut-out'),
    field: 'supply.cutOut',
    question: 'At what pressure should the pump stop (lowest and highest)?',
  },
  {
    asks: /relief|safety valve|pop.?off/,
    name: 'relief valve',
    range: of('pressure', 'relief', (c) => exactly(c.sheet.supply?.relief), 'supply.relief'),
    field: 'supply.relief',
    question: 'At what pressure does the relief valve open?',
    lines: () => ['a relief valve is never plugged, taped or raised'],
  },
  {
    asks: /tyre|tire/,
    name: 'tyre',
    range: (c, w) =>
      of(
        'pressure',
        /front/.test(w) ? 'front tyre' : 'rear tyre',
        (x) => exactly(/front/.test(w) ? x.sheet.tyres?.front : x.sheet.tyres?.rear),
        /front/.test(w) ? 'tyres.front' : 'tyres.rear',
      )(c),
    field: 'tyres',
    question: 'What cold pressure should the tyres have?',
    lines: (c) =>
      c.sheet.tyres?.at ? [`cold, at ${c.sheet.tyres.at.text}: ask "tyre at 40 F" for another temperature`] : ['cold'],
  },
  {
    asks: /bag|bellows|air ?spring|bladder/,
    name: 'bellows pressure at ride height',
    range: (c, w) =>
      of(
        'pressure',
        /right|\brh?\b/.test(w) ? 'right bellows' : 'left bellows',
        (x) => x.sheet.springs?.pressure?.[/right|\brh?\b/.test(w) ? 'right' : 'left'],
        `springs.pressure.${/right|\brh?\b/.test(w) ? 'right' : 'left'}`,
      )(c),
    field: 'springs.pressure',
    question: 'What pressure do the bellows carry at ride height?',
    lines: () => ['load over area sets it: the valve does not', 'each side has its own range on the sheet'],
  },
  {
    asks: /side.?to.?side|apart|lean/,
    name: 'side to side',
    range: (c) =>
      c.sheet.heights?.sideToSide
        ? { high: c.sheet.heights.sideToSide, source: sheetSource('heights.sideToSide'), because: [] }
        : null,
    field: 'heights.sideToSide',
    question: 'How far apart may left and right be?',
  },
  {
    asks: /height|\b(?:left|right) (?:rear|front)|\b[lr][rf]\b|how high|ride|\b(?:rear|front)s?\b(?!.*(?:toe|camber|wheel))/,
    name: 'height',
    range: heightOf,
    field: 'heights',
    question: 'What should the height be, and with what tolerance?',
    lines: (c) => (c.sheet.heights ? [`measured: ${c.sheet.heights.measured}`] : []),
  },
  {
    asks: /thrust/,
    name: 'thrust of a rear pair',
    range: of('thrust', '', (c) => most(c.sheet.alignment?.thrust), 'alignment.thrust'),
    field: 'alignment.thrust',
    question: 'What thrust angle is allowed?',
  },
  {
    asks: /\btoe/,
    name: 'toe of each rear wheel, in positive',
    range: of('toe', '', (c) => c.sheet.alignment?.toe, 'alignment.toe'),
    field: 'alignment.toe',
    question: 'What toe should each rear wheel have?',
  },
  {
    asks: /camber/,
    name: 'camber of each rear wheel, top out positive',
    range: of('camber', '', (c) => c.sheet.alignment?.camber, 'alignment.camber'),
    field: 'alignment.camber',
    question: 'What camber should each rear wheel have?',
  },
  {
    asks: /\bamp|current|draw/,
    name: 'current of the pump',
    range: of('current', 'motor', (c) => c.sheet.pump?.current, 'pump.current'),
    field: 'pump.current',
    question: 'What current should the pump draw, lowest and highest?',
    lines: (c) => (c.sheet.pump?.fuse ? [`fuse ${c.sheet.pump.fuse.text} (sheet: pump.fuse), never a bigger one`] : []),
  },
  {
    asks: /volt(?:age)? drop|drop (?:allowed|in volts)/,
    name: 'drop from battery to motor',
    range: of('voltage drop', '', (c) => most(c.sheet.electrics?.drop), 'electrics.drop'),
    field: 'electrics.drop',
    question: 'How much may be lost between battery and motor?',
  },
  {
    asks: /volt/,
    name: 'volts at the motor',
    range: of('voltage', 'motor', (c) => least(c.sheet.pump?.minVolts), 'pump.minVolts'),
    field: 'pump.minVolts',
    question: 'What is the least voltage at the motor while it runs?',
  },
  {
    asks: /duty/,
    name: 'duty of the pump',
    range: (c) =>
      c.sheet.pump?.duty ? { high: c.sheet.pump.duty, source: sheetSource('pump.duty'), because: [] } : null,
    field: 'pump.duty',
    question: 'What share of the time may the pump run?',
  },
  {
    asks: /how long (?:can|may|should) (?:it|the (?:pump|comp\w*)) run|run ?time|run limit/,
    name: 'longest run of the pump',
    range: (c) =>
      c.sheet.pump?.runLimit
        ? { high: c.sheet.pump.runLimit, source: sheetSource('pump.runLimit'), because: [] }
        : null,
    field: 'pump.runLimit',
    question: 'How long may the pump run at a stretch?',
    lines: (c) => (c.sheet.pump?.rest ? [`then rest ${c.sheet.pump.rest.text} (sheet: pump.rest)`] : []),
  },
  {
    asks: /delay/,
    name: 'delay of a height valve',
    range: of('delay', '', (c) => c.sheet.valves?.delay, 'valves.delay'),
    field: 'valves.delay',
    question: 'How long should the height valve wait before it acts?',
  },
  {
    asks: /dead ?(?:band|zone)/,
    name: 'dead band of a height valve, either side of neutral',
    range: of('dead band', '', (c) => exactly(c.sheet.valves?.deadBand), 'valves.deadBand'),
    field: 'valves.deadBand',
    question: 'How far may the arm move before the valve acts?',
  },
  {
    asks: /regulat/,
    name: 'regulated supply',
    range: of('pressure', 'regulator', (c) => exactly(c.sheet.supply?.regulator), 'supply.regulator'),
    field: 'supply.regulator',
    question: 'What pressure should reach the height valves?',
  },
];

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
