/** Water in the tank, pressures at another temperature, freezing, the atmosphere of a place. */
import { atmosphereAt } from '../../core/air.ts';
import { atTemperature, coolingThatImitates } from '../../core/gas-law.ts';
import { dewPoint } from '../../core/moisture.ts';
import { dutyOf } from '../../core/duty.ts';
import { si } from '../../core/quantity.ts';
import { fromSi, stepFromSi, toSi } from '../../core/units.ts';
import { type Input, atmosphereOf, latest, middle, physics } from '../case.ts';
import { sheetUnit, shown, typed } from '../show.ts';
import { tankSide } from '../tank-episode.ts';
import { waterPerSecond, waterText, weatherOf, type Weather } from '../water-made.ts';
import { amountInput, bare, type Question, said, type Workout, type Worked } from './question.ts';

const periods: Record<string, number> = {
  hour: 3600,
  day: 86_400,
  night: 43_200,
  week: 604_800,
  month: 30.436875 * 86_400,
  year: 365.2425 * 86_400,
};

const weatherIn = (q: Question): Weather | { missing: string } => {
  const [t] = said(q, 'temperature');
  const [h] = said(q, 'ratio');
  const standing = weatherOf(q.c);
  if (t && h)
    return { t: t.si, humidity: middle(h), inputs: [amountInput('temperature', t), amountInput('humidity', h)] };
  if (!('missing' in standing)) return standing;
  return t ? { missing: 'How humid is the air (relative humidity, %)?' } : standing;
};

const water = (q: Question): Worked | null => {
  if (!/\bwater\b|moisture|condens/.test(q.words) || /tank full|full (?:water|fresh)|water tank|fresh/.test(q.words))
    return null;
  const weather = weatherIn(q);
  if ('missing' in weather)
    return {
      words: 'that depends on the air drawn in',
      lines: [],
      wants: { field: 'humidity', question: weather.missing },
    };
  const made = waterPerSecond(q.c, weather);
  if (!made)
    return {
      words: "the pump's delivery is needed for that",
      lines: [],
      wants: { field: 'pump.delivery', question: 'How much free air does the pump deliver, at two pressures?' },
    };
  const [time] = said(q, 'duration');
  const word = Object.keys(periods).find((k) => q.words.includes(k));
  const every = q.c.sheet.supply?.drainEvery;
  const span = time?.si ?? (word ? periods[word]! : (every?.si ?? 86_400));
  const name = time?.text ?? (word ? `a ${word}` : every ? `${every.text}, the drain interval` : 'a day');
  const [on, off] = [latest(q.c, 'on time'), latest(q.c, 'off time')];
  const share = on && off ? dutyOf(si(middle(on.amount.v)), si(middle(off.amount.v))) : null;
  const dew = dewPoint(si(weather.t), Math.max(0.01, weather.humidity));
  const perHour = waterText(made.perSecond * 3600, q.metric);
  const inputs: Input[] = [
    ...made.inputs,
    ...(on && off
      ? [
          { name: 'on', text: typed(on.amount.v), from: on.id },
          { name: 'off', text: typed(off.amount.v), from: off.id },
        ]
      : []),
  ];
  return {
    words:
      share === null
        ? `${perHour} for each hour the pump runs`
        : `${waterText(made.perSecond * span * share, q.metric)} in ${name}, the pump running ${Math.round(share * 100)} % of the time; ${perHour} for each hour it runs`,
    lines: [
      ...(share === null
        ? [
            `an hour of running a day would make ${waterText((made.perSecond * 3600 * span) / 86_400, q.metric)} in ${name}`,
          ]
        : []),
      `dew point of the air drawn in: ${shown(dew, q.c.sheet.units.temperature, 0.3).text}; in the tank it is the tank's own temperature`,
      ...(q.c.sheet.supply?.dryer ? ['before the dryer: what it holds back does not reach the tank'] : []),
    ],
    why: {
      formula:
        'air pumped x (humidity ratio drawn in - saturated ratio at tank pressure), tank at the temperature around it',
      inputs,
      source: physics('Hyland and Wexler, ASHRAE Fundamentals 2017 ch. 1'),
      notes: ['tank taken halfway between cut-in and cut-out'],
    },
    ...(share === null
      ? { wants: { field: 'duty', question: 'How long does the pump run and rest (on time, off time)?' } }
      : {}),
  };
};

