/**
 * What came over the socket, as a frame of the protocol. The server checks by schema whatever it keeps; here only what
 * the page leans on is looked at, since a schema library in the page costs 19 kB and half the time of opening a session.
 */
import type { ToPage } from '../server/chat/protocol.ts';

type Raw = Readonly<Record<string, unknown>>;
const isRaw = (v: unknown): v is Raw => typeof v === 'object' && v !== null && !Array.isArray(v);
const text = (v: unknown): boolean => typeof v === 'string';
const listOf = (v: unknown, ok: (one: Raw) => boolean): boolean =>
  Array.isArray(v) && v.every((one: unknown) => isRaw(one) && ok(one));
const block = (b: Raw): boolean => text(b['is']) && (b['list'] === undefined || Array.isArray(b['list']));

/** An entry that the sheet can draw: what every kind of it is read by. */
const entry = (e: Raw): boolean =>
  Number.isInteger(e['seq']) &&
  text(e['is']) &&
  text(e['session']) &&
  Number.isFinite(e['kept']) &&
  (e['is'] !== 'note' || (text(e['id']) && text(e['text']) && isRaw(e['read']))) &&
  (e['is'] !== 'reply' || (text(e['to']) && listOf(e['blocks'], block)));

const kinds: Readonly<Record<ToPage['is'], (f: Raw) => boolean>> = {
  welcome: (f) => listOf(f['coaches'], (c) => text(c['id']) && text(c['coach'])) && text(f['role']),
  entries: (f) => text(f['session']) && listOf(f['entries'], entry),
  earlier: (f) => text(f['session']) && listOf(f['entries'], entry),
  board: ({ board: b }) =>
    isRaw(b) &&
    text(b['session']) &&
    Number.isInteger(b['seq']) &&
    ['latest', 'series', 'state', 'gates', 'suspects', 'checksDone'].every((k) => listOf(b[k], () => true)) &&
    isRaw(b['circuit']) &&
    isRaw(b['under']) &&
    isRaw(b['reading']),
  answer: (f) => text(f['id']) && listOf(f['blocks'], block),
  sessions: (f) => listOf(f['list'], (s) => text(s['session']) && text(s['words'])),
  refused: (f) => text(f['why']) && text(f['words']),
};

const isFrame = (v: unknown): v is ToPage => {
  if (!isRaw(v) || !text(v['is']) || !Object.hasOwn(kinds, v['is'] as string)) return false;
  return kinds[v['is'] as ToPage['is']](v);
};

/** null: no frame of this protocol; an unknown word from a newer server must not stop the page. */
export const readFrame = (data: unknown): ToPage | null => {
  if (typeof data !== 'string') return null;
  try {
    const parsed: unknown = JSON.parse(data);
    if (isFrame(parsed)) return parsed;
    console.warn('a frame that this page does not know', data.slice(0, 80));
  } catch {
    console.warn('a frame that is no JSON');
  }
  return null;
};
