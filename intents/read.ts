/** Reads a note into facts, questions, corrections and hazards. Pure, total, linear in the length of the note. */
import { toSi } from '../server/core/units.ts';
import { aimAmend } from './amends.ts';
import { askIn, asideIn, isChatter, plainAsk, sentencesOf, splitTails, type Sentence } from './asks.ts';
import { readClauses } from './clause.ts';
import { correctionAndMore, midway, putCorrection, undoAndMore, wholeUndo } from './corrections.ts';
import { findHazards } from './hazards.ts';
import { itemsOf, type Amounting } from './items.ts';
import { joinPieces, pieceLength, piecesOf } from './pieces.ts';
import { repeats } from './repeats.ts';
import { flatten, tokensOf } from './smooth.ts';
import { settle, type Settled } from './settle.ts';
import type { Amend, Ask, Context, Fact, Reading, Span } from './shapes.ts';
import { topicOf } from './topic.ts';
import { setMoments } from './when.ts';

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
const yes =
  /^(?:(?:yes|yeah|yep|yup|aye)[ ,]+(?:i |we |they |its |it |already |put |done |did |have |has |just |now |sir |mate |boss |all |are |is |been |that |sorted |in |on )*(?:already|put|done|did|have|now|sir|mate|boss|are|is|sorted|sure|it is)?|yes|yeah|yep|yup|y|aye|affirmative|correct|right|sure|they are|it is|done|ok|okay|sure is|yes it is|yes they are|yes sir)[.! ]*$/;
const no =
  /^(?:no|nope|nah|n|not yet|negative|no it isnt|nope not yet|no not yet|nope|not yet no|no i (?:have|did)nt|it isnt|not really|no they arent|not done)[.! ]*$/;

