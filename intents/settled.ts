/** What an item is once its sense is settled. */
import type { Amounting } from './amount-item.ts';
import type { Relative, Sense } from './lexicon.ts';
import { takePlace, type PlaceParts } from './place.ts';
import type { Part, Span } from './shapes.ts';

export type PlaceItem = {
  k: 'place';
  p: PlaceParts;
  span: Span;
  spans: Span[];
  near?: boolean;
  assumed?: boolean;
  ask?: Relative;
  bare?: 'r' | 'l' | 'rh' | 'l/r' | 'ps';
  /** "the right one": the part spoken of before, on that side. */
  one?: boolean;
  /** "the other one": of the side across. */
  other?: boolean;
  phrase: string;
};

export type Settled =
  | Amounting
  | PlaceItem
  | ({ span: Span; near?: boolean; phrase: string } & Exclude<Sense, { k: 'place' } | { k: 'wheel' }>)
  | { k: 'wheel'; v: 'forward' | 'aft'; span: Span; phrase: string; near?: boolean }
  | { k: 'sep'; hard: boolean; low: string; span: Span }
  | { k: 'join'; span: Span }
  | { k: 'unknown'; low: string; span: Span };

export const partOf = (place: string): Part | undefined => takePlace(place)?.part;
