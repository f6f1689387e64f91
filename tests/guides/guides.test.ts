import { describe, expect, it } from 'vitest';
import { blankContext, read } from '../../intents/read.ts';
import { Block } from '../../server/chat/reply.ts';
import { checks } from '../../server/faults/checks.ts';
import { benchOf } from '../../server/guides/bench-note.ts';
import { cautionFor } from '../../server/guides/cautions.ts';
import { fieldsIn, fill } from '../../server/guides/fill.ts';
import { dead } from '../../server/guides/gates.ts';
import type { Guide } from '../../server/guides/guide.ts';
import { guideById, guideEnded, guideFor, guides, stateOf, stepBlock } from '../../server/guides/steps.ts';
import { bareSheet, demoSheet } from './sheets.ts';

const each = guides.map((g) => [g.id, g] as const);
const examples = (expected: string): string[] => [...expected.matchAll(/"([^"]+)"/g)].map((m) => m[1]!);
const allDead = new Map(dead.map((g) => [g.what as string, true]));
const stops = (blocks: readonly Block[]) => blocks.filter((b) => b.is === 'caution');
const stepOf = (blocks: readonly Block[]) => blocks.find((b) => b.is === 'step')!;

describe('every guide', () => {
  it('is there: the list of the trade, in 22 guides', () => {
    expect(guides.map((g) => g.id)).toEqual([
      'tank pressure',
      'leak-down',
      'soap check',
      'pump-up',
      'compressor electrics',
      'check valve and unloader',
      'intake filter',
      'drain and moisture',
      'clogged line',
      'replace a line',
      'height valve on the coach',
      'height valve on the bench',
      'height valve exchange',
      'pressure switch',
      'levelling panel',
      'ride height',
      'bellows',
      'shocks',
      'control arm',
      'rear toe and camber',
      'handover',
      'service plan',
    ]);
  });

  it.each(each)('%s has a purpose, tools, steps with outcomes, and an end', (_, g) => {
    expect(g.what).not.toBe('');
    expect(g.tools.length).toBeGreaterThan(0);
    expect(g.steps.length).toBeGreaterThanOrEqual(4);
    expect(g.after.length).toBeGreaterThan(0);
    for (const s of g.steps) expect(s.outcomes.length).toBeGreaterThan(0);
  });

  it.each(each)('%s is reached by its id and by each of its topics', (_, g) => {
    for (const topic of [g.id, ...g.topics]) expect([topic, guideFor(topic)?.id]).toEqual([topic, g.id]);
  });

  it.each(each)('%s names only cautions that exist', (_, g) => {
    const named = g.steps.flatMap((s) => s.caution ?? []);
    expect(named.filter((id) => !cautionFor(id))).toEqual([]);
  });

  it.each(each)('%s shows every step with a way on, a way back and a way out', (_, g) => {
    g.steps.forEach((_step, at) => {
      const block = stepOf(stepBlock(g, at, demoSheet(), allDead));
      expect(block).toMatchObject({ guide: g.id, step: at, of: g.steps.length });
      expect(block.keys.map((k) => k.text)).toEqual(['next step', 'back', 'stop guide']);
    });
  });

  it.each(each)('%s: every example to type back is read, word for word', (_, g) => {
    for (const s of g.steps) {
      expect(examples(s.expect).length).toBeGreaterThan(0);
      for (const text of examples(s.expect)) {
        if (s.bench && benchOf(text, s.bench)) continue;
        const r = read(text, blankContext('note-1', { at: 1_780_000_000_000 }));
        expect({ text, unread: r.unread.map(([a, b]) => text.slice(a, b)), ambiguous: r.ambiguous }).toEqual({
          text,
          unread: [],
          ambiguous: [],
        });
        expect(r.hazards).toEqual([]);
        expect(r.facts.filter((f) => !f.held).length).toBeGreaterThan(0);
        expect(r.facts.filter((f) => f.held)).toEqual([]);
      }
    }
  });

  it.each(each)('%s: its keys are read as the commands they are', (_, g) => {
    const commands = stepOf(stepBlock(g, 0, demoSheet())).keys.map(
      (k) => read(k.text, blankContext('note-1')).asks[0]?.about,
    );
    expect(commands).toEqual(['next step', 'back', 'stop guide']);
  });

  it.each(each)('%s takes its figures from the sheet and says where one is lacking', (_, g) => {
    for (const [at, s] of g.steps.entries()) {
      const shown = stepBlock(g, at, bareSheet(), allDead);
      const text = JSON.stringify(shown);
      expect(text).not.toMatch(/[{][a-z]+\.[A-Za-z.]+[}]/);
      const missing = fieldsIn(s.words).filter((f) => !f.startsWith('panel.'));
      for (const field of missing) expect(text).toContain(`the sheet has no ${field}`);
    }
    for (const line of g.after) expect(fieldsIn(line)).toEqual([]);
  });

  it.each(each)('%s: every field it fills in is one that the demo sheet has', (_, g) => {
    const words = g.steps.flatMap((s) => [s.words, s.expect, ...s.outcomes.flatMap((o) => [o.when, o.means])]);
    // the demo coach has no protection valve
    const fields = words.flatMap(fieldsIn).filter((f) => f !== 'supply.protection' && f !== 'springs.foldPressure');
    for (const field of fields) expect(fill(`{${field}}`, demoSheet())).not.toContain('the sheet has no');
  });

  it.each(each)('%s gives blocks that can be stored', (_, g) => {
    for (const at of g.steps.keys())
      for (const block of [...stepBlock(g, at, demoSheet('larkfield-11')), guideEnded(g)])
        expect(Block.parse(block)).toEqual(block);
  });

  it.each(each)('%s: a bare figure of a pressure or tape is marked common practice', (_, g) => {
    const lines = g.steps.flatMap((s) => [s.words, ...s.outcomes.flatMap((o) => [o.when, o.means])]);
    const figures = lines.filter((line) => /\d+ ?(?:psi|kPa|bar|in\b|lbf|miles)/.test(line));
    expect(figures.filter((line) => !/common practice, no source|29 CFR/.test(line))).toEqual([]);
  });
});

