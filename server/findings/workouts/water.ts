/** How much water the tank makes. */
import { dewPoint } from '../../core/moisture.ts';
import { dutyIn } from '../pump-cycle.ts';
import { si } from '../../core/quantity.ts';
import { type Input, middle, physics } from '../case.ts';
import { shown } from '../show.ts';
import { waterPerSecond, waterText, weatherOf, type Weather } from '../water-made.ts';
import { amountInput, type Question, said, type Workout, type Worked } from './question.ts';

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
  // water that is there already, not what is made
  if (said(q, 'volume').length > 0) return null;
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
  const duty = dutyIn(q.c);
  const share = duty?.share ?? null;
  const dew = dewPoint(si(weather.t), Math.max(0.01, weather.humidity));
  const perHour = waterText(made.perSecond * 3600, q.metric);
  const inputs: Input[] = [...made.inputs, ...(duty?.cycle.inputs ?? [])];
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

export const waterMade: Workout = { subject: 'water', work: water };
