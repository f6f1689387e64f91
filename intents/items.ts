/** Turns tokens into items: phrases with their senses, amounts with their units, separators, words nobody knows. */
import { dimensionOf } from '../server/core/units.ts';
import { type Amounting, unitAt, spaceAt, numberItem, wordAmount } from './amount-item.ts';
import { firstOf, climbs, oneOf, rangeBetween } from './amount-words.ts';
import type { Sense } from './lexicon.ts';
import { phraseAt, wordsFrom } from './phrase.ts';
import type { Token } from './scan.ts';
import type { Span } from './shapes.ts';
import { longestStranger, strangerLeads, strangers } from './words/strangers.ts';

export type Item =
  | Amounting
  | { k: 'senses'; senses: readonly Sense[]; phrase: string; span: Span; near?: boolean }
  | { k: 'sep'; hard: boolean; low: string; span: Span }
  | { k: 'join'; span: Span }
  | { k: 'unknown'; low: string; span: Span };

const seps = new Set([',', ';', '.', '?', '!', ':', '|', '(', ')', '–', '—']);

/** "never gets over 80", "wont build past 60": what follows is a bound from above. */
const neverBefore = (text: string, from: number): boolean =>
  /\b(?:never|wont|won['’]t|cant|can['’]t|doesnt|doesn['’]t)(?: \S+){0,2} $/i.test(
    text.slice(Math.max(0, from - 30), from),
  );

/** The longest thing at `i` that is none of ours. */
const strangerAt = (tokens: readonly Token[], i: number): { low: string; next: number } | null => {
  if (!strangerLeads.has(tokens[i]!.low)) return null;
  const words = wordsFrom(tokens, i, longestStranger);
  for (let n = words.length; n > 1; n -= 1) {
    const low = words
      .slice(0, n)
      .map((w) => w.low)
      .join(' ');
    if (strangers.has(low)) return { low: words[n - 1]!.low, next: words[n - 1]!.end };
  }
  return null;
};

export const itemsOf = (tokens: readonly Token[], text: string): Item[] => {
  const out: Item[] = [];
  let i = 0;
  while (i < tokens.length) {
    const t = tokens[i]!;
    const span: Span = [t.from, t.to];
    if (t.kind === 'space') {
      i += 1;
      continue;
    }
    if (t.kind === 'line') {
      out.push({ k: 'sep', hard: true, low: '\n', span });
      i += 1;
      continue;
    }
    if (t.low === '~') {
      const n = numberItem(tokens, spaceAt(tokens, i + 1), text);
      if (n) {
        out.push({ ...n.item, about: 'about', span: [t.from, n.item.span[1]] });
        i = n.next;
        continue;
      }
    }
    // "the gauge say 110" tells, "say 110" guesses
    const tells = t.low === 'say' && out.at(-1)?.k === 'senses';
    const loose = t.kind === 'word' && !tells ? firstOf.get(t.low) : undefined;
    if (loose) {
      const hit = loose.find(
        ([words]) =>
          wordsFrom(tokens, i, words.length)
            .map((w) => w.low)
            .join(' ') === words.join(' '),
      );
      // "ran past 130" was there; only "wont build past 60" is a bound
      const passed = hit?.[0][0] === 'past' && !neverBefore(text, t.from);
      if (hit && !passed) {
        const at = spaceAt(tokens, wordsFrom(tokens, i, hit[0].length).at(-1)!.end);
        const n =
          tokens[at] && !(hit[0][0] === 'up' && climbs(tokens, i))
            ? (oneOf(tokens, at, text) ?? numberItem(tokens, at, text))
            : null;
        if (
          n &&
          hit[0][0] === 'over' &&
          n.item.unit !== null &&
          dimensionOf(n.item.unit) === 'duration' &&
          out.some((o) => o.k === 'num')
        ) {
          out.push({ k: 'senses', senses: [{ k: 'prep' }], phrase: 'over', span: [t.from, t.to] }, n.item);
          i = n.next;
          continue;
        }
        if (n && n.item.clock === undefined) {
          // "never gets over 80"
          const never = neverBefore(text, t.from);
          const about = never && (hit[1] === 'at least' || hit[1] === 'just over') ? 'at most' : hit[1];
          out.push({ ...n.item, about, span: [t.from, n.item.span[1]] });
          i = n.next;
          continue;
        }
      }
    }
    const between = t.low === 'between' ? rangeBetween(tokens, i, text) : null;
    if (between) {
      out.push(between.item);
      i = between.next;
      continue;
    }
    // "at half past": of an hour nobody said
    const past = t.low === 'half' ? wordsFrom(tokens, i, 2)[1] : undefined;
    if (past?.low === 'past') {
      out.push({ k: 'unknown', low: 'half past', span: [t.from, tokens[past.end - 1]!.to] });
      i = past.end;
      continue;
    }
    // "8 bar down to 7.1 in the hour"
    const last = out.at(-1);
    const [, first, second] =
      t.low === 'the' && last?.k === 'senses' && last.phrase === 'in' ? wordsFrom(tokens, i, 3) : [];
    // "in the first hour"
    const hour = /^(?:first|last|next)$/.test(first?.low ?? '') ? second : first;
    if (hour?.low === 'hour') {
      const to = tokens[hour.end - 1]!.to;
      out.push(wordAmount(1, 'h', [t.from, to], text));
      i = hour.end;
      continue;
    }
    // "cupful of water": one
    if (t.low === 'cupful' && out.at(-1)?.k !== 'num') {
      out.push(wordAmount(1, 'cup', span, text));
      i += 1;
      continue;
    }
    const whole = oneOf(tokens, i, text);
    if (whole) {
      out.push(whole.item);
      i = whole.next;
      continue;
    }
    const stranger = t.kind === 'word' ? strangerAt(tokens, i) : null;
    if (stranger) {
      out.push({ k: 'unknown', low: stranger.low, span: [t.from, tokens[stranger.next - 1]!.to] });
      i = stranger.next;
      continue;
    }
    // longest of phrase and spoken number wins
    const phrase = phraseAt(tokens, i);
    const number = numberItem(tokens, i, text);
    if (number && (!phrase || number.next >= phrase.next || t.kind !== 'word')) {
      // "every three or four minutes": from the one to the other
      const first = out.at(-2);
      const or = out.at(-1);
      if (
        or?.k === 'senses' &&
        or.phrase === 'or' &&
        first?.k === 'num' &&
        first.unit === null &&
        first.clock === undefined &&
        first.to === undefined &&
        number.item.unit !== null &&
        number.item.to === undefined &&
        number.item.clock === undefined &&
        first.value < number.item.value
      ) {
        out.splice(-2);
        const from = first.span[0];
        const to = number.item.span[1];
        out.push({
          ...number.item,
          value: first.value,
          to: number.item.value,
          span: [from, to],
          text: text.slice(from, to),
        });
        i = number.next;
        continue;
      }
      out.push(number.item);
      i = number.next;
      continue;
    }
    if (phrase) {
      const to = tokens[phrase.next - 1]!.to;
      if (phrase.not !== undefined)
        out.push({
          k: 'senses',
          senses: [{ k: 'neg' }],
          phrase: 'not',
          span: [tokens[phrase.not]!.from, tokens[phrase.not]!.to],
        });
      out.push({
        k: 'senses',
        senses: phrase.senses,
        phrase: phrase.phrase,
        span: [t.from, to],
        ...(phrase.near ? { near: true } : {}),
      });
      i = phrase.next;
      continue;
    }
    if (t.kind === 'word' && t.low === 'couple') {
      // "a couple of inches"
      const rest = wordsFrom(tokens, i + 1, 2);
      const at = rest[0]?.low === 'of' ? rest[0].end : i + 1;
      const u = unitAt(tokens, spaceAt(tokens, at), false);
      if (u) {
        out.push({ ...wordAmount(2, u.unit, [t.from, tokens[u.next - 1]!.to], text), about: 'about' });
        i = u.next;
        continue;
      }
    }
    if (t.kind === 'mark') {
      if (
        t.low === '&' ||
        (t.low === '+' &&
          tokens[i + 1]?.kind === 'space' &&
          tokens[i - 1]?.kind === 'space' &&
          tokens[i + 2]?.kind === 'word')
      )
        out.push({ k: 'join', span });
      else if (t.low === '-' && tokens[i + 1]?.low === '>') {
        out.push({ k: 'senses', senses: [{ k: 'prep' }], phrase: 'to', span: [t.from, tokens[i + 1]!.to] });
        i += 1;
      } else if (t.low === '→' || (t.low === '>' && out.at(-1)?.k === 'num'))
        out.push({ k: 'senses', senses: [{ k: 'prep' }], phrase: 'to', span });
      else if (seps.has(t.low) || (t.low === '-' && tokens[i - 1]?.kind === 'space'))
        out.push({
          k: 'sep',
          hard: t.low === '.' || t.low === '?' || t.low === '!' || t.low === ';',
          low: t.low,
          span,
        });
      else if (/[\p{L}\p{N}\p{S}]/u.test(t.low) && !'+=*/\\#"\'@'.includes(t.low))
        out.push({ k: 'unknown', low: t.low, span });
      i += 1;
      continue;
    }
    out.push({ k: 'unknown', low: t.low, span });
    i += 1;
  }
  return out;
};
