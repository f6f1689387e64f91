/** One session as a file that travels: entries and sheets, under a hash over all of it. */
import { createHash } from 'node:crypto';
import * as z from 'zod';
import { Entry, type Draft } from '../session/entry.ts';
import type { Log } from './log.ts';

export class PackRefused extends Error {
  constructor(words: string) {
    super(words);
    this.name = 'PackRefused';
  }
}

const Pack = z.strictObject({
  v: z.literal(1),
  hash: z.string(),
  session: z.string(),
  entries: z.array(z.unknown()),
  sheets: z.array(z.strictObject({ hash: z.string(), json: z.string() })),
});

const hashOf = (body: { session: string; entries: readonly unknown[]; sheets: readonly unknown[] }): string =>
  createHash('sha256')
    .update(JSON.stringify([body.session, body.entries, body.sheets]))
    .digest('hex');

export const packSession = async (log: Log, session: string): Promise<string> => {
  const entries = await log.read(session);
  if (entries.length === 0) throw new PackRefused(`there is no session ${session}`);
  const hashes = [...new Set(entries.flatMap((e) => (e.is === 'opened' || e.is === 'sheet' ? [e.sheet] : [])))];
  const sheets: { hash: string; json: string }[] = [];
  for (const hash of hashes) {
    const json = await log.getSheet(hash);
    if (json !== null) sheets.push({ hash, json });
  }
  const body = { session, entries, sheets };
  return JSON.stringify({ v: 1, hash: hashOf(body), ...body });
};

/** Brings a packed session in; entries the log has already are left alone. Raises PackRefused; nothing is then written. */
export const unpackSession = async (log: Log, text: string): Promise<string> => {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    throw new PackRefused('the file is not JSON');
  }
  const pack = Pack.safeParse(raw);
  if (!pack.success)
    throw new PackRefused(
      `the file is no packed session: ${pack.error.issues[0]?.path.join('.') ?? ''} ${pack.error.issues[0]?.message ?? ''}`,
    );
  const { hash, session, entries: rawEntries, sheets } = pack.data;
  if (hashOf({ session, entries: rawEntries, sheets }) !== hash)
    throw new PackRefused('the file was changed after it was packed: its hash does not fit');
  const entries = rawEntries.map((e) => Entry.safeParse(e));
  const bad = entries.findIndex((e) => !e.success);
  if (bad >= 0) throw new PackRefused(`entry ${bad + 1} is not of the shape`);
  const good = entries.flatMap((e) => (e.success ? [e.data] : []));
  if (good.some((e, i) => e.seq !== i + 1 || e.session !== session)) throw new PackRefused('the entries have a gap');
  const first = good[0];
  if (first?.is !== 'opened') throw new PackRefused('the session has no beginning');
  const there = await log.read(session);
  if (there.some((e, i) => JSON.stringify(e) !== JSON.stringify(good[i])))
    throw new PackRefused(`the log has another session of the name ${session}`);
  for (const sheet of sheets) await log.putSheet(sheet.hash, first.coach, sheet.json);
  let after = there.length;
  // one transaction for each stamp, so that every entry keeps the time it was kept at
  while (after < good.length) {
    const kept = good[after]!.kept;
    const run: Draft[] = [];
    for (let i = after; i < good.length && good[i]!.kept === kept; i += 1) {
      const { v: _v, session: _s, seq: _q, kept: _k, ...draft } = good[i]!;
      run.push(draft);
    }
    if ((await log.append(session, after, run, kept)) === 'moved on')
      throw new PackRefused('the log changed meanwhile: try again');
    after += run.length;
  }
  return session;
};
