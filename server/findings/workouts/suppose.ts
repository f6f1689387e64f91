/** "what does 95 psi mean", "what does 3/8 low mean": the reading judged as if it had been taken now. */
import type { Fact, ReadingFact } from '../../../intents/shapes.ts';
import { toSi, stepToSi } from '../../core/units.ts';
import type { Finding } from '../finding.ts';
import { judge } from '../judge.ts';
import type { Case } from '../case.ts';
import { bare, type Question, said, type Workout, type Worked } from './question.ts';

const spanned = <T>(v: T): { v: T; from: 'assumed'; spans: [] } => ({ v, from: 'assumed', spans: [] });

/** What `facts` would be judged to say on top of what stands. */
export const supposing = (c: Case, facts: readonly Fact[]): Finding[] => {
  const { standing } = c;
  const then = {
    ...standing,
    facts: [
      ...standing.facts,
      ...facts.map((fact) => ({ fact, seq: standing.seq + 1, note: 'supposed', by: 'supposed' })),
    ],
    stateAt: new Map([...standing.stateAt, ...facts.map((f) => [f.id, standing.state] as const)]),
  };
  return judge(facts, then, c.sheet);
};

export const asWorked = (found: readonly Finding[], extra: readonly string[] = []): Worked | null => {
  const [first, ...rest] = found;
  if (!first) return null;
  const limit = first.limit ? [`limit from ${first.limit.source.words}`] : [];
  return {
    words: first.words,
    lines: [...rest.map((f) => f.words), ...limit, ...first.why.notes, ...extra],
    why: first.why,
    ...(first.drawing ? { drawing: first.drawing } : {}),
    ...(first.wants ? { wants: first.wants } : {}),
  };
};

/** A bare number about a pressure is the tank's, in the coach's unit: said to be assumed. */
const tankFact = (q: Question): ReadingFact | null => {
  const amount = said(q, 'pressure')[0];
  const number = bare(q)[0];
  const { unit } = { unit: q.c.sheet.units.pressure };
  const v =
    amount ??
    (number
      ? { ...number, si: toSi(number.si, unit), pm: stepToSi(number.pm, unit), unit, text: `${number.text} ${unit}` }
      : null);
  if (!v) return null;
  return {
    id: 'supposed.0',
    at: q.c.facts.at(-1)?.at ?? 0,
    where: spanned('tank'),
    word: 'own',
    is: 'reading',
    what: spanned('pressure' as const),
    amount: spanned(v),
  };
};

export const suppose: Workout = {
  subject: 'meaning of a reading',
  work: (q) => {
    if (q.ask.ask !== 'meaning') return null;
    const now = q.c.facts.at(-1)?.at;
    const facts = q.ask.facts
      .filter((f) => f.is === 'reading' && !f.held)
      .map((f) => (now === undefined ? f : { ...f, at: Math.max(f.at, now) }));
    const given = facts.length > 0;
    const fact = given ? null : tankFact(q);
    const found = supposing(q.c, given ? facts : fact ? [fact] : []).filter(
      (f) => !f.key.startsWith('tank fall') && f.key !== 'settling@tank',
    );
    return asWorked(found, fact && !said(q, 'pressure')[0] ? [`assumed: ${fact.amount.v.text} in the tank`] : []);
  },
};
