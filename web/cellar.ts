/** Bigger things kept in this browser: the last sessions as seen, and pictures not yet uploaded. Never throws. */
import type { Board } from '../server/chat/protocol.ts';
import type { Entry } from '../server/session/entry.ts';

export type Kept = { session: string; entries: readonly Entry[]; board: Board | null; at: number };
export type Picture = { key: string; blob: Blob; width: number; height: number; words: string };

/** The newest so many are kept; earlier ones are asked for again. */
const most = 1000;

let opening: Promise<IDBDatabase | null> | null = null;
const open = (): Promise<IDBDatabase | null> => {
  opening ??= new Promise((resolve) => {
    try {
      const request = indexedDB.open('soapwater', 1);
      request.onupgradeneeded = () => {
        request.result.createObjectStore('sessions', { keyPath: 'session' });
        request.result.createObjectStore('pictures', { keyPath: 'key' });
      };
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => resolve(null);
      request.onblocked = () => resolve(null);
    } catch {
      resolve(null);
    }
  });
  return opening;
};

const run = async <T>(
  store: 'sessions' | 'pictures',
  mode: IDBTransactionMode,
  work: (s: IDBObjectStore) => IDBRequest<T>,
): Promise<T | null> => {
  const db = await open();
  if (db === null) return null;
  return new Promise((resolve) => {
    try {
      const request = work(db.transaction(store, mode).objectStore(store));
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => resolve(null);
    } catch {
      resolve(null);
    }
  });
};

export const cellar = {
  async keepSession(kept: Kept): Promise<void> {
    await run('sessions', 'readwrite', (s) => s.put({ ...kept, entries: kept.entries.slice(-most) }));
  },
  session: (session: string): Promise<Kept | null> =>
    run<Kept | undefined>('sessions', 'readonly', (s) => s.get(session) as IDBRequest<Kept | undefined>).then(
      (k) => k ?? null,
    ),
  async keepPicture(picture: Picture): Promise<boolean> {
    return (await run('pictures', 'readwrite', (s) => s.put(picture))) !== null;
  },
  picture: (key: string): Promise<Picture | null> =>
    run<Picture | undefined>('pictures', 'readonly', (s) => s.get(key) as IDBRequest<Picture | undefined>).then(
      (p) => p ?? null,
    ),
  async dropPicture(key: string): Promise<void> {
    await run('pictures', 'readwrite', (s) => s.delete(key));
  },
};
