import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeDesk, Refused } from '../../server/desk.ts';
import type { Log } from '../../server/log/log.ts';
import { memoryLog } from '../../server/log/memory.ts';
import type { Entry } from '../../server/session/entry.ts';
import { loadSheet } from '../../server/sheet/load.ts';

const sheets = new Map(
  ['juniper-38', 'larkfield-11'].map((name) => [
    name,
    loadSheet(readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8'), name),
  ]),
);
const noon = Date.UTC(2026, 9, 6, 18, 0);
const deskOn = (log: Log, now = () => noon) => makeDesk({ log, sheets, engine: 'test', now });
const note = (id: string, text: string, seen = 0, at = noon) => ({ id, text, at, seen, by: 'KD' });
const opened = async (log: Log = memoryLog(), now?: () => number) => {
  const desk = deskOn(log, now);
  await desk.open({ session: 'session-1', coach: 'juniper-38', by: 'KD' });
  return desk;
};
const refusal = async (work: Promise<unknown>): Promise<string> => {
  try {
    await work;
  } catch (error) {
    if (error instanceof Refused) return error.why;
    throw error;
  }
  return 'taken';
};

describe('the desk', () => {
  it('shows a limit that was typed bare with its unit', async () => {
    const desk = await opened();
    await desk.note('session-1', note('note-01', 'spec rear 13 1/2 +- 1/4'));
    const entries = await desk.note('session-1', note('note-02', 'LR 13, floor level', 3));
    const findings = entries.flatMap((e) => (e.is === 'reply' ? e.blocks : [])).find((b) => b.is === 'findings');
    const height = findings?.list.find((f) => f.key === 'height@left rear');
    expect([height?.limit?.low?.text, height?.limit?.high?.text]).toEqual(['13 1/4 in', '13 3/4 in']);
    await desk.note('session-1', note('note-03', 'spec is 4 psi in 10 min', 5));
    const fall = (await desk.note('session-1', note('note-04', 'LOCK, tank 110 at 9:00, 101 at 9:30', 7)))
      .flatMap((e) => (e.is === 'reply' ? e.blocks : []))
      .flatMap((b) => (b.is === 'findings' ? b.list : []));
    expect(fall.map((f) => f.words).join()).toContain('limit 4 psi in 10 min');
  });

  it('keeps a note with its reading and its reply together', async () => {
    const desk = await opened();
    const entries = await desk.note('session-1', note('note-01', 'left rear low, 95 psi, comp runs'));
    expect(entries.map((e) => e.is)).toEqual(['note', 'reply']);
    expect(entries[0]?.is === 'note' && entries[0].read.facts).toHaveLength(3);
  });

  it('gives the same entries for the same note again, and refuses its id with another text', async () => {
    const desk = await opened();
    const first = await desk.note('session-1', note('note-01', '95 psi'));
    expect(await desk.note('session-1', note('note-01', '95 psi'))).toEqual(first);
    expect(await refusal(desk.note('session-1', note('note-01', '96 psi')))).toBe('same id other text');
    expect(await desk.read('session-1')).toHaveLength(3);
  });

  it('keeps one copy of a note that two connections send at once', async () => {
    const desk = await opened();
    await Promise.all([
      desk.note('session-1', note('note-01', '95 psi')),
      desk.note('session-1', note('note-01', '95 psi')),
    ]);
    expect((await desk.read('session-1')).filter((e) => e.is === 'note')).toHaveLength(1);
  });

  it('shows nothing before it is durable', async () => {
    const inner = memoryLog();
    let let_go: () => void = () => undefined;
    const gate = new Promise<void>((resolve) => {
      let_go = resolve;
    });
    let appended = false;
    let slow = false;
    const log: Log = {
      ...inner,
      append: async (...args) => {
        if (slow) await gate;
        const outcome = await inner.append(...args);
        appended = true;
        return outcome;
      },
    };
    const desk = await opened(log);
    slow = true;
    appended = false;
    const order: string[] = [];
    desk.follow('session-1', () => order.push(appended ? 'shown after' : 'shown before'));
    const sent = desk.note('session-1', note('note-01', '95 psi'));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(order).toEqual([]);
    let_go();
    await sent;
    expect(order).toEqual(['shown after']);
  });

  it('shows nothing when it could not be kept, and the note can be sent again', async () => {
    const inner = memoryLog();
    let broken = false;
    const log: Log = {
      ...inner,
      append: async (...args) => (broken ? Promise.reject(new Error('disk full')) : inner.append(...args)),
    };
    const desk = await opened(log);
    const shown: Entry[] = [];
    desk.follow('session-1', (entries) => shown.push(...entries));
    broken = true;
    await expect(desk.note('session-1', note('note-01', '95 psi'))).rejects.toThrow('disk full');
    expect(shown).toEqual([]);
    broken = false;
    await desk.note('session-1', note('note-01', '95 psi'));
    expect(shown.map((e) => e.is)).toEqual(['note', 'reply']);
  });

  it('folds and steps again when another hand wrote meanwhile', async () => {
    const log = memoryLog();
    const a = await opened(log);
    const b = deskOn(log);
    await a.note('session-1', note('note-01', 'tank 95 psi'));
    await b.note('session-1', note('note-02', 'tank 93 psi'));
    await a.note('session-1', note('note-03', 'tank 91 psi'));
    expect((await a.read('session-1')).map((e) => e.seq)).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });

  it('derives again what it stored: same engine, same reply', async () => {
    const desk = await opened();
    for (const [i, text] of [
      'sags overnight',
      'LR 13 1/4 RR 14',
      'tank 112 at 11:05, 104 at 11:35, comp off',
      'make that 105',
      'undo',
    ].entries())
      await desk.note('session-1', note(`note-0${i}`, text, 99));
    const stored = await desk.read('session-1');
    const again = await opened();
    for (const e of stored) if (e.is === 'note') await again.note('session-1', note(e.id, e.text, e.seen, e.at));
    expect(await again.read('session-1')).toEqual(stored);
  });

  it('does not believe a page whose clock is ahead', async () => {
    const desk = await opened();
    const [kept] = await desk.note('session-1', note('note-01', '95 psi', 0, noon + 3_600_000));
    expect(kept?.is === 'note' && kept.at).toBe(noon);
  });

  it('keeps order by seq when the clock steps back', async () => {
    let clock = noon;
    const desk = await opened(memoryLog(), () => clock);
    await desk.note('session-1', note('note-01', '95 psi'));
    clock -= 3_600_000;
    await desk.note('session-1', note('note-02', '94 psi', 3, clock));
    const entries = await desk.read('session-1');
    expect(entries.map((e) => e.seq)).toEqual([1, 2, 3, 4, 5]);
    expect((await desk.standing('session-1')).facts).toHaveLength(2);
  });

  it('asks which note is meant when another came in between', async () => {
    const desk = await opened();
    await desk.note('session-1', note('note-01', 'tank 95 psi'));
    await desk.note('session-1', note('note-02', 'tank 93 psi', 1));
    const [, reply] = await desk.note('session-1', note('note-03', 'make that 105', 3));
    expect(
      reply?.is === 'reply' && reply.blocks.some((b) => b.is === 'question' && /Another note came in/.test(b.words)),
    ).toBe(true);
    expect(
      (await desk.standing('session-1')).facts.map(
        ({ fact }) => fact.is === 'reading' && Math.round(fact.amount.v.si / 6894.757),
      ),
    ).toEqual([95, 93]);
  });

  it('refuses what is not there, and notes on a closed session until it is reopened', async () => {
    const desk = await opened();
    expect(await refusal(desk.note('session-9', note('note-01', '95 psi')))).toBe('no such session');
    expect(await refusal(desk.open({ session: 'session-2', coach: 'nobodys', by: 'KD' }))).toBe('no such coach');
    expect(await refusal(desk.open({ session: 'session-1', coach: 'larkfield-11', by: 'KD' }))).toBe('session exists');
    await desk.close('session-1', 'KD', 'level, dry');
    expect(await refusal(desk.note('session-1', note('note-01', '95 psi')))).toBe('session closed');
    await desk.reopen('session-1', 'came back', 'KD');
    expect(await refusal(desk.note('session-1', note('note-01', '95 psi')))).toBe('taken');
  });

  it('keeps nothing of a question that is only asked', async () => {
    const desk = await opened();
    const blocks = await desk.ask('session-1', { id: 'ask-001', text: 'what does 95 psi mean' });
    expect(blocks.length).toBeGreaterThan(0);
    expect(await desk.read('session-1')).toHaveLength(1);
  });
});
