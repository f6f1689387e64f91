import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { fieldName, sheetFields } from '../../server/sheet/fields.ts';
import { cellWrong, withUnit } from '../../server/sheet/field-text.ts';
import { loadSheet, SheetRefused } from '../../server/sheet/load.ts';
import { Sheet } from '../../server/sheet/schema.ts';
import { draftOf, sheetOf } from '../../web/paper/sheet-draft.ts';

const demo = (name: string): string =>
  readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8');

type Node = { properties?: Record<string, Node>; items?: Node; anyOf?: Node[] };
/** Every leaf of the shape, "*" for a row. */
const leaves = (node: Node, path: string[] = []): string[] => {
  const inner = node.anyOf?.find((n) => n.properties) ?? node;
  if (inner.properties) return Object.entries(inner.properties).flatMap(([k, v]) => leaves(v, [...path, k]));
  if (inner.items) return leaves(inner.items, [...path, '*']);
  return [path.join('.')];
};

describe('the fields of a sheet', () => {
  it('are every field of the shape, each once', () => {
    const shape = leaves(z.toJSONSchema(Sheet, { io: 'input', unrepresentable: 'any' }) as Node).filter(
      (p) => p !== 'v',
    );
    const told = sheetFields.flatMap((f) =>
      f.is === 'one'
        ? [f.path]
        : f.is === 'list'
          ? [`${f.path}.*`]
          : f.parts.map((p) => `${f.path}.${f.is === 'rows' ? '*.' : ''}${p.key}`),
    );
    expect(told.toSorted()).toEqual(shape.toSorted());
  });

  it.each(['juniper-38', 'larkfield-11'])('give the demo sheet %s back as it was', (name) => {
    const sheet: unknown = JSON.parse(demo(name));
    expect(sheetOf(draftOf(sheet))).toEqual(sheet);
    expect(loadSheet(JSON.stringify(sheetOf(draftOf(sheet))), name).hash).toBe(loadSheet(demo(name), name).hash);
  });

  it.each([
    ['heights.leftRear.nominal', 'left rear height, should be'],
    ['supply.cutIn.low', 'cut-in pressure, from'],
    ['pump.delivery.1.flow', 'free air delivered, row 2, flow'],
    ['alignment.bracket.shims.0', 'bracket: shims there are, row 1'],
    ['', 'whole sheet'],
  ])('are named in words: %s', (path, name) => {
    expect(fieldName(path)).toBe(name);
  });

  it('missing ones are said to be missing, by name', () => {
    const { coach: _coach, ...rest } = JSON.parse(demo('juniper-38')) as Record<string, unknown>;
    let refused: unknown = null;
    try {
      loadSheet(JSON.stringify(rest), 'mine.json');
    } catch (error) {
      refused = error;
    }
    expect(refused).toBeInstanceOf(SheetRefused);
    expect(refused).toMatchObject({ fields: [{ field: 'coach', name: 'name of the coach', words: 'is missing' }] });
  });

  it('all but who it is may be left empty', () => {
    const draft = draftOf(JSON.parse(demo('juniper-38')));
    const least = Object.fromEntries(
      Object.entries(draft).filter(([k]) => /^(?:id|coach|source|zone|units\..+)$/.test(k)),
    );
    expect(loadSheet(JSON.stringify(sheetOf(least)), 'least').sheet.supply).toBeUndefined();
  });
});

describe('what is typed into a field', () => {
  const length = { is: 'amount', dimension: 'length', example: '13 3/4 in' } as const;
  const inches = { pressure: 'psi', length: 'in' };
  it.each([
    ['13 3/4', '13 3/4 in'],
    ['13.75', '13.75 in'],
    ['13,75', '13.75 in'],
    ['13 3/4"', '13 3/4 in'],
    ['350mm', '350 mm'],
    ['nonsense', 'nonsense'],
  ])('%s is kept as %s on a sheet in inches', (typed, kept) => {
    expect(withUnit(typed, length, inches)).toBe(kept);
  });

  it('is never given a unit the sheet has not said', () => {
    expect(withUnit('13', length, {})).toBe('13');
    expect(cellWrong('13', length)).toContain('is not a length with its unit');
  });

  it('stands as it is after a second look, whatever it was', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), (text) => {
        const once = withUnit(text, length, inches);
        expect(withUnit(once, length, inches)).toBe(once);
      }),
    );
  });
});
