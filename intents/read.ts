/** Reads a note into facts, questions, corrections and hazards. Pure, total, linear in the length of the note. */
import { aimAmend } from './amends.ts';
import { readAside } from './aside.ts';
import { askFacts } from './ask-facts.ts';
import { askIn, asideIn, isChatter, plainAsk } from './asks.ts';
import { sentencesOf } from './sentences.ts';
import { ofAStranger } from './stranger.ts';
import { splitTails } from './split-tails.ts';
import { readClauses } from './clause.ts';
import { askTime, elapse, tableOf } from './columns.ts';
import { correctionAndMore, putCorrection, undoAndMore, wholeUndo } from './corrections.ts';
import { withManner } from './manner.ts';
import { midway } from './midway.ts';
import { clauseAround, reported } from './deed.ts';
import { everyStep, headUnit } from './every.ts';
import { evened, ledBack } from './even.ts';
import { findHazards } from './hazards.ts';
import { unrealIn } from './unreal.ts';
import { itemsOf } from './items.ts';
import { sideAnswer, yes, yesLead, no, noCorrection, noLead, shift, sameThing, contrary } from './open-answer.ts';
import { loadTest } from './load-test.ts';
import { overPressure } from './over-pressure.ts';
import { leadOf, tailAt } from './leads.ts';
import { leftOver } from './left-over.ts';
import { joinPieces, moved, pieceLength, piecesOf } from './pieces.ts';
import { repeats } from './repeats.ts';
import { safe } from './not-safe.ts';
import { settle } from './settle.ts';
import { type Settled } from './settled.ts';
import type { Amend, Context, Reading, Span } from './shapes.ts';
import { flatten, forgetTokens, tokensOf } from './smooth.ts';
import { setMoments } from './when.ts';
import { warning } from './words/hazards.ts';
import { halfYes, onlyHeard } from './words/unsure.ts';

/** A context that knows nothing: a coach in psi and inches, traffic on the right. */
export const blankContext = (note: string, more: Partial<Context> = {}): Context => ({
  note,
  at: 0,
  zone: 'UTC',
  traffic: 'right',
  pressureUnit: 'psi',
  lengthUnit: 'in',
  labels: {},
  open: null,
  recent: [],
  ...more,
});

const empty = (): Reading => ({ facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] });

const tellsNothing = ({ facts, asks, amends, hazards, ambiguous }: Reading): boolean =>
  [facts, asks, amends, hazards, ambiguous].every((list) => list.length === 0);

/** Spans of the words left over, neighbours joined. */
const unreadSpans = (text: string, unread: readonly Settled[]): Span[] => {
  const spans = unread.map((i) => i.span).toSorted((a, b) => a[0] - b[0]);
  const out: Span[] = [];
  for (const span of spans) {
    const last = out.at(-1);
    if (last && /^[\s-]*$/.test(text.slice(last[1], span[0]))) last[1] = Math.max(last[1], span[1]);
    else out.push([span[0], span[1]]);
  }
  return out;
};

/** A correction first, then a note of its own: the rest is read as it stands, spans and all. */
const afterCorrection = (text: string, more: { cut: number; amend: Amend }, context: Context): Reading => {
  const rest = readSafely(text.slice(0, more.cut).replace(/[^\n]/g, ' ') + text.slice(more.cut), context, false);
  return { ...rest, amends: [aimAmend(more.amend, context, rest.facts.length), ...rest.amends] };
};

