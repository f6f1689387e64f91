/** What becomes of a frame on its way to the log: pictures first, and by which entry it is known to be kept. */
import type { Entry, Photo } from '../server/session/entry.ts';
import { cellar } from './cellar.ts';
import type { OutFrame, Pending } from './outbox.ts';

/** `lost`: what is to be said of pictures that the server will not have. */
export type Ready = { frame: OutFrame; lost: readonly string[] };

/** The frame with its pictures uploaded, since a note names them by their hash; null: not now, try again. */
export const withPictures = async (p: Pending): Promise<Ready | null> => {
  if (p.frame.is !== 'note' || !p.pictures?.length) return { frame: p.frame, lost: [] };
  const { upload } = await import('./photos.ts');
  const photos: Photo[] = [];
  const lost: string[] = [];
  for (const key of p.pictures) {
    const picture = await cellar.picture(key);
    if (picture === null) continue;
    const photo = await upload(picture);
    if (photo === 'later') return null;
    if ('refused' in photo) lost.push(`Picture "${picture.words}" was not kept: ${photo.refused}`);
    else photos.push(photo);
  }
  return { frame: photos.length > 0 ? { ...p.frame, photos } : p.frame, lost };
};

/** How far the clocks of page and server may differ when a frame without an id is recognised by its time, ms. */
const clocks = 60_000;

/** True when `entry` is what `p` asked for. */
export const keeps = (entry: Entry, p: Pending): boolean => {
  const f = p.frame;
  if (f.session !== entry.session) return false;
  switch (f.is) {
    case 'note':
      return entry.is === 'note' && entry.id === f.id;
    case 'open':
      return entry.is === 'opened';
    case 'remark':
      return entry.is === 'remark' && entry.about === f.about && entry.text === f.text;
    case 'close':
      return entry.is === 'closed' && entry.kept >= p.made - clocks;
    case 'estimate':
      return entry.is === 'estimate' && JSON.stringify(entry.lines) === JSON.stringify(f.lines);
    case 'decide':
      return entry.is === 'decided' && entry.about === f.about && entry.line === f.line && entry.yes === f.yes;
    case 'resheet':
      return entry.is === 'sheet' && entry.sheet === f.sheet;
    case 'reopen':
      return entry.is === 'reopened' && entry.kept >= p.made - clocks;
  }
};
