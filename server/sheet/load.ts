/** Reads a coach sheet from its JSON text; a wrong one is refused with the field named. Pure. */
import { createHash } from 'node:crypto';
import { Sheet } from './schema.ts';

/** A sheet that cannot be used: `fields` name each place, as in "heights.leftRear.nominal", and what is wrong there. */
export class SheetRefused extends Error {
  readonly fields: readonly { field: string; words: string }[];
  constructor(name: string, fields: readonly { field: string; words: string }[]) {
    super(`sheet ${name} refused: ${fields.map((f) => `${f.field || '(whole sheet)'}: ${f.words}`).join('; ')}`);
    this.name = 'SheetRefused';
    this.fields = fields;
  }
}

export type LoadedSheet = { sheet: Sheet; /** sha256 of the canonical JSON. */ hash: string; json: string };

const canonical = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(canonical);
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(
      Object.entries(value)
        .toSorted(([a], [b]) => (a < b ? -1 : 1))
        .map(([k, v]) => [k, canonical(v)]),
    );
  return value;
};

/** `text`: the file's content; `name`: what to call it in errors. Raises SheetRefused. */
export const loadSheet = (text: string, name: string): LoadedSheet => {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    throw new SheetRefused(name, [
      { field: '', words: `not JSON (${error instanceof Error ? error.message : 'unreadable'})` },
    ]);
  }
  const read = Sheet.safeParse(raw);
  if (!read.success)
    throw new SheetRefused(
      name,
      read.error.issues.map((issue) => ({ field: issue.path.map(String).join('.'), words: issue.message })),
    );
  const json = JSON.stringify(canonical(raw));
  return { sheet: read.data, hash: createHash('sha256').update(json).digest('hex'), json };
};
