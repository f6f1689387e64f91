/** Verdicts that fall are taken back out loud, with the note that felled them. Pure. */
import type { Standing } from '../session/standing.ts';
import { rankOf } from './rank.ts';

/** Held likely before, and not any more. */
const was = 0.5;
const now = 0.2;

export const withdrawn = (before: Standing, after: Standing): string[] => {
  const out: string[] = [];
  const newest = after.facts.filter((h) => !before.facts.some((b) => b.fact.id === h.fact.id));
  const gone = before.facts.filter((h) => !after.facts.some((b) => b.fact.id === h.fact.id));
  const because =
    newest.length > 0
      ? `because of what you just noted`
      : gone.length > 0
        ? 'because what it rested on was taken back'
        : 'because of the last note';
  for (const s of before.suspects) {
    if (s.p < was) continue;
    const p = after.suspects.find((x) => x.fault === s.fault && x.where === s.where)?.p ?? 0;
    const mended = newest.some(
      ({ fact }) => fact.is === 'work' && fact.done && s.where !== undefined && s.where.includes(fact.where.v),
    );
    if (p < now && !mended) out.push(`I take back "${s.name}": it was ${s.rank}, now ${rankOf(p)}, ${because}.`);
  }
  return out;
};
