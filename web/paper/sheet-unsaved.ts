/** What was typed on a version of a coach sheet and not saved: it outlives the page, and falls with its version. */
import { keep } from '../keep.ts';
import type { Draft } from './sheet-draft.ts';

/** `coach` '' for a new one. */
const nameOf = (coach: string): string => `sheet.${coach || '+'}`;

/** `base`: hash of the version it was typed on, '' for a new coach. */
export const keepUnsaved = (coach: string, base: string, draft: Draft): void =>
  void keep.set(nameOf(coach), JSON.stringify({ base, draft }));

export const dropUnsaved = (coach: string): void => keep.drop(nameOf(coach));

export const unsaved = (coach: string, base: string): Draft | null => {
  try {
    const kept = JSON.parse(keep.get(nameOf(coach)) ?? 'null') as { base: string; draft: Draft } | null;
    return kept && kept.base === base ? kept.draft : null;
  } catch {
    return null;
  }
};
