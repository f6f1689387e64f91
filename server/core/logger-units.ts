/** The unit of a logger's column from its name ("Tank P [bar]") or its cells ("7.72 bar"), in the words of a note. */
import type { Dimension } from './units.ts';

/** `word`: as the note writes it; a value in the file times `times` is in that unit. */
export type ColumnUnit = { readonly word: string; readonly dimension: Dimension; readonly times: number };

const rows: readonly (readonly [RegExp, ColumnUnit])[] = [
  [/^psi\(?g?\)?$/i, { word: 'psi', dimension: 'pressure', times: 1 }],
  [/^kpa\(?g?\)?$/i, { word: 'kPa', dimension: 'pressure', times: 1 }],
  [/^mpa$/i, { word: 'kPa', dimension: 'pressure', times: 1000 }],
  [/^mbar$/i, { word: 'bar', dimension: 'pressure', times: 0.001 }],
  [/^bar\(?g?\)?$/i, { word: 'bar', dimension: 'pressure', times: 1 }],
  [/^mm$/i, { word: 'mm', dimension: 'length', times: 1 }],
  [/^cm$/i, { word: 'cm', dimension: 'length', times: 1 }],
  [/^(?:in|inch|inches|")$/i, { word: 'in', dimension: 'length', times: 1 }],
  [/^(?:v|volts?|vdc)$/i, { word: 'V', dimension: 'voltage', times: 1 }],
  [/^mv$/, { word: 'V', dimension: 'voltage', times: 0.001 }],
  [/^(?:a|amps?)$/i, { word: 'A', dimension: 'current', times: 1 }],
  [/^(?:°\s*c|deg\s*c|c|celsius)$/i, { word: 'C', dimension: 'temperature', times: 1 }],
  [/^(?:°\s*f|deg\s*f|f|fahrenheit)$/i, { word: 'F', dimension: 'temperature', times: 1 }],
];
const known = (word: string): ColumnUnit | null => rows.find(([words]) => words.test(word))?.[1] ?? null;

const letterMeant = (letter: string, name: string): boolean =>
  letter === 'V' ||
  (/^[CF]$/.test(letter) && /temp|ambient|outside/i.test(name)) ||
  (letter === 'A' && /current|amp/i.test(name));

/**
 * In brackets first, then the last word of the name, then any word of it, then the cell; null where none is known.
 * Absolute pressures ("psia", "bar abs") are none: every gauge on a coach reads above the atmosphere.
 */
export const unitOf = (name: string, cell: string): ColumnUnit | null => {
  if (/\bpsia\b|\bbara\b|(?:pa|bar|psi)\s*\(a\)|\babs/i.test(name.replaceAll('_', ' '))) return null;
  const inBrackets = /[[(]\s*([^\])]+?)\s*[\])]/.exec(name)?.[1];
  if (inBrackets !== undefined && known(inBrackets)) return known(inBrackets);
  const words = name.split(/[\s_,/;:]+|(?<=[a-z])(?=P?psi$|kPa$)/).filter(Boolean);
  for (const word of words.toReversed()) {
    // single letters name channels as often as units
    const unit = word.length === 1 && words.length > 1 && !letterMeant(word, name) ? null : known(word);
    if (unit) return unit;
  }
  const after = /^[-+]?[\d.,]+\s*(.+)$/.exec(cell)?.[1];
  return after === undefined ? null : known(after.trim());
};
