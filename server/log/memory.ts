/** The log in memory: for tests and for the contract that both logs keep. */
import { Entry } from '../session/entry.ts';
import type { Log, SessionLine } from './log.ts';
import { lineOf } from './line.ts';

export const memoryLog = (): Log => {
  const sessions = new Map<string, Entry[]>();
  const sheets = new Map<string, string>();
  return {
    append: async (session, after, drafts, kept) => {
      const entries = sessions.get(session) ?? [];
      if (entries.length !== after) return 'moved on';
      const stamped = drafts.map((draft, i) => Entry.parse({ ...draft, v: 1, session, seq: after + i + 1, kept }));
      sessions.set(session, [...entries, ...stamped]);
      return 'kept';
    },
    read: async (session, after = 0, most = Number.MAX_SAFE_INTEGER) =>
      (sessions.get(session) ?? []).slice(after, after + most),
    findNote: async (id) => {
      for (const entries of sessions.values()) {
        const hit = entries.filter((e) => (e.is === 'note' && e.id === id) || (e.is === 'reply' && e.to === id));
        if (hit.length > 0) return hit;
      }
      return [];
    },
    sessions: async (filter = {}) => {
      const words = filter.words?.toLowerCase().split(/\s+/).filter(Boolean) ?? [];
      const lines: SessionLine[] = [];
      for (const entries of sessions.values()) {
        const line = lineOf(entries);
        if (!line || (filter.coach !== undefined && line.coach !== filter.coach)) continue;
        if (filter.practice !== undefined && line.practice !== filter.practice) continue;
        const text = entries
          .map((e) => (e.is === 'note' || e.is === 'remark' ? e.text : ''))
          .join(' ')
          .toLowerCase();
        if (words.every((w) => text.includes(w) || line.coach.includes(w))) lines.push(line);
      }
      return lines.toSorted((a, b) => b.last - a.last).slice(0, filter.most ?? 100);
    },
    putSheet: async (hash, _coach, json) => {
      if (!sheets.has(hash)) sheets.set(hash, json);
    },
    getSheet: async (hash) => sheets.get(hash) ?? null,
    close: async () => {},
  };
};
