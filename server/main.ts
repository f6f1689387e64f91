/** Wires the house and listens. Clock, ids, paths and ports enter here. One clear line for each way it cannot start. */
import { createHash } from 'node:crypto';
import { accessSync, constants, existsSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeDesk } from './desk.ts';
import { makeHttp, sameHouse } from './http.ts';
import { packSession } from './log/pack.ts';
import { LogRefused, sqliteLog } from './log/sqlite.ts';
import { loadSheet, SheetRefused, type LoadedSheet } from './sheet/load.ts';
import { attachSocket } from './socket.ts';
import { warmUp } from './warm.ts';

const fail = (words: string): never => {
  console.error(`soapwater: ${words}`);
  process.exit(1);
};

const here = fileURLToPath(new URL('.', import.meta.url));
const root = process.env['SOAPWATER_ROOT'] ?? join(here, '..', '..');
const data = process.env['DATA'] ?? join(root, '.data');
const port = Number(process.env['PORT'] ?? 4280);
if (!Number.isInteger(port) || port < 0 || port > 65_535)
  fail(`PORT is "${process.env['PORT']}": it must be a number from 0 to 65535`);

try {
  mkdirSync(data, { recursive: true });
  accessSync(data, constants.W_OK);
  if (!statSync(data).isDirectory()) throw new Error('not a folder');
} catch {
  fail(`the data folder ${data} cannot be written; set DATA to another one`);
}

const sheetFiles = [join(root, 'fixtures', 'sheets'), join(data, 'sheets')]
  .filter((f) => existsSync(f))
  .flatMap((folder) =>
    readdirSync(folder)
      .filter((f) => f.endsWith('.json'))
      .map((f) => join(folder, f)),
  );
const sheets = new Map<string, LoadedSheet>();
for (const file of sheetFiles)
  try {
    const loaded = loadSheet(readFileSync(file, 'utf8'), file);
    sheets.set(loaded.sheet.id, loaded);
  } catch (error) {
    if (!(error instanceof SheetRefused)) throw error;
    console.error(`soapwater: ${error.message}`);
  }

const engine = createHash('sha256')
  .update(readFileSync(fileURLToPath(import.meta.url)))
  .digest('hex')
  .slice(0, 16);

const openLog = (): ReturnType<typeof sqliteLog> => {
  try {
    return sqliteLog(join(data, 'soapwater.db'));
  } catch (error) {
    return fail(error instanceof LogRefused ? error.message : String(error));
  }
};
const log = openLog();
const desk = makeDesk({ log, sheets, engine, now: Date.now });
let hosts: readonly string[] = [];
const app = makeHttp({
  desk,
  page: join(root, '.build', 'page'),
  photos: join(data, 'photos'),
  hosts: () => hosts,
  backup: log.backup,
  pack: (session) => packSession(log, session),
});
const server = createServer(app);
const endSocket = attachSocket(server, { desk, now: Date.now, allowed: (request) => sameHouse(request, hosts) });

server.on('error', (error: NodeJS.ErrnoException) => {
  fail(
    error.code === 'EADDRINUSE'
      ? `port ${port} is taken: stop what listens there, or set PORT to another one`
      : error.code === 'EACCES'
        ? `port ${port} may not be used: set PORT to one above 1023`
        : error.message,
  );
});
server.listen(port, '127.0.0.1', () => {
  const address = server.address();
  const actual = typeof address === 'object' && address ? address.port : port;
  hosts = ['127.0.0.1', 'localhost', '[::1]'].map((h) => `${h}:${actual}`);
  console.log(`soapwater: http://127.0.0.1:${actual}/`);
  setTimeout(() => void warmUp(sheets).catch(() => undefined), 100);
});

const end = (): void => {
  endSocket();
  server.close();
  void log.close().then(() => process.exit(0));
};
process.on('SIGTERM', end);
process.on('SIGINT', end);
