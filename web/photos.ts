/** Pictures: shrunk in the page, kept until they are uploaded, named by the hash of their bytes. */
import type { Photo } from '../server/session/entry.ts';
import { cellar, type Picture } from './cellar.ts';
import { newId } from './ids.ts';

/** Longest side in pixels and JPEG quality: a dial stays legible, a picture stays near 200 kB. */
const longest = 1600;
const quality = 0.8;
/** Files above this are refused before they are opened: a phone would run out of memory on them. */
export const mostBytes = 60e6;

/** A picture's name is the hash of its bytes. */
const isHash = (id: unknown): id is string => typeof id === 'string' && /^[a-f0-9]{64}$/.test(id);

/** Shrinks and keeps a picture; words for the person when it cannot be one; null: it was stopped. */
export const takePicture = async (
  file: File,
  signal?: AbortSignal,
): Promise<{ key: string } | { words: string } | null> => {
  const stopped = (): boolean => signal?.aborted === true;
  if (file.size > mostBytes)
    return { words: `${file.name} is ${Math.round(file.size / 1e6)} MB: too big, at most 60 MB` };
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return stopped() ? null : { words: `${file.name} is not a picture that this browser can open` };
  }
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  if (!stopped()) canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  if (stopped()) return null;
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
  if (stopped()) return null;
  if (blob === null) return { words: `${file.name} could not be shrunk` };
  const key = newId();
  const picture: Picture = { key, blob, width: canvas.width, height: canvas.height, words: file.name.slice(0, 80) };
  if (!(await cellar.keepPicture(picture))) return { words: 'this browser has no room left for pictures' };
  if (!stopped()) return { key };
  await cellar.dropPicture(key);
  return null;
};

/** 'later': not reached, try again; `refused`: the server will not have it, and why. */
export const upload = async (picture: Picture): Promise<Photo | 'later' | { refused: string }> => {
  try {
    const answer = await fetch('/photos', {
      method: 'PUT',
      headers: { 'content-type': 'image/jpeg' },
      body: picture.blob,
    });
    if (answer.status >= 500) return 'later';
    if (!answer.ok) return { refused: (await answer.text()).slice(0, 300) };
    const { id } = (await answer.json()) as { id?: unknown };
    if (!isHash(id)) return { refused: 'It was not kept under its name.' };
    return { id, width: picture.width, height: picture.height, words: picture.words };
  } catch {
    return 'later';
  }
};
