/** Puts the coach's own figures and labels into a guide's words; a figure the sheet lacks is said to be lacking. */
import type { Sheet } from '../sheet/schema.ts';

const labels: Readonly<Record<string, string>> = {
  'panel.auto': 'AUTO',
  'panel.fill': 'FILL',
  'panel.empty': 'EMPTY',
  'panel.shut': 'SHUT',
};

const isRecord = (v: unknown): v is Readonly<Record<string, unknown>> => typeof v === 'object' && v !== null;
const textOf = (v: unknown): string | null => {
  if (typeof v === 'string') return v;
  if (typeof v === 'boolean') return v ? 'yes' : 'no';
  if (!isRecord(v)) return null;
  if (typeof v['text'] === 'string') return v['text'];
  const [low, high] = [textOf(v['low']), textOf(v['high'])];
  if (low !== null && high !== null) return low === high ? low : `${low} to ${high}`;
  const [nominal, tolerance] = [textOf(v['nominal']), textOf(v['tolerance'])];
  if (nominal !== null && tolerance !== null) return `${nominal} ±${tolerance}`;
  const [fall, over] = [textOf(v['fall']), textOf(v['over'])];
  return fall !== null && over !== null ? `${fall} in ${over}` : null;
};

const valueAt = (sheet: Sheet, path: string): unknown => {
  let at: unknown = sheet;
  for (const name of path.split('.')) at = isRecord(at) ? at[name] : undefined;
  return at;
};

/** `{supply.cutOut}` becomes "112 psi to 118 psi (sheet: supply.cutOut)"; panel positions become this coach's labels. */
export const fill = (words: string, sheet: Sheet): string =>
  words.replace(/\{([\w.]+)\}/g, (_, path: string) => {
    const text = textOf(valueAt(sheet, path));
    const label = labels[path];
    if (label !== undefined) return text === null || text.toUpperCase() === label ? label : `${label} (${text})`;
    return text === null ? `what the maker's manual gives (the sheet has no ${path})` : `${text} (sheet: ${path})`;
  });

/** Fields of the sheet that `words` use. */
export const fieldsIn = (words: string): string[] => [...words.matchAll(/\{([\w.]+)\}/g)].map((m) => m[1]!);
