/** The tank's fall over a night whose hours were said apart from it, or have to be asked. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Case, type Judge, inputOf, middle, physics, readings } from '../case.ts';
import type { Finding } from '../finding.ts';
import { shown, typed } from '../show.ts';
import { tankSide, undated } from '../tank-episode.ts';
import { saidFall } from './tank-leak.ts';

/** A night's words belong together when they were noted within this, ms. */
const together = 4 * 3_600_000;

/** "down 15 psi overnight": a fall over the time it stood. */
const standing = (f: ReadingFact): boolean =>
  f.what.v === 'pressure fall' && tankSide(f.where.v) && f.often === 'standing' && f.over === undefined && !f.held;

/** "tank 118 last night": no hour said. */
const lastNight = (f: ReadingFact): boolean =>
  f.what.v === 'pressure' && tankSide(f.where.v) && undated(f) && f.when?.day === 1 && !f.held;

/** By cooling alone: said with every fall over a night. */
const cold =
  'a colder night alone takes some: about 2 % of the absolute pressure for each 10 F (6 C); type how warm it was then and now';

const unknownHours = (fact: ReadingFact): Finding => ({
  key: 'tank fall',
  verdict: 'cannot tell',
  words: `tank down ${typed(fact.amount.v, true)} over a night: how many hours? A fall without its time is no rate`,
  amount: shown(middle(fact.amount.v), fact.amount.v.unit, fact.amount.v.pm, { difference: true }),
  because: [fact.id],
  why: {
    formula: 'rate = fall / time',
    inputs: [inputOf('fall', fact)],
    source: physics('isothermal store'),
    notes: [cold],
  },
  wants: { field: 'standing time', question: 'How many hours did it stand?' },
});

const overHours = (c: Case, fact: ReadingFact, hours: ReadingFact, from?: ReadingFact): Finding[] =>
  saidFall(c, { ...fact, over: hours.amount }, from ? { at: middle(from.amount.v), reading: from } : undefined).map(
    (f) => ({
      ...f,
      because: [...new Set([...f.because, hours.id, ...(from ? [from.id] : [])])],
      why: { ...f.why, notes: [...f.why.notes, cold] },
    }),
  );

export const tankOvernight: Judge = {
  subject: 'tank over a night',
  judge: (c) => {
    const now = c.fresh.at(-1)?.at ?? 0;
    const near = (f: ReadingFact): boolean => Math.abs(now - f.at) <= together;
    const hours = readings(c, 'standing time').findLast((f) => near(f) && f.amount.v.si > 0);
    const fresh = (f: ReadingFact | undefined): boolean => f !== undefined && c.fresh.some((x) => x.id === f.id);
    const fall = readings(c, 'pressure fall').findLast((f) => standing(f) && near(f));
    if (fall && (fresh(fall) || fresh(hours))) return hours ? overHours(c, fall, hours) : [unknownHours(fall)];
    const before = readings(c, 'pressure').findLast(lastNight);
    // as found: the first reading after it
    const after = readings(c, 'pressure').find(
      (f) => tankSide(f.where.v) && !lastNight(f) && !f.held && before !== undefined && f.at > before.at,
    );
    if (!before || !after || !near(after) || after.at - before.at > 36 * 3_600_000) return [];
    if (!fresh(before) && !fresh(after) && !fresh(hours)) return [];
    const lost = middle(before.amount.v) - middle(after.amount.v);
    if (lost <= 0) return [];
    const fact: ReadingFact = {
      ...after,
      what: { ...after.what, v: 'pressure fall' },
      amount: {
        ...after.amount,
        v: { ...after.amount.v, si: lost, to: undefined, pm: after.amount.v.pm + before.amount.v.pm },
      },
    };
    return hours ? overHours(c, fact, hours, before) : [unknownHours(fact)];
  },
};
