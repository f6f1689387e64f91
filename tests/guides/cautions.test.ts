import { describe, expect, it } from 'vitest';
import { hazards } from '../../intents/names.ts';
import { blankContext, read } from '../../intents/read.ts';
import { faultRows } from '../../server/faults/catalogue.ts';
import { allCautions, cautionFor } from '../../server/guides/cautions.ts';
import { dead, gatesFor, live, openGates, room } from '../../server/guides/gates.ts';

const said = (text: string) => read(text, blankContext('note-1', { at: 1_780_000_000_000 }));

/** The one condition a note says, and whether it holds; the note must say nothing else. */
const onlyCondition = (text: string): string => {
  const r = said(text);
  const rest = r.asks.length + r.amends.length + r.hazards.length + r.ambiguous.length + r.unread.length;
  const [fact] = r.facts;
  if (rest > 0 || r.facts.length !== 1 || fact?.is !== 'condition') return `${text}: ${JSON.stringify(r)}`;
  return `${fact.what.v} ${String(fact.holds)}`;
};

describe('cautions', () => {
  it.each([...hazards])('there is one for the hazard "%s", and it waits for an answer', (hazard) => {
    expect(cautionFor(hazard)?.gate).toBeDefined();
  });

  it('every id is there once', () => {
    expect(new Set(allCautions.map((c) => c.id)).size).toBe(allCautions.length);
  });

  it('there is one for every id that the catalogue of faults names', () => {
    const named = new Set(faultRows.flatMap((row) => row.cautions));
    expect(named.size).toBeGreaterThan(5);
    expect([...named].filter((id) => !cautionFor(id))).toEqual([]);
  });

  it.each(allCautions.map((c) => [c.id, c] as const))('"%s" is one short line that ends in its question', (_, c) => {
    expect(c.words).not.toContain('\n');
    expect(c.words.length).toBeLessThanOrEqual(130);
    expect(c.words.endsWith('?')).toBe(c.gate !== undefined);
  });

  it.each([...hazards])('"%s" begins with the word stop', (hazard) => {
    expect(cautionFor(hazard)!.words.startsWith('Stop.')).toBe(true);
  });

  it.each(allCautions.flatMap((c) => (c.gate ? [[c.id, c.gate] as const] : [])))(
    'the answers to "%s" are read as its condition and nothing else',
    (_, gate) => {
      expect(onlyCondition(gate.yes)).toBe(`${gate.what} true`);
      expect(onlyCondition(gate.no)).toBe(`${gate.what} false`);
      const others = gate.or ?? [];
      expect(gate.keys.map((k) => k.text)).toEqual([gate.no, ...others, gate.yes]);
      expect(others.map(onlyCondition)).toEqual(others.map((other) => `${other} true`));
    },
  );

  it('a bare yes or no to the open question is read as the same condition', () => {
    for (const c of allCautions) {
      if (!c.gate) continue;
      const { what, yes, no } = c.gate;
      for (const [word, holds] of [
        ['yes', true],
        ['no', false],
      ] as const) {
        const r = read(word, blankContext('note-1', { open: { id: `gate-${what}`, yes, no } }));
        expect(r.facts.map((f) => f.is === 'condition' && [f.what.v, f.holds])).toEqual([[what, holds]]);
      }
    }
  });

  it('for pressure past cut-out the power is cut before anything is looked for, and not by the key', () => {
    const { words, more } = cautionFor('over-pressure')!;
    expect(words).toMatch(/breaker or battery/);
    expect(words).toMatch(/not by the key/);
    expect(more.indexOf('stand clear')).toBeGreaterThan(-1);
    expect(more.indexOf('reason')).toBeGreaterThan(more.indexOf('stand clear'));
  });

  it.each(['cords driven', 'drive disabled'])('"%s" gives no way to drive on', (id) => {
    const { words, more } = cautionFor(id)!;
    expect(`${words} ${more}`).toMatch(/tow/);
    expect(`${words} ${more}`).not.toMatch(/slowly|limp|careful|short distance|nearest/i);
  });

  it('an id nobody knows has none', () => {
    expect(cautionFor('no such danger')).toBeUndefined();
  });
});

describe('gates', () => {
  it('DEAD asks for stands before any air is let out, and for every store apart from the tank', () => {
    const order = dead.map((g) => g.what);
    expect(order[0]).toBe('on stands');
    expect(order.indexOf('pump power cut')).toBeLessThan(order.indexOf('tank drained'));
    expect(order).toEqual(expect.arrayContaining(['tank drained', 'bellows vented', 'head vented', 'air vented']));
  });

  it('an answered gate is not open, one answered with no is', () => {
    const gates = new Map([
      ['on stands', true],
      ['tank drained', false],
    ]);
    const open = openGates('dead', gates).map((g) => g.what);
    expect(open).not.toContain('on stands');
    expect(open).toContain('tank drained');
    expect(open).toContain('bellows vented');
  });

  it.each(['live', 'dead'] as const)('%s is open all over before the first answer and shut after the last', (mode) => {
    expect(openGates(mode, new Map())).toEqual(gatesFor(mode));
    expect(openGates(mode, new Map(gatesFor(mode).map((g) => [g.what, true])))).toEqual([]);
  });

  it('room to live comes by a pit, ramps or cribbing', () => {
    expect([room.what, ...(room.or ?? [])]).toEqual(['over pit', 'cribbed']);
    expect(live.map((g) => g.what)).toContain('wheels chocked');
  });
});
