import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { SheetRefused } from '../../server/sheet/load.ts';
import { makeShelf, ShelfRefused } from '../../server/shelf.ts';
import { makeShop } from '../../server/shop.ts';

const demo = readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8');
const folders: string[] = [];
const home = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'shelf-'));
  folders.push(folder);
  return join(folder, 'sheets');
};
afterEach(() => folders.splice(0).forEach((f) => rmSync(f, { recursive: true, force: true })));
const changed = (altitude: string): string => demo.replace('"1200 ft"', JSON.stringify(altitude));
const refused = (work: () => unknown): unknown => {
  try {
    work();
  } catch (error) {
    return error;
  }
  return null;
};

describe('the shelf of sheets', () => {
  it('saves a new version under its content hash, with who and why, and finds it at the next start', () => {
    const folder = home();
    const shelf = makeShelf([folder], () => 5);
    const first = shelf.save(demo, '', 'MK', 'from the manual');
    const second = shelf.save(changed('1300 ft'), first.hash, 'JR', 'measured');
    expect(second.hash).not.toBe(first.hash);
    const again = makeShelf([folder], () => 6);
    expect(again.sheets.get('juniper-38')?.hash).toBe(second.hash);
    expect(again.versions('juniper-38')).toMatchObject([
      { hash: first.hash, by: 'MK', words: 'from the manual', at: 5 },
      { hash: second.hash, by: 'JR', words: 'measured' },
    ]);
    expect(readdirSync(folder).toSorted()).toEqual(['juniper-38.json', 'versions.jsonl']);
  });

  it('refuses a save over a version that was not seen, and one of a name that is taken; the file stands', () => {
    const folder = home();
    const shelf = makeShelf([folder], () => 5);
    const first = shelf.save(demo, '', 'MK', '');
    shelf.save(changed('1300 ft'), first.hash, 'JR', '');
    const before = readFileSync(join(folder, 'juniper-38.json'), 'utf8');
    const late = refused(() => shelf.save(changed('1400 ft'), first.hash, 'MK', ''));
    expect(late instanceof ShelfRefused && late.message).toContain('changed meanwhile by JR');
    expect(refused(() => shelf.save(changed('1400 ft'), '', 'MK', ''))).toBeInstanceOf(ShelfRefused);
    expect(readFileSync(join(folder, 'juniper-38.json'), 'utf8')).toBe(before);
  });

  it('cannot be made to write outside its folder', () => {
    const folder = home();
    const shelf = makeShelf([folder], () => 5);
    for (const id of ['../x', 'a/b', '..', '/etc/x', 'a\\b', 'A'])
      expect(refused(() => shelf.save(demo.replace('"juniper-38"', JSON.stringify(id)), '', 'MK', ''))).toBeInstanceOf(
        SheetRefused,
      );
    expect(existsSync(folder)).toBe(false);
  });

  it('goes on with the rest beside a broken file, names field and reason, and leaves the file alone', () => {
    const folder = home();
    mkdirSync(folder);
    writeFileSync(join(folder, 'good.json'), demo);
    writeFileSync(join(folder, 'bad.json'), demo.replace('juniper-38', 'bad').replace('"1200 ft"', '"1200"'));
    writeFileSync(join(folder, 'cut.json'), demo.slice(0, 200));
    const shelf = makeShelf([folder], () => 5);
    expect([...shelf.sheets.keys()]).toEqual(['juniper-38']);
    expect(shelf.refused).toMatchObject([
      { file: 'bad.json', words: expect.stringContaining('altitude of the shop (altitude): "1200"') as string },
      { file: 'cut.json', words: expect.stringContaining('not JSON') as string },
    ]);
    expect(readFileSync(join(folder, 'cut.json'), 'utf8')).toBe(demo.slice(0, 200));
  });
});

describe("the shop's settings", () => {
  it('stand after the next start, and a file that cannot be used is told of and never lost', () => {
    const file = join(home(), 'settings.json');
    makeShop(file, () => undefined).set({ v: 1, labour: 95.5, currency: 'EUR' });
    expect(makeShop(file, () => undefined).get()).toEqual({ v: 1, labour: 95.5, currency: 'EUR' });
    writeFileSync(file, '{"v":1,"labour":"much"}');
    const told: string[] = [];
    const shop = makeShop(file, (words) => told.push(words));
    expect(shop.get()).toEqual({ v: 1 });
    expect(told.join()).toContain('labour an hour');
    shop.set({ v: 1, labour: 90 });
    expect(readFileSync(`${file}.broken`, 'utf8')).toContain('much');
  });
});
