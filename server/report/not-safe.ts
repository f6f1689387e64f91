/**
 * Why a coach must not be moved, from what stands at the end. Errs to the safe side: what was seen falls only by work on
 * that very part afterwards, by being looked for and not found, or by a height in its limits read later. Pure.
 */
import type { Fact, SignFact } from '../../intents/shapes.ts';
import type { Folded } from '../session/fold.ts';
import { doneMeaning } from '../session/works.ts';
import type { Item } from './shapes.ts';
import { plainPlace } from './plain-parts.ts';

/** Signs that stop a coach. Common practice, no source; the maker's manual comes first. */
const stops: Readonly<Record<string, string>> = {
  'cords showing': 'cord shows',
  torn: 'it is torn',
  'on stops': 'it sits on its stops',
  flat: 'it is flat',
  'runs on': 'the pump does not stop',
  'off line': 'an air line is off',
};

/** Work on `done` speaks for what was seen at `seen` when it is the same part, or the whole of which it is a part. */
const covers = (done: string, seen: string): boolean => done !== '' && (seen === done || seen.startsWith(`${done} `));

/** Corner or part of a side: a height on the same side later, in its limits, shows that it stands again. */
const stands = (sign: SignFact, seq: number, standing: Folded): boolean => {
  if (sign.what.v !== 'flat' && sign.what.v !== 'on stops') return false;
  const side = /\b(?:left|right)\b/.exec(sign.where.v)?.[0];
  return standing.facts.some(
    (h) =>
      h.seq > seq &&
      h.fact.is === 'reading' &&
      h.fact.what.v === 'height' &&
      h.fact.where.v.includes('rear') &&
      (side === undefined || h.fact.where.v.includes(side)) &&
      standing.findings.get(`height@${h.fact.where.v}`)?.verdict === 'within',
  );
};

const fallen = (sign: SignFact, seq: number, standing: Folded): boolean =>
  standing.facts.some(
    ({ fact, seq: later }: { fact: Fact; seq: number }) =>
      later > seq &&
      ((fact.is === 'sign' && !fact.there && fact.what.v === sign.what.v && fact.where.v === sign.where.v) ||
        (doneMeaning(fact, 'clears') && covers(fact.where.v, sign.where.v))),
  ) || stands(sign, seq, standing);

export const notSafe = (standing: Folded): Item[] => {
  const out: Item[] = [];
  for (const { fact, seq, by } of standing.facts) {
    if (fact.is !== 'sign' || !fact.there || fact.word === 'hunch') continue;
    const words = stops[fact.what.v];
    if (words === undefined || fallen(fact, seq, standing)) continue;
    const where = plainPlace(fact.where.v);
    const said = `${where === '' ? '' : `${where}: `}${words}`;
    if (!out.some((o) => o.words === said))
      out.push({ words: said, more: fact.word === 'told' ? 'as reported' : '', at: fact.at, seq, by });
  }
  const perished = standing.suspects.find((s) => s.fault.endsWith('bellows perished') && s.p >= 0.5);
  if (perished && !out.some((o) => o.words.includes('cord')))
    out.push({ words: perished.name, more: `how sure: ${perished.rank}`, at: 0, seq: standing.seq, by: 'soapwater' });
  return out;
};
