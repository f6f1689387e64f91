import { describe, expect, it } from 'vitest';
import { fold, foldOn } from '../../server/session/fold.ts';
import { amend, condition, psi, SessionMaker, sign, vented } from './entries.ts';

const pressures = (standing: ReturnType<typeof fold>): number[] =>
  standing.facts.flatMap(({ fact }) => (fact.is === 'reading' ? [Math.round(fact.amount.v.si / 6894.757)] : []));

describe('fold', () => {
  it('keeps the facts of all notes in force', () => {
    const s = new SessionMaker();
    s.note('95 psi', [psi(95)]);
    s.note('91', [psi(91)]);
    expect(pressures(fold(s.entries))).toEqual([95, 91]);
  });

  it('voids an undone note, and an undo of the undo brings it back', () => {
    const s = new SessionMaker();
    const first = s.note('95 psi', [psi(95)]);
    const undo = s.note('undo', [], { amends: [amend({ do: 'undo', notes: [first] })] });
    expect(pressures(fold(s.entries))).toEqual([]);
    s.note('undo that', [], { amends: [amend({ do: 'undo', notes: [undo] })] });
    expect(pressures(fold(s.entries))).toEqual([95]);
  });

  it('puts a corrected fact in the place of the old one', () => {
    const s = new SessionMaker();
    const first = s.note('95 psi', [psi(95)]);
    const put = { ...fold(s.entries).facts[0]!.fact, id: 'note-put.0' };
    if (put.is !== 'reading') throw new Error('not a reading');
    put.amount = { ...put.amount, v: { ...put.amount.v, si: 105 * 6894.757293168361 } };
    s.note('make that 105', [], { amends: [amend({ do: 'put', drops: [`${first}.0`], puts: [put] })] });
    expect(pressures(fold(s.entries))).toEqual([105]);
  });

  it('holds implausible readings apart from evidence', () => {
    const s = new SessionMaker();
    s.note('950 psi', [{ ...psi(950), held: 'implausible' }]);
    const standing = fold(s.entries);
    expect(standing.facts).toEqual([]);
    expect(standing.held).toHaveLength(1);
  });

  it('gives each reading the state of the coach it was taken in, conditions of the same note included', () => {
    const s = new SessionMaker();
    s.note('95 psi panel road', [psi(95), condition('panel auto', true)]);
    s.note('panel lock', [condition('panel shut', true)], { after: 5 });
    const last = s.note('94', [psi(94)], { after: 5 });
    const standing = fold(s.entries);
    expect(standing.stateAt.get('note-001.0')?.panel).toBe('auto');
    expect(standing.stateAt.get(`${last}.0`)?.panel).toBe('shut');
    expect(standing.state.panel).toBe('shut');
  });

  it('takes pumping as the start of settling', () => {
    const s = new SessionMaker();
    s.note('comp runs', [condition('pump running', true)]);
    s.note('comp off', [condition('pump running', false)], { after: 4 });
    const standing = fold(s.entries);
    expect(standing.state.pump).toBe(false);
    expect(standing.state.pumpedAt).not.toBeNull();
  });

  it('is DEAD only on stands, without power and with every store vented, and pumping ends it', () => {
    const s = new SessionMaker();
    s.note('on stands, power cut', [condition('on stands', true), condition('pump power cut', true)]);
    expect(fold(s.entries).state.mode).toBeNull();
    s.note('tank drained, bags vented', [condition('tank drained', true), condition('bellows vented', true)]);
    expect(fold(s.entries).state.mode).toBe('dead');
    s.note('comp runs', [condition('pump running', true)]);
    expect(fold(s.entries).state.mode).not.toBe('dead');
    expect(fold(s.entries).gates.has('tank drained')).toBe(false);
  });

  it('is no longer vented once a gauge shows air, though a tyre may hold its own', () => {
    const s = new SessionMaker();
    s.note('air vented', [condition('air vented', true)]);
    s.note('tank 0, tyre 95', [psi(0), psi(95, 'left rear tyre')]);
    expect(fold(s.entries).gates.get('air vented')).toBe(true);
    s.note('tank 12', [psi(12)]);
    expect(fold(s.entries).gates.has('air vented')).toBe(false);
  });

  it.each([
    ['left bellows', []],
    ['left bellows line', []],
    ['fitting', []],
    ['left rear', []],
    ['both bellows', ['bellows vented']],
    ['tank', ['tank drained']],
    ['coach', ['air vented']],
  ])('takes air let out of %s for no more than it is', (where, open) => {
    const s = new SessionMaker();
    s.note(`let the air out, ${where}`, [vented(where)]);
    expect([...fold(s.entries).gates].flatMap(([gate, yes]) => (yes ? [gate] : []))).toEqual(open);
  });

  it('opens a new situation for a part that was worked on', () => {
    const s = new SessionMaker();
    s.note('swapped the left valve', [
      { is: 'work', what: { v: 'replaced', from: 'said', spans: [] }, done: true, where: 'left height valve' },
    ]);
    expect([...fold(s.entries).situation.keys()]).toEqual(['left height valve']);
  });

  it('takes the first signs as the complaint, and knows one about standing', () => {
    const s = new SessionMaker();
    s.note('hello', []);
    s.note('sags overnight', [sign('sags', 'coach')]);
    expect(fold(s.entries).complaint).toMatchObject({ words: 'sags overnight', standing: true });
  });

  it('comes to the same whether folded at once or entry by entry', () => {
    const s = new SessionMaker();
    const first = s.note('95 psi', [psi(95)]);
    s.note('panel lock', [condition('panel shut', true)]);
    s.note('undo', [], { amends: [amend({ do: 'undo', notes: [first] })] });
    let by = fold(s.entries.slice(0, 1));
    for (const entry of s.entries.slice(1)) by = foldOn(by, [entry]);
    expect(by).toEqual(fold(s.entries));
  });

  it('refuses a gap in the log', () => {
    const s = new SessionMaker();
    s.note('95 psi', [psi(95)]);
    expect(() => fold([s.entries[0]!, s.entries[2]!])).toThrow('entry 3 does not follow 1');
  });
});
