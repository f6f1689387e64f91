/** The yardstick: a bare socket server that does one durable insert for each frame and echoes it. */
import { createServer } from 'node:http';
import Database from 'better-sqlite3';
import { WebSocketServer } from 'ws';

export const startEcho = async (file: string): Promise<{ url: string; stop: () => void }> => {
  const db = new Database(file);
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.exec('CREATE TABLE IF NOT EXISTS frames (n INTEGER PRIMARY KEY, body TEXT)');
  const insert = db.prepare('INSERT INTO frames (body) VALUES (?)');
  const server = createServer();
  const wss = new WebSocketServer({ server, perMessageDeflate: false });
  wss.on('connection', (ws) =>
    ws.on('message', (data) => {
      const text = (data as Buffer).toString('utf8');
      insert.run(text);
      ws.send(text);
    }),
  );
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as { port: number };
  return {
    url: `http://127.0.0.1:${port}/`,
    stop: () => {
      for (const ws of wss.clients) ws.terminate();
      wss.close();
      server.close();
      db.close();
    },
  };
};
