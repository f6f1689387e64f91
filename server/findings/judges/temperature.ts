/** What a change of temperature alone does to the tank, and whether water in it freezes. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { atTemperature } from '../../core/gas-law.ts';
import { si } from '../../core/quantity.ts';
import { type Case, type Judge, inputOf, latest, middle, physics, readings, unitOf } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import type { Finding } from '../finding.ts';
import { shown, typed } from '../show.ts';
import { divisionOf, tankSide } from '../tank-episode.ts';

const ambient = (place: string): boolean => place === 'ambient' || place === '';
const zero = 273.15;

const freezing = (c: Case, fact: ReadingFact): Finding | null => {
  const t = middle(fact.amount.v);
  if (t > zero + 3) return null;
  const below = t <= zero;
  const dryer = c.sheet.supply?.dryer;
  const unit = fact.amount.v.unit;
  return {
    key: 'freezing@tank',
    verdict: below ? 'low' : 'cannot tell',
    words: below
      ? `water in tank, lines or valves freezes at ${typed(fact.amount.v)}: drain the tank${dryer ? ', dryer or not' : ''}`
      : `near freezing: water in tank and lines may freeze tonight, drain the tank`,
    amount: shown(t, unit, fact.amount.v.pm),
    limit: { low: shown(zero, unit, 0.25), source: physics('water freezes at 0 C (32 F)') },
    because: [fact.id],
    why: {
      formula:
        "air in a tank without a dryer is saturated: its dew point is the tank's own temperature, so what cools lets water go",
      inputs: [
        inputOf('temperature', fact),
        {
          name: 'dryer',
          text: dryer === undefined ? 'not known' : dryer ? 'fitted' : 'none',
          from: dryer === undefined ? 'assumed: none' : 'sheet: supply.dryer',
        },
      ],
      source: physics('dew point under pressure'),
      notes: ['no torch, heat gun or fluid on a frozen line: warm the coach indoors'],
    },
  };
};

/** The tank's reading at the earlier temperature, carried to this one. */
const cooled = (c: Case, fact: ReadingFact): Finding | null => {
  const before = readings(c, 'temperature', ambient).findLast(
    (f) => f.at < fact.at && Math.abs(f.amount.v.si - fact.amount.v.si) >= 2,
  );
  if (!before) return null;
  const tank = readings(c, 'pressure', tankSide).findLast((f) => Math.abs(f.at - before.at) <= 1_800_000);
  if (!tank) return null;
  const { p, input } = atmosphereOf(c);
  const to = atTemperature(si(middle(tank.amount.v)), si(before.amount.v.si), si(fact.amount.v.si), p);
  const unit = unitOf(tank);
  const now = latest(c, 'pressure', tankSide);
  const later = now && now.id !== tank.id && now.at > before.at ? now : null;
  const step = divisionOf(c, tank);
  const apart = later ? middle(later.amount.v) - to : 0;
  return {
    key: 'temperature only@tank',
    verdict: !later ? 'no limit' : apart < -step ? 'low' : apart > step ? 'high' : 'within',
    words: `by temperature alone the tank goes from ${typed(tank.amount.v)} to ${shown(to, unit, step / 2).text}${!later ? '' : Math.abs(apart) <= step ? `: ${typed(later.amount.v)} is no leak` : ` and reads ${typed(later.amount.v)}`}`,
    amount: shown(to, unit, step / 2),
    because: [tank.id, before.id, fact.id, ...(later ? [later.id] : [])],
    why: {
      formula: 'p2 = (p1 + pa) T2/T1 - pa, at constant volume',
      inputs: [inputOf('tank', tank), inputOf('then', before), inputOf('now', fact), input],
      source: physics('gas law of Gay-Lussac'),
      notes: ['assumed: the air in the tank has taken the temperature around it'],
    },
  };
};

export const temperature: Judge = {
  subject: 'temperature',
  judge: (c) => {
    const fresh = c.fresh.filter((f): f is ReadingFact => f.is === 'reading');
    const temps = fresh.filter((f) => f.what.v === 'temperature' && ambient(f.where.v));
    const last = temps.at(-1);
    if (last) return [freezing(c, last), cooled(c, last)].filter((f) => f !== null);
    // A tank read after the air around it has changed: what temperature alone would have done.
    const tank = fresh.findLast((f) => f.what.v === 'pressure' && tankSide(f.where.v));
    const around = tank ? latest(c, 'temperature', ambient) : undefined;
    const found = tank && around && Math.abs(around.at - tank.at) <= 1_800_000 ? cooled(c, around) : null;
    return found ? [found] : [];
  },
};
