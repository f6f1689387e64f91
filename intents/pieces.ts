/** Long texts are read piece by piece, so that time stays linear in the length whatever stands in them. */
import type { Reading, Span } from './shapes.ts';

/** Longer than any note a person writes at once; no reader looks further back than this. */
export const pieceLength = 700;
const mostFacts = 800;

/** Cuts at a line end, a sentence end or a space where there is one in the second half of a piece. */
export const piecesOf = (text: string): Span[] => {
  const out: Span[] = [];
  let from = 0;
  while (text.length - from > pieceLength) {
    const window = text.slice(from, from + pieceLength);
    const half = pieceLength / 2;
    const cut = [window.lastIndexOf('\n'), window.lastIndexOf('. ') + 1, window.lastIndexOf(' ')].find(
      (at) => at > half,
    );
    let to = from + (cut === undefined ? pieceLength : cut + 1);
    // never between the halves of a surrogate pair
    if (/[\uD800-\uDBFF]/.test(text[to - 1] ?? '')) to += 1;
    out.push([from, Math.min(to, text.length)]);
    from = to;
  }
  if (from < text.length) out.push([from, text.length]);
  return out;
};

const shifted = (value: unknown, by: number): unknown => {
  if (Array.isArray(value)) return value.map((v) => shifted(v, by));
  if (value === null || typeof value !== 'object') return value;
  const out: Record<string, unknown> = {};
  for (const [key, v] of Object.entries(value))
    out[key] =
      key === 'spans' || key === 'unread'
        ? (v as Span[]).map(([a, b]): Span => [a + by, b + by])
        : typeof v === 'object'
          ? shifted(v, by)
          : v;
  return out;
};

/** A reading of what begins at `by` in the whole text, spans led back to the whole. */
export const moved = (reading: Reading, by: number): Reading => shifted(reading, by) as Reading;

/** One reading of all pieces: spans led back to the whole text, facts numbered through. */
export const joinPieces = (note: string, parts: readonly { at: number; reading: Reading }[]): Reading => {
  const out: Reading = { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] };
  for (const { at, reading } of parts) {
    const r = moved(reading, at);
    for (const fact of r.facts)
      if (out.facts.length < mostFacts) out.facts.push({ ...fact, id: `${note}.${out.facts.length}` });
    out.amends.push(...r.amends);
    out.asks.push(...r.asks);
    out.hazards.push(...r.hazards.filter((h) => !out.hazards.some((o) => o.hazard === h.hazard && o.mode === h.mode)));
    out.ambiguous.push(...r.ambiguous);
    out.unread.push(...r.unread);
  }
  return out;
};
