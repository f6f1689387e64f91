/** SHA-256 sums of a folder's files, in the form that `sha256sum -c` reads: "HASH  NAME" a line. */
import { createHash } from 'node:crypto';
import { createReadStream, existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';

export const sumsFile = 'SHA256SUMS';

/** Names of all files below `folder`, with "/" between, sorted. */
export const filesBelow = (folder: string, below = ''): string[] =>
  readdirSync(join(folder, below), { withFileTypes: true })
    .flatMap((entry) => {
      const name = below === '' ? entry.name : `${below}/${entry.name}`;
      return entry.isDirectory() ? filesBelow(folder, name) : [name];
    })
    .toSorted();

export const sumOf = async (file: string): Promise<string> => {
  const hash = createHash('sha256');
  await pipeline(createReadStream(file), hash);
  return hash.digest('hex');
};

/** The text of the sums file for `folder`. */
export const sumsOf = async (folder: string): Promise<string> => {
  let text = '';
  for (const name of filesBelow(folder)) if (name !== sumsFile) text += `${await sumOf(join(folder, name))}  ${name}\n`;
  return text;
};

/** What does not fit in `folder`, in words; null when every file is there, unchanged, and no other. */
export const misfit = async (folder: string): Promise<string | null> => {
  const file = join(folder, sumsFile);
  if (!existsSync(file)) return `${folder} is no backup: it has no ${sumsFile}`;
  const there = new Set(filesBelow(folder).filter((name) => name !== sumsFile));
  for (const line of readFileSync(file, 'utf8').split('\n').filter(Boolean)) {
    const [, hash, name] = /^([0-9a-f]{64}) {2}(.+)$/.exec(line) ?? [];
    if (hash === undefined || name === undefined) return `${sumsFile} has a line that is none: ${line.slice(0, 80)}`;
    if (!there.delete(name)) return `${name} is missing`;
    if ((await sumOf(join(folder, name))) !== hash) return `${name} is not what was backed up`;
  }
  const [extra] = there;
  return extra === undefined ? null : `${extra} was not backed up with the rest`;
};
