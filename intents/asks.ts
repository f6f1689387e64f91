/** Questions, commands, talk and other systems: sentence by sentence. */
import { type Sentence, polite } from './sentences.ts';
import type { Ask, AskKind, Span } from './shapes.ts';
import { askForms, chatter, commandForms, elsewhere, talkLead, talkTurn } from './words/asks.ts';

export type FoundAsk = { kind: AskKind; topic: string; span: Span; words: string; command?: string };

/** Said with a guess, it is a hunch. */
const hedged =
  /\b(?:think|could it be|might it be|can it be|maybe|might|may be|could be|must be|looks like|guess|reckon|probably|suspect|i bet|perhaps|seems)\b/;

const trailing =
  /[, ]+(?:please|pls|mate|boss|chief|sir|thanks|anyway|again|exactly|then|though|buddy|pal|i not understand|i dont understand|i dont know|not sure|thx)$/;

export const askIn = (sentence: Sentence): FoundAsk | null => {
  const span: Span = [sentence.from, sentence.to];
  let late: FoundAsk | null = null;
  const bare = sentence.low.replace(/[.!?]+$/, '').trim();
  // "!!!!": a row of marks asks nothing, and each of them is a sentence
  if (bare === '') return null;
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
  const yesNo = /^(?:is|are|was|were|does|has|will|would) (?:the|it|this|that|my|there|they|she|he)\b(?<topic>.+)/.exec(
    low,
  );
  if (
    yesNo &&
    !/^(?:is|was) (?:it|that|this) (?:ok|safe|fine|alright)\b/.test(low) &&
    !/\?$/.test(sentence.text) &&
    !/\d/.test(low)
  )
    return { kind: 'meaning', topic: yesNo.groups!['topic']!.trim(), span, words: sentence.text };
  // "would a bad check valve cause this", "could a leaky drain do that": asked, whether or not the mark was typed
  const might =
    /^(?:so |and |but |then )*(?:would|could|can|will|might|may|do|does) (?:it be |this be |that be )?(?:an? |the |my |one |any |some )?(?<topic>.+?) (?:cause|make|do|give|explain|lead to|result in|let|keep|stop|show|affect|hurt)\b(?!nt).*/.exec(
      low,
    ) ??
    /^(?:so |and |but |then )*(?:would|could|might|may|can) (?:an?|the|my|one of the|any|some) (?<topic>.+)/.exec(low);
  if (
    might &&
    !/^(?:so |and |but |then )*(?:would|could|can|will|do|does) (?:not|nt|hear|see|feel|smell|only|just|still|sometimes|have|also|always|never)\b/.test(
      low,
    )
  )
    return { kind: 'meaning', topic: might.groups!['topic']!.trim(), span, words: sentence.text };
  // "hisses 2 seconds, normal?"
  if (/^(?:(?:is )?(?:that|this|it) )?(?:normal|ok|okay|too much|bad|fine|right)\?$/.test(sentence.low.trim()))
    return { kind: 'meaning', topic: '', span, words: sentence.text };
  // "does soap show a leak that small"
  const does = /^does (?!not\b|nt\b|nothing\b|anything\b)(?<topic>.+)/.exec(low);
  if (does && !/\d/.test(low))
    return { kind: 'meaning', topic: does.groups!['topic']!.trim(), span, words: sentence.text };
  // "shut means the bags are closed off right": is that so?
  const means = /^(?<topic>(?:\w+ ){1,3}?)means? .*\b(?:right|yes|correct|no)$/.exec(low);
  if (means) return { kind: 'meaning', topic: means.groups!['topic']!.trim(), span, words: sentence.text };
  // "left valve is stuck?": a statement with a mark asks whether it is so
  if (
    /\?$/.test(sentence.text) &&
    !/[,;:]/.test(low) &&
    !hedged.test(low) &&
    low.split(' ').length >= 2 &&
    low.split(' ').length <= 9
  )
    late = { kind: 'meaning', topic: low, span, words: sentence.text };
  // a question with its words the other way round
  if (/\?$/.test(sentence.text)) {
    // "0.3 bar in 10 mins too much?"
    if (
      /^\S*\d.* (?:too (?:much|many|long|slow|fast|high|low|hot)|(?:ok|okay|normal|fine|alright|good|bad)(?: or (?:no|not|bad))?)$/.test(
        low,
      )
    )
      return { kind: 'limit', topic: low, span, words: sentence.text };
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
  return late;
};

const between = /\W*/y;
/** Small talk from end to end: turn by turn, so that time grows with length and no faster. */
const onlyTalk = (low: string): boolean => {
  let at = 0;
  for (let turns = 0; ; turns += 1) {
    between.lastIndex = at;
    between.test(low);
    at = Math.max(at, between.lastIndex);
    if (at >= low.length) return turns > 0;
    talkTurn.lastIndex = at;
    if (!talkTurn.test(low)) return false;
    at = talkTurn.lastIndex;
  }
};

/** Whole sentences that are talk, or about another system: the ask they make. */
export const asideIn = (sentence: Sentence): { ask: 'talk' | 'elsewhere'; about?: string } | null => {
  const low = sentence.low.replace(/[.!?]+$/, '').trim();
  if (low === '') return null;
  if (onlyTalk(low)) return { ask: 'talk' };
  for (const [about, form] of elsewhere) {
    const m = form.exec(low);
    // "bag chafing on the brake hose": only what it rubs on
    if (
      m &&
      !(
        /\b(?:chaf\w*|rub\w*|touch\w*|hit\w*|foul\w*|melt\w*|burn\w*|scuff\w*|worn|wore|catch\w*)\b/.test(
          low.slice(0, m.index),
        ) &&
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
