/** Pictures of a session: kept under the hash of their content, so that one is never changed and kept once. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, open, readFile, rename } from 'node:fs/promises';
import { join } from 'node:path';
import express, { type Express, type Request } from 'express';
import { mayPicture, type Who } from './auth/roles.ts';

export const photoMost = 6 * 1024 * 1024;
const kinds: readonly (readonly [string, (b: Buffer) => boolean])[] = [
  ['image/jpeg', (b) => b.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff]))],
  ['image/png', (b) => b.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))],
  [
    'image/webp',
    (b) => b.subarray(0, 4).toString('latin1') === 'RIFF' && b.subarray(8, 12).toString('latin1') === 'WEBP',
  ],
];
const kindOf = (bytes: Buffer): string | undefined => kinds.find(([, is]) => is(bytes))?.[0];

export const photoRoutes = (app: Express, folder: string, who: (request: Request) => Who | null): void => {
  const allowed: express.RequestHandler = (request, response, next) => {
    if (mayPicture(who(request)?.role ?? 'learns')) return next();
    response.status(403).type('text').send('This device may not bring pictures in.');
  };
  app.put('/photos', allowed, express.raw({ type: () => true, limit: photoMost }), async (request, response) => {
    const bytes: unknown = request.body;
    if (!Buffer.isBuffer(bytes) || bytes.length === 0)
      return void response.status(400).type('text').send('No picture came.');
    if (!kindOf(bytes))
      return void response.status(415).type('text').send('Only JPEG, PNG and WebP pictures are kept.');
    const id = createHash('sha256').update(bytes).digest('hex');
    const file = join(folder, id);
    if (!existsSync(file)) {
      await mkdir(folder, { recursive: true });
      // whole and synced before it has its name
      const part = await open(`${file}.part`, 'w');
      try {
        await part.writeFile(bytes);
        await part.sync();
      } finally {
        await part.close();
      }
      await rename(`${file}.part`, file);
    }
    response.status(201).json({ id });
  });
  app.get('/photos/:photo', async (request, response) => {
    const id = request.params['photo'] ?? '';
    const file = join(folder, id);
    if (!/^[a-f0-9]{64}$/.test(id) || !existsSync(file))
      return void response.status(404).type('text').send('No such picture.');
    const bytes = await readFile(file);
    response.setHeader('Cache-Control', 'private, max-age=31536000, immutable');
    response.type(kindOf(bytes) ?? 'application/octet-stream').send(bytes);
  });
};
