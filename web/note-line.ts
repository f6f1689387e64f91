/** What stands in the note line, how taps change it, and how each change is taken back. Pure. */
export type LineState = { text: string; back: readonly string[]; tappedPlace: string | null };

export const emptyLine: LineState = { text: '', back: [], tappedPlace: null };

/** As many taps as can be taken back one by one. */
const depth = 40;
const withBack = (s: LineState): readonly string[] => [...s.back, s.text].slice(-depth);

/** Typed by hand: the state before the typing began stays the one to come back to. */
export const typed = (s: LineState, text: string): LineState => ({
  text,
  back: text === '' ? [] : s.back,
  tappedPlace: null,
});

/** Joins words with one space; punctuation and a fraction after its whole number as a person would write them. */
const join = (before: string, after: string): string => {
  if (before === '' || /\s$/.test(before) || /^[\s,.;]/.test(after)) return before + after;
  return `${before} ${after}`;
};

/** A tap on a place: one tapped just before by mistake gives way. */
export const tapPlace = (s: LineState, place: string): LineState => {
  const over = s.tappedPlace !== null && s.text.endsWith(`${s.tappedPlace} `);
  const before = over ? s.text.slice(0, -(s.tappedPlace ?? '').length - 1) : s.text;
  const comma = before !== '' && !/[\s,;]$/.test(before) ? `${before},` : before;
  return { text: `${join(comma, place)} `, back: withBack(s), tappedPlace: place };
};

export const tapWords = (s: LineState, words: string): LineState => ({
  text: join(s.text, words),
  back: withBack(s),
  tappedPlace: null,
});

/** A digit, point or sign of the pad: joined to the number that stands there. */
export const tapDigit = (s: LineState, digit: string): LineState => ({
  text: /[\d.]$/.test(s.text) || s.text === '' || /\s$/.test(s.text) ? s.text + digit : `${s.text} ${digit}`,
  back: withBack(s),
  tappedPlace: null,
});

/** A fraction off the tape: takes the place of one that already stands there; '' takes it away. */
export const tapFraction = (s: LineState, fraction: string): LineState => {
  const bare = s.text.replace(/\s*\b\d+\/\d+$/, '');
  return {
    text: fraction === '' ? bare : join(bare, fraction),
    back: withBack(s),
    tappedPlace: null,
  };
};

export const rubOut = (s: LineState): LineState => ({
  text: s.text.trimEnd().slice(0, -1),
  back: withBack(s),
  tappedPlace: null,
});

export const replaceText = (s: LineState, text: string): LineState => ({ text, back: withBack(s), tappedPlace: null });

/** One tap back; null when there is nothing to take back in the line. */
export const takeBackTap = (s: LineState): LineState | null => {
  if (s.back.length === 0) return s.text === '' ? null : emptyLine;
  return { text: s.back.at(-1) ?? '', back: s.back.slice(0, -1), tappedPlace: null };
};
