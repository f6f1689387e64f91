/** Entries brought from another log: checked before any is kept. Pure. */
import { Entry } from '../session/entry.ts';
import { LogRefused } from './refused.ts';

/** `bodies` as entries of `session` numbered from `after + 1`. Raises LogRefused naming the first that does not fit. */
export const adopted = (session: string, after: number, bodies: readonly string[]): Entry[] =>
  bodies.map((body, i) => {
    const seq = after + i + 1;
    const refuse = (words: string): never => {
      throw new LogRefused(`entry ${seq} of ${session} ${words}`);
    };
    let raw: unknown;
    try {
      raw = JSON.parse(body);
    } catch {
      return refuse('is not JSON');
    }
    const entry = Entry.safeParse(raw);
    if (!entry.success)
      return refuse(`is not of the shape: ${entry.error.issues[0]?.path.map(String).join('.') ?? 'whole entry'}`);
    if (entry.data.session !== session || entry.data.seq !== seq) return refuse('is out of its place');
    if ((entry.data.is === 'opened') !== (seq === 1)) return refuse('does not begin the session as it should');
    return entry.data;
  });