/** The clause of a sentence in which somebody is warned; the rest of it tells what it tells. */
const warnedIn = (text: string, sentence: { from: number; to: number }, span: Span): Span => {
  const says = warning.exec(text.slice(span[0], Math.min(span[1], sentence.to)).toLowerCase().replace(/['’]/g, ' '));
  const at = span[0] + (says?.index ?? 0);
  const [from, to] = clauseAround(text, [at, at + 1]);
  const why = /^, ?(?:it|they|she|he|this|that|because|or|until|till|when|while)\b/i.test(text.slice(to));
  return [Math.max(from, sentence.from), why ? sentence.to : Math.min(to, sentence.to)];
};

/** A question that stands open is answered with `said`, which takes the note up to `upTo`; the rest tells what else it says. */
const answerAndRest = (text: string, said: string, upTo: string, context: Context): Reading | null => {
  const closed = { ...context, open: null };
  const answer = shift(readSafely(said, closed), 'carried', [0, upTo.trimEnd().length]);
  const rest = readSafely(upTo.replace(/[^\n]/g, ' ') + text.slice(upTo.length), closed, false);
  if (answer.facts.some((a) => rest.facts.some((f) => contrary(a, f)))) return null;
  const known = rest.facts.filter((f) => !answer.facts.some((a) => sameThing(a, f)));
  return { ...rest, facts: [...answer.facts, ...known].map((f, i) => ({ ...f, id: `${context.note}.${i}` })) };
};

/** A yes and what is said in one breath with it. */
const firstOf = (low: string): string => /^(?:yes|yeah|yep|yup|aye|y)?[, ]*[^,.;]*/.exec(low)?.[0] ?? '';

/** "yes", "no", "yes is on stands, tank 0", "no, key is with the driver": the question that stands open, answered. */
const answerTo = (text: string, low: string, bare: string, context: Context): Reading | null => {
  if (!context.open) return null;
  const alone = (said: string): Reading =>
    shift(readSafely(said, { ...context, open: null }), 'carried', [0, text.length]);
  const { yes: affirms, no: denies } = context.open;
  const side = sideAnswer.exec(bare);
  const sided = side && (/^r/.test(side[1]!) ? context.open.right : context.open.left);
  if (sided) return alone(sided);
  const agrees = yesLead.exec(low);
  if (affirms !== undefined && (agrees || yes.test(bare))) {
    const said = alone(affirms);
    const opens = said.facts.filter((f) => f.is === 'condition' && f.holds && safe.has(f.what.v));
    // what lets somebody work is answered whole: "ok", "yes i think so" and "yes but not the left bag" leave it asked
    if (opens.length > 0 && (onlyHeard.test(bare) || halfYes.test(firstOf(low)))) return null;
    if (yes.test(bare)) return said;
    const both = agrees && answerAndRest(text, affirms, agrees[0], context);
    const air = opens.some((f) => f.is === 'condition' && / (?:vented|drained)$/.test(f.what.v));
    const left = both?.facts.some((f) => f.is === 'reading' && f.what.v === 'pressure' && f.amount.v.si > 0);
    if (both) return air && left ? null : both;
  }
  if (denies === undefined) return null;
  const lead = noCorrection.test(bare) ? null : noLead.exec(low);
  const both = lead && answerAndRest(text, denies, lead[0], context);
  if (both && both.ambiguous.length === 0) return both;
  return no.test(bare) ? alone(denies) : null;
};

const readSafely = (text: string, context: Context, corrects = true): Reading => {
  const out = empty();
  if (text.trim() === '') return out;
  const { low, at } = flatten(text);
  const bare = low.trim().replace(/[.!, ]+$/, '');
  const whole: Span = [0, text.length];

  const answered = answerTo(text, low, bare, context);
  if (answered) return answered;

  const table = tableOf(text);
  if (table && table.seconds === null) return { ...out, ambiguous: [askTime(table, text)] };

  const undo = corrects ? wholeUndo(bare, whole) : null;
  if (undo) return { ...out, amends: [aimAmend(undo, context, 0)] };
  const hazards = findHazards(text);
  const written = sentencesOf(text);
  const asked = written.some((s) => askIn(s) !== null);
  const again = corrects ? undoAndMore(text) : null;
  if (again) {
    // "scratch that, rr was 13 1/2 not 13 3/8": one value for another, not the note taken back
    const instead = putCorrection(text.slice(again.cut), context);
    if (instead && ((instead.says.was && instead.says.amount) || (instead.says.where && /\bnot\b/.test(low))))
      return { ...out, amends: [aimAmend({ ...instead, spans: [whole] }, context, 0)], hazards };
    const both = afterCorrection(text, again, context);
    if (both.facts.some((f) => f.where.from === 'said')) return both;
  }
  const mixed =
    !corrects || hazards.length > 0 || asked || !/ and (?:thats|its|it was|that was)\b/.test(low)
      ? null
      : correctionAndMore(text, context);
  if (mixed) return afterCorrection(text, mixed, context);
  const thanks = /^no,? (?:thanks|thank you|ta)\b/.test(bare);
  const correction = thanks || !corrects || hazards.length > 0 || asked ? null : putCorrection(text, context);
  if (correction) return { ...out, amends: [aimAmend(correction, context, 0)], hazards };
  const more = !corrects || hazards.length > 0 || asked ? null : correctionAndMore(text, context);
  if (more) return afterCorrection(text, more, context);
  out.hazards = hazards;

  const sentences = splitTails(written);
  const quiet: Span[] = [];
  for (const sentence of sentences) {
    const asked = askIn(sentence);
    const inHazard = hazards.some(
      (h) => h.mode === 'asked' && h.spans.some((s) => s[0] < sentence.to && s[1] > sentence.from),
    );
    if (asked && !(inHazard && asked.kind !== 'why' && asked.kind !== 'how')) {
      out.asks.push(askFacts(sentence, asked, context));
      quiet.push(asked.span);
      continue;
    }
    if (asked && inHazard) {
      quiet.push(asked.span);
      continue;
    }
    // a danger asked about or warned against reports nothing
    if (
      hazards.some(
        (h) =>
          (h.mode === 'warned' ||
            (h.mode === 'asked' && (sentence.text.endsWith('?') || /^(?:so |and |ok )?if\b/.test(sentence.low)))) &&
          h.spans.some((s) => s[0] < sentence.to && s[1] > sentence.from),
      )
    ) {
      for (const h of hazards)
        if (h.spans.some((s) => s[0] < sentence.to && s[1] > sentence.from))
          quiet.push(h.mode === 'warned' ? warnedIn(text, sentence, h.spans[0]!) : [sentence.from, sentence.to]);
      continue;
    }
    const aside = asideIn(sentence);
    const dangerous = hazards.some((h) => h.spans.some((s) => s[0] < sentence.to && s[1] > sentence.from));
    if (aside?.ask === 'talk' && !dangerous) {
      out.asks.push(plainAsk('talk', sentence.text, [sentence.from, sentence.to]));
      quiet.push([sentence.from, sentence.to]);
    } else if (aside?.about !== undefined && !dangerous) readAside(sentence, aside.about, text, out, quiet);
  }

  // "you are sure it is the check valve? how sure": asked once
  out.asks = out.asks.filter(
    (a, i) =>
      !(a.ask === 'meaning' && a.about === undefined && out.asks.some((b) => b.ask === 'elsewhere')) &&
      // "ok done what now": asked once
      !(a.ask === 'command' && a.about === 'next step' && out.asks.some((b) => b.ask === 'next')) &&
      !(a.ask === 'elsewhere' && out.asks.slice(0, i).some((b) => b.ask === 'elsewhere' && b.about === a.about)) &&
      !(a.about === undefined && i > 0 && out.asks[i - 1]!.ask === a.ask && a.ask !== 'talk' && a.ask !== 'command'),
  );
  const inQuiet = (span: Span): boolean => quiet.some((q) => span[0] >= q[0] && span[1] <= q[1]);
  const tokens = tokensOf(text);
  const settled = settle(itemsOf(tokens, text), text, context);
  if (table) elapse(settled, table);
  const unreal = sentences.flatMap(unrealIn).filter((s) => !quiet.some((q) => q[0] < s[1] && q[1] > s[0]));
  const inUnreal = ([from, to]: Span): boolean => unreal.some((u) => from >= u[0] && to <= u[1]);
  const { items, covered } = midway(
    headUnit(everyStep(settled)).filter((i) => !inQuiet(i.span) && !inUnreal(i.span)),
    text,
  );
  const inHazardSpan = (span: Span): boolean =>
    hazards.some((h) => h.spans.some((s) => span[0] >= s[0] && span[1] <= s[1]));
  const read = readClauses(items, text, context);
  const clauses = hazards.map((h) => ({ h, span: clauseAround(text, h.spans[0]!) }));
  out.facts = read.facts.filter((f) => reported(f, hazards, clauses, text) && !ofAStranger(f, items));
  out.facts.forEach((f, i) => {
    f.id = `${context.note}.${i}`;
  });
  out.ambiguous = read.ambiguous.filter(
    (a) =>
      !a.spans.every(inHazardSpan) &&
      !clauses.some(
        ({ h, span }) => h.hazard === 'fuse enlarged' && a.spans.some((s) => s[0] >= span[0] && s[1] <= span[1]),
      ),
  );
  setMoments(out.facts, context);
  repeats(low, at, items, out.facts, context, text);
  overPressure(out, context);
  loadTest(out, text);
  // frame on stands or over a pit, and said so: not unsupported
  const held = out.facts.some(
    (f) => f.is === 'condition' && f.holds && ['on stands', 'cribbed', 'over pit'].includes(f.what.v),
  );
  const without = (h: Reading['hazards'][number]): boolean =>
    written.some(
      (s) =>
        h.spans.some((x) => x[0] < s.to && x[1] > s.from) &&
        /\b(?:air|bags?|bellows|jack|without|no stands)\b/.test(s.low),
    );
  if (held) out.hazards = out.hazards.filter((h) => h.hazard !== 'under unsupported' || without(h));

  const left = leftOver({
    text,
    items,
    used: read.used,
    out,
    dangerous: clauses.map((c) => c.span),
    covered,
    head: table?.head.length ?? 0,
  });
  out.unread = [...unreadSpans(text, left), ...unreal].toSorted((a, b) => a[0] - b[0]);
  // never drop what was not understood
  if (
    tellsNothing(out) &&
    out.unread.length === 0 &&
    items.some((i) => /^(?:sign|work|place|cond|num|often|change)$/.test(i.k))
  )
    out.unread = [whole];
  // "thank you, you help good": thanks, and nothing else
  if (
    /^(?:thanks?|thank you|cheers|thx|ta|many thanks)\b/.test(low) &&
    !/\d/.test(low) &&
    out.facts.every((f) => f.is === 'sign' && (f.what.v === 'ok' || f.where.v === '') && f.where.from !== 'said')
  )
    out.facts = [];
  if (
    tellsNothing(out) &&
    isChatter(low) &&
    !items.some((i) => i.k === 'change' && /^(?:lost|lose|loses|losing|dropped|drops|fell)$/.test(i.phrase)) &&
    // "right valve vents a second": a side, and no "right then"
    !(/^right\b/.test(low) && items.some((i) => i.k === 'place' && (i.p.part !== undefined || i.p.side !== undefined)))
  ) {
    out.asks.push(plainAsk('talk', text.trim(), whole));
    out.unread = [];
  }
  return out;
};

/** Long texts piece by piece. */
const readBody = (text: string, context: Context): Reading =>
  text.length <= pieceLength
    ? readSafely(text, context)
    : joinPieces(
        context.note,
        piecesOf(text).map(([from, to]) => ({ at: from, reading: readSafely(text.slice(from, to), context) })),
      );

/** The note between what stands before it and what stands after it; a greeting is answered too. */
const readEven = (text: string, context: Context): Reading => {
  const lead = context.open ? null : leadOf(text);
  const from = lead?.length ?? 0;
  const end = tailAt(text.slice(from)) + from;
  const body = readBody(text.slice(from, end), context);
  if (!lead) return body;
  const rest = moved(body, from);
  const greets = lead.greeting && !rest.asks.some((a) => a.ask === 'talk');
  return {
    ...rest,
    asks: greets ? [plainAsk('talk', text.slice(...lead.greeting), lead.greeting), ...rest.asks] : rest.asks,
    unread: lead.reference ? [lead.reference, ...rest.unread] : rest.unread,
  };
};

/**
 * Reads `text` as `context` frames it. Total: never throws, whatever the text; a note it cannot read comes back as
 * unread from end to end.
 */
export const read = (text: string, context: Context): Reading => {
  try {
    const even = evened(text);
    const got = even ? ledBack(readEven(even.text, context), even.at) : readEven(text, context);
    return { ...got, facts: withManner(text, got.facts) };
  } catch {
    return { ...empty(), unread: text === '' ? [] : [[0, text.length]], hazards: safeHazards(text) };
  } finally {
    forgetTokens();
  }
};

const safeHazards = (text: string): Reading['hazards'] => {
  try {
    return findHazards(text);
  } catch {
    return [];
  }
};
