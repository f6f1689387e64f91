/** Two places said of one thing. */
import type { PlaceParts } from './place.ts';
import { sideable } from './sideable.ts';
import { airSide, partJoins } from './words/parts.ts';

export const compatible = (a: PlaceParts, b: PlaceParts): PlaceParts | null => {
  // "the right side of the bus"
  if (b.part === 'coach' && !a.part && (a.side ?? a.end)) return { ...a };
  if (a.part === 'coach' && !b.part && (b.side ?? b.end)) return { ...b };
  const out: PlaceParts = { ...a };
  for (const key of ['side', 'end', 'wheel'] as const) {
    const value = b[key];
    if (value === undefined) continue;
    if (out[key] !== undefined && out[key] !== value) return null;
    Object.assign(out, { [key]: value });
  }
  if ((a.part === 'load') !== (b.part === 'load')) {
    if (!(a.side ?? a.end ?? b.side ?? b.end)) return null;
    out.part = a.part === 'load' ? b.part : a.part;
  } else if (a.part && b.part && a.part !== b.part) {
    const joined = partJoins[a.part]?.[b.part] ?? partJoins[b.part]?.[a.part];
    if (!joined) return null;
    out.part = joined;
  } else if (b.part) out.part = b.part;
  if (out.part && (out.side || out.end || out.wheel) && !sideable.has(out.part)) return null;
  return out;
};

/** Two places said of one thing ("bag" and "crimp", "damper" and "rear"); null when they are two things. */
export const joinPlaces = (a: PlaceParts, b: PlaceParts): PlaceParts | null => {
  const p = compatible(a, b);
  return p ? tidy(p) : null;
};

/** Drops what a place cannot carry: an end on air parts of a rear side; the coach beside a corner. */
export const tidy = (p: PlaceParts): PlaceParts => {
  const out: PlaceParts = { ...p };
  if (out.part && airSide.has(out.part)) delete out.end;
  if (out.part === 'coach' && (out.side || out.end)) delete out.part;
  return out;
};

/** Words that may stand between a side and its part. */
export const glue =
  /^(?:the|a|an|my|our|its|his|her|that|this|side|end|hand|corner|own|same|of|one|old|other|whole|new)$/;

/** Parts that a side of the tandem has one of for each wheel. */
export const wheeled: ReadonlySet<string> = new Set([
  'wheel',
  'tyre',
  'bellows',
  'shock',
  'bracket',
  'shim',
  'control arm',
  'wheel bearing',
  'axle',
  'bellows crimp',
  'bellows fold',
  'pin',
  'bushing',
  'piston',
  'bump stop',
  'bellows line',
  'shock bushing',
]);
