/** Words that fit what is being said: answers to the open question, the last reading to repeat, what a place does. Pure. */
import { takePlace } from '../intents/place.ts';
import type { Board } from '../server/chat/protocol.ts';
import { figureOf, isUnit } from './show.ts';
import { dimensionOf } from '../server/core/units.ts';

export type Chip = { label: string; text: string; /** The whole note: sent at once. */ whole: boolean };

/** A canonical place that ends the text, longest first; null when none does. */
export const placeAtEnd = (text: string): string | null => {
  const words = text
    .trim()
    .toLowerCase()
    .split(/[\s,]+/);
  for (let n = Math.min(4, words.length); n > 0; n -= 1) {
    const tail = words.slice(-n).join(' ');
    if (tail !== '' && takePlace(tail) !== null) return tail;
  }
  return null;
};

const more: readonly string[] = [
  'left bellows',
  'right bellows',
  'left height valve',
  'right height valve',
  'panel',
  'pump',
];

export const chipsFor = (text: string, board: Board | null): Chip[] => {
  const out: Chip[] = [];
  const say = (label: string, words = label): void => {
    out.push({ label, text: words, whole: false });
  };
  const open = board?.open;
  if (text.trim() === '' && open) {
    if (open.yes !== undefined) out.push({ label: 'yes', text: open.yes, whole: true });
    if (open.no !== undefined) out.push({ label: 'no', text: open.no, whole: true });
  }
  const place = placeAtEnd(text);
  if (place !== null) {
    for (const l of (board?.latest ?? []).filter((l) => l.where === place && isUnit(l.unit)).slice(0, 2)) {
      const f = figureOf(l.si, l.unit, l.pm);
      say(`${f.figure} ${f.unit} again`, `${f.figure} ${f.unit}`);
    }
    const part = takePlace(place)?.part;
    if (part === undefined) for (const w of ['low', 'high', 'level', 'holds', 'drops']) say(w);
    else if (part === 'tank') for (const w of ['holds', 'drops', 'water', 'empty']) say(w);
    else if (part === 'pump') for (const w of ['runs constantly', 'wont run', 'runs ok', 'noisy', 'hot']) say(w);
    else if (part === 'panel')
      for (const w of ['auto', 'fill', 'empty', 'shut'])
        say(board?.reading.labels ? labelFor(board, `panel ${w}`, w) : w);
    else for (const w of ['bubbles', 'no bubbles', 'hiss', 'replaced', 'ok']) say(w);
    return out;
  }
  if (/\d$/.test(text)) {
    const units = [board?.reading.pressureUnit ?? 'psi', board?.reading.lengthUnit ?? 'in'];
    for (const u of units) if (isUnit(u) && dimensionOf(u)) say(u);
    return out;
  }
  if (text.trim() === '') for (const p of more) if (p !== 'panel' || board?.circuit.panel !== false) say(p);
  return out;
};

const labelFor = (board: Board, canonical: string, otherwise: string): string =>
  Object.entries(board.reading.labels).find(([, v]) => v === canonical)?.[0] ?? otherwise;
