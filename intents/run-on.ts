/**
 * Where a clause begins that nobody set apart: neither a comma nor an "and" was typed. What was said whole is followed by
 * a thing with its own word, a deed with its own thing, a figure with its own place, or whoever speaks.
 */
import { figures } from './run-on-figures.ts';
import type { Items } from './run-on-whole.ts';
import { words } from './run-on-words.ts';

const rules = [...words, ...figures];

/** Whether the item at `at` of `all` begins a clause, `items` being what stands in the open one. */
export const beginsAnew = (items: Items, all: Items, at: number): boolean =>
  items.length > 0 && rules.some((rule) => rule(items, all, at));
