/** The socket on a desk in this process, with a clock and limits of the test's own. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bench } from '../../server/auth/roles.ts';
import { makeBoards } from '../../server/boards.ts';
import { makeDesk } from '../../server/desk.ts';
import { type FileLog, sqliteLog } from '../../server/log/sqlite.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { attachSocket, type SocketLimits, usualLimits } from '../../server/socket.ts';
import { root } from '../start/server.ts';

export type InProcess = { url: string; log: FileLog; stop: () => Promise<void> };

export const serveInProcess = async (
  limits: Partial<SocketLimits> = {},
  now: () => number = Date.now,
): Promise<InProcess> => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-socket-'));
  const log = sqliteLog(join(folder, 'soapwater.db'));
  const sheet = loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38');
  const desk = makeDesk({ log, sheets: new Map([['juniper-38', sheet]]), engine: 'test', now });
  const server = createServer();
  let host = '';
  const door = { hosts: () => [host], who: () => bench };
  const boards = makeBoards(desk, now);
  const sockets = attachSocket(server, { desk, boards, now, door, limits: { ...usualLimits, ...limits } });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  host = `127.0.0.1:${typeof at === 'object' && at ? at.port : 0}`;
  return {
    url: `http://${host}/`,
    log,
    stop: async () => {
      sockets.end();
      server.close();
      await log.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
