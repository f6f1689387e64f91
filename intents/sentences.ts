/** Cuts a note into sentences, and a question off the end of one. */
import { flatten } from './smooth.ts';

export type Sentence = { from: number; to: number; text: string; low: string };

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

export const polite =
  /^(?:(?:ok(?! (?:to|if|for)\b)|okay(?! (?:to|if|for)\b)|so|um|uh|er|hey|hi|hello|please|right|well|and|but|now|sorry|excuse me|boss|mate|one question|question|i want to know|can you tell me|could you tell me|tell me|do you know|can you|could you|would you|you can|quick question|i dont know|i dont understand|i not understand|not understand|i not know|dont know|just wondering|wondering|hmm|also|then|i ask|(?:the |my )?(?:boss|owner|customer|driver|foreman|gaffer|lad|apprentice|he|she|they) (?:wants? to know|asks?|asked|is asking|wonders|keeps asking))[,:]? )+/;

export const starts =
  /^(?:so |and |ok |but |then )?(?:what|whats|why|how|where|which|when|can|could|should|is|are|do|does|may|shall|would)\b/;
