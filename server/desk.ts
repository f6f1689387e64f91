/**
 * The desk: the one place with effects. Loads and folds a session, steps a note, makes note and reply durable together,
 * and only then lets anyone see them.
 */
import type { Block } from './chat/reply.ts';
import { boardOf } from './chat/board.ts';
import type { Board, Refusal } from './chat/protocol.ts';
import { answer, opening, step, type NoteIn } from './chat/step.ts';
import type { Kept, Log, SessionFilter, SessionLine } from './log/log.ts';
import { packSession, unpackSession, type Unpacked } from './log/pack.ts';
import type { Draft, Entry } from './session/entry.ts';
import { foldOn, fold, type Folded } from './session/fold.ts';
import { loadSheet, type LoadedSheet } from './sheet/load.ts';
import type { Sheet } from './sheet/schema.ts';

/** A refusal with its code; nothing was written. */
export class Refused extends Error {
  readonly why: Refusal;
  constructor(why: Refusal, words: string) {
    super(words);
    this.name = 'Refused';
    this.why = why;
  }
}

export type DeskOptions = {
  log: Log;
  /** Sheets on offer, by coach id; what a new session opens with. */
  sheets: ReadonlyMap<string, LoadedSheet>;
  /** Sheets that could not be used, for the page to tell. */
  refusedSheets?: readonly { file: string; words: string }[];
  engine: string;
  now: () => number;
  seed?: () => number;
};

/** Told of entries once they are durable, each with its JSON text as stored. */
export type Follower = (entries: readonly Entry[], bodies: readonly string[]) => void;

type EstimateIn = Pick<Extract<Draft, { is: 'estimate' }>, 'lines' | 'rate' | 'currency'>;
type DecidedIn = Pick<Extract<Draft, { is: 'decided' }>, 'about' | 'line' | 'yes' | 'name' | 'words'>;

/** Folded sessions kept at hand: this many, and no more entries in all than this (4 to 5 kB each in memory, measured). */
const keptSessions = 400;
const keptEntries = 10_000;
const tries = 8;
/** How far a page's clock may be ahead before its time is not believed. */
const aheadMost = 5 * 60_000;

export type Desk = ReturnType<typeof makeDesk>;

