/** Questions, commands, talk and other systems: sentence by sentence. */
import { flatten } from './smooth.ts';
import type { Ask, AskKind, Span } from './shapes.ts';
import { askForms, chatter, commandForms, elsewhere, talk } from './words/asks.ts';

export type Sentence = { from: number; to: number; text: string; low: string };
export type FoundAsk = { kind: AskKind; topic: string; span: Span; words: string; command?: string };

/** Sentences: split at . ? ! ; and line ends, not inside numbers. */
export const sentencesOf = (text: string): Sentence[] => {
  const out: Sentence[] = [];
  let from = 0;
  const flush = (to: number): void => {
    const raw = text.slice(from, to);
    const lead = raw.length - raw.trimStart().length;
    const body = raw.trim();
    if (body !== '')
      out.push({
        from: from + lead,
        to: from + lead + body.length,
        text: body,
        low: flatten(body).low.replace(/\s+/g, ' '),
      });
    from = to;
  };
  for (let i = 0; i < text.length; i += 1) {
    const char = text[i]!;
    if (
      char === '\n' ||
      char === ';' ||
      char === '!' ||
      char === '?' ||
      (char === '.' && !/\d/.test(text[i + 1] ?? '') && !/(?:^|\s)[a-z]$/i.test(text.slice(Math.max(0, i - 2), i)))
    )
      flush(i + 1);
  }
  flush(text.length);
  return out;
};

const polite =
  /^(?:(?:ok|okay|so|um|uh|er|hey|hi|hello|please|right|well|and|but|now|sorry|excuse me|boss|mate|one question|question|i want to know|can you tell me|could you tell me|tell me|do you know|quick question|i dont know|i dont understand|i not understand|not understand|i not know|dont know|just wondering|wondering|hmm|also|then|i ask)[,:]? )+/;

export const askIn = (sentence: Sentence): FoundAsk | null => {
  const span: Span = [sentence.from, sentence.to];
  const bare = sentence.low.replace(/[.!?]+$/, '').trim();
  const low = bare.replace(polite, '');
  for (const [name, form] of commandForms)
    if (form.test(low) || form.test(bare))
      return { kind: 'command', topic: name, command: name, span, words: sentence.text };
  for (const [kind, form] of askForms) {
    const m = form.exec(low);
    if (!m) continue;
    const topic =
      Object.entries(m.groups ?? {})
        .map(([, v]) => v)
        .find((v) => v !== undefined) ?? '';
    return { kind, topic: topic.trim(), span, words: sentence.text };
  }
  // a question with its words the other way round
  if (/\?$/.test(sentence.text)) {
    const why = /\bwhy\b(?<topic>.*)/.exec(low);
    if (why) return { kind: 'why', topic: why.groups!['topic']!.trim(), span, words: sentence.text };
    const how = /\bhow (?:do|to|i|can|should)\b(?<topic>.*)/.exec(low);
    if (how) return { kind: 'how', topic: how.groups!['topic']!.trim(), span, words: sentence.text };
    const what = /\bwhat (?:is|does|mean|are)\b(?<topic>.*)|(?<t2>.*)\bwhat is (?:it|this|that)\b/.exec(low);
    if (what)
      return {
        kind: 'what is',
        topic: (what.groups!['topic'] ?? what.groups!['t2'] ?? '').trim(),
        span,
        words: sentence.text,
      };
    const safe = /\b(?:is (?:it |this |that )?(?:ok|safe|normal|bad)|can i|can we|should i|may i)\b(?<topic>.*)/.exec(
      low,
    );
    if (safe)
      return {
        kind: /normal|bad/.test(safe[0]) ? 'meaning' : 'safe',
        topic: safe.groups!['topic']!.trim(),
        span,
        words: sentence.text,
      };
  }
  return null;
};

/** Whole sentences that are talk, or about another system: the ask they make. */
export const asideIn = (sentence: Sentence): { ask: 'talk' | 'elsewhere'; about?: string } | null => {
  const low = sentence.low.replace(/[.!?]+$/, '').trim();
  if (talk.test(low)) return { ask: 'talk' };
  for (const [about, form] of elsewhere) {
    const m = form.exec(low);
    if (m) return { ask: 'elsewhere', about };
  }
  return null;
};
export const isChatter = (low: string): boolean => chatter.test(low);
export const plainAsk = (kind: AskKind, words: string, span: Span, about?: string): Ask => ({
  ask: kind,
  words,
  facts: [],
  amounts: [],
  spans: [span],
  ...(about ? { about } : {}),
});
