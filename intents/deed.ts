/** Words that name a dangerous deed report nothing else. */
import type { Fact, Reading, Span } from './shapes.ts';

/** Words that name the dangerous deed itself report nothing: "crack it loose", "hit the bag with shop air". */
export const ofTheDeed = (f: Fact, hazards: Reading['hazards']): boolean => {
  if (f.is === 'sign' && f.what.v === 'blown' && f.where.v === 'fuse') return false;
  if (f.is === 'work')
    return !(f.what.v === 'tapped' && hazards.some((h) => h.hazard === 'relay tapped' && h.mode === 'done'));
  return f.is === 'sign' && !deedFree.has(f.what.v);
};

/** Words of the dangerous deed that would else be taken for signs, anywhere in its clause. */
export const deedWords: ReadonlySet<string> = new Set([
  'holds',
  'works',
  'ok',
  'loose',
  'cracked',
  'noisy',
  'reads wrong',
  'level',
  'aged',
  'plugged',
  'welded',
  'dirty',
  'warm',
  'blown',
  'cupped',
  'not working',
  'broken',
  'disconnected',
]);

export const deedWorks: ReadonlySet<string> = new Set([
  'removed',
  'opened',
  'disconnected',
  'cleaned',
  'replaced',
  'closed',
  'refitted',
  'checked',
  'tightened',
  'connected',
]);

/** From the comma or stop before a danger to the one after it. */
export const clauseAround = (text: string, [from, to]: Span): Span => {
  const before = Math.max(...[',', ';', '\n', '. '].map((c) => text.lastIndexOf(c, from)));
  const after = text.slice(to).search(/[,;\n]|\. /);
  return [before + 1, after < 0 ? text.length : to + after];
};

/** Signs that stay what they are inside the words of a danger. */
const deedFree: ReadonlySet<string> = new Set([
  'flat',
  'torn',
  'cords showing',
  'frozen',
  'on stops',
  'hot',
  'hiss',
  'bubbles',
  'leaks',
  'runs on',
  'exhausts',
  'sags',
  'blows fuse',
  'chafed',
  'swollen',
  'wont run',
  'stuck',
]);
