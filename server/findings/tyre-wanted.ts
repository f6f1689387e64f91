/** The pressure a tyre should have, brought to the temperature it is read at. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { atTemperature } from '../core/gas-law.ts';
import { si } from '../core/quantity.ts';
import {
  type Case,
  type Input,
  type Range,
  inputOf,
  latest,
  rangeOf,
  sheetInput,
  specOf,
  spread,
  unitOf,
} from './case.ts';
import { atmosphereOf } from './atmosphere.ts';
import { shown, typed } from './show.ts';

/** A tyre within this share of the pressure wanted is within. Common practice, no source. */
export const tyreShare = 0.03;

export type TyreWanted = {
  readonly range: Range | null;
  readonly inputs: readonly Input[];
  readonly notes: readonly string[];
  /** Facts it rests on besides the tyre itself and a limit given in the session. */
  readonly because: readonly string[];
};

/** A limit given in the session stands first; else the sheet's cold pressure, brought to the temperature told last. */
export const tyreWanted = (c: Case, fact: ReadingFact, end: 'front' | 'rear'): TyreWanted => {
  if (specOf(c, 'pressure', fact.where.v))
    return { range: rangeOf(c, 'pressure', fact.where.v, undefined, ''), inputs: [], notes: [], because: [] };
  const onSheet = c.sheet.tyres?.[end];
  if (!onSheet) return { range: null, inputs: [], notes: [], because: [] };
  const unit = unitOf(fact);
  const pm = spread(fact.amount.v);
  const at = c.sheet.tyres?.at;
  const warm =
    latest(c, 'temperature', (place) => place.endsWith('tyre')) ??
    latest(c, 'temperature', (place) => place === 'ambient' || place === '');
  const { p: atmosphere, input } = atmosphereOf(c);
  const here = at && warm ? atTemperature(si(onSheet.si), si(at.si), si(warm.amount.v.si), atmosphere) : onSheet.si;
  const edge = (v: number) => ({ si: v, pm: onSheet.pm, unit, text: shown(v, unit, pm).text });
  return {
    range: {
      low: edge(here * (1 - tyreShare)),
      high: edge(here * (1 + tyreShare)),
      nominal: edge(here),
      source: {
        kind: 'sheet',
        words: `sheet: tyres.${end}${at && warm ? ', brought to this temperature' : ''}, within 3 % (common practice, no source)`,
      },
      because: [],
    },
    inputs: [
      sheetInput('wanted cold', onSheet, `tyres.${end}`),
      ...(at && warm ? [sheetInput('at', at, 'tyres.at'), inputOf('temperature', warm), input] : []),
    ],
    notes: [
      at && warm
        ? `${onSheet.text} at ${at.text} is ${shown(here, unit, pm).text} at ${typed(warm.amount.v)}: never bleed a warm tyre`
        : at
          ? `assumed: the tyre is cold, at about ${at.text}`
          : 'assumed: the tyre is cold',
    ],
    because: at && warm ? [warm.id] : [],
  };
};
