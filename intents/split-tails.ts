/** A note that ends in a question or holds two commands: each is a sentence of its own. */
import { askIn } from './asks.ts';
import { type Sentence, polite, starts } from './sentences.ts';
import { flatten } from './smooth.ts';

const tail =
  /(?:,|;|\band\b|\bso\b|\bbut\b| - |^|(?<=\S)) ?((?:so |and |ok )?(?:which (?:way|direction)|what (?:now|next|then|else|first)|now what|whats (?:next|first)|why(?: is that| would that be| so)?|what (?:do|should|shall|must) (?:i|we) (?:do|check|look at|try|test)(?: next| now| first| then)?|where next|any ideas?|is that (?:ok|normal|bad|good|right)|what does (?:it|that) mean|what gives|what (?:do|should|must) (?:i|we) re-?check(?: .*)?|what (?:will|would|should) it (?:read|be|show|become)\b.*))[?. ]*$/;

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
    // "unloader, what is this thing": what it is about stands first
    if (/^[a-z][a-z -]{2,24}, ?what (?:is |does |s )?(?:it|this|that)\b/.test(low)) return [s];
    const m = tail.exec(low);
    let cut = m && m.index > 0 && m[1] ? low.lastIndexOf(m[1]) : -1;
    const bare =
      /, (?:(?:is )?(?:that|this|it) |is |are )?(?:normal|good|enough|ok|okay|too much|bad|fine|right)\?$/.exec(low);
    if (cut <= 0 && bare) cut = bare.index + 2;
    // "want to swap the bag, how do i get the air out": asked, though nobody typed the mark
    const late =
      /, (?=(?:how (?:do|can|should|would|to|long|much|often)|should i|do i|can i|where do|which (?:one|side|way)|what (?:do|should|is the)|is it (?:ok|safe)) )/.exec(
        low,
      );
    if (cut <= 0 && late) cut = late.index + 2;
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
