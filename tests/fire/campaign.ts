/**
 * Kills the built server at random moments under busy pages, and after each kill holds the log against all that the
 * pages were shown and told was kept. A kill proves commit before reply, not the disk: that the file is synced is
 * asserted on the connection (tests/log).
 */
import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sqliteLog } from '../../server/log/sqlite.ts';
import { cleanUp, launch } from '../start/server.ts';
import { Typist } from './typist.ts';
import { Witness } from './witness.ts';

export type Campaign = {
  kills: number;
  pages: number;
  /** Another server than the built one, to see that the campaign finds what is wrong with it. */
  script?: string;
  /** Ends at the first fault. */
  untilFault?: boolean;
  tell?: (done: { kills: number; answered: number; entries: number; faults: number }) => void;
};
export type Outcome = {
  kills: number;
  /** Of these, before the server listened. */
  whileStarting: number;
  answered: number;
  /** Notes that had to be sent more than once. */
  again: number;
  entries: number;
  faults: readonly string[];
};

const pagesASession = 4;
/** Sessions are changed after so many kills, so that they stay of ordinary length. */
const killsASession = 3;
const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
const between = (from: number, to: number): number => from + Math.random() * (to - from);

/** The file as the killed server left it is copied and judged: the next server must find it untouched. */
const judgeLog = async (data: string, witness: Witness): Promise<number> => {
  const file = join(data, 'soapwater.db');
  if (!existsSync(file)) return 0;
  const at = mkdtempSync(join(tmpdir(), 'soapwater-judge-'));
  try {
    for (const end of ['', '-wal'])
      if (existsSync(file + end)) copyFileSync(file + end, join(at, `soapwater.db${end}`));
    const log = sqliteLog(join(at, 'soapwater.db'));
    const { entries } = log.check();
    const all = [];
    for (const { session } of await log.sessions({ most: 1_000_000 })) {
      const there = await log.read(session);
      witness.session(session, there);
      all.push(...there);
    }
    witness.notes(all);
    await log.close();
    return entries;
  } catch (error) {
    witness.fault(error instanceof Error ? error.message : String(error));
    return 0;
  } finally {
    rmSync(at, { recursive: true, force: true });
  }
};

export const killCampaign = async ({ kills, pages, script, untilFault, tell }: Campaign): Promise<Outcome> => {
  const data = mkdtempSync(join(tmpdir(), 'soapwater-fire-'));
  const witness = new Witness();
  const typists = Array.from({ length: pages }, (_, i) => new Typist(`P${i}`, witness));
  const sessionOf = (page: number, kill: number): string =>
    `fire-${Math.floor(kill / killsASession)}-${Math.floor(page / pagesASession)}`;
  let whileStarting = 0;
  let entries = 0;
  let done = 0;
  try {
    while (done < kills && !(untilFault && witness.faults.length > 0)) {
      const { child, ready } = launch(data, {}, script);
      const gone = new Promise((resolve) => child.once('exit', resolve));
      // every eighth is killed on its way up, at any moment from the first instruction to listening
      if (done % 8 === 7) {
        whileStarting += 1;
        ready.catch(() => undefined);
        await wait(between(0, 400));
      } else {
        const { url } = await ready;
        const session = done;
        for (const [i, t] of typists.entries()) void t.connect(url, sessionOf(i, session), { pace: between(55, 90) });
        // one in four before a page is in or while they come in, else once they write: slow machines too have to lose
        const before = witness.answered.size;
        if (done % 4 > 0) for (let i = 0; i < 100 && witness.answered.size === before; i += 1) await wait(50);
        await wait(between(0, 1200));
      }
      child.kill('SIGKILL');
      await gone;
      for (const typist of typists) typist.close();
      // what the kernel still holds for the pages is read before they are judged
      await wait(20);
      done += 1;
      entries = await judgeLog(data, witness);
      tell?.({ kills: done, answered: witness.answered.size, entries, faults: witness.faults.length });
    }
    if (!untilFault) {
      const running = await launch(data, {}, script).ready;
      for (const [i, t] of typists.entries())
        void t.connect(running.url, sessionOf(i, done - 1), { pace: 60, types: false });
      await wait(500);
      for (let i = 0; i < 100 && typists.some((t) => t.waiting > 0); i += 1) await wait(100);
      for (const t of typists) if (t.waiting > 0) witness.fault(`${t.name} still waits for ${t.waiting} answers`);
      for (const t of typists) t.close();
      if ((await running.stop()) !== 0) witness.fault(`the last server did not end well: ${running.errors()}`);
      entries = await judgeLog(data, witness);
    }
  } finally {
    for (const typist of typists) typist.close();
    cleanUp(data);
  }
  const again = typists.reduce((sum, t) => sum + t.again, 0);
  return { kills: done, whileStarting, answered: witness.answered.size, again, entries, faults: witness.faults };
};
