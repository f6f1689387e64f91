/** What a question supposes: never evidence. */
import { toSi } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import type { Sentence } from './sentences.ts';
import { readClauses } from './clause.ts';
import { itemsOf } from './items.ts';

import { settle } from './settle.ts';
import type { Ask, Context, Fact, Span } from './shapes.ts';
import { tokensOf } from './smooth.ts';
import { topicOf } from './topic.ts';

/** "what does LOCK mean": a position as this coach labels it. */
const labelIn = (low: string, context: Context): string | undefined =>
  low
    .split(/[^\p{L}]+/u)
    .map((word) => (Object.hasOwn(context.labels, word) ? context.labels[word] : undefined))
    .find((label) => label !== undefined);

/** A supposed fact of a question: its words are the question's. */
const within = (f: Fact, id: string, span: Span): Fact =>
  ({
    ...f,
    id,
    where: { ...f.where, spans: f.where.spans.length > 0 ? [span] : [] },
    ...('what' in f ? { what: { ...f.what, spans: [span] } } : {}),
    ...(f.is === 'reading' ? { amount: { ...f.amount, spans: [span] } } : {}),
    ...(f.is === 'reading' && f.from ? { from: { ...f.from, spans: [span] } } : {}),
    ...(f.is === 'reading' && f.over ? { over: { ...f.over, spans: [span] } } : {}),
    ...(f.is === 'reading' && f.across ? { across: { ...f.across, spans: [span] } } : {}),
    ...(f.when ? { when: { ...f.when, spans: [span] } } : {}),
  }) as Fact;

export const askFacts = (
  sentence: Sentence,
  found: { kind: Ask['ask']; topic: string; span: Span; words: string; command?: string },
  context: Context,
): Ask => {
  const at = sentence.low.indexOf(found.topic);
  const topicText = found.topic !== '' && at >= 0 ? found.topic : sentence.low;
  const items = settle(itemsOf(tokensOf(topicText), topicText), topicText, context);
  const whole = settle(itemsOf(tokensOf(sentence.low), sentence.low), sentence.low, context);
  const supposes =
    found.kind === 'what if' ||
    found.kind === 'meaning' ||
    found.kind === 'limit' ||
    found.kind === 'why' ||
    found.kind === 'why not' ||
    found.kind === 'safe' ||
    found.kind === 'how long';
  const read = supposes ? readClauses(items, topicText, { ...context, open: null }) : null;
  const amounts = whole
    .filter((i): i is Amounting => i.k === 'num' && i.clock === undefined)
    .map((n) => ({ n, unit: n.unit ?? 'count' }))
    .map(({ n, unit }) => ({ si: toSi(n.value, unit), pm: 0, unit, text: n.text }));
  const about =
    found.command ??
    (found.kind === 'limit' ? topicOf(whole, found.kind) : undefined) ??
    topicOf(items, found.kind) ??
    topicOf(whole, found.kind) ??
    (found.kind === 'meaning' || found.kind === 'what is' ? labelIn(sentence.low, context) : undefined);
  return {
    ask: found.kind,
    words: found.words,
    facts: (read?.facts ?? []).map((f, i) => within(f, `${context.note}.${900 + (i % 90)}`, found.span)),
    amounts,
    spans: [found.span],
    ...(about ? { about } : {}),
  };
};
