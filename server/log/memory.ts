/** The log in memory: for tests and for the contract that both logs keep. */
import type { Entry } from '../session/entry.ts';
import { adopted } from './adopted.ts';
import { lineOf } from './line.ts';
import type { Log, SessionLine } from './log.ts';
import { markAfter, noMark } from './mark.ts';
import { LogRefused } from './refused.ts';
import { stampedAs } from './stamp.ts';
import { mostWords, splitWords, wordsOf } from './words.ts';

export const memoryLog = (): Log => {
  const sessions = new Map<string, readonly Entry[]>();
  const sheets = new Map<string, string>();
  return {
    append: async (session, after, drafts, kept, own = false) => {
      const entries = sessions.get(session) ?? [];
      if (entries.length !== after) return 'moved on';
      const stamped = drafts.map((draft, i) => stampedAs(draft, session, after + i + 1, kept, own));
      const more = stamped.map((s) => s.entry);
      sessions.set(session, [...entries, ...more]);
      return { entries: more, bodies: stamped.map((s) => s.body) };
    },
    adopt: async (session, after, bodies) => {
      const entries = sessions.get(session) ?? [];
      if (entries.length !== after) return 'moved on';
      adopted(session, after, bodies);
      const raw = bodies.map((body) => JSON.parse(body) as Entry);
      const known = new Set([...sessions.values()].flat().flatMap((e) => (e.is === 'note' ? [e.id] : [])));
      for (const entry of raw)
        if (entry.is === 'note' && known.has(entry.id))
          throw new LogRefused(`note ${entry.id} stands in the log already`);
      sessions.set(session, [...entries, ...raw]);
      return 'kept';
    },
    read: async (session, after = 0, most = Number.MAX_SAFE_INTEGER) =>
      (sessions.get(session) ?? []).slice(after, after + most),
    mark: async (session) =>
      (sessions.get(session) ?? []).reduce((mark, entry) => markAfter(mark, JSON.stringify(entry)), noMark),
    findNote: async (id) => {
      for (const entries of sessions.values()) {
        const hit = entries.filter((e) => (e.is === 'note' && e.id === id) || (e.is === 'reply' && e.to === id));
        if (hit.length > 0) return hit;
      }
      return [];
    },
    sessions: async (filter = {}) => {
      const asked = splitWords(filter.words ?? '').slice(0, mostWords);
      const lines: SessionLine[] = [];
      for (const entries of sessions.values()) {
        const line = lineOf(entries);
        if (!line || (filter.coach !== undefined && line.coach !== filter.coach)) continue;
        if (filter.practice !== undefined && line.practice !== filter.practice) continue;
        const words = entries.flatMap(wordsOf);
        if (asked.every((a) => words.some((w) => w.startsWith(a)))) lines.push(line);
      }
      const order = (a: { last: number; session: string }, b: { last: number; session: string }): number =>
        b.last - a.last || (a.session < b.session ? 1 : a.session > b.session ? -1 : 0);
      const { after } = filter;
      return lines
        .filter((line) => after === undefined || order(after, line) < 0)
        .toSorted(order)
        .slice(0, filter.most ?? 100);
    },
    putSheet: async (hash, _coach, json) => {
      if (!sheets.has(hash)) sheets.set(hash, json);
    },
    getSheet: async (hash) => sheets.get(hash) ?? null,
    close: async () => {},
  };
};