/** Two temperatures: from and to, K; a bare number beside one takes its unit. */
const temperatures = (q: Question): [number | null, number | null, 'F' | 'C' | 'K'] => {
  const all = said(q, 'temperature');
  const unit = (all[0]?.unit ?? q.c.sheet.units.temperature) as 'F' | 'C' | 'K';
  const numbers = q.amounts
    .filter((a) => all.includes(a) || bare(q).includes(a))
    .map((a) => (all.includes(a) ? a.si : toSi(a.si, unit)));
  return numbers.length >= 2 ? [numbers[0]!, numbers[1]!, unit] : [null, numbers[0] ?? null, unit];
};

const atAnother = (q: Question): Worked | null => {
  const tyre = /tyre|tire/.test(q.words);
  const tank = /\btank|reservoir/.test(q.words);
  if (!tyre && !tank) return null;
  if (said(q, 'temperature').length === 0) return null;
  const [from, to, unit] = temperatures(q);
  if (to === null) return null;
  const { p: atmosphere, input } = atmosphereOf(q.c);
  const pressureUnit = q.c.sheet.units.pressure;
  const degrees = (t: number): string => shown(t, unit, 0.3).text;
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
    const warm = latest(q.c, 'temperature', (p) => p === 'ambient' || p === '');
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

const stepHalf = (unit: string): number => (unit === 'psi' ? 3447 : unit === 'kPa' ? 500 : 1000);

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

const freezes = (q: Question): Worked | null => {
  if (!/freez|frozen|frost/.test(q.words)) return null;
  const told = said(q, 'temperature')[0];
  const read = latest(q.c, 'temperature', (p) => p === 'ambient' || p === '');
  const t = told?.si ?? read?.amount.v.si;
  if (t === undefined)
    return {
      words: 'how cold will it get?',
      lines: [],
      wants: { field: 'ambient', question: 'How cold will it get tonight?' },
    };
  const text = told?.text ?? typed(read!.amount.v);
  return {
    words:
      t <= 273.15
        ? `at ${text} water in tank, lines and valves freezes: drain the tank tonight`
        : t <= 276.15
          ? `at ${text} it may freeze in exposed lines: drain the tank tonight`
          : `at ${text} nothing freezes`,
    lines: [
      'air under pressure is saturated unless a dryer works: whatever cools lets water go',
      'no torch, heat gun or fluid on a frozen line: warm the coach indoors',
    ],
    why: {
      formula: "dew point in the tank is the tank's own temperature; water freezes at 0 C (32 F)",
      inputs: [{ name: 'temperature', text, from: told ? 'said in the question' : read!.id }],
      source: physics('dew point under pressure'),
      notes: [],
    },
  };
};

const place = (q: Question): Worked | null => {
  if (!/atmospher|altitude|barometer/.test(q.words)) return null;
  const [h] = said(q, 'length');
  const unit = sheetUnit('pressure', q.c.sheet);
  const p = h ? atmosphereAt(si(h.si)) : atmosphereOf(q.c).p;
  return {
    words: `${stepFromSi(p, unit).toFixed(unit === 'psi' ? 2 : 1)} ${unit} absolute${h ? ` at ${h.text}` : ''} (${fromSi(p, 'inHg').toFixed(2)} inHg)`,
    lines: ['a gauge reads above this: absolute = gauge + atmosphere', 'weather moves it by 3 %'],
    why: {
      formula: 'p = 101325 (1 - 2.25577e-5 h)^5.2559',
      inputs: [h ? amountInput('altitude', h) : atmosphereOf(q.c).input],
      source: { kind: 'rule', words: 'standard atmosphere, ASHRAE Fundamentals 2017 ch. 1 eq. 3' },
      notes: [],
    },
  };
};

export const weather: Workout = {
  subject: 'weather',
  work: (q) => place(q) ?? freezes(q) ?? water(q) ?? imitates(q) ?? atAnother(q),
};
