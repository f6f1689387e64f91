/** Which fault somebody means: by place, part or words. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { Weighed } from './weigh.ts';

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z ]+/g, ' ');

/** Parts that people call by one word. */
const wider: Readonly<Record<string, readonly string[]>> = {
  'check valve': ['discharge check', 'inlet check'],
  'height valve': ['inlet seat', 'exhaust seat', 'inlet check', 'valve cover', 'height valve'],
  line: ['bellows line', 'supply line', 'valve to panel line', 'gauge line'],
  fitting: ['bellows line', 'supply line', 'tank'],
  motor: ['motor', 'pump'],
  pump: ['pump', 'motor'],
};

/** Fault indices that `about` (a place, a part, a fault's key) or the words speak of, likeliest first. */
export const faultsMeant = (about: string | undefined, words: string, w: Weighed): number[] => {
  const { faults } = w.model;
  // With no side said, the one that is spoken of: that of the leading suspect.
  const top = w.posterior.marginals.slice(0, faults.length).reduce((b, p, i, all) => (p > all[b]! ? i : b), 0);
  const near = faults[top]?.side ?? null;
  const across = (i: number): number => (near !== null && faults[i]!.side !== null && faults[i]!.side !== near ? 1 : 0);
  const byChance = (a: number, b: number): number =>
    w.posterior.marginals[b]! * (1 - 0.9 * across(b)) - w.posterior.marginals[a]! * (1 - 0.9 * across(a));
  const text = plain(`${about ?? ''} ${words}`);
  const exact = faults.flatMap((f, i) =>
    f.key === about || plain(f.title).trim() === plain(about ?? '').trim() ? [i] : [],
  );
  if (exact.length > 0) return exact;
  const place = takePlace(about ?? '');
  const side = place?.side === 'left' || place?.side === 'right' ? place.side : /\b(left|right)\b/.exec(text)?.[1];
  const ofSide = (i: number): boolean => side === undefined || faults[i]!.side === null || faults[i]!.side === side;
  const named = faults
    .flatMap((f, i) => (text.includes(` ${f.kind} `) || text.includes(plain(f.kind)) ? [i] : []))
    .filter(ofSide);
  if (named.length > 0) return named.toSorted(byChance);
  const part = place?.part;
  if (!part) return [];
  const parts = [part, ...(wider[part] ?? [])] as readonly string[];
  return faults
    .flatMap((f, i) => (parts.includes(f.part) || (f.mends ?? []).some((x) => x === part) ? [i] : []))
    .filter(ofSide)
    .toSorted(byChance);
};
