import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { makeGroup } from '../../server/log/group.ts';
import { sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft } from '../../server/session/entry.ts';

const ends: (() => void)[] = [];
afterEach(() => ends.splice(0).forEach((end) => end()));
const opened: Draft = { is: 'opened', by: 'KD', coach: 'juniper-38', sheet: 'a'.repeat(64), zone: 'UTC' };
const note = (id: string, text: string): Draft => ({
  is: 'note',
  by: 'KD',
  id,
  text,
  at: 1000,
  seen: 0,
  read: { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] },
});

describe('what is asked within one turn', () => {
  it('is one commit, and nobody is answered before it', async () => {
    const order: string[] = [];
    const group = makeGroup(
      (work) => {
        const done = work();
        order.push('commit');
        return done;
      },
      () => true,
    );
    await Promise.all([1, 2, 3].map((n) => group.run(() => n).then((v) => order.push(`answer ${v}`))));
    expect(order).toEqual(['commit', 'answer 1', 'answer 2', 'answer 3']);
  });

  it('is refused whole when the commit fails', async () => {
    const group = makeGroup(
      (work) => {
        work();
        throw new Error('disk full');
      },
      () => true,
    );
    const outcomes = await Promise.allSettled([1, 2].map((n) => group.run(() => n)));
    expect(outcomes.map((o) => o.status)).toEqual(['rejected', 'rejected']);
  });

  it('keeps the others when one is not of the shape, overtaken or new, each as if it were alone', async () => {
    const at = mkdtempSync(join(tmpdir(), 'soapwater-group-'));
    const log = sqliteLog(join(at, 'log.db'));
    ends.push(() => rmSync(at, { recursive: true, force: true }));
    await log.append('session-1', 0, [opened], 5);
    const outcomes = await Promise.allSettled([
      log.append('session-1', 1, [note('note-01', 'a')], 6),
      log.append('session-2', 0, [opened, { is: 'note', by: '' } as unknown as Draft], 6),
      log.append('session-1', 1, [note('note-02', 'overtaken')], 6),
      log.append('session-3', 0, [opened, note('note-03', 'b')], 6),
    ]);
    expect(
      outcomes.map((o) => (o.status === 'rejected' ? 'refused' : o.value === 'moved on' ? o.value : 'kept')),
    ).toEqual(['kept', 'refused', 'moved on', 'kept']);
    expect(await Promise.all([1, 2, 3].map((n) => log.read(`session-${n}`).then((e) => e.length)))).toEqual([2, 0, 2]);
    expect(log.check()).toEqual({ sessions: 2, entries: 4 });
    await log.close();
  });
});
