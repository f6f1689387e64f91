/** Evens out short forms before tables are asked: "n" and, "w/" with, "2nd" second, "leakin" leaking. Spans stay as typed. */
import { knownWord, lexicon } from './lexicon.ts';
import type { Token } from './scan.ts';
import { scan } from './scan.ts';
import { shorthand } from './spell.ts';
import { plainEnglish } from './words/plain.ts';
import { slang } from './words/slang.ts';
import { didForms } from './words/verbs.ts';

const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];

/** "leakin", "blowin": the g that was dropped, where the whole word is one of ours. */
const withG = (low: string): string | null =>
  low.length >= 4 && low.endsWith('in') && !knownWord(low) && !plainEnglish.has(low) && ingWord(`${low}g`)
    ? `${low}g`
    : null;
const moreIng = new Set(
  'going doing trying looking pulling putting using opening blowing cracking crawling climbing driving taking reaching fixing sliding swapping welding undoing plugging capping taping backing loosening cutting working standing lying laying coming getting making saying brazing spinning tapping hitting unwinding cranking wiring bridging jumping heating warming burning grabbing touching feeling smoking holding lifting pushing flicking moving towing limping running unscrewing slackening disconnecting removing tightening snugging inflating filling airing pumping popping nipping ducking peeking kneeling sitting leaning grinding shimming soldering'.split(
    ' ',
  ),
);
const ingWord = (word: string): boolean => knownWord(word) || moreIng.has(word);

const smoothWord = (t: Token): Token => {
  const other = Object.hasOwn(slang, t.low) ? slang[t.low] : (withG(t.low) ?? shorthand(t.low));
  return other === null || other === undefined ? t : { ...t, low: other };
};

/** "tankat", "leftrear": two words of ours that ran together. */
const runOn = (t: Token): [Token, Token] | null => {
  if (
    t.low.length < 5 ||
    t.low.length > 16 ||
    t.to - t.from !== t.low.length ||
    knownWord(t.low) ||
    plainEnglish.has(t.low) ||
    Object.hasOwn(slang, t.low)
  )
    return null;
  for (let i = t.low.length - 2; i >= 4; i -= 1) {
    const a = t.low.slice(0, i);
    const b = t.low.slice(i);
    if (runsOn(a) && follows.test(b))
      return [
        { ...t, to: t.from + i, low: a },
        { ...t, from: t.from + i, low: b },
      ];
  }
  return null;
};
const runsOn = (word: string): boolean => lexicon.get(word)?.some((s) => s.k === 'place') ?? false;
const follows =
  /^(?:at|is|was|on|off|in|low|high|rear|front|side|bag|valve|reads|now|leaks|leaking|hissing|level|down|link|line|pressure|runs|running)$/;

/** "i change the relay": done, unless a question or a plan stands before it. */
const doneBy = (tokens: readonly Token[], i: number): string | null => {
  const did = Object.hasOwn(didForms, tokens[i]!.low) ? didForms[tokens[i]!.low]! : null;
  if (did === null || tokens[i - 1]?.kind !== 'space') return null;
  const who = tokens[i - 2]?.low;
  if (who !== 'i' && who !== 'we') return null;
  const before = tokens[i - 3]?.kind === 'space' ? tokens[i - 4]?.low : undefined;
  return before !== undefined &&
    /^(?:do|did|can|could|should|shall|must|may|would|will|how|if|where|before|until|what|so|then)$/.test(before)
    ? null
    : did;
};

/** "pump's off", "key's on": the thing itself, before what it is. */
const contracted = (t: Token, after: Token | undefined): string | null => {
  const base = t.low.slice(0, -1);
  return t.low.endsWith('s') &&
    t.to - t.from === t.low.length + 1 &&
    /^(?:off|on|out|in|running|up|down|disconnected|unplugged|shut|open|isolated|cut|dead|drained|empty|vented|full|at|low|high|hissing|leaking|bubbling|stuck|tripped|blown|building|holding|dropping|level)$/.test(
      after?.low ?? '',
    ) &&
    (lexicon.get(base)?.some((s) => s.k === 'place') || base === 'key' || base === 'side')
    ? base
    : null;
};

/** "12m20s", "on 35s off 7m": minutes where seconds or hours are written the same way. */
const besideSeconds = (tokens: readonly Token[], i: number): boolean => {
  for (let j = Math.max(1, i - 8); j < Math.min(tokens.length, i + 9); j += 1)
    if (j !== i && /^(?:s|sec|secs|h|hr|hrs)$/.test(tokens[j]!.low) && tokens[j - 1]!.kind === 'digits') return true;
  return false;
};

/** "in 20m", "after 30m": so much time, and no length; a cable has metres. */
const inTime = (tokens: readonly Token[], i: number): boolean =>
  tokens[i - 2]?.kind === 'space' &&
  /^(?:in|over|after|within|every|took|another)$/.test(tokens[i - 3]?.low ?? '') &&
  !tokens.some((t) => /^(?:cable|wire|wires|lead|hose|altitude|above)$/.test(t.low));