describe('guides that open the air', () => {
  const opening = guides.filter((g) => g.steps.some((s) => stateOf(g, s) === 'dead'));

  it('are those of the trade in which something is opened', () => {
    expect(opening.map((g) => g.id)).toEqual(
      expect.arrayContaining(['bellows', 'height valve exchange', 'replace a line', 'pressure switch', 'control arm']),
    );
  });

  it.each(opening.map((g) => [g.id, g] as const))('%s goes no further until the coach is DEAD', (_, g: Guide) => {
    const first = g.steps.findIndex((s) => stateOf(g, s) === 'dead');
    const makes = g.steps.findLastIndex((s, i) => i < first && s.caution === 'dead');
    expect(makes).toBeGreaterThanOrEqual(0);
    // one after the other, each of its answers lacking
    for (const lacking of dead) {
      const gates = new Map([...allDead].map(([what, holds]) => [what, holds && what !== lacking.what]));
      const blocks = stepBlock(g, first, demoSheet(), gates);
      expect(stepOf(blocks).step).toBe(makes);
      expect(stops(blocks).map((b) => b.gate?.what)).toContain(lacking.what);
    }
    expect(stepOf(stepBlock(g, first, demoSheet(), allDead)).step).toBe(first);
  });

  it('ask for it again when air has come back', () => {
    const gates = new Map([...allDead, ['tank drained', false]]);
    const g = guideById('bellows')!;
    const blocks = stepBlock(g, 3, demoSheet(), gates);
    expect(stops(blocks)[0]?.gate?.what).toBe('tank drained');
    expect(stepOf(blocks).step).toBe(1);
  });
});

describe('stepBlock', () => {
  it('says cautions before the step, the gate of its state first', () => {
    const blocks = stepBlock(guideById('soap check')!, 1, demoSheet());
    expect(blocks.map((b) => b.is)).toEqual(['caution', 'caution', 'step', 'picture', 'teach']);
    expect(stops(blocks).map((b) => b.gate?.what)).toEqual(['wheels chocked', 'over pit']);
  });

  it('does not ask again what is answered', () => {
    const gates = new Map([
      ['wheels chocked', true],
      ['people clear', true],
      ['eyes covered', true],
      ['cribbed', true],
    ]);
    expect(stepBlock(guideById('soap check')!, 1, demoSheet(), gates).map((b) => b.is)).toEqual([
      'step',
      'picture',
      'teach',
    ]);
  });

  it('asks the same thing once a reply', () => {
    for (const g of guides)
      for (const at of g.steps.keys()) {
        const asked = stops(stepBlock(g, at, demoSheet())).flatMap((b) => b.gate?.what ?? []);
        expect(new Set(asked).size).toBe(asked.length);
      }
  });

  it("speaks of the panel in this coach's words", () => {
    expect(stepOf(stepBlock(guideById('leak-down')!, 3, demoSheet())).words).toContain('SHUT (LOCK)');
    expect(stepOf(stepBlock(guideById('leak-down')!, 3, bareSheet())).words).toContain('Panel to SHUT,');
  });

  it("takes a bare number after a step as the reading it asked for, in the coach's unit", () => {
    const us = stepOf(stepBlock(guideById('tank pressure')!, 0, demoSheet()));
    const uk = stepOf(stepBlock(guideById('tank pressure')!, 0, demoSheet('larkfield-11')));
    expect([us.open?.what, us.open?.where, us.open?.unit]).toEqual(['pressure', 'tank', 'psi']);
    expect(uk.open?.unit).toBe('kPa');
    const r = read('104', blankContext('note-1', { open: us.open! }));
    expect(r.facts[0]).toMatchObject({ is: 'reading', what: { v: 'pressure' }, where: { v: 'tank' } });
  });

  it('stays within the guide', () => {
    const g = guideById('shocks')!;
    expect(stepOf(stepBlock(g, -3, demoSheet())).step).toBe(0);
    expect(stepOf(stepBlock(g, 99, demoSheet())).step).toBe(g.steps.length - 1);
  });

  it('ends in words that the fold knows', () => {
    for (const g of guides) expect(guideEnded(g).words.startsWith('Guide ended')).toBe(true);
  });
});

describe('guideFor', () => {
  it.each([
    ['left height valve', 'height valve on the coach'],
    ['right bellows', 'bellows'],
    ['how do i bench test the height valve', 'height valve on the bench'],
    ['how do i replace a line', 'replace a line'],
    ['how do i change the bags', 'bellows'],
    ['how do i check cut in', 'tank pressure'],
    ['how do i find a leak', 'soap check'],
    ['how to set the pressure switch', 'pressure switch'],
    ['how do i measure voltage drop at the pump', 'compressor electrics'],
    ['how do i measure toe', 'rear toe and camber'],
    ['how do i rebuild the pump', 'intake filter'],
    ['how do i overhaul the height valve', 'height valve exchange'],
    ['how do i hand it over', 'handover'],
  ])('%s: %s', (topic, id) => {
    expect(guideFor(topic)?.id).toBe(id);
  });

  it.each(['', '   ', 'the price of fish', 'brakes', '?'])('has none for "%s"', (topic) => {
    expect(guideFor(topic)).toBeUndefined();
  });

  it('has one for every check of the diagnosis', () => {
    expect([...new Set(checks.map((c) => c.guide))].filter((id) => !guideById(id))).toEqual([]);
  });
});
