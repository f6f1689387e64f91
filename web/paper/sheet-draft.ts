/** A coach sheet while it is typed: text by path, made of a sheet and made into one. Pure. */
import type { Cell, Field } from '../../server/sheet/fields.ts';
import { sheetFields } from '../../server/sheet/fields.ts';
import { cellWrong, withUnit, type SheetUnits } from '../../server/sheet/field-text.ts';
import type { FieldWrong } from './ask.ts';

/** What stands in the fields: path of the cell -> text. Rows count from 0. '' and absent: not given. */
export type Draft = Readonly<Record<string, string>>;
export type Raw = Record<string, unknown>;

const isRaw = (v: unknown): v is Raw => typeof v === 'object' && v !== null && !Array.isArray(v);
const at = (raw: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((v, key) => (isRaw(v) || Array.isArray(v) ? (v as Raw)[key] : undefined), raw);
const asText = (v: unknown): string =>
  v === true ? 'yes' : v === false ? 'no' : typeof v === 'string' || typeof v === 'number' ? String(v) : '';

/** Every cell of a field, given how many rows it has. */
export const cellsOf = (field: Field, rows: number): { path: string; cell: Cell }[] => {
  switch (field.is) {
    case 'one':
      return [{ path: field.path, cell: field.cell }];
    case 'set':
      return field.parts.map((p) => ({ path: `${field.path}.${p.key}`, cell: p.cell }));
    case 'rows':
      return Array.from({ length: rows }, (_, i) =>
        field.parts.map((p) => ({ path: `${field.path}.${i}.${p.key}`, cell: p.cell })),
      ).flat();
    case 'list':
      return Array.from({ length: rows }, (_, i) => ({ path: `${field.path}.${i}`, cell: field.cell }));
  }
};

/** Rows that a field has in the draft: up to the last one that was begun. */
export const rowsOf = (draft: Draft, field: Field): number =>
  field.is === 'rows' || field.is === 'list'
    ? Object.keys(draft).reduce(
        (n, path) =>
          path.startsWith(`${field.path}.`)
            ? Math.max(n, Number(path.slice(field.path.length + 1).split('.')[0]) + 1)
            : n,
        0,
      )
    : 0;

export const draftOf = (sheet: unknown): Draft => {
  const draft: Record<string, string> = {};
  for (const field of sheetFields) {
    const value = at(sheet, field.path);
    const rows = Array.isArray(value) ? value.length : 0;
    for (const { path } of cellsOf(field, rows)) {
      const text = asText(at(sheet, path));
      if (text !== '') draft[path] = text;
    }
  }
  // said that there is none, which is not the same as not known
  if (isRaw(sheet) && sheet['panel'] === null) draft['panel'] = 'none';
  return draft;
};

/** Puts `value` where `path` says; the last step into a list is a number. */
const put = (into: Raw, path: string, value: unknown, list: boolean): void => {
  const steps = path.split('.');
  const last = steps.pop()!;
  let here: Raw | unknown[] = into;
  for (const [i, step] of steps.entries()) {
    const next = i + 1 < steps.length ? steps[i + 1]! : last;
    const held: unknown = (here as Raw)[step];
    if (isRaw(held) || Array.isArray(held)) here = held;
    else {
      const made: Raw | unknown[] = list && /^\d+$/.test(next) ? [] : {};
      (here as Raw)[step] = made;
      here = made;
    }
  }
  (here as Raw)[last] = value;
};

export const unitsOf = (draft: Draft): SheetUnits =>
  Object.fromEntries(
    ['pressure', 'length', 'temperature', 'volume', 'distance', 'mass', 'torque'].map((u) => [u, draft[`units.${u}`]]),
  );

/** The value of a cell as the sheet holds it; text that is wrong stays text, so that it can be named. */
const valueOf = (text: string, cell: Cell, units: SheetUnits): unknown => {
  if (cell.is === 'yes') return text === 'yes';
  if (cell.is === 'number') return cellWrong(text, cell) === null ? Number(text) : text;
  return withUnit(text, cell, units);
};

/** The sheet that the draft makes; rows that are empty are left out. */
export const sheetOf = (draft: Draft): Raw => {
  const sheet: Raw = { v: 1 };
  const units = unitsOf(draft);
  for (const field of sheetFields) {
    if (field.path.startsWith('panel.') && draft['panel'] === 'none') continue;
    const rows = rowsOf(draft, field);
    const filled = cellsOf(field, rows).filter(({ path }) => (draft[path] ?? '').trim() !== '');
    const list = field.is === 'rows' || field.is === 'list';
    // rows close up over those left empty
    const order = list
      ? [...new Set(filled.map(({ path }) => path.slice(field.path.length + 1).split('.')[0]!))].toSorted(
          (a, b) => Number(a) - Number(b),
        )
      : [];
    for (const { path, cell } of filled) {
      const rest = path.slice(field.path.length + 1).split('.');
      const to = list ? [field.path, String(order.indexOf(rest[0]!)), ...rest.slice(1)].join('.') : path;
      put(sheet, to, valueOf(draft[path]!, cell, units), list);
    }
  }
  if (draft['panel'] === 'none') sheet['panel'] = null;
  return sheet;
};

/** What is wrong in the fields themselves, without asking anybody: as it is typed. */
export const wrongNow = (draft: Draft): FieldWrong[] => {
  const units = unitsOf(draft);
  return sheetFields.flatMap((field) =>
    cellsOf(field, rowsOf(draft, field)).flatMap(({ path, cell }) => {
      const words = cellWrong(withUnit(draft[path] ?? '', cell, units), cell);
      return words === null ? [] : [{ field: path, name: field.name, words }];
    }),
  );
};

/** How many of a group's fields are given. */
export const given = (draft: Draft, fields: readonly Field[]): number =>
  fields.filter((f) => cellsOf(f, Math.max(1, rowsOf(draft, f))).some(({ path }) => (draft[path] ?? '') !== '')).length;