const shift = (reading: Reading, from: 'carried', span: Span): Reading => ({
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

const sameThing = (a: Fact, b: Fact): boolean =>
  a.is === b.is && 'what' in a && 'what' in b && a.what.v === b.what.v && a.where.v === b.where.v;
const contrary = (a: Fact, b: Fact): boolean =>
  sameThing(a, b) && a.is === 'condition' && b.is === 'condition' && a.holds !== b.holds;

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

const askFacts = (
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
    topicOf(whole, found.kind);
  return {
    ask: found.kind,
    words: found.words,
    facts: (read?.facts ?? []).map((f, i) => within(f, `${context.note}.${900 + (i % 90)}`, found.span)),
    amounts,
    spans: [found.span],
    ...(about ? { about } : {}),
  };
};

/** A correction first, then a note of its own: the rest is read as it stands, spans and all. */
const afterCorrection = (text: string, more: { cut: number; amend: Amend }, context: Context): Reading => {
  const rest = readSafely(text.slice(0, more.cut).replace(/[^\n]/g, ' ') + text.slice(more.cut), context, false);
  return { ...rest, amends: [aimAmend(more.amend, context, rest.facts.length), ...rest.amends] };
};

/** Words that name the dangerous deed itself report nothing: "crack it loose", "hit the bag with shop air". */
const ofTheDeed = (f: Fact, hazards: Reading['hazards']): boolean => {
  if (f.is === 'sign' && f.what.v === 'blown' && f.where.v === 'fuse') return false;
  if (f.is === 'work')
    return !(f.what.v === 'tapped' && hazards.some((h) => h.hazard === 'relay tapped' && h.mode === 'done'));
  return f.is === 'sign' && !deedFree.has(f.what.v);
};
/** Words of the dangerous deed that would else be taken for signs, anywhere in its clause. */
const deedWords: ReadonlySet<string> = new Set([
  'holds',
  'works',
  'ok',
  'loose',
  'cracked',
  'noisy',
  'reads wrong',
  'level',
  'aged',
  'plugged',
  'welded',
  'dirty',
  'warm',
  'blown',
  'cupped',
  'not working',
  'broken',
  'disconnected',
]);
const deedWorks: ReadonlySet<string> = new Set([
  'removed',
  'opened',
  'disconnected',
  'cleaned',
  'replaced',
  'closed',
  'refitted',
  'checked',
  'tightened',
  'connected',
]);
/** From the comma or stop before a danger to the one after it. */
const clauseAround = (text: string, [from, to]: Span): Span => {
  const before = Math.max(...[',', ';', '\n', '. '].map((c) => text.lastIndexOf(c, from)));
  const after = text.slice(to).search(/[,;\n]|\. /);
  return [before + 1, after < 0 ? text.length : to + after];
};
/** Signs that stay what they are inside the words of a danger. */
const deedFree: ReadonlySet<string> = new Set([
  'flat',
  'torn',
  'cords showing',
  'frozen',
  'on stops',
  'hot',
  'hiss',
  'bubbles',
  'leaks',
  'runs on',
  'exhausts',
  'sags',
  'blows fuse',
  'chafed',
  'swollen',
  'wont run',
  'stuck',
]);

const readSafely = (text: string, context: Context, corrects = true): Reading => {
  const out = empty();
  if (text.trim() === '') return out;
  const { low, at } = flatten(text);
  const bare = low.trim().replace(/[.!, ]+$/, '');
  const whole: Span = [0, text.length];

  if (context.open?.yes !== undefined && yes.test(bare))
    return shift(readSafely(context.open.yes, { ...context, open: null }), 'carried', whole);
  // "yes is on stand, tank 0": the answer, and what else it says
  const affirmed = context.open?.yes !== undefined ? /^(?:yes|yeah|yep|yup|aye|affirmative|y)\b[, ]*/.exec(low) : null;
  if (affirmed && context.open?.yes !== undefined) {
    const answer = shift(readSafely(context.open.yes, { ...context, open: null }), 'carried', [
      0,
      affirmed[0].trimEnd().length,
    ]);
    const rest = readSafely(
      affirmed[0].replace(/[^\n]/g, ' ') + text.slice(affirmed[0].length),
      { ...context, open: null },
      false,
    );
    const known = rest.facts.filter((f) => !answer.facts.some((a) => sameThing(a, f)));
    if (answer.facts.every((a) => !rest.facts.some((f) => contrary(a, f))))
      return { ...rest, facts: [...answer.facts, ...known].map((f, i) => ({ ...f, id: `${context.note}.${i}` })) };
  }
  if (context.open?.no !== undefined && no.test(bare))
    return shift(readSafely(context.open.no, { ...context, open: null }), 'carried', whole);

  const undo = corrects ? wholeUndo(bare, whole) : null;
  if (undo) return { ...out, amends: [aimAmend(undo, context, 0)] };
  const hazards = findHazards(text);
  const asked = sentencesOf(text).some((s) => askIn(s) !== null);
  const again = corrects ? undoAndMore(text) : null;
  if (again) {
    // "scratch that, rr was 13 1/2 not 13 3/8": one value for another, not the note taken back
    const instead = putCorrection(text.slice(again.cut), context);
    if (instead?.says.was && instead.says.amount)
      return { ...out, amends: [aimAmend({ ...instead, spans: [whole] }, context, 0)], hazards };
    const both = afterCorrection(text, again, context);
    if (both.facts.some((f) => f.where.from === 'said')) return both;
  }
  const mixed =
    !corrects || hazards.length > 0 || asked || !/ and (?:thats|its|it was|that was)\b/.test(low)
      ? null
      : correctionAndMore(text, context);
  if (mixed) return afterCorrection(text, mixed, context);
  const correction = !corrects || hazards.length > 0 || asked ? null : putCorrection(text, context);
  if (correction) return { ...out, amends: [aimAmend(correction, context, 0)], hazards };
  const more = !corrects || hazards.length > 0 || asked ? null : correctionAndMore(text, context);
  if (more) return afterCorrection(text, more, context);
  out.hazards = hazards;

  const sentences = splitTails(sentencesOf(text));
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
          (h.mode === 'warned' || (h.mode === 'asked' && sentence.text.endsWith('?'))) &&
          h.spans.some((s) => s[0] < sentence.to && s[1] > sentence.from),
      )
    ) {
      quiet.push([sentence.from, sentence.to]);
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
      !(a.about === undefined && i > 0 && out.asks[i - 1]!.ask === a.ask && a.ask !== 'talk' && a.ask !== 'command'),
  );
  const inQuiet = (span: Span): boolean => quiet.some((q) => span[0] >= q[0] && span[1] <= q[1]);
  const tokens = tokensOf(text);
  const settled = settle(itemsOf(tokens, text), text, context);
  const { items, covered } = midway(
    settled.filter((i) => !inQuiet(i.span)),
    text,
  );
  const inHazardSpan = (span: Span): boolean =>
    hazards.some((h) => h.spans.some((s) => span[0] >= s[0] && span[1] <= s[1]));
  const read = readClauses(items, text, context);
  // a danger asked about, intended or warned against reports no work
  const clauses = hazards.map((h) => ({ h, span: clauseAround(text, h.spans[0]!) }));
  const inHazardClause = (f: Fact, names?: readonly string[]): boolean =>
    clauses.some(
      ({ h, span: [from, to] }) =>
        (!names || names.includes(h.hazard)) && 'what' in f && f.what.spans.some((s) => s[0] >= from && s[1] <= to),
    );
  out.facts = read.facts.filter((f) => {
    const deed = (f.is === 'work' || f.is === 'sign') && f.what.spans.some(inHazardSpan) && ofTheDeed(f, hazards);
    if (deed) return false;
    if (
      f.is === 'work' &&
      f.what.v === 'road tested' &&
      hazards.some((h) => h.hazard === 'cords driven' || h.hazard === 'drive disabled')
    )
      return false;
    if (f.is === 'work') return !(inHazardClause(f) && deedWorks.has(f.what.v));
    if (
      f.is === 'sign' &&
      f.what.v === 'works' &&
      /^works? now|\bworks$/i.test(text.slice(f.what.spans[0]?.[0] ?? 0, (f.what.spans[0]?.[0] ?? 0) + 9).trim())
    )
      return true;
    if (f.is === 'sign' && f.what.v === 'blown' && f.where.v === 'fuse') return true;
    if (f.is === 'sign') return !(inHazardClause(f) && deedWords.has(f.what.v));
    if (
      f.is === 'reading' &&
      f.what.v === 'current' &&
      f.where.from === 'assumed' &&
      hazards.some((h) => h.hazard === 'fuse enlarged')
    )
      return false;
    if (
      f.is === 'reading' &&
      f.what.v === 'distance driven' &&
      hazards.some((h) => h.mode === 'intended' || h.mode === 'asked')
    )
      return false;
    if (f.is === 'reading') return !inHazardClause(f, ['fuse enlarged', 'relief defeated']);
    if (f.is === 'condition')
      return !(
        (f.what.v === 'fuse out' && inHazardClause(f, ['fuse enlarged'])) ||
        (f.what.v === 'floor level' && inHazardClause(f, ['soft ground']))
      );
    return true;
  });
  out.facts.forEach((f, i) => {
    f.id = `${context.note}.${i}`;
  });
  out.ambiguous = read.ambiguous.filter(
    (a) =>
      !clauses.some(
        ({ h, span }) => h.hazard === 'fuse enlarged' && a.spans.some((s) => s[0] >= span[0] && s[1] <= span[1]),
      ),
  );
  setMoments(out.facts, context);
  repeats(low, at, items, out.facts, context, text);
  overPressure(out, context);
  // frame on stands or over a pit, and said so: not unsupported
  const held = out.facts.some(
    (f) => f.is === 'condition' && f.holds && ['on stands', 'cribbed', 'over pit'].includes(f.what.v),
  );
  if (held && !/\b(?:air|bags?|bellows|jack|without|no stands)\b/.test(low))
    out.hazards = out.hazards.filter((h) => h.hazard !== 'under unsupported');

  const left = items.filter(
    (i) =>
      (i.k === 'unknown' ||
        (i.k !== 'filler' && i.k !== 'prep' && i.k !== 'sep' && i.k !== 'join' && i.k !== 'neg' && i.k !== 'wheel')) &&
      !read.used.has(i) &&
      !inHazardSpan(i.span) &&
      !covered.some((c) => i.span[0] >= c[0] && i.span[1] <= c[1]) &&
      !out.ambiguous.some((a) => a.spans.some((s) => i.span[0] >= s[0] && i.span[1] <= s[1])),
  );
  out.unread = unreadSpans(text, left);
  // "thank you, you help good": thanks, and nothing else
  if (
    /^(?:thanks?|thank you|cheers|thx|ta|many thanks)\b/.test(low) &&
    !/\d/.test(low) &&
    out.facts.every((f) => f.is === 'sign' && (f.what.v === 'ok' || f.where.v === '') && f.where.from !== 'said')
  )
    out.facts = [];
  if (
    out.facts.length === 0 &&
    out.asks.length === 0 &&
    out.amends.length === 0 &&
    out.hazards.length === 0 &&
    out.ambiguous.length === 0 &&
    isChatter(low)
  ) {
    out.asks.push(plainAsk('talk', text.trim(), whole));
    out.unread = [];
  }
  return out;
};

