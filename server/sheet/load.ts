/** Reads a coach sheet from its JSON text; a wrong one is refused with the field named. Pure. */
import { createHash } from 'node:crypto';
import type * as z from 'zod';
import { fieldName } from './fields.ts';
import { Sheet } from './schema.ts';

/** `field` as in "heights.leftRear.nominal", its name in words, and what is wrong there. */
export type FieldWrong = { field: string; name: string; words: string };

/** A sheet that cannot be used: `fields` name each place and what is wrong there. */
export class SheetRefused extends Error {
  readonly fields: readonly FieldWrong[];
  constructor(name: string, wrong: readonly Omit<FieldWrong, 'name'>[]) {
    const fields = wrong.map((f) => ({ ...f, name: fieldName(f.field) }));
    const said = fields.map((f) => `${f.name}${f.field === '' ? '' : ` (${f.field})`}: ${f.words}`);
    super(`sheet ${name} refused: ${said.join('; ')}`);
    this.name = 'SheetRefused';
    this.fields = fields;
  }
}

/** What the shape says of a field, in words of a person who fills it in. */
const wordsOf = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined ? 'is missing' : `must be ${issue.expected}`;
    case 'invalid_value':
      return issue.input === undefined
        ? 'is missing'
        : `must be one of ${issue.values.slice(0, 8).map(String).join(', ')}${issue.values.length > 8 ? ' or another unit' : ''}`;
    case 'unrecognized_keys':
      return `no sheet has a field ${issue.keys.map((k) => `"${k}"`).join(', ')}`;
    case 'too_small':
      return issue.origin === 'string' ? 'is empty' : issue.message;
    case 'too_big':
      return issue.origin === 'string' ? `is longer than ${issue.maximum} characters` : issue.message;
    default:
      return issue.message;
  }
};

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
  const read = Sheet.safeParse(raw, { reportInput: true });
  if (!read.success)
    throw new SheetRefused(
      name,
      read.error.issues.map((issue) => ({ field: issue.path.map(String).join('.'), words: wordsOf(issue) })),
    );
  const json = JSON.stringify(canonical(raw));
  return { sheet: read.data, hash: createHash('sha256').update(json).digest('hex'), json };
};
