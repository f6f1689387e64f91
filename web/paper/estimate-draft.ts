/** Lines of an estimate while they are typed: text as it stands in the fields, and what is wrong with it in words. Pure. */
import type { EstimateLine } from '../../server/session/estimate.ts';

export type DraftLine = {
  id: string;
  words: string;
  parts: { name: string; price: string }[];
  hands: string;
  wait: string;
  why: string;
};

export const asDraft = (l: EstimateLine): DraftLine => ({
  id: l.id,
  words: l.words,
  parts: l.parts.map((p) => ({ name: p.name, price: p.price === undefined ? '' : String(p.price) })),
  hands: String(l.hands),
  wait: String(l.wait),
  why: l.why ?? '',
});

/** "1 250.50", "1250,50": a number; NaN for anything else. */
export const amountOf = (text: string): number => {
  const plain = text.trim().replaceAll(/[\s_]/g, '').replace(',', '.');
  return /^\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : NaN;
};

/** The first thing that is wrong, naming line and field; null: it can be kept. */
export const draftWrong = (draft: readonly DraftLine[]): string | null => {
  for (const [i, l] of draft.entries()) {
    const line = `Line ${i + 1}`;
    if (l.words.trim() === '') return `${line}: say what the work is.`;
    if (l.hands.trim() === '' || Number.isNaN(amountOf(l.hands)))
      return `${line}, hands-on minutes: “${l.hands}” is not a number of minutes.`;
    if (l.wait.trim() !== '' && Number.isNaN(amountOf(l.wait)))
      return `${line}, waiting minutes: “${l.wait}” is not a number of minutes.`;
    for (const p of l.parts) {
      if (p.name.trim() === '') return `${line}: a part has no name; name it or drop it.`;
      if (p.price.trim() !== '' && Number.isNaN(amountOf(p.price)))
        return `${line}, price of ${p.name}: “${p.price}” is not a price.`;
    }
  }
  return null;
};

/** What is kept of a line that has nothing wrong. A price left empty is not known yet. */
export const lineOf = (l: DraftLine): EstimateLine => ({
  id: l.id,
  words: l.words.trim(),
  parts: l.parts.map((p) => ({
    name: p.name.trim(),
    ...(p.price.trim() === '' ? {} : { price: amountOf(p.price) }),
  })),
  hands: amountOf(l.hands),
  wait: l.wait.trim() === '' ? 0 : amountOf(l.wait),
  ...(l.why === '' ? {} : { why: l.why }),
});