/** Tokens with the same spans end to end; some merged, some said the long way. */
export const smooth = (tokens: readonly Token[]): Token[] => {
  const out: Token[] = [];
  const bags = tokens.some((t) => t.low === 'rb') && tokens.some((t) => t.low === 'lb');
  for (let i = 0; i < tokens.length; i += 1) {
    const t = tokens[i]!;
    const next = tokens[i + 1];
    if (t.low === 'comma' && t.kind === 'word' && tokens[i - 1]?.kind === 'space') {
      out.push({ ...t, kind: 'mark', low: ',' });
    } else if (
      t.low === '1' &&
      t.kind === 'digits' &&
      tokens[i - 1]?.kind === 'space' &&
      /^(?:old|new|other|that|this|first|last|bad|good)$/.test(tokens[i - 2]?.low ?? '') &&
      next?.kind === 'space' &&
      tokens[i + 2]?.kind === 'word'
    ) {
      out.push({ ...t, kind: 'word', low: 'one' });
    } else if (bags && (t.low === 'lb' || t.low === 'rb') && t.kind === 'word') {
      // "TK 98 LB 52 RB 60": the two bags, where both are written so
      out.push({ ...t, low: t.low === 'lb' ? 'leftbag' : 'rightbag' });
    } else if (t.low === 'b' && next?.low === '4' && tokens[i + 2]?.kind === 'space') {
      out.push({ ...t, to: next.to, low: 'before' });
      i += 1;
    } else if (
      t.low === 'rt' &&
      next?.kind === 'space' &&
      tokens[i + 2]?.kind === 'digits' &&
      /^(?:mi|miles?|km)$/.test(tokens[i + 4]?.low ?? '')
    ) {
      out.push({ ...t, low: 'roadtest' });
    } else if (t.low === 'h' && next?.low === '2' && tokens[i + 2]?.low === 'o') {
      out.push({ ...t, to: tokens[i + 2]!.to, low: 'water' });
      i += 2;
    } else if (t.low === 'o' && /^[\s-]$/.test(next?.low ?? '') && /^rings?$/.test(tokens[i + 2]?.low ?? '')) {
      // a seal, and no ring of the pump
      out.push({ ...t, to: tokens[i + 2]!.to, low: 'oring' });
      i += 2;
    } else if (
      t.low === 'tow' &&
      next?.kind === 'space' &&
      /^(?:in|out|on|is|of|reads?|measured)$/.test(tokens[i + 2]?.low ?? '')
    ) {
      out.push({ ...t, low: 'toe' });
    } else if (
      t.low === 'wnt' &&
      /^(?:shut|run|start|quit|stop|turn|fill|go|come|build|kick|hold|pump|move|drain|rise|empty|close|open)$/.test(
        tokens[i + 2]?.low ?? '',
      )
    ) {
      out.push({ ...t, low: 'wont' });
    } else if (
      t.low === 'm' &&
      tokens[i - 1]?.kind === 'digits' &&
      (next?.kind !== 'mark' || next.low === '.' || next.low === ',') &&
      (besideSeconds(tokens, i) || inTime(tokens, i))
    ) {
      out.push({ ...t, low: 'min' });
    } else if (t.kind === 'word' && t.low === 'w' && next?.low === '/') {
      const o = tokens[i + 2]?.low === 'o';
      out.push({ ...t, to: tokens[i + (o ? 2 : 1)]!.to, low: o ? 'without' : 'with' });
      i += o ? 2 : 1;
    } else if (t.kind === 'digits' && t.low.length < 3 && next?.kind === 'word' && /^(?:st|nd|rd|th)$/.test(next.low)) {
      out.push({ from: t.from, to: next.to, kind: 'word', low: ordinals[Number(t.low) - 1] ?? 'nth' });
      i += 1;
    } else if (t.low === 'r' && next?.low === '&' && tokens[i + 2]?.low === 'r') {
      out.push({ ...t, to: tokens[i + 2]!.to, low: 'r/r' });
      i += 2;
    } else {
      const bare = t.kind === 'word' ? contracted(t, tokens[i + 2]) : null;
      if (bare !== null) {
        out.push({ ...t, low: bare });
        continue;
      }
      const did = t.kind === 'word' ? doneBy(tokens, i) : null;
      const two = t.kind === 'word' && did === null ? runOn(t) : null;
      if (two) out.push(...two);
      else out.push(did !== null ? { ...t, low: did } : t.kind === 'word' ? smoothWord(t) : t);
    }
  }
  return out;
};

/** What was cut last: one note is looked at as a whole, by sentence and by clause, and each is cut once. Bounded. */
const kept = new Map<string, { tokens: Token[]; flat?: { low: string; at: number[] } }>();
const entryOf = (text: string): { tokens: Token[]; flat?: { low: string; at: number[] } } => {
  const known = kept.get(text);
  if (known) return known;
  if (kept.size >= 64) kept.clear();
  const entry = { tokens: smooth(scan(text)) };
  kept.set(text, entry);
  return entry;
};

/** Called when a note has been read: nothing outlives it. */
export const forgetTokens = (): void => kept.clear();

/** The note's tokens, evened out. */
export const tokensOf = (text: string): readonly Token[] => entryOf(text).tokens;

/** Lower case without apostrophes, short forms said the long way; `at` leads each unit back to the raw text. */
export const flatten = (text: string): { readonly low: string; readonly at: readonly number[] } => {
  const entry = entryOf(text);
  if (entry.flat) return entry.flat;
  let low = '';
  const at: number[] = [];
  for (const t of entry.tokens) {
    const same = t.low.length === t.to - t.from;
    for (let k = 0; k < t.low.length; k += 1) at.push(same ? t.from + k : t.from);
    low += t.low;
  }
  at.push(text.length);
  return (entry.flat = { low, at });
};
