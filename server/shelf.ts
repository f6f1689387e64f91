/**
 * The sheets on offer: read from their folders at the start, saved into the last of them. A save is a new version by its
 * content hash; who saved which when stands in `versions.jsonl` beside them, and the log keeps each for ever.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { writeWhole } from './atomic.ts';
import { loadSheet, SheetRefused, type LoadedSheet } from './sheet/load.ts';

export type Version = { coach: string; hash: string; at: number; by: string; words: string };
/** `file` without its folder; `words`: what is wrong where. */
export type RefusedSheet = { file: string; words: string };

/** A save that is not made: the coach has another version by now, or a new one would take the place of an old. */
export class ShelfRefused extends Error {
  constructor(words: string) {
    super(words);
    this.name = 'ShelfRefused';
  }
}

export type Shelf = ReturnType<typeof makeShelf>;

/** `folders`: later ones win; sheets are saved into the last. Raises what the disk raises. */
export const makeShelf = (folders: readonly string[], now: () => number) => {
  const sheets = new Map<string, LoadedSheet>();
  const refused: RefusedSheet[] = [];
  for (const folder of folders.filter((f) => existsSync(f)))
    for (const file of readdirSync(folder).filter((f) => f.endsWith('.json')))
      try {
        const loaded = loadSheet(readFileSync(join(folder, file), 'utf8'), file);
        sheets.set(loaded.sheet.id, loaded);
      } catch (error) {
        const words = error instanceof SheetRefused ? error.fields.map((f) => wrongWords(f)).join('; ') : null;
        if (words === null && !isDisk(error)) throw error;
        refused.push({ file: basename(file), words: words ?? 'the file cannot be read' });
      }
  const home = folders.at(-1)!;
  const versionsFile = join(home, 'versions.jsonl');

  /** Oldest first. A line that cannot be read is left in the file and told of by nobody. */
  const versions = (coach: string): Version[] =>
    (existsSync(versionsFile) ? readFileSync(versionsFile, 'utf8') : '').split('\n').flatMap((line) => {
      try {
        const v = JSON.parse(line) as Version;
        return v.coach === coach && typeof v.hash === 'string' ? [v] : [];
      } catch {
        return [];
      }
    });

  const note = (version: Version): void => {
    const before = existsSync(versionsFile) ? readFileSync(versionsFile, 'utf8') : '';
    const gap = before === '' || before.endsWith('\n') ? '' : '\n';
    writeWhole(versionsFile, `${before}${gap}${JSON.stringify(version)}\n`);
  };

  return {
    sheets: sheets as ReadonlyMap<string, LoadedSheet>,
    refused,
    versions,
    /**
     * `text`: the sheet as JSON; `base`: hash of the version it was made from, '' for a new coach. The same content again
     * is harmless. Raises SheetRefused, ShelfRefused; nothing is changed then.
     */
    save: (text: string, base: string, by: string, words: string): LoadedSheet => {
      const loaded = loadSheet(text, 'as typed');
      const { id } = loaded.sheet;
      const held = sheets.get(id);
      if (held?.hash === loaded.hash) return held;
      if (held && base === '') throw new ShelfRefused(`There is a coach with the short name "${id}" already.`);
      if ((held?.hash ?? '') !== base) {
        const last = versions(id).at(-1);
        throw new ShelfRefused(
          `The sheet was changed meanwhile${last ? ` by ${last.by}` : ''}. Nothing was saved; what you typed still stands here.`,
        );
      }
      // the id is of letters, digits and dashes: it cannot climb out of the folder
      writeWhole(join(home, `${id}.json`), `${JSON.stringify(JSON.parse(text), null, 2)}\n`);
      if (held && versions(id).length === 0) note({ coach: id, hash: held.hash, at: 0, by: '', words: 'as it came' });
      note({ coach: id, hash: loaded.hash, at: now(), by, words });
      sheets.set(id, loaded);
      const broken = refused.findIndex((r) => r.file === `${id}.json`);
      if (broken >= 0) refused.splice(broken, 1);
      return loaded;
    },
  };
};

const wrongWords = (f: { field: string; name: string; words: string }): string =>
  `${f.name}${f.field === '' ? '' : ` (${f.field})`}: ${f.words}`;
const isDisk = (error: unknown): boolean => error instanceof Error && 'code' in error;
