/** What there is to read: words of the trade and checks step by step, out of the guides' room. Pure. */
import { cautionFor, type Caution } from '../../server/guides/cautions.ts';
import { dead, gatesFor, live, room, type Gate } from '../../server/guides/gates.ts';
import { allTerms, glossaryFor, termsIn, type Term } from '../../server/guides/glossary.ts';
import type { Guide, Step } from '../../server/guides/guide.ts';
import { guides } from '../../server/guides/guides.ts';

export { termsIn, type Guide, type Step, type Term };

/** Every word, by the alphabet. */
export const words: readonly Term[] = allTerms.toSorted((a, b) => a.id.localeCompare(b.id));

/** All guides, in the order of a day's work. */
export const checks: readonly Guide[] = guides;

/** A word by its id, another spelling of it or its plural. */
export const wordFor = (name: string): Term | undefined => glossaryFor(name.replaceAll('-', ' ')) ?? glossaryFor(name);

export const checkFor = (id: string): Guide | undefined => guides.find((g) => g.id === id);

/** The guide for a part, a measure or a check, whatever its side. */
export const checkAbout = (topic: string): Guide | undefined => {
  const bare = topic.toLowerCase().replace(/^(?:(?:left|right|both|front|rear) )+/, '');
  return checkFor(topic) ?? guides.find((g) => g.topics.includes(bare));
};

/** What is asked before hands go near, all of it. */
export const allGates: readonly Gate[] = [...live, room, ...dead];

const labels: ReadonlySet<string> = new Set(['auto', 'fill', 'empty', 'shut']);
/** A guide read outside any coach: the place of a figure names the field of the sheet that will stand there. */
export const plain = (text: string): string =>
  text.replace(/\{([\w.]+)\}/g, (_, path: string) => {
    const last = path.split('.').at(-1) ?? path;
    if (path.startsWith('panel.') && labels.has(last)) return last.toUpperCase();
    return `[the coach's ${last.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`)}]`;
  });

const textOf = (g: Guide): string =>
  [g.title, g.what, ...g.steps.flatMap((s) => [s.words, s.expect, ...s.outcomes.map((o) => o.means)])].join(' ');

/** Guides that use the word. */
export const usedIn = (t: Term): Guide[] => {
  const names = [t.id, ...t.also].map((n) => n.toLowerCase());
  const whole = (text: string, name: string): boolean =>
    new RegExp(`(?<![\\w-])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?:e?s)?(?![\\w-])`, 'i').test(text);
  return guides.filter((g) => names.some((n) => whole(textOf(g), n)));
};

/** Asked before the guide's first step. */
export const gatesOf = (g: Guide): readonly Gate[] => (g.gate === null ? [] : gatesFor(g.gate));

export const cautionOf = (s: Step): Caution | undefined =>
  s.caution === undefined ? undefined : cautionFor(s.caution);

/** Words and checks that hold every word of `asked`; all of them when nothing is asked. */
export const find = (asked: string): { words: readonly Term[]; checks: readonly Guide[] } => {
  const parts = asked.toLowerCase().split(/\s+/).filter(Boolean);
  const has = (text: string): boolean => parts.every((p) => text.toLowerCase().includes(p));
  return {
    words: words.filter((t) => has([t.id, ...t.also, t.plain].join(' '))),
    checks: guides.filter((g) => has([g.title, g.what, ...g.topics].join(' '))),
  };
};
