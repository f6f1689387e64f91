/** Timers, as the notes of a session start and stop them: every page of the session sees the same ones. Pure. */
import type { Ask } from '../intents/shapes.ts';
import { dimensionOf } from '../server/core/units.ts';
import type { Entry } from '../server/session/entry.ts';

export type Timer = {
  id: string;
  from: number;
  /** null: a watch that runs up until it is stopped. */
  until: number | null;
  stopped: number | null;
  /** Places of the last readings before it: what to read again. */
  read: readonly string[];
};

/** Seconds asked for; a bare number is minutes; null where none was said. */
export const secondsOf = (ask: Ask): number | null => {
  const a = ask.amounts[0];
  if (!a) return null;
  if (a.unit === 'count') return a.si * 60;
  return dimensionOf(a.unit) === 'duration' ? a.si : null;
};

export const timersOf = (entries: readonly Entry[], undone: ReadonlySet<string>): Timer[] => {
  const out: Timer[] = [];
  let read: string[] = [];
  for (const e of entries) {
    if (e.is !== 'note' || undone.has(e.id)) continue;
    const places = e.read.facts.filter((f) => f.is === 'reading').map((f) => f.where.v);
    if (places.length > 0) {
      read = [...new Set(places.filter((p) => p !== ''))];
      // the reading that was waited for has come
      for (const t of out)
        if (t.stopped === null && t.until !== null && e.at >= t.until && t.read.some((p) => places.includes(p)))
          t.stopped = e.at;
    }
    for (const ask of e.read.asks) {
      if (ask.ask !== 'command') continue;
      if (ask.about === 'start timer') {
        const seconds = secondsOf(ask);
        out.push({ id: e.id, from: e.at, until: seconds === null ? null : e.at + seconds * 1000, stopped: null, read });
      }
      if (ask.about === 'stop timer') {
        const last = out.findLast((t) => t.stopped === null);
        if (last) last.stopped = e.at;
      }
    }
  }
  return out;
};

/** Running, or rung within the last hour and not answered. */
export const showing = (timers: readonly Timer[], now: number): Timer[] =>
  timers.filter((t) => t.stopped === null && now - (t.until ?? t.from) < (t.until === null ? 12 : 1) * 3_600_000);

/** "4:32", "1:04:10"; negative: past the bell, "+0:40". */
export const left = (ms: number): string => {
  const s = Math.abs(Math.round(ms / 1000));
  const h = Math.floor(s / 3600);
  const m = Math.floor((s % 3600) / 60);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${ms < -500 ? '+' : ''}${h > 0 ? `${h}:${two(m)}` : m}:${two(s % 60)}`;
};
