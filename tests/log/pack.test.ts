import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { memoryLog } from '../../server/log/memory.ts';
import { packSession, unpackSession } from '../../server/log/pack.ts';
import type { Draft } from '../../server/session/entry.ts';

const sheet = '{"v":1}';
const sheetHash = createHash('sha256').update(sheet).digest('hex');
const opened: Draft = { is: 'opened', by: 'KD', coach: 'juniper-38', sheet: sheetHash, zone: 'America/Denver' };
const note = (id: string): Draft => ({
  is: 'note',
  by: 'KD',
  id,
  text: 'tank 95',
  at: 1000,
  seen: 0,
  read: { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] },
});
const filled = async () => {
  const log = memoryLog();
  await log.append('session-1', 0, [opened], 5);
  await log.append(
    'session-1',
    1,
    [note('note-01'), { is: 'reply', by: 'soapwater', to: 'note-01', engine: 'x', blocks: [] }],
    9,
  );
  await log.putSheet(sheetHash, 'juniper-38', sheet);
  return log;
};

describe('a packed session', () => {
  it('comes to another machine and back, the same to the letter', async () => {
    const here = await filled();
    const there = memoryLog();
    await unpackSession(there, await packSession(here, 'session-1'));
    expect(await there.read('session-1')).toEqual(await here.read('session-1'));
    expect(await there.getSheet(sheetHash)).toBe(sheet);
    await there.append('session-1', 3, [note('note-02')], 12);
    await unpackSession(here, await packSession(there, 'session-1'));
    expect(await here.read('session-1')).toEqual(await there.read('session-1'));
    expect(await here.mark('session-1')).toBe(await there.mark('session-1'));
  });

  it('is refused when a letter of it was changed', async () => {
    const text = await packSession(await filled(), 'session-1');
    await expect(unpackSession(memoryLog(), text.replace('tank 95', 'tank 59'))).rejects.toThrow(
      'changed after it was packed',
    );
  });

  it('is refused when it was made anew with another content: its mark is not the one that was written down', async () => {
    const here = await filled();
    const mark = (await here.mark('session-1')).slice(0, 16);
    const forged = memoryLog();
    await forged.append('session-1', 0, [opened, { ...note('note-01'), text: 'tank 59' } as Draft], 5);
    const text = await packSession(forged, 'session-1');
    await expect(unpackSession(memoryLog(), text, mark)).rejects.toThrow('has the mark');
    expect((await unpackSession(memoryLog(), await packSession(here, 'session-1'), mark)).added).toBe(3);
  });

  it('is refused with a sheet that is not the one it was judged by', async () => {
    const here = await filled();
    const lying = { ...here, getSheet: async () => '{"v":2}' };
    await expect(unpackSession(memoryLog(), await packSession(lying, 'session-1'))).rejects.toThrow(
      'not the one the session was judged by',
    );
  });

  it('is refused when it is no packed session, and when the log has another of that name', async () => {
    await expect(unpackSession(memoryLog(), 'hello')).rejects.toThrow('not JSON');
    await expect(unpackSession(memoryLog(), '{}')).rejects.toThrow('no packed session');
    const other = memoryLog();
    await other.append('session-1', 0, [{ ...opened, by: 'ZZ' }], 5);
    await expect(unpackSession(other, await packSession(await filled(), 'session-1'))).rejects.toThrow(
      'another session of the name',
    );
    expect(await other.read('session-1')).toHaveLength(1);
  });
});
