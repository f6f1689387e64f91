/**
 * A backup is a folder: the log, the pictures, the shop's own sheets, and the sums of all of them. It is whole or it is
 * not there: it is written under another name and takes its own when it has been read back and checked.
 */
import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { LogRefused } from '../log/refused.ts';
import { sqliteLog } from '../log/sqlite.ts';
import { misfit, sumsFile, sumsOf } from './sums.ts';

export class BackupRefused extends Error {
  constructor(words: string) {
    super(words);
    this.name = 'BackupRefused';
  }
}
export type Kept = { sessions: number; entries: number; pictures: number };

export const logName = 'soapwater.db';
/** Beside the log in the data folder, and carried with it. Devices and keys are not: a restored shop pairs anew. */
const folders = ['photos', 'sheets', 'shop'] as const;

const copyFolder = (from: string, to: string): number => {
  if (!existsSync(from)) return 0;
  const names = readdirSync(from).filter((name) => /^[\w.-]+$/.test(name) && !name.endsWith('.part'));
  mkdirSync(to, { recursive: true });
  for (const name of names) copyFileSync(join(from, name), join(to, name));
  return names.length;
};

/** Opens the log in `folder`, reads all of it, and leaves it closed. Raises LogRefused. */
const readBack = async (folder: string): Promise<{ sessions: number; entries: number }> => {
  const log = sqliteLog(join(folder, logName));
  try {
    return log.check();
  } finally {
    await log.close();
  }
};

/**
 * Backs `data` up into the new folder `to`. `copyLog` writes the log to a file: the running server does it while it
 * serves, or this process from the file at rest. Raises BackupRefused, LogRefused; `to` is then not there.
 */
export const makeBackup = async (data: string, to: string, copyLog: (file: string) => Promise<void>): Promise<Kept> => {
  if (existsSync(to)) throw new BackupRefused(`${to} exists: name another folder`);
  const part = `${to}.part`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  try {
    await copyLog(join(part, logName));
    const pictures = copyFolder(join(data, 'photos'), join(part, 'photos'));
    for (const name of ['sheets', 'shop']) copyFolder(join(data, name), join(part, name));
    const kept = await readBack(part);
    writeFileSync(join(part, sumsFile), await sumsOf(part), { flush: true });
    renameSync(part, to);
    return { ...kept, pictures };
  } catch (error) {
    rmSync(part, { recursive: true, force: true });
    throw error;
  }
};

/**
 * Puts the backup `from` in place of what is in `data`, which is moved to a folder of its own beside it, never deleted.
 * Raises BackupRefused when a file of it is not as it was backed up, or a server holds the log; nothing is then changed.
 */
export const restoreBackup = async (
  from: string,
  data: string,
  stamp: string,
): Promise<Kept & { replaced: string | null }> => {
  const wrong = await misfit(from);
  if (wrong !== null) throw new BackupRefused(wrong);
  mkdirSync(data, { recursive: true });
  const arriving = join(data, `arriving-${stamp}`);
  rmSync(arriving, { recursive: true, force: true });
  mkdirSync(arriving);
  try {
    copyFileSync(join(from, logName), join(arriving, logName));
    const pictures = copyFolder(join(from, 'photos'), join(arriving, 'photos'));
    for (const name of ['sheets', 'shop']) copyFolder(join(from, name), join(arriving, name));
    // the copy is opened, not the backup: opening brings an old format up
    const kept = await readBack(arriving);
    const replaced = await moveAway(data, join(data, `replaced-${stamp}`));
    for (const name of [logName, ...folders])
      if (existsSync(join(arriving, name))) renameSync(join(arriving, name), join(data, name));
    return { ...kept, pictures, replaced };
  } finally {
    rmSync(arriving, { recursive: true, force: true });
  }
};

const moveAway = async (data: string, to: string): Promise<string | null> => {
  const log = join(data, logName);
  if (existsSync(log))
    try {
      await sqliteLog(log).close();
    } catch (error) {
      // a damaged log is what a restore is for; one that is in use is not to be pulled away
      if (!(error instanceof LogRefused) || error.message.includes('held by')) throw error;
    }
  const there = [logName, `${logName}-wal`, ...folders].filter((name) => existsSync(join(data, name)));
  if (there.length === 0) return null;
  mkdirSync(to, { recursive: true });
  for (const name of there) renameSync(join(data, name), join(to, name));
  return dirname(join(to, logName));
};
