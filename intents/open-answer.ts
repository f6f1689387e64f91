/** Yes and no to the question that stands open. */
import type { Fact, Reading, Span } from './shapes.ts';

export const yes =
  /^(?:(?:yes|yeah|yep|yup|aye)[ ,]+(?:i |we |they |its |it |already |put |done |did |have |has |just |now |sir |mate |boss |all |are |is |been |that |sorted |in |on )*(?:already|put|done|did|have|now|sir|mate|boss|are|is|sorted|sure|it is|all good|all ok|good)?|yes|yeah|yep|yup|y|aye|affirmative|correct|right|sure|they are|it is|done|ok|okay|sure is|yes it is|yes they are|yes sir|they are,? (?:yeah|yes|aye)|it is,? (?:yeah|yes|aye))[.! ]*$/;

export const no =
  /^(?:no|nope|nah|n|not yet|negative|no it isnt|nope not yet|no not yet|nope|not yet no|no i (?:have|did)nt|it isnt|not really|no they arent|not done)[.! ]*$/;

/** The side alone. */
export const sideAnswer =
  /^(?:its |it is |on |it was )?(?:the )?(left|l|lh|right|r|rh)(?: hand)?(?: side| one| rear)?[.! ]*$/;

/** An answer, and more after it. */
export const yesLead = /^(?:yes|yeah|yep|yup|aye|affirmative|y)\b[, ]*/;
export const noLead = /^(?:no|nope|nah|not yet|negative)\b[, ]+(?=\S)/;
/** A "no" that corrects what was said before, or declines. */
export const noCorrection =
  /^(?:no|nope|nah)[, ]+(?:thanks|wait|sorry|i (?:mean|meant)|make|its \d|\d|right side|left side|\S+ (?:side|one)$)/;

export const shift = (reading: Reading, from: 'carried', span: Span): Reading => ({
  ...reading,
  facts: reading.facts.map(
    (f) =>
      ({
        ...f,
        where: { ...f.where, from, spans: [span] },
        what: 'what' in f ? { ...f.what, from, spans: [span] } : f,
      }) as Fact,
  ),
  hazards: [],
  asks: [],
  unread: [],
});

export const sameThing = (a: Fact, b: Fact): boolean =>
  a.is === b.is && 'what' in a && 'what' in b && a.what.v === b.what.v && a.where.v === b.where.v;

export const contrary = (a: Fact, b: Fact): boolean =>
  sameThing(a, b) && a.is === 'condition' && b.is === 'condition' && a.holds !== b.holds;
