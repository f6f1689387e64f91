/** Explanations say what speaks for and against, what it hangs on, and take back what falls. */
import { expect, test } from 'vitest';
import { afterRepair } from '../../server/faults/after.ts';
import { bar, explainWhy, strength, whatIf } from '../../server/faults/explain.ts';
import { explainWhyNot } from '../../server/faults/why-not.ts';
import { howSure } from '../../server/faults/sure.ts';
import { sensitivityOf } from '../../server/faults/sensitivity.ts';
import { suspectsOf } from '../../server/faults/suspects.ts';
import { weigh } from '../../server/faults/weigh.ts';
import { withdrawn } from '../../server/faults/withdrawn.ts';
import { juniper, standingOf } from './bench.ts';

const notes = ['left rear sags overnight', 'panel shut, both rear hold', 'bubbles at left exhaust port'];
const standing = standingOf(juniper, notes);

test('why: what speaks for the exhaust seat, with a bar, the prior and the formula', () => {
  const [e] = explainWhy('left exhaust seat', 'why the exhaust seat', standing, juniper);
  expect(e!.words).toMatch(/exhaust seat leaks/);
  expect(e!.lines.some((l) => l.startsWith('+') && l.includes('exhaust port'))).toBe(true);
  expect(e!.why!.inputs.map((i) => i.name)).toContain('prior');
});

test('why not the bellows: that it held in SHUT speaks against it, and what would change that is named', () => {
  const [e] = explainWhyNot('left bellows', standing, juniper);
  expect(e!.lines.some((l) => l.startsWith('-') && l.includes('holds'))).toBe(true);
  expect(e!.lines.some((l) => l.includes('explains it better'))).toBe(true);
});

test('how sure: names what the verdict hangs on', () => {
  const [e] = howSure(standing, juniper);
  expect(e!.lines.some((l) => l.includes('hangs most on') && l.includes('exhaust port'))).toBe(true);
});

test('what if: each outcome of the check on the table leads somewhere', () => {
  const open = standingOf(juniper, ['left rear low'], { 1: 'hold shut' });
  const [e] = whatIf('', open, juniper);
  expect(e!.lines.length).toBeGreaterThanOrEqual(4);
  expect(e!.lines.find((l) => l.startsWith('If left drops'))).toMatch(/left/);
});

test('sensitivity: without the one thing that tells, the leader falls', () => {
  const w = weigh(standing, juniper);
  const s = sensitivityOf(w, w.model.index.get('left exhaust seat leak')!);
  const least = Math.min(...s.without.map((x) => x.p));
  expect(least).toBeLessThan(s.p / 2);
  expect(s.low.p).toBeLessThan(s.p);
  expect(s.high.p).toBeGreaterThan(s.p);
});

test('a verdict that falls is taken back with what felled it', () => {
  const before = standingOf(juniper, ['left rear low when driving', 'left link bent']);
  const after = standingOf(juniper, [
    'left rear low when driving',
    'left link bent',
    'left link ok',
    'left height valve does not fill',
    'left height valve does not empty',
  ]);
  const said = withdrawn(
    { ...before, suspects: suspectsOf(before, juniper) },
    { ...after, suspects: suspectsOf(after, juniper) },
    juniper,
  );
  expect(said.join(' ')).toMatch(/I take back "left link.*because of "/);
});

test('a mended fault is not taken back', () => {
  const before = standingOf(juniper, notes);
  const after = standingOf(juniper, [...notes, 'replaced left height valve']);
  expect(
    withdrawn(
      { ...before, suspects: suspectsOf(before, juniper) },
      { ...after, suspects: suspectsOf(after, juniper) },
      juniper,
    ),
  ).toEqual([]);
});

test('reports that come to disagree, and a gauge in doubt, are said out loud', () => {
  const said = (a: readonly string[], b: readonly string[]): string =>
    withdrawn(standingOf(juniper, a), standingOf(juniper, b), juniper).join(' ');
  expect(said(['bubbles at left bellows'], ['bubbles at left bellows', 'no bubbles at left bellows'])).toMatch(
    /Two reports disagree on left soap bellows/,
  );
  const notes = ['panel shut, tank drops'];
  expect(said(notes, [...notes, 'gauges disagree'])).toMatch(/The gauges disagree.*drops at tank/);
});

test('after a repair: what brought it on, and what else it did', () => {
  const said = afterRepair(
    standingOf(juniper, [
      'left rear sags overnight',
      'panel shut, left rear drops',
      'bubbles at left bellows',
      'replaced left bellows',
    ]),
    juniper,
  );
  expect(said[0]!.words).toMatch(/age and cycles/);
  expect(said[1]!.words).toMatch(/pump is worn|right bellows/);
});

test('strength and bar say which way and how much', () => {
  expect(strength(3)).toBe('speaks strongly for it');
  expect(strength(-0.5)).toBe('speaks a little against it');
  expect(bar(4.2)).toBe('++++');
  expect(bar(-2.1)).toBe('--');
});
