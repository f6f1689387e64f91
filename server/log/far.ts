/**
 * A log on the far side of a port. The database stands in a thread of its own (thread.ts): a commit waits for the disk, 1
 * to 200 ms on a busy one, and meanwhile notes are read and judged. What waits for a commit goes into the next one.
 * Entries cross the port as their JSON text.
 */
import type { Entry } from '../session/entry.ts';
import type { Kept, Log } from './log.ts';
import { LogRefused } from './refused.ts';
import type { FileLog } from './sqlite.ts';
import { stampedAs } from './stamp.ts';

/** What can be asked across the port, by its name in the log that stands there. */
const calls = [
  'put',
  'adopt',
  'bodies',
  'noteBodies',
  'mark',
  'sessions',
  'putSheet',
  'getSheet',
  'backup',
  'close',
] as const;
type Calls = Pick<FileLog, (typeof calls)[number]>;
type Ask = { readonly ask: number; readonly call: keyof Calls; readonly args: readonly never[] };
type Answer = { readonly ask: number } & (
  { readonly value: unknown } | { readonly refused: string } | { readonly failed: string }
);
export type Port = {
  postMessage: (value: unknown) => void;
  on: (event: 'message', tell: (value: unknown) => void) => unknown;
};

/** Answers what is asked through `port` from `log`. */
export const serveLog = (port: Port, log: Calls): void => {
  port.on('message', (value) => {
    const { ask, call, args } = value as Ask;
    const work = log[call] as (...args: readonly never[]) => Promise<unknown>;
    work(...args).then(
      (result) => port.postMessage({ ask, value: result } satisfies Answer),
      (error: unknown) =>
        port.postMessage(
          (error instanceof LogRefused
            ? { ask, refused: error.message }
            : {
                ask,
                failed: error instanceof Error ? (error.stack ?? error.message) : String(error),
              }) satisfies Answer,
        ),
    );
  });
};

export type FarLog = Log &
  Pick<FileLog, 'backup'> & { /** Refuses whatever waits and whatever comes. */ lost: (words: string) => void };

/** The log that `serveLog` serves at the other end of `port`. */
export const farLog = (port: Port): FarLog => {
  const waiting = new Map<number, { keep: (value: never) => void; refuse: (error: Error) => void }>();
  let asked = 0;
  let gone: string | null = null;
  port.on('message', (value) => {
    const answer = value as Answer;
    const job = waiting.get(answer.ask);
    if (!job) return;
    waiting.delete(answer.ask);
    if ('value' in answer) job.keep(answer.value as never);
    else job.refuse('refused' in answer ? new LogRefused(answer.refused) : new Error(answer.failed));
  });
  const far = <C extends keyof Calls>(call: C, ...args: Parameters<Calls[C]>): ReturnType<Calls[C]> =>
    new Promise((keep, refuse) => {
      if (gone !== null) return refuse(new LogRefused(gone));
      asked += 1;
      waiting.set(asked, { keep, refuse });
      port.postMessage({ ask: asked, call, args });
    }) as ReturnType<Calls[C]>;
  const entries = (bodies: readonly string[]): Entry[] => bodies.map((body) => JSON.parse(body) as Entry);

  return {
    append: async (session, after, drafts, kept, own = false): Promise<Kept | 'moved on'> => {
      const stamped = drafts.map((draft, i) => stampedAs(draft, session, after + i + 1, kept, own));
      const bodies = stamped.map((s) => s.body);
      if ((await far('put', session, after, bodies)) === 'moved on') return 'moved on';
      return { entries: stamped.map((s) => s.entry), bodies };
    },
    adopt: (session, after, bodies) => far('adopt', session, after, bodies),
    read: async (session, after, most) => entries(await far('bodies', session, after, most)),
    mark: (session) => far('mark', session),
    findNote: async (id) => entries(await far('noteBodies', id)),
    sessions: (filter) => far('sessions', filter),
    putSheet: (hash, coach, json) => far('putSheet', hash, coach, json),
    getSheet: (hash) => far('getSheet', hash),
    close: () => far('close'),
    backup: (to) => far('backup', to),
    lost: (words) => {
      gone = words;
      for (const { refuse } of waiting.values()) refuse(new LogRefused(words));
      waiting.clear();
    },
  };
};
