/** A file that is whole or not there: written under another name, synced, then renamed over the old one. */
import { randomBytes } from 'node:crypto';
import { closeSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** `mode`: who may read it. Raises what the disk raises; the old file then stands as it was. */
export const writeWhole = (file: string, text: string, mode = 0o666): void => {
  mkdirSync(dirname(file), { recursive: true });
  const part = `${file}.${randomBytes(6).toString('hex')}.part`;
  try {
    const handle = openSync(part, 'wx', mode);
    try {
      writeFileSync(handle, text);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(part, file);
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
  // the new name itself is on the disk only once its folder is
  const folder = openSync(dirname(file), 'r');
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
};
