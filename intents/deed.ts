/** Words that name a dangerous deed report nothing else. */
import type { Fact, Reading, Span } from './shapes.ts';

/** Contacts that welded are a finding, whatever was done to them. */
const stuckContacts = (f: Fact): boolean => f.is === 'sign' && f.what.v === 'welded' && /relay|switch/.test(f.where.v);

/** A part taken off or opened with air behind it: dangerous, and done. */
const opened = (f: Fact, hazards: Reading['hazards']): boolean =>
  f.is === 'work' &&
  ['removed', 'opened', 'disconnected'].includes(f.what.v) &&
  f.where.v !== '' &&
  f.where.v !== 'tank' &&
  hazards.some((h) => h.hazard === 'open under pressure' && h.mode === 'done');

/** Words that name the dangerous deed itself report nothing: "crack it loose", "hit the bag with shop air". */
const ofTheDeed = (f: Fact, hazards: Reading['hazards']): boolean => {
  if (f.is === 'sign' && f.what.v === 'blown' && f.where.v === 'fuse') return false;
  if (stuckContacts(f)) return false;
  if (opened(f, hazards)) return false;
  if (f.is === 'work')
    return !(f.what.v === 'tapped' && hazards.some((h) => h.hazard === 'relay tapped' && h.mode === 'done'));
  return f.is === 'sign' && !deedFree.has(f.what.v);
};

/** Words of the dangerous deed that would else be taken for signs, anywhere in its clause. */
const deedWords: ReadonlySet<string> = new Set([
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

const deedWorks: ReadonlySet<string> = new Set([
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
  const before = Math.max(...[',', ';', '\n', '. ', '? ', '! '].map((c) => text.lastIndexOf(c, from)));
  const after = text.slice(to).search(/[,;\n]|[.?!] | (?:and|but) the (?:bag|bellows|tank|valve|left|right|lr|rr)\b/i);
  return [before + 1, after < 0 ? text.length : to + after];
};

/** A fact and a danger told in one breath: no sentence ends between them. */
const oneSentence = (text: string, f: Fact, h: Reading['hazards'][number]): boolean => {
  const said = 'what' in f ? (f.what.spans[0] ?? f.where.spans[0]) : undefined;
  const named = h.spans[0];
  if (!said || !named) return true;
  const [a, b] = said[0] < named[0] ? [said, named] : [named, said];
  return !/[.?!] |\n/.test(text.slice(a[1], b[0]));
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

export type HazardClause = { readonly h: Reading['hazards'][number]; readonly span: Span };

/** Whether a fact read in a note with dangers is one: what only names the deed, or is asked, meant or warned of, is none. */
export const reported = (
  f: Fact,
  hazards: Reading['hazards'],
  clauses: readonly HazardClause[],
  text: string,
): boolean => {
  const inHazardSpan = (span: Span): boolean =>
    hazards.some((h) => h.spans.some((s) => span[0] >= s[0] && span[1] <= s[1]));
  const inHazardClause = (fact: Fact, names?: readonly string[]): boolean =>
    clauses.some(
      ({ h, span: [from, to] }) =>
        (!names || names.includes(h.hazard)) &&
        'what' in fact &&
        fact.what.spans.some((s) => s[0] >= from && s[1] <= to),
    );
  const deed = (f.is === 'work' || f.is === 'sign') && f.what.spans.some(inHazardSpan) && ofTheDeed(f, hazards);
  if (deed) return false;
  if (
    f.is === 'work' &&
    f.what.v === 'road tested' &&
    hazards.some((h) => (h.hazard === 'cords driven' || h.hazard === 'drive disabled') && oneSentence(text, f, h))
  )
    return false;
  if (opened(f, hazards)) return true;
  if (f.is === 'work') return !(inHazardClause(f) && deedWorks.has(f.what.v));
  if (
    f.is === 'sign' &&
    f.what.v === 'works' &&
    /^works? now|\bworks$/i.test(text.slice(f.what.spans[0]?.[0] ?? 0, (f.what.spans[0]?.[0] ?? 0) + 9).trim())
  )
    return true;
  if (f.is === 'sign' && f.what.v === 'blown' && f.where.v === 'fuse') return true;
  if (stuckContacts(f)) return true;
  // "only the air holds it": the danger in other words
  if (
    f.is === 'sign' &&
    f.what.v === 'holds' &&
    hazards.some((h) => h.hazard === 'under unsupported' || h.hazard === 'jack only') &&
    /\b(?:air|jacks?|bags?|bellows|that|what) (?:is |are |was |just |only )*$/i.test(
      text.slice(0, f.what.spans[0]?.[0] ?? 0).slice(-30),
    )
  )
    return false;
  if (f.is === 'sign') return !(inHazardClause(f) && deedWords.has(f.what.v));
  if (
    f.is === 'reading' &&
    f.what.v === 'current' &&
    f.where.from === 'assumed' &&
    hazards.some((h) => h.hazard === 'fuse enlarged')
  )
    return false;
  if (
    f.is === 'reading' &&
    f.what.v === 'distance driven' &&
    hazards.some((h) => h.mode === 'asked' || (h.mode === 'intended' && oneSentence(text, f, h)))
  )
    return false;
  if (f.is === 'reading') return !inHazardClause(f, ['fuse enlarged', 'relief defeated']);
  if (f.is === 'condition')
    return !(
      (f.what.v === 'fuse out' && inHazardClause(f, ['fuse enlarged'])) ||
      (f.what.v === 'floor level' && inHazardClause(f, ['soft ground']))
    );
  return true;
};
