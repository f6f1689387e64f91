/** Papers are fetched and saved over http; a failure comes back as words for the person, never as an exception. */
export type Got<T> = { ok: true; data: T } | { ok: false; words: string; fields: readonly FieldWrong[] };
/** A field that is not as it should be: its path on the sheet, its name and what is wrong, in words. */
export type FieldWrong = { field: string; name: string; words: string };

const away = 'The bench cannot be reached. Nothing is lost here; try again.';

const got = async <T>(path: string, init?: RequestInit): Promise<Got<T>> => {
  let response: Response;
  try {
    response = await fetch(path, init);
  } catch {
    return { ok: false, words: away, fields: [] };
  }
  const text = await response.text();
  let body: unknown = null;
  try {
    body = JSON.parse(text);
  } catch {
    // plain words then
  }
  if (response.ok && body !== null) return { ok: true, data: body as T };
  const told = (body ?? {}) as { words?: string; fields?: FieldWrong[] };
  return { ok: false, words: told.words ?? (text.slice(0, 300) || away), fields: told.fields ?? [] };
};

export const load = <T>(path: string): Promise<Got<T>> => got<T>(path, { cache: 'no-store' });
export const save = <T>(path: string, body: unknown, method: 'PUT' | 'POST' = 'PUT'): Promise<Got<T>> =>
  got<T>(path, { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