/** Gauge pressure from which a pump that does not stop is a danger. Common practice, no source: cut-out is 120 psi or so. */
const tooHigh = 125 * 6894.757293168361;
/** "wont shut off" with the tank well up, in this note or the last ones: the pump has run past its cut-out. */
const overPressure = (out: Reading, context: Context): void => {
  if (out.hazards.some((h) => h.hazard === 'over-pressure')) return;
  const runsOn = out.facts.filter((f) => f.is === 'sign' && f.there && f.what.v === 'runs on');
  const running = out.facts.filter((f) => f.is === 'condition' && f.holds && f.what.v === 'pump running');
  const tank = [...context.recent.flatMap((n) => n.facts), ...out.facts].findLast(
    (f) =>
      f.is === 'reading' &&
      f.what.v === 'pressure' &&
      ['tank', 'gauge', 'test port', ''].includes(f.where.v) &&
      !f.held,
  );
  const si = tank?.is === 'reading' ? tank.amount.v.si : 0;
  const own = tank !== undefined && out.facts.includes(tank);
  const by =
    si >= tooHigh && runsOn.length > 0 ? runsOn : si >= tooHigh * 1.12 && own && running.length > 0 ? running : [];
  if (by.length > 0)
    out.hazards.push({
      hazard: 'over-pressure',
      mode: 'doing',
      spans: by.flatMap((f) => ('what' in f ? f.what.spans : [])),
    });
};

