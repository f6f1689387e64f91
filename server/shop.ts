/** The shop's own settings: one file in the data folder, read at the start, saved whole. */
import { existsSync, readFileSync, renameSync } from 'node:fs';
import { writeWhole } from './atomic.ts';
import { Shop } from './report/shapes.ts';

export class ShopRefused extends Error {
  constructor(words: string) {
    super(words);
    this.name = 'ShopRefused';
  }
}

const names: Readonly<Record<string, string>> = {
  name: 'name of the shop',
  lines: 'address and telephone',
  labour: 'labour an hour',
  currency: 'currency',
};

/** Raises ShopRefused naming the field. */
const read = (raw: unknown): Shop => {
  const shop = Shop.safeParse(raw);
  if (shop.success) return shop.data;
  const issue = shop.error.issues[0];
  const field = String(issue?.path[0] ?? '');
  throw new ShopRefused(`${names[field] ?? (field || 'settings')}: ${issue?.message ?? 'not as it should be'}`);
};

export type ShopSettings = { get: () => Shop; /** Raises ShopRefused. */ set: (raw: unknown) => Shop };

/** A file that cannot be used stands for no settings at all (they are asked for), is told to `wrong`, and is never lost. */
export const makeShop = (file: string, wrong: (words: string) => void): ShopSettings => {
  let shop: Shop = { v: 1 };
  let broken = false;
  if (existsSync(file))
    try {
      shop = read(JSON.parse(readFileSync(file, 'utf8')));
    } catch (error) {
      broken = true;
      wrong(error instanceof Error ? error.message : 'cannot be read');
    }
  return {
    get: () => shop,
    set: (raw) => {
      const next = read(raw);
      if (broken) renameSync(file, `${file}.broken`);
      broken = false;
      writeWhole(file, `${JSON.stringify(next, null, 2)}\n`);
      shop = next;
      return next;
    },
  };
};
