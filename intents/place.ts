/** Places in canonical words: made, taken apart and spoken only here. */
import { parts } from './names.ts';
import type { End, Part, Place, Side } from './shapes.ts';

export type PlaceParts = {
  side?: Side | 'both' | undefined;
  end?: End | undefined;
  /** Which wheel of a side of the tandem. */
  wheel?: 'forward' | 'aft' | undefined;
  part?: Part | undefined;
};

export const makePlace = (p: PlaceParts): Place => [p.side, p.end, p.wheel, p.part].filter(Boolean).join(' ');

const isPart = (word: string): word is Part => (parts as readonly string[]).includes(word);

/** Inverse of makePlace; null when `place` is not in canonical words. */
export const takePlace = (place: Place): PlaceParts | null => {
  const words = place === '' ? [] : place.split(' ');
  const out: PlaceParts = {};
  if (words[0] === 'left' || words[0] === 'right' || words[0] === 'both') out.side = words.shift() as Side;
  if (words[0] === 'front' || words[0] === 'rear') out.end = words.shift() as End;
  if (words[0] === 'forward' || words[0] === 'aft') out.wheel = words.shift() as 'forward' | 'aft';
  const rest = words.join(' ');
  if (rest === '') return out;
  if (!isPart(rest)) return null;
  out.part = rest;
  return out;
};
