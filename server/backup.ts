/**
 * npm run backup | restore | pack | unpack: copies of the log and its pictures, in use or not, and single sessions as
 * files that travel.
 *   backup [FOLDER]        whole, read back and checked before it takes its name
 *   restore FOLDER         checked first; what was there is moved aside, never deleted
 *   pack SESSION [FILE]    one session with its hash; prints its mark, to be written down
 *   unpack FILE [MARK]     brings it into the log; refused when it was changed, or has another mark
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { readBench, secretHeader } from './backup/bench-file.ts';
import { BackupRefused, logName, makeBackup, restoreBackup } from './backup/folder.ts';
import { packSession, PackRefused, unpackSession, type Unpacked } from './log/pack.ts';
import { LogRefused } from './log/refused.ts';
import { type FileLog, sqliteLog } from './log/sqlite.ts';

const fail = (words: string): never => {
  console.error(`soapwater: ${words}`);
  process.exit(1);
};
const root = process.env['SOAPWATER_ROOT'] ?? process.cwd();
const data = process.env['DATA'] ?? join(root, '.data');
const file = join(data, logName);
const stamp = new Date().toISOString().slice(0, 19).replaceAll(/[:T]/g, '-');

/** The log at rest, or null when a server holds it. */
const atRest = (): FileLog | null => {
  if (!existsSync(file))
    return fail(`there is no log in ${data}: set DATA to the folder that has one, or start the server there once`);
  try {
    return sqliteLog(file);
  } catch (error) {
    if (error instanceof LogRefused && error.message.includes('held by')) return null;
    throw error;
  }
};

const askServer = async (path: string, body?: string): Promise<string> => {
  const bench = readBench(data);
  if (!bench)
    return fail(`the log is held by a server that left no ${join(data, 'server.json')}: stop it, then try again`);
  let answer: Response;
  try {
    answer = await fetch(`http://127.0.0.1:${bench.port}${path}`, {
      method: body === undefined ? 'GET' : 'POST',
      headers: { [secretHeader]: bench.secret },
      ...(body === undefined ? {} : { body }),
    });
  } catch {
    return fail(`the server that holds the log does not answer on port ${bench.port}`);
  }
  const text = await answer.text();
  return answer.ok ? text : fail(text);
};

const backup = async (to = join(data, 'backups', stamp)): Promise<string> => {
  const target = resolve(to);
  const log = atRest();
  const copyLog = log
    ? (copy: string) => log.backup(copy)
    : (copy: string) => askServer('/bench/copy', copy).then(() => {});
  try {
    const { sessions, entries, pictures } = await makeBackup(data, target, copyLog);
    return `${target}: ${sessions} sessions, ${entries} entries, ${pictures} pictures, read back and checked`;
  } finally {
    await log?.close();
  }
};

const restore = async (from: string | undefined): Promise<string> => {
  if (from === undefined) return fail('name the backup: npm run restore -- FOLDER');
  const { sessions, entries, pictures, replaced } = await restoreBackup(resolve(from), data, stamp);
  return `${data}: ${sessions} sessions, ${entries} entries, ${pictures} pictures${replaced ? `; what was there is in ${replaced}` : ''}`;
};

const pack = async (session: string | undefined, to?: string): Promise<string> => {
  if (session === undefined || !/^[a-z0-9-]{6,40}$/.test(session))
    return fail('name the session: npm run pack -- SESSION');
  const target = resolve(to ?? `${session}.soapwater.json`);
  if (existsSync(target)) return fail(`${target} exists: name another file`);
  const log = atRest();
  try {
    const text = log ? await packSession(log, session) : await askServer(`/session/${session}.pack`);
    writeFileSync(target, text, { flush: true });
    const { mark } = JSON.parse(text) as { mark: string };
    return `${target}\nmark ${mark.slice(0, 16)}: write it down; unpack takes it as a second word`;
  } finally {
    await log?.close();
  }
};

const unpack = async (from: string | undefined, mark = ''): Promise<string> => {
  if (from === undefined || !existsSync(from)) return fail('name the file: npm run unpack -- FILE [MARK]');
  const text = readFileSync(from, 'utf8');
  const log = atRest();
  try {
    const done = log
      ? await unpackSession(log, text, mark)
      : (JSON.parse(await askServer(`/bench/unpack?mark=${encodeURIComponent(mark)}`, text)) as Unpacked);
    return `${done.session}: ${done.added} entries added to ${done.from}; mark ${done.mark.slice(0, 16)}`;
  } finally {
    await log?.close();
  }
};

const [what, ...args] = process.argv.slice(2);
try {
  switch (what) {
    case 'backup':
      console.log(await backup(args[0]));
      break;
    case 'restore':
      console.log(await restore(args[0]));
      break;
    case 'pack':
      console.log(await pack(args[0], args[1]));
      break;
    case 'unpack':
      console.log(await unpack(args[0], args[1]));
      break;
    default:
      fail('backup, restore, pack or unpack');
  }
} catch (error) {
  const known = error instanceof LogRefused || error instanceof PackRefused || error instanceof BackupRefused;
  const system = error instanceof Error && 'code' in error;
  if (!known && !system) throw error;
  fail(error instanceof Error ? error.message : String(error));
}