/** A sentence that names another system: no fact comes of the words about it; other clauses of it are still read. */
const readAside = (sentence: Sentence, about: string, text: string, out: Reading, quiet: Span[]): void => {
  const parts = splitClauses(text, sentence);
  let said = false;
  for (const [from, to] of parts) {
    const clause = text.slice(from, to);
    const aside = asideIn({ from, to, text: clause, low: flatten(clause).low.replace(/\s+/g, ' ').trim() });
    if (aside?.ask === 'elsewhere') {
      quiet.push([from, to]);
      if (!said) out.asks.push(plainAsk('elsewhere', clause.trim(), [from, to], about));
      said = true;
    }
  }
  if (!said) {
    quiet.push([sentence.from, sentence.to]);
    out.asks.push(plainAsk('elsewhere', sentence.text, [sentence.from, sentence.to], about));
  }
};
const splitClauses = (text: string, sentence: Sentence): Span[] => {
  const out: Span[] = [];
  let from = sentence.from;
  const body = text.slice(sentence.from, sentence.to);
  for (const m of body.matchAll(/,| but | and (?=the (?:tank|left|right|air|coach|bag)|tank|left|right|lr|rr)/gi)) {
    out.push([from, sentence.from + m.index]);
    from = sentence.from + m.index + m[0].length;
  }
  out.push([from, sentence.to]);
  return out.filter(([a, b]) => b > a);
};

/**
 * Reads `text` as `context` frames it. Total: never throws, whatever the text; a note it cannot read comes back as
 * unread from end to end.
 */
export const read = (text: string, context: Context): Reading => {
  try {
    if (text.length <= pieceLength) return readSafely(text, context);
    return joinPieces(
      context.note,
      piecesOf(text).map(([from, to]) => ({ at: from, reading: read(text.slice(from, to), context) })),
    );
  } catch {
    return { ...empty(), unread: text === '' ? [] : [[0, text.length]], hazards: safeHazards(text) };
  }
};
const safeHazards = (text: string): Reading['hazards'] => {
  try {
    return findHazards(text);
  } catch {
    return [];
  }
};
