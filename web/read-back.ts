/** What a note will be taken for, before it is sent: the reader runs here with what the server would hand it. Pure. */
import { read } from '../intents/read.ts';
import type { Context, Reading } from '../intents/shapes.ts';
import { instead } from '../intents/tell-day.ts';
import { tell } from '../intents/tell.ts';
import type { Board } from '../server/chat/protocol.ts';
import type { Key, Taken } from '../server/chat/reply.ts';
import type { Entry } from '../server/session/entry.ts';
import { takenBack } from './exchanges.ts';
import { isUnit } from './show.ts';

/** How many notes back a correction may aim; as on the server. */
const reach = 12;

export const contextFor = (board: Board | null, entries: readonly Entry[], at: number): Context => {
  const { notes, facts } = takenBack(entries.slice(-400));
  const r = board?.reading;
  return {
    note: 'unsent',
    at,
    zone: r?.zone ?? 'UTC',
    traffic: r?.traffic ?? null,
    pressureUnit: r && isUnit(r.pressureUnit) ? r.pressureUnit : 'psi',
    lengthUnit: r && isUnit(r.lengthUnit) ? r.lengthUnit : 'in',
    labels: r?.labels ?? {},
    open: board?.open ?? null,
    recent: entries
      .filter((e) => e.is === 'note')
      .filter((e) => !notes.has(e.id))
      .slice(-reach)
      .map((e) => ({ id: e.id, facts: e.read.facts.filter((f) => !facts.has(f.id)) })),
  };
};

export type ReadBack = { reading: Reading; taken: Taken[] };

export const readBack = (text: string, context: Context): ReadBack => {
  const reading = read(text, context);
  return { reading, taken: tell(reading, context, text) };
};

/**
 * The line after a mend was tapped. Before sending, a mend changes the words themselves: an ambiguity gives way to the
 * plain words of its answer, an assumed place is written in front of its amount.
 */
export const mended = (text: string, back: ReadBack, index: number, key: Key): string => {
  const { facts, amends, ambiguous } = back.reading;
  const fact = facts[index];
  if (fact && key.text.startsWith(instead)) return key.text.slice(instead.length);
  if (fact) {
    const spans = fact.is === 'reading' ? fact.amount.spans : fact.where.spans;
    const at = spans[0]?.[0] ?? 0;
    return `${text.slice(0, at)}${key.label} ${text.slice(at)}`;
  }
  const amb = ambiguous[index - facts.length - amends.length];
  if (amb) {
    const from = Math.min(...amb.spans.map((s) => s[0]), text.length);
    const to = Math.max(...amb.spans.map((s) => s[1]), from);
    return `${text.slice(0, from)}${key.text}${text.slice(to)}`;
  }
  return text === '' ? key.text : `${text}, ${key.text}`;
};
