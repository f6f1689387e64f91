/** Pictures of a session: kept under the hash of their content, so that one is never changed and kept once. */
import { createHash, randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, open, readdir, readFile, rename, rm, stat, statfs } from 'node:fs/promises';
import { join } from 'node:path';
import express, { type Express, type Request } from 'express';
import { mayPicture, type Who } from './auth/roles.ts';

export const photoMost = 6 * 1024 * 1024;
const mega = 1024 * 1024;

export type PhotoLimits = {
  /** Bytes of all pictures together. */
  all: number;
  /** Bytes that stay free on the disk: a picture never takes the room of a note. */
  free: number;
};
export const usualPhotos: PhotoLimits = { all: 4096 * mega, free: 256 * mega };

const kinds: readonly (readonly [string, (b: Buffer) => boolean])[] = [
  ['image/jpeg', (b) => b.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff]))],
  ['image/png', (b) => b.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))],
  [
    'image/webp',
    (b) => b.subarray(0, 4).toString('latin1') === 'RIFF' && b.subarray(8, 12).toString('latin1') === 'WEBP',
  ],
];
const kindOf = (bytes: Buffer): string | undefined => kinds.find(([, is]) => is(bytes))?.[0];

const sizeOf = async (folder: string): Promise<number> => {
  let bytes = 0;
  for (const name of existsSync(folder) ? await readdir(folder) : [])
    bytes += await stat(join(folder, name)).then(
      (s) => s.size,
      () => 0,
    );
  return bytes;
};
/** Why `bytes` more may not be kept in `folder`, in words; null where they may. `taken`: what stands there. */
const noRoom = async (
  folder: string,
  bytes: number,
  taken: number,
  { all, free }: PhotoLimits,
): Promise<string | null> => {
  if (taken + bytes > all)
    return `All pictures together may take ${Math.round(all / mega)} MB and there is no room for this one. Notes are kept as ever; on the bench move old pictures out of ${folder}, or start it with a larger --pictures.`;
  const disk = await statfs(folder);
  return disk.bavail * disk.bsize - bytes < free
    ? 'The disk is nearly full: what is left is kept for notes. Make room, then bring the picture again.'
    : null;
};

/** Whole and synced before it has its name. */
const keepWhole = async (file: string, bytes: Buffer): Promise<void> => {
  const named = `${file}.${randomBytes(6).toString('hex')}.part`;
  try {
    const part = await open(named, 'wx');
    try {
      await part.writeFile(bytes);
      await part.sync();
    } finally {
      await part.close();
    }
    await rename(named, file);
  } catch (error) {
    await rm(named, { force: true });
    throw error;
  }
};

export const photoRoutes = (
  app: Express,
  folder: string,
  who: (request: Request) => Who | null,
  limits: PhotoLimits = usualPhotos,
): void => {
  const allowed: express.RequestHandler = (request, response, next) => {
    if (mayPicture(who(request)?.role ?? 'learns')) return next();
    response.status(403).type('text').send('This device may not bring pictures in.');
  };
  // one after the other, so that two at once cannot both take the last room
  let turn: Promise<unknown> = Promise.resolve();
  /** Counted once, and anew when it seems to be full: somebody may have moved some away. */
  let taken: number | null = null;
  const keep = async (file: string, bytes: Buffer): Promise<string | null> => {
    if (existsSync(file)) return null;
    await mkdir(folder, { recursive: true });
    if (taken === null || taken + bytes.length > limits.all) taken = await sizeOf(folder);
    const full = await noRoom(folder, bytes.length, taken, limits);
    if (full !== null) return full;
    await keepWhole(file, bytes);
    taken += bytes.length;
    return null;
  };
  app.put('/photos', allowed, express.raw({ type: () => true, limit: photoMost }), async (request, response) => {
    const bytes: unknown = request.body;
    if (!Buffer.isBuffer(bytes) || bytes.length === 0)
      return void response.status(400).type('text').send('No picture came.');
    if (!kindOf(bytes))
      return void response.status(415).type('text').send('Only JPEG, PNG and WebP pictures are kept.');
    const id = createHash('sha256').update(bytes).digest('hex');
    const kept = turn.then(() => keep(join(folder, id), bytes));
    turn = kept.catch(() => undefined);
    const full = await kept;
    if (full !== null) return void response.status(413).type('text').send(full);
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
