/**
 * How commands on this machine find the running server and show that they may ask it: a file in the data folder with
 * its port and a secret, readable by the one who runs the server.
 */
import { randomBytes } from 'node:crypto';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export type Bench = { port: number; secret: string; pid: number };
const fileIn = (data: string): string => join(data, 'server.json');
export const secretHeader = 'x-soapwater-bench';

export const makeSecret = (): string => randomBytes(24).toString('base64url');

export const writeBench = (data: string, bench: Bench): void =>
  writeFileSync(fileIn(data), JSON.stringify(bench), { mode: 0o600 });

export const removeBench = (data: string): void => rmSync(fileIn(data), { force: true });

/** The server that holds the log of `data`, or null when none says so. */
export const readBench = (data: string): Bench | null => {
  try {
    const bench = JSON.parse(readFileSync(fileIn(data), 'utf8')) as Partial<Bench>;
    return typeof bench.port === 'number' && typeof bench.secret === 'string' && typeof bench.pid === 'number'
      ? { port: bench.port, secret: bench.secret, pid: bench.pid }
      : null;
  } catch {
    return null;
  }
};
