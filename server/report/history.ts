/** A coach over all its visits: sessions, each figure's way, what was done when, what is due. Pure. */
import { withItsUnit } from '../core/range-text.ts';
import type { Entry } from '../session/entry.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import { keyTitle, limitWords, standingFindings } from './compared.ts';
import { dueOfCoach } from './due.ts';
import { workWords } from './plain-parts.ts';
import type { CoachHistory } from './shapes.ts';

export type Visit = { entries: readonly Entry[]; standing: Folded };

type Series = CoachHistory['series'][number];

const seriesOf = (visits: readonly Visit[]): Series[] => {
  const out = new Map<string, Series>();
  for (const { entries, standing } of visits) {
    const found = standingFindings(entries, standing);
    for (const { fact, seq } of standing.facts) {
      if (fact.is !== 'reading' || fact.where.v === '') continue;
      const key = `${fact.what.v}@${fact.where.v}`;
      const { si, pm, unit, text } = fact.amount.v;
      const judged = found.findLast((f) => f.finding.key === key && f.finding.because[0] === fact.id)?.finding;
      const line = out.get(key) ?? { key, title: keyTitle(key), unit, points: [], source: '', limit: '' };
      line.points.push({
        at: fact.at,
        si,
        pm,
        text: withItsUnit({ text, unit }),
        session: standing.session,
        seq,
        ...(judged ? { verdict: judged.verdict } : {}),
      });
      // the limit as of the last visit stands for the chart
      if (judged?.limit) {
        line.source = judged.limit.source.words;
        line.limit = limitWords(judged.limit);
        if (judged.limit.low) line.low = judged.limit.low.si;
        else delete line.low;
        if (judged.limit.high) line.high = judged.limit.high.si;
        else delete line.high;
      }
      out.set(key, line);
    }
  }
  for (const line of out.values()) line.points.sort((a, b) => a.at - b.at);
  // what has a limit first, then what was read most often
  const rank = (s: Series): number => (s.low !== undefined || s.high !== undefined ? 0 : 1);
  return [...out.values()].toSorted((a, b) => rank(a) - rank(b) || b.points.length - a.points.length);
};

/** `visits`: oldest first, practice left out. */
export const coachHistory = (
  visits: readonly Visit[],
  { sheet, hash }: { sheet: Sheet; hash: string },
  now: number,
): CoachHistory => ({
  v: 1,
  coach: sheet.id,
  name: sheet.coach,
  zone: sheet.zone,
  sheet: { hash, source: sheet.source },
  sessions: visits
    .map(({ entries, standing }) => {
      const closed = standing.closed ? entries.findLast((e) => e.is === 'closed') : undefined;
      const first = entries.find((e) => e.is === 'note');
      return {
        session: standing.session,
        opened: entries[0]?.kept ?? 0,
        closed: standing.closed,
        signed: closed?.is === 'closed' ? closed.signed : '',
        words: standing.complaint?.words ?? (first?.is === 'note' ? first.text : ''),
        off: [...standing.findings.values()]
          .filter((f) => (f.verdict === 'low' || f.verdict === 'high') && !f.key.startsWith('attitude'))
          .map((f) => f.words),
        work: standing.facts.flatMap(({ fact }) => (fact.is === 'work' && fact.done ? [workWords(fact)] : [])),
      };
    })
    .toReversed(),
  series: seriesOf(visits),
  work: visits
    .flatMap(({ standing }) =>
      standing.facts.flatMap(({ fact, seq, by }) =>
        fact.is === 'work' && fact.done
          ? [{ words: workWords(fact), at: fact.at, by, session: standing.session, seq }]
          : [],
      ),
    )
    .toSorted((a, b) => b.at - a.at),
  due: dueOfCoach(
    visits.map((v) => v.standing),
    sheet,
    now,
  ),
});
