/**
 * One session as a file that travels: its entries and sheets, under a hash over all of it and the session's mark. The
 * hash finds a file that was changed; the mark, held against the one on the signed paper, finds one that was made anew.
 */
import { createHash } from 'node:crypto';
import * as z from 'zod';
import type { Log } from './log.ts';
import { markAfter, noMark } from './mark.ts';
import { LogRefused } from './refused.ts';

export class PackRefused extends Error {
  constructor(words: string) {
    super(words);
    this.name = 'PackRefused';
  }
}

const Pack = z.strictObject({
  v: z.literal(1),
  hash: z.string(),
  mark: z.string(),
  session: z.string().regex(/^[a-z0-9-]{6,40}$/),
  coach: z.string(),
  entries: z.array(z.looseObject({})),
  sheets: z.array(z.strictObject({ hash: z.string(), json: z.string() })),
});
type Pack = z.infer<typeof Pack>;

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');
const hashOf = ({ mark, session, coach, entries, sheets }: Omit<Pack, 'v' | 'hash'>): string =>
  sha256(JSON.stringify([mark, session, coach, entries, sheets]));

/** Most characters of a packed session that are looked at. */
export const packMost = 64 * 1024 * 1024;

/** Raises PackRefused when there is no such session. */
export const packSession = async (log: Log, session: string): Promise<string> => {
  const entries = await log.read(session);
  const first = entries[0];
  if (first?.is !== 'opened') throw new PackRefused(`there is no session ${session}`);
  const hashes = [...new Set(entries.flatMap((e) => (e.is === 'opened' || e.is === 'sheet' ? [e.sheet] : [])))];
  const sheets: Pack['sheets'] = [];
  for (const hash of hashes) {
    const json = await log.getSheet(hash);
    if (json !== null) sheets.push({ hash, json });
  }
  const body = { mark: await log.mark(session), session, coach: first.coach, entries, sheets };
  return JSON.stringify({ v: 1, hash: hashOf(body), ...body });
};

const readPack = (text: string): Pack => {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    throw new PackRefused('the file is not JSON');
  }
  const pack = Pack.safeParse(raw);
  if (!pack.success)
    throw new PackRefused(
      `the file is no packed session: ${pack.error.issues[0]?.path.map(String).join('.') ?? ''} ${pack.error.issues[0]?.message ?? ''}`,
    );
  return pack.data;
};

export type Unpacked = { session: string; mark: string; from: number; added: number };

/**
 * Brings a packed session in, whole or not at all; entries the log has already are left alone. `wanted`: the mark it
 * must have, as written down when it was packed; "" for any. Raises PackRefused.
 */
export const unpackSession = async (log: Log, text: string, wanted = ''): Promise<Unpacked> => {
  const pack = readPack(text);
  const { session } = pack;
  if (hashOf(pack) !== pack.hash)
    throw new PackRefused('the file was changed after it was packed: its hash does not fit');
  const bodies = pack.entries.map((e) => JSON.stringify(e));
  if (bodies.reduce(markAfter, noMark) !== pack.mark)
    throw new PackRefused('the entries are not those that were packed: their mark does not fit');
  if (wanted !== '' && !pack.mark.startsWith(wanted.toLowerCase()))
    throw new PackRefused(`the session has the mark ${pack.mark.slice(0, 16)}, not ${wanted}`);
  const bad = pack.sheets.find((s) => sha256(s.json) !== s.hash);
  if (bad) throw new PackRefused(`sheet ${bad.hash.slice(0, 16)} is not the one the session was judged by`);
  const there = (await log.read(session)).map((e) => JSON.stringify(e));
  if (there.some((body, i) => i < bodies.length && body !== bodies[i]))
    throw new PackRefused(`the log has another session of the name ${session}`);
  const rest = bodies.slice(there.length);
  for (const sheet of pack.sheets) await log.putSheet(sheet.hash, pack.coach, sheet.json);
  try {
    if (rest.length > 0 && (await log.adopt(session, there.length, rest)) === 'moved on')
      throw new PackRefused('the log changed meanwhile: try again');
  } catch (error) {
    if (error instanceof LogRefused) throw new PackRefused(error.message);
    throw error;
  }
  return { session, mark: pack.mark, from: there.length, added: rest.length };
};
