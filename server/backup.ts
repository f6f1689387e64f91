/**
 * npm run backup | restore | pack | unpack: copies of the log, in use or not, and single sessions as files.
 *   backup [FILE]          a copy of the log, taken from the running server or from the file at rest
 *   restore FILE           puts a copy in place of the log; the old one is kept beside it
 *   pack SESSION [FILE]    one session as a file with its hash
 *   unpack FILE            brings such a file into the log; refused when it was tampered with
 */
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { LogRefused, sqliteLog } from './log/sqlite.ts';
import { packSession, unpackSession, PackRefused } from './log/pack.ts';

const fail = (words: string): never => {
  console.error(`soapwater: ${words}`);
  process.exit(1);
};
const root = process.env['SOAPWATER_ROOT'] ?? process.cwd();
const data = process.env['DATA'] ?? join(root, '.data');
const port = Number(process.env['PORT'] ?? 4280);
const file = join(data, 'soapwater.db');
const stamp = (): string => new Date().toISOString().slice(0, 19).replaceAll(/[:T]/g, '-');

const atRest = (): ReturnType<typeof sqliteLog> | null => {
  try {
    return sqliteLog(file);
  } catch (error) {
    if (error instanceof LogRefused && error.message.includes('held by another')) return null;
    return fail(error instanceof Error ? error.message : String(error));
  }
};

/** Asks the running server, which holds the file, to write the copy itself. */
const throughServer = async (path: string, method: string, body?: string): Promise<Response> => {
  try {
    return await fetch(`http://127.0.0.1:${port}${path}`, { method, ...(body === undefined ? {} : { body }) });
  } catch {
    return fail(`the log is held by a server, but none answers on port ${port}: set PORT to the one it serves on`);
  }
};

const backup = async (to = join(data, 'backups', `soapwater-${stamp()}.db`)): Promise<void> => {
  const target = resolve(to);
  if (existsSync(target)) fail(`${target} exists; name another file`);
  mkdirSync(join(target, '..'), { recursive: true });
  const log = atRest();
  if (log) {
    await log.backup(target);
    await log.close();
  } else {
    const answer = await throughServer('/backup', 'POST', target);
    if (!answer.ok) fail(await answer.text());
  }
  console.log(target);
};

const restore = async (from: string | undefined): Promise<void> => {
  if (!from || !existsSync(from)) return fail('name the copy to restore: npm run restore -- FILE');
  try {
    await sqliteLog(from).close();
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error));
  }
  mkdirSync(data, { recursive: true });
  if (existsSync(file)) {
    const log = atRest();
    if (!log) return fail('the server is running: stop it, then restore');
    await log.close();
    renameSync(file, `${file}.before-${stamp()}`);
    for (const tail of ['-wal', '-shm'])
      if (existsSync(file + tail)) renameSync(file + tail, `${file}.before-${stamp()}${tail}`);
  }
  copyFileSync(from, file);
  console.log(file);
};

const pack = async (session: string | undefined, to?: string): Promise<void> => {
  if (!session) return fail('name the session: npm run pack -- SESSION');
  const log = atRest();
  const text = log
    ? await packSession(log, session)
    : await (await throughServer(`/session/${session}.pack`, 'GET')).text();
  await log?.close();
  const target = resolve(to ?? `${session}.soapwater.json`);
  writeFileSync(target, text);
  console.log(`${target} ${createHash('sha256').update(text).digest('hex')}`);
};

const unpack = async (from: string | undefined): Promise<void> => {
  if (!from || !existsSync(from)) return fail('name the file: npm run unpack -- FILE');
  const text = readFileSync(from, 'utf8');
  const log = atRest();
  if (!log) return fail('the server is running: stop it, then unpack');
  try {
    console.log(await unpackSession(log, text));
  } catch (error) {
    if (error instanceof PackRefused) return fail(error.message);
    throw error;
  } finally {
    await log.close();
  }
};

const [what, ...args] = process.argv.slice(2);
switch (what) {
  case 'backup':
    await backup(args[0]);
    break;
  case 'restore':
    await restore(args[0]);
    break;
  case 'pack':
    await pack(args[0], args[1]);
    break;
  case 'unpack':
    await unpack(args[0]);
    break;
  default:
    fail('backup, restore, pack or unpack');
}
