import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { loadSheet } from '../../server/sheet/load.ts';

const sheet = loadSheet(
  readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8'),
  'juniper-38',
);
const open = async (seed = 7, level = 1) => {
  const log = memoryLog();
  let clock = Date.UTC(2026, 9, 6, 15, 45);
  const desk = makeDesk({
    log,
    sheets: new Map([['juniper-38', sheet]]),
    engine: 'test',
    now: () => clock,
    seed: () => seed,
  });
  const opened = await desk.open({ session: 'practice-1', coach: 'juniper-38', by: 'AP', practice: level });
  let n = 0;
  const type = async (text: string): Promise<string> => {
    clock += 60_000;
    n += 1;
    const { seq } = await desk.standing('practice-1');
    const [, reply] = await desk.note('practice-1', { id: `deed-0${n}`, text, at: clock, seen: seq, by: 'AP' });
    return JSON.stringify(reply?.is === 'reply' ? reply.blocks : []);
  };
  return { desk, opened, type };
};

describe('practice', () => {
  it('begins with a complaint in an owner’s words and says what may be done', async () => {
    const { opened } = await open();
    expect(opened.map((e) => e.is)).toEqual(['opened', 'note', 'reply']);
    expect(opened[1]?.is === 'note' && opened[1].by).toBe('owner');
    expect(opened[1]?.is === 'note' && opened[1].text.length).toBeGreaterThan(10);
  });

  it('answers a reading as a gauge would, with its unit, and lets time run at the learner’s word', async () => {
    const { type } = await open();
    expect(await type('read the tank')).toMatch(/\d+ psi/);
    const later = await type('wait 30 min, tank');
    expect(later).toMatch(/\d+ psi/);
    expect(Number(/(\d+) min in all/.exec(later)?.[1])).toBeGreaterThanOrEqual(30);
  });

  it('takes a deed back with undo', async () => {
    const { type } = await open();
    const first = await type('read the tank');
    await type('wait 8 hours');
    await type('undo');
    const again = Number(/(\d+) min in all/.exec(await type('read the tank'))?.[1]);
    expect(again).toBeLessThan(60);
    expect(first).toMatch(/psi/);
  });

  it('explains a danger and what it cost', async () => {
    const { type } = await open();
    await type('pump up');
    expect(await type('soap the left bag crimp')).toMatch(/hurt|costs/);
  });

  it('reveals what it was, the minutes used and the best order', async () => {
    const { type } = await open();
    await type('read the tank');
    const end = await type('reveal');
    expect(end).toContain('It was:');
    expect(end).toContain('Best order found');
  });

  it('is logged apart and never suspects the real coach', async () => {
    const { desk, type } = await open();
    await type('read the tank');
    expect((await desk.sessions({}))[0]?.practice).toBe(true);
    expect((await desk.standing('practice-1')).suspects).toEqual([]);
  });

  it('gives the same coach for the same seed', async () => {
    const a = await open(11, 3);
    const b = await open(11, 3);
    expect(await a.type('read the tank, measure all four corners')).toBe(
      await b.type('read the tank, measure all four corners'),
    );
  });
});
