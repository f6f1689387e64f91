/** A session from facts written by hand, judged note by note against a demo sheet. */
import { readFileSync } from 'node:fs';
import { parseAmount, type Amount } from '../../server/core/amount.ts';
import { dimensionOf, type Unit, unitNames } from '../../server/core/units.ts';
import type { Finding } from '../../server/findings/finding.ts';
import { judge } from '../../server/findings/judge.ts';
import { fold } from '../../server/session/fold.ts';
import type { Standing } from '../../server/session/standing.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import type { Sheet, SheetText } from '../../server/sheet/schema.ts';
import { SessionMaker, type LooseFact, said } from '../session/entries.ts';

export const amount = (text: string): Amount => {
  const unit = unitNames.toSorted((a, b) => b.length - a.length).find((u) => text.endsWith(` ${u}`)) as Unit;
  const read = parseAmount(text, dimensionOf(unit));
  if (!read) throw new Error(`bad amount ${text}`);
  return read;
};

const text = (name: string): string =>
  readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8');
export const juniper = loadSheet(text('juniper-38'), 'juniper').sheet;
export const larkfield = loadSheet(text('larkfield-11'), 'larkfield').sheet;
/** The Juniper sheet with fields taken out or changed. */
export const sheetWith = (
  change: (sheet: SheetText) => void,
  from: 'juniper-38' | 'larkfield-11' = 'juniper-38',
): Sheet => {
  const raw = JSON.parse(text(from)) as SheetText;
  change(raw);
  return loadSheet(JSON.stringify(raw), from).sheet;
};

/**
 * One fact a string, as note fixtures write them: "reading pressure @ tank = 95 psi [from A] [over A] [across A]",
 * "condition [not] panel shut [@ place]", "work adjusted @ place", "spec height @ rear = 13 in .. 14 in".
 */
export const factOf = (line: string): LooseFact => {
  const m = /^(reading|condition|work|spec|sign) (not |no )?(.*?)(?: @ ([^=]*?))?(?: = (.*))?$/.exec(line);
  if (!m) throw new Error(`bad fact ${line}`);
  const [, is, not, what, where = '', value = ''] = m;
  const base = { where: where.trim(), what: said(what) };
  switch (is) {
    case 'condition':
      return { ...base, is, holds: !not } as LooseFact;
    case 'work':
      return { ...base, is, done: !not } as LooseFact;
    case 'sign':
      return { ...base, is, there: !not } as LooseFact;
    case 'spec': {
      const [low, high] = value.split(' .. ');
      return { ...base, is, low: amount(low!), high: amount(high!) } as LooseFact;
    }
    default: {
      const v = /^(.*?)(?: from (.*?))?(?: over (.*?))?(?: across (.*?))?$/.exec(value)!;
      return {
        ...base,
        is,
        amount: said(amount(v[1]!)),
        ...(v[2] ? { from: said(amount(v[2])) } : {}),
        ...(v[3] ? { over: said(amount(v[3])) } : {}),
        ...(v[4] ? { across: said(amount(v[4])) } : {}),
      } as LooseFact;
    }
  }
};

export type Bench = { standing: Standing; found: Finding[] };

/** Notes of `[minutes after the one before, facts]`; returns what the last note is judged to say. */
export const bench = (sheet: Sheet, notes: readonly (readonly [after: number, ...facts: string[]])[]): Bench => {
  const maker = new SessionMaker(sheet.id);
  let last = '';
  for (const [after, ...facts] of notes) last = maker.note(facts.join(', '), facts.map(factOf), { after });
  const standing = fold(maker.entries);
  const fresh = standing.facts.filter((h) => h.note === last).map((h) => h.fact);
  return { standing, found: judge(fresh, standing, sheet) };
};

export const byKey = (found: readonly Finding[], key: string): Finding => {
  const hit = found.find((f) => f.key === key);
  if (!hit) throw new Error(`no finding ${key} among ${found.map((f) => f.key).join(', ')}`);
  return hit;
};
