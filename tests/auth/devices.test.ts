import { mkdtempSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { deviceLasts, openDevices } from '../../server/auth/devices.ts';

const ends: (() => void)[] = [];
afterEach(() => ends.splice(0).forEach((end) => end()));

/** A list in a folder that can be made to take no more writing. */
const list = () => {
  const at = mkdtempSync(join(tmpdir(), 'soapwater-devices-'));
  ends.push(() => rmSync(at, { recursive: true, force: true }));
  const folder = join(at, 'data');
  const file = join(folder, 'devices.json');
  let clock = 1_790_000_000_000;
  const open = () => openDevices(file, () => clock);
  return {
    devices: open(),
    open,
    file,
    pass: (ms: number) => (clock += ms),
    spoil: () => {
      renameSync(folder, `${folder}-away`);
      writeFileSync(folder, '');
    },
    mend: () => {
      rmSync(folder);
      renameSync(`${folder}-away`, folder);
    },
  };
};

describe('paired devices', () => {
  it('are known after a start, until their time is over; the list is for the one who runs the server alone', () => {
    const { devices, open, pass, file } = list();
    const { token } = devices.add('phone', 'reviews');
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(open().who(token)).toMatchObject({ role: 'reviews', name: 'phone' });
    pass(deviceLasts);
    expect(open().who(token)).toBeNull();
    expect(open().list()).toEqual([]);
  });

  it('are still let in when the disk takes no writing, and a new one is not half added', () => {
    const { devices, pass, spoil, mend } = list();
    const { token } = devices.add('phone', 'works');
    spoil();
    pass(2 * 3_600_000);
    expect(devices.who(token)).toMatchObject({ role: 'works' });
    expect(() => devices.add('another', 'works')).toThrow(/EEXIST|ENOTDIR/);
    mend();
    expect(devices.list()).toHaveLength(1);
  });

  it('are out when revoked, also where that cannot be written; that is said', () => {
    const { devices, spoil } = list();
    const { token, device } = devices.add('phone', 'works');
    spoil();
    expect(() => devices.revoke(device.id)).toThrow(/EEXIST|ENOTDIR/);
    expect(devices.who(token)).toBeNull();
  });
});