export const makeDesk = ({
  log,
  sheets,
  refusedSheets = [],
  engine,
  now,
  seed = () => Math.floor(Math.random() * 2 ** 31),
}: DeskOptions) => {
  const live = new Map<string, Folded>();
  const sheetsByHash = new Map<string, Sheet>([...sheets.values()].map((s) => [s.hash, s.sheet]));
  const followers = new Map<string, Set<Follower>>();
  const queues = new Map<string, Promise<unknown>>();

  let held = 0;
  const drop = (session: string): void => {
    held -= live.get(session)?.seq ?? 0;
    live.delete(session);
  };
  const keep = (session: string, standing: Folded): void => {
    drop(session);
    live.set(session, standing);
    held += standing.seq;
    // the one just used stays, however long it is
    for (const [oldest] of live) {
      if (live.size <= keptSessions && (held <= keptEntries || live.size === 1)) break;
      drop(oldest);
    }
  };

  /** One thing at a time within a session, in the order asked. */
  const inTurn = <T>(session: string, work: () => Promise<T>): Promise<T> => {
    const before = queues.get(session) ?? Promise.resolve();
    const next = before.then(work, work);
    const settled = next.then(
      () => undefined,
      () => undefined,
    );
    queues.set(session, settled);
    void settled.then(() => {
      if (queues.get(session) === settled) queues.delete(session);
    });
    return next;
  };

  /** As the log has it now. */
  const readOn = async (session: string): Promise<Folded> => {
    const from = live.get(session);
    const more = await log.read(session, from?.seq ?? 0);
    if (!from && more.length === 0) throw new Refused('no such session', 'I know no session of that name.');
    const standing = more.length === 0 ? from! : from ? foldOn(from, more) : fold(more);
    // what was written while the log was read stands already
    const now = live.get(session);
    const newest = now && now.seq > standing.seq ? now : standing;
    keep(session, newest);
    return newest;
  };
  /** As it stands here: all that is written comes by this desk, and an append finds what did not. */
  const standingOf = async (session: string): Promise<Folded> => {
    const held = live.get(session);
    if (!held) return readOn(session);
    keep(session, held);
    return held;
  };

  const sheetOf = async (hash: string): Promise<Sheet> => {
    const held = sheetsByHash.get(hash);
    if (held) return held;
    const json = await log.getSheet(hash);
    if (json === null)
      throw new Refused('no such coach', 'The sheet this session was judged by is missing from the log.');
    const { sheet } = loadSheet(json, hash.slice(0, 8));
    sheetsByHash.set(hash, sheet);
    return sheet;
  };

  const publish = (session: string, kept: Kept): void => {
    for (const tell of followers.get(session) ?? []) tell(kept.entries, kept.bodies);
  };

  /**
   * Makes entries durable and shows them; `make` is called again when the session moved on meanwhile. `own`: they come out
   * of a step, not out of a frame.
   */
  const write = async (
    session: string,
    make: (standing: Folded) => Promise<readonly Draft[]> | readonly Draft[],
    own = false,
  ): Promise<readonly Entry[]> => {
    for (let i = 0; i < tries; i += 1) {
      const standing = await (i === 0 ? standingOf(session) : readOn(session));
      const drafts = await make(standing);
      if (drafts.length === 0) return [];
      const kept = await log.append(session, standing.seq, drafts, now(), own);
      if (kept === 'moved on') continue;
      keep(session, foldOn(standing, kept.entries));
      publish(session, kept);
      return kept.entries;
    }
    throw new Refused('log failed', 'The session keeps moving on. Nothing was written; send it again.');
  };

  /** As `write`; a seq in place of drafts is the entry that says it already. */
  const writeOnce = async (
    session: string,
    make: (standing: Folded) => Promise<readonly Draft[] | number> | readonly Draft[] | number,
  ): Promise<readonly Entry[]> => {
    let there = 0;
    const written = await write(session, async (standing) => {
      const made = await make(standing);
      if (typeof made !== 'number') return made;
      there = made;
      return [];
    });
    return written.length > 0 ? written : log.read(session, there - 1, 1);
  };

  const closedTo = (): Refused => new Refused('session closed', 'This session is closed. Reopen it to add to it.');
  const mustBeOpen = (standing: Folded): void => {
    if (standing.closed) throw closedTo();
  };

  return {
    engine,
    coaches: () =>
      [...sheets.values()].map(({ sheet }) => ({
        id: sheet.id,
        coach: sheet.coach,
        zone: sheet.zone,
        units: `${sheet.units.pressure}, ${sheet.units.length}`,
        panel: Boolean(sheet.panel),
      })),
    refusedSheets,
    sheet: (id: string): LoadedSheet | undefined => sheets.get(id),

    /** A new session; the same call again is harmless. */
    open: (ask: {
      session: string;
      coach: string;
      by: string;
      practice?: number | undefined;
    }): Promise<readonly Entry[]> =>
      inTurn(ask.session, async () => {
        const loaded = sheets.get(ask.coach);
        if (!loaded) throw new Refused('no such coach', `There is no sheet for "${ask.coach}".`);
        const there = await log.read(ask.session, 0, 1);
        if (there.length > 0) {
          const first = there[0]!;
          if (first.is === 'opened' && first.coach === ask.coach) return there;
          throw new Refused('session exists', 'A session of that name exists for another coach.');
        }
        await log.putSheet(loaded.hash, loaded.sheet.id, loaded.json);
        const practice = ask.practice === undefined ? null : { seed: seed(), level: ask.practice };
        const drafts: Draft[] = [
          {
            is: 'opened',
            by: ask.by,
            coach: ask.coach,
            sheet: loaded.hash,
            zone: loaded.sheet.zone,
            ...(practice ? { practice } : {}),
          },
        ];
        if (practice)
          drafts.push(...opening(practice, loaded.sheet, `${ask.session.slice(0, 34)}-case`, now(), engine));
        const kept = await log.append(ask.session, 0, drafts, now());
        if (kept === 'moved on') return log.read(ask.session, 0, 3);
        keep(ask.session, fold(kept.entries));
        publish(ask.session, kept);
        return kept.entries;
      }),

    /** Note and reply, durable; the same id and text again gives the same entries. */
    note: (session: string, note: NoteIn): Promise<readonly Entry[]> =>
      inTurn(session, async () => {
        // looked up while the note is judged: one that is sent again is rare
        const looked = log.findNote(note.id);
        looked.catch(() => undefined);
        const at = note.at > now() + aheadMost || !Number.isFinite(note.at) ? now() : note.at;
        let there: readonly Entry[] = [];
        const made = async (standing: Folded): Promise<readonly Draft[]> => {
          const seen = Math.min(note.seen, standing.seq);
          const judged = standing.closed
            ? null
            : step(standing, await sheetOf(standing.sheet), { ...note, at, seen }, engine);
          there = await looked;
          if (there.length > 0) return [];
          if (!judged) throw closedTo();
          return [judged.note, judged.reply];
        };
        const written = await write(session, made, true);
        const old = there.find((e) => e.is === 'note');
        if (old?.is === 'note' && (old.text !== note.text || old.session !== session))
          throw new Refused('same id other text', 'A note with that id was kept with another text.');
        return there.length > 0 ? there : written;
      }),

    /** A pure answer: nothing is written. */
    ask: async (session: string | null, ask: { id: string; text: string }): Promise<Block[]> => {
      if (session === null) return answer(null, null, { ...ask, at: now() });
      const standing = await standingOf(session);
      return answer(standing, await sheetOf(standing.sheet), { ...ask, at: now() });
    },

    remark: (session: string, about: number, text: string, by: string) =>
      inTurn(session, () => write(session, () => [{ is: 'remark', by, about, text }])),
    close: (session: string, signed: string, words: string) =>
      inTurn(session, () =>
        write(session, (standing) =>
          standing.closed ? [] : [{ is: 'closed', by: signed.slice(0, 20).trim(), signed, words }],
        ),
      ),
    reopen: (session: string, words: string, by: string) =>
      inTurn(session, () => write(session, (standing) => (standing.closed ? [{ is: 'reopened', by, words }] : []))),

    /** The same estimate again is harmless. */
    estimate: (session: string, by: string, estimate: EstimateIn) =>
      inTurn(session, () =>
        writeOnce(session, (standing) => {
          mustBeOpen(standing);
          const last = standing.estimate;
          const same =
            last !== null &&
            JSON.stringify([last.lines, last.rate, last.currency]) ===
              JSON.stringify([estimate.lines, estimate.rate, estimate.currency]);
          return same ? last.seq : [{ is: 'estimate', by, ...estimate }];
        }),
      ),
    decide: (session: string, by: string, decided: DecidedIn) =>
      inTurn(session, () =>
        write(session, (standing) => {
          mustBeOpen(standing);
          const { estimate } = standing;
          if (estimate?.seq !== decided.about || !estimate.lines.some((l) => l.id === decided.line))
            throw new Refused('estimate changed', 'The estimate was changed meanwhile: look at it and answer again.');
          return [{ is: 'decided', by, ...decided }];
        }),
      ),
    /** Notes from now on are judged by the newest version of the coach's sheet; what was judged stays as it was. */
    resheet: (session: string, by: string, hash: string) =>
      inTurn(session, () =>
        writeOnce(session, async (standing) => {
          mustBeOpen(standing);
          const newest = sheets.get(standing.coach);
          if (newest?.hash !== hash)
            throw new Refused('sheet changed', 'That is not the newest version of the coach sheet: load it anew.');
          if (standing.sheet === hash) return standing.seq;
          await log.putSheet(hash, newest.sheet.id, newest.json);
          return [{ is: 'sheet', by, sheet: hash }];
        }),
      ),

    /** Keeps a version of a sheet for ever, since sessions may name it. */
    keepSheet: ({ hash, sheet, json }: LoadedSheet): Promise<void> => log.putSheet(hash, sheet.id, json),
    /** A version of a sheet as it was written; null when the log never had it. */
    sheetText: (hash: string): Promise<string | null> => log.getSheet(hash),

    pack: (session: string): Promise<string> => packSession(log, session),
    /** A packed session, brought in and shown to whoever follows it. Raises PackRefused. */
    unpack: async (text: string, mark: string): Promise<Unpacked> => {
      const done = await unpackSession(log, text, mark);
      if (done.added > 0) {
        await readOn(done.session);
        const entries = await log.read(done.session, done.from);
        publish(done.session, { entries, bodies: entries.map((e) => JSON.stringify(e)) });
      }
      return done;
    },

    read: (session: string, after = 0, most = 500): Promise<Entry[]> => log.read(session, after, most),
    standing: standingOf,
    sheetOf,
    board: async (session: string): Promise<Board> => {
      const standing = await standingOf(session);
      return boardOf(standing, await sheetOf(standing.sheet), now());
    },
    sessions: (filter: SessionFilter): Promise<SessionLine[]> => log.sessions({ most: 200, ...filter }),

    /** Calls `tell` with every entry kept from now on; returns how to stop. */
    follow: (session: string, tell: Follower): (() => void) => {
      const set = followers.get(session) ?? new Set<Follower>();
      set.add(tell);
      followers.set(session, set);
      return () => {
        set.delete(tell);
        if (set.size === 0) followers.delete(session);
      };
    },
  };
};
