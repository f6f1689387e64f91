/**
 * Devices that were paired: each with a token of which only the hash is kept, a role, and an end. In one file of the
 * data folder, written whole and synced before a token is handed out.
 */
import { createHash, randomBytes } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import * as z from 'zod';
import { writeWhole } from '../atomic.ts';
import { roles, type Role, type Who } from './roles.ts';

const Device = z.strictObject({
  id: z.string(),
  name: z.string(),
  role: z.enum(roles),
  /** SHA-256 of the token, hex. */
  token: z.string(),
  paired: z.number(),
  seen: z.number(),
  until: z.number(),
});
type Device = z.infer<typeof Device>;
const File = z.strictObject({ v: z.literal(1), devices: z.array(Device) });

export type DeviceLine = Omit<Device, 'token'>;
export const deviceLasts = 90 * 24 * 3_600_000;
const mostDevices = 100;
/** `seen` is written at most this often. */
const seenStep = 3_600_000;

export type Devices = {
  /** Raises RangeError when there are too many. */
  add: (name: string, role: Role) => { token: string; device: DeviceLine };
  who: (token: string | undefined) => Who | null;
  /** It is out at once; raises what the disk raises where that could not be written: it would be back after a start. */
  revoke: (id: string) => boolean;
  list: () => DeviceLine[];
};

const hash = (token: string): string => createHash('sha256').update(token).digest('hex');
const line = ({ token: _token, ...rest }: Device): DeviceLine => rest;

/** A file that is no list of devices is an error of its own: `words` for the person at the bench. */
export class DevicesRefused extends Error {}

/** Raises DevicesRefused when the file is there and cannot be read as one. */
export const openDevices = (file: string, now: () => number): Devices => {
  let devices: Device[] = [];
  if (existsSync(file))
    try {
      devices = File.parse(JSON.parse(readFileSync(file, 'utf8'))).devices;
    } catch (error) {
      throw new DevicesRefused(`${file} is damaged: move it away and pair the devices anew`, { cause: error });
    }
  const save = (): void => writeWhole(file, JSON.stringify({ v: 1, devices }, null, 1), 0o600);
  return {
    add: (name, role) => {
      devices = devices.filter((d) => d.until > now());
      if (devices.length >= mostDevices) throw new RangeError(`${mostDevices} devices are paired: revoke one first`);
      const token = randomBytes(32).toString('base64url');
      const device: Device = {
        id: randomBytes(6).toString('hex'),
        name,
        role,
        token: hash(token),
        paired: now(),
        seen: now(),
        until: now() + deviceLasts,
      };
      const before = devices;
      devices = [...devices, device];
      try {
        save();
      } catch (error) {
        devices = before;
        throw error;
      }
      return { token, device: line(device) };
    },
    who: (token) => {
      if (token === undefined || token === '') return null;
      const wanted = hash(token);
      // looked up by hash: nothing about the token is learned from how long it takes
      const device = devices.find((d) => d.token === wanted);
      if (!device || device.until <= now()) return null;
      if (now() - device.seen > seenStep) {
        device.seen = now();
        try {
          save();
        } catch {
          // for the record only: a full disk keeps nobody out
        }
      }
      return { role: device.role, device: device.id, name: device.name };
    },
    revoke: (id) => {
      const left = devices.filter((d) => d.id !== id);
      if (left.length === devices.length) return false;
      devices = left;
      save();
      return true;
    },
    list: () => devices.filter((d) => d.until > now()).map(line),
  };
};
