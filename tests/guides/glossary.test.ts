import { describe, expect, it } from 'vitest';
import { measures, parts } from '../../intents/names.ts';
import { allTerms, glossaryFor, glossaryIn, termsIn } from '../../server/guides/glossary.ts';

const each = allTerms.map((t) => [t.id, t] as const);

describe('glossary', () => {
  it('has at least 80 terms, each once', () => {
    expect(allTerms.length).toBeGreaterThanOrEqual(80);
    expect(new Set(allTerms.map((t) => t.id)).size).toBe(allTerms.length);
  });

  it.each(each)('%s is found by each of its own spellings, and by no other term', (id, t) => {
    for (const name of [t.id, t.term, ...t.also]) expect([name, glossaryFor(name)?.id]).toEqual([name, id]);
  });

  it.each(each)('%s says what it is and why it matters, and leads on', (_, t) => {
    expect(t.plain).toMatch(/\.$/);
    expect(t.why).toMatch(/[.:]$/);
    expect(t.see.length).toBeGreaterThan(0);
    expect(t.see).not.toContain(t.id);
    for (const id of t.see) expect([id, allTerms.some((o) => o.id === id)]).toEqual([id, true]);
  });

  it('names no maker: capitals stand only at the start of a sentence, in positions and in states', () => {
    for (const t of allTerms)
      for (const text of [t.plain, t.why, ...t.also]) {
        const inside = [...text.matchAll(/(?<![.:?!"]\s|^|")\b[A-Z][A-Za-z]*/g)].map((m) => m[0]);
        expect(inside.filter((w) => !/^(?:AUTO|FILL|EMPTY|SHUT|LIVE|DEAD|Pa)$/.test(w))).toEqual([]);
      }
  });

  it.each(['what is a height valve?', "what's an unloader", 'left bellows', 'Air bags', 'the relief valve'])(
    'knows "%s"',
    (topic) => {
      expect(glossaryFor(topic)).toBeDefined();
    },
  );

  it('knows the parts that notes speak of', () => {
    // things that need no explaining, and other systems' things
    const plain = new Set(['bolt', 'axle', 'floor', 'coach', 'ambient', 'load', 'water tank', 'wheel']);
    expect(parts.filter((p) => !plain.has(p) && !glossaryFor(p))).toEqual([]);
  });

  it('knows the measures that have a name of the trade', () => {
    const named = measures.filter((m) => ['cut-in', 'cut-out', 'toe', 'camber', 'thrust', 'pump-up'].includes(m));
    expect(named.length).toBe(6);
    expect(named.filter((m) => !glossaryFor(m))).toEqual([]);
  });

  it.each([
    ['what does SHUT mean', 'shut'],
    ['which side is curb', 'side'],
    ['whats a leak rate', 'leak-down'],
    ['what do you call the air bag', 'bellows'],
  ])('finds in "%s" the term "%s"', (question, id) => {
    expect(glossaryIn(question)?.id).toBe(id);
  });

  it.each(['what is that', 'and the fish', ''])('finds no term in "%s"', (question) => {
    expect(glossaryIn(question)).toBeUndefined();
  });

  it.each(['', 'fish', 'the'])('has no term for "%s"', (topic) => {
    expect(glossaryFor(topic)).toBeUndefined();
  });
});

describe('termsIn', () => {
  it('finds terms by any spelling, in order, each once', () => {
    expect(termsIn('The air bag sags: soap the crimp, then the bags again.')).toEqual([
      'bellows',
      'soap check',
      'crimp',
    ]);
  });

  it('takes the longer name', () => {
    expect(termsIn('the inlet check valve')).toEqual(['inlet check']);
  });

  it('tells positions from plain words', () => {
    expect(termsIn('shut it, fill in the form, empty')).toEqual([]);
    expect(termsIn('panel to SHUT')).toEqual(['levelling panel', 'shut']);
  });

  it('leaves plain words alone', () => {
    expect(termsIn('as it stands; the pump stops')).toEqual(['pump']);
    expect(termsIn('frame on rated stands')).toEqual(['frame', 'stands']);
  });

  it('stops at six', () => {
    expect(termsIn(allTerms.map((t) => t.term).join(', '))).toHaveLength(6);
  });
});
