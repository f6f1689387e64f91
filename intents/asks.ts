/** Questions, commands, talk and other systems: sentence by sentence. */
import { flatten } from './smooth.ts';
import type { Ask, AskKind, Span } from './shapes.ts';
import { askForms, chatter, commandForms, elsewhere, talk, talkLead } from './words/asks.ts';

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
  /^(?:(?:ok(?! (?:to|if|for)\b)|okay(?! (?:to|if|for)\b)|so|um|uh|er|hey|hi|hello|please|right|well|and|but|now|sorry|excuse me|boss|mate|one question|question|i want to know|can you tell me|could you tell me|tell me|do you know|can you|could you|would you|you can|quick question|i dont know|i dont understand|i not understand|not understand|i not know|dont know|just wondering|wondering|hmm|also|then|i ask)[,:]? )+/;

const tail =
  /(?:,|;|\band\b|\bso\b|\bbut\b| - |^|(?<=\S)) ?((?:so |and |ok )?(?:what (?:now|next|then|else)|now what|whats next|why(?: is that| would that be| so)?|what (?:do|should|shall|must) (?:i|we) (?:do|check|look at|try|test)(?: next| now| first| then)?|where next|any ideas?|is that (?:ok|normal|bad|good|right)|what does (?:it|that) mean|what gives))[?. ]*$/;
const starts =
  /^(?:so |and |ok |but |then )?(?:what|whats|why|how|where|which|when|can|could|should|is|are|do|does|may|shall|would)\b/;

/** A note that ends in a question ("lr bag 51 rr 66, why"): what comes before it is told, not asked. */
export const splitTails = (sentences: Sentence[]): Sentence[] =>
  sentences.flatMap((s) => {
    const pair = / and (?=(?:close|print|stop|start|undo|save|show|give)\b)/.exec(s.low);
    if (pair && s.text.length === s.low.length && askIn({ ...s, low: s.low.slice(0, pair.index) })?.kind === 'command')
      return [
        { from: s.from, to: s.from + pair.index, text: s.text.slice(0, pair.index), low: s.low.slice(0, pair.index) },
        {
          from: s.from + pair.index + 5,
          to: s.to,
          text: s.text.slice(pair.index + 5),
          low: s.low.slice(pair.index + 5).replace(/^(\w+) it off\b/, '$1 it'),
        },
      ];
    const low = s.low;
    if (starts.test(low.replace(polite, ''))) return [s];
    const m = tail.exec(low);
    let cut = m && m.index > 0 && m[1] ? low.lastIndexOf(m[1]) : -1;
    if (cut <= 0 && /\?$/.test(s.text)) {
      const comma = low.lastIndexOf(', ');
      if (comma > 0 && starts.test(low.slice(comma + 2))) cut = comma + 2;
    }
    if (cut <= 0 || s.text.length !== low.length) {
      if (cut <= 0) return [s];
      // short forms were said the long way: find the place by what is left after it
      cut = s.text.length - (low.length - cut);
      if (cut <= 0) return [s];
    }
    const head = s.text.slice(0, cut).replace(/[\s,;-]+$/, '');
    if (head.trim() === '') return [s];
    return [
      { from: s.from, to: s.from + head.length, text: head, low: flatten(head).low },
      { from: s.from + cut, to: s.to, text: s.text.slice(cut), low: flatten(s.text.slice(cut)).low },
    ];
  });

const trailing =
  /[, ]+(?:please|pls|mate|boss|chief|sir|thanks|anyway|again|exactly|then|though|buddy|pal|i not understand|i dont understand|i dont know|not sure|thx)$/;

export const askIn = (sentence: Sentence): FoundAsk | null => {
  const span: Span = [sentence.from, sentence.to];
  const bare = sentence.low.replace(/[.!?]+$/, '').trim();
  const low = bare.replace(polite, '').replace(trailing, '').replace(trailing, '');
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
  // "is the right bag leaking": asked, though nobody typed the mark
  const yesNo = /^(?:is|are|was|were|does|has) (?:the|it|this|that|my|there|they|she|he)\b(?<topic>.+)/.exec(low);
  if (
    yesNo &&
    !/^(?:is|was) (?:it|that|this) (?:ok|safe|fine|alright)\b/.test(low) &&
    !/\?$/.test(sentence.text) &&
    !/\d/.test(low)
  )
    return { kind: 'meaning', topic: yesNo.groups!['topic']!.trim(), span, words: sentence.text };
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
    const may = /^(?:can|could|should|shall|may|must|would|will)\b(?! (?:it|that|this|they) be\b)(?<topic>.*)/.exec(
      low,
    );
    if (may) return { kind: 'safe', topic: may.groups!['topic']!.trim(), span, words: sentence.text };
    const is =
      /^(?:is|are|was|were|does|do|did|has|have)\b(?! you\b)(?! (?:it|that|this) safe\b)(?! ?(?:ok|okay)\b)(?<topic>.*)/.exec(
        low,
      );
    if (is && !/^is (?:it|this|that) (?:ok|safe|alright|fine)\b/.test(low))
      return { kind: 'meaning', topic: is.groups!['topic']!.trim(), span, words: sentence.text };
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
    // "bag chafing on the brake hose": only what it rubs on
    if (
      m &&
      !(
        /\b(?:chaf\w*|rub\w*|touch\w*|hit\w*|foul\w*|scuff\w*|worn|wore|catch\w*)\b/.test(low.slice(0, m.index)) &&
        /\b(?:on|against|by|near|through|to|off|touching|hitting|fouling|rubbing)(?: the| an?| my| its)? $/.test(
          low.slice(0, m.index),
        )
      )
    )
      return { ask: 'elsewhere', about };
  }
  return null;
};
export const isChatter = (low: string): boolean => chatter.test(low) || (talkLead.test(low) && !/\d/.test(low));
export const plainAsk = (kind: AskKind, words: string, span: Span, about?: string): Ask => ({
  ask: kind,
  words,
  facts: [],
  amounts: [],
  spans: [span],
  ...(about ? { about } : {}),
});
