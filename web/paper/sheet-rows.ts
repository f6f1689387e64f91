/** Rows of a sheet's field put in and taken out of the draft, and what of it is worth telling. Pure. */
import type { Field } from '../../server/sheet/fields.ts';
import { sheetFields } from '../../server/sheet/fields.ts';
import type { FieldWrong } from './ask.ts';
import { given, rowsOf, wrongNow, type Draft } from './sheet-draft.ts';

/** What a new sheet begins with: the units of the tape and the gauge most shops have; every one can be changed. */
export const freshSheet: Draft = {
  'units.pressure': 'psi',
  'units.length': 'in',
  'units.temperature': 'F',
  'units.volume': 'gal',
  'units.distance': 'mi',
  'units.mass': 'lb',
  'units.torque': 'lbf ft',
};

/** Without row `row`; those after it move up. */
export const withoutRow = (draft: Draft, field: Field, row: number): Draft => {
  const left: Record<string, string> = {};
  for (const [path, text] of Object.entries(draft)) {
    if (!path.startsWith(`${field.path}.`)) {
      left[path] = text;
      continue;
    }
    const [n, ...rest] = path.slice(field.path.length + 1).split('.');
    const at = Number(n);
    if (at !== row) left[[field.path, at > row ? at - 1 : at, ...rest].join('.')] = text;
  }
  return left;
};

export const withRow = (draft: Draft, field: Field): Draft => {
  const row = rowsOf(draft, field);
  const first = field.is === 'rows' ? `${field.path}.${row}.${field.parts[0]!.key}` : `${field.path}.${row}`;
  return { ...draft, [first]: '' };
};

/** Words by path. What is only missing is told once a save was `tried`, or where its field was begun. */
export const worthTelling = (
  draft: Draft,
  server: readonly FieldWrong[],
  tried: boolean,
): ReadonlyMap<string, string> => {
  const out = new Map<string, string>();
  for (const f of server) {
    const begun = sheetFields.some(
      (x) => (f.field === x.path || f.field.startsWith(`${x.path}.`)) && given(draft, [x]) > 0,
    );
    if (f.words !== 'is missing' || tried || begun) out.set(f.field, f.words);
  }
  for (const f of wrongNow(draft)) out.set(f.field, f.words);
  return out;
};
