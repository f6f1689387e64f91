/** Reads a note into facts, questions, corrections and hazards. Pure, total, linear in the length of the note. */
import { toSi, dimensionOf, type Unit } from '../server/core/units.ts';
import { aimAmend, blankAmend, countOf } from './amends.ts';
import { askIn, asideIn, isChatter, plainAsk, sentencesOf, type Sentence } from './asks.ts';
import { readClauses } from './clause.ts';
import { findHazards } from './hazards.ts';
import { itemsOf, type Amounting } from './items.ts';
import { makePlace } from './place.ts';
import { scan } from './scan.ts';
import { flatten, smooth } from './smooth.ts';
import { settle, type Settled } from './settle.ts';
import type { Amend, Ask, Context, Fact, Reading, Span } from './shapes.ts';
import { topicOf } from './topic.ts';
import { setMoments } from './when.ts';
import { midCorrection, putLead, swapForms, undoForms } from './words/amends.ts';

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
  /^(?:yes|yeah|yep|yup|y|aye|affirmative|correct|right|sure|they are|it is|done|ok|okay|sure is|yes it is|yes they are|yes sir)[.! ]*$/;
const no = /^(?:no|nope|nah|n|not yet|negative|no it isnt|it isnt|not really|no they arent|not done)[.! ]*$/;

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

const wholeUndo = (low: string, span: Span): Amend | null => {
  for (const [kind, form] of undoForms) {
    const m = form.exec(low);
    if (m) return blankAmend(kind, [span], countOf(m.groups?.['count'] ?? m.groups?.['count2'] ?? undefined));
  }
  if (swapForms.some((form) => form.test(low))) return { ...blankAmend('put', [span]), says: { swapSides: true } };
  return null;
};

const amountSaid = (n: Amounting, unit: Unit): Amend['says']['amount'] => ({
  si: toSi(n.value, unit),
  pm: (toSi(n.step, unit) - toSi(0, unit)) / 2,
  unit,
  text: n.text,
});

/** "make that 105", "no, right side", "98 not 89": what the note changes of what was said before; null when it does not. */
const putCorrection = (text: string, context: Context): Amend | null => {
  const { low } = flatten(text);
  const trimmed = low.trim().replace(/[.! ]+$/, '');
  const lead = putLead.exec(trimmed);
  const rest = lead ? trimmed.slice(lead[0].length) : trimmed;
  const span: Span = [0, text.length];
  if (rest === '') return null;
  const items = settle(itemsOf(smooth(scan(rest)), rest), rest, context);
  const nums = items.filter((i): i is Amounting => i.k === 'num' && i.clock === undefined);
  const places = items.filter((i) => i.k === 'place');
  const negAt = items.findIndex((i) => i.k === 'neg' && /^not$/.test(i.phrase));
  const busy = items.some(
    (i) => i.k === 'cond' || i.k === 'work' || (i.k === 'sign' && !/^(?:right|level|lower|higher)$/.test(i.phrase)),
  );
  const lastReading = context.recent.flatMap((n) => n.facts).findLast((f) => f.is === 'reading');
  // a correction by a number keeps the unit of what it corrects
  const unitOf = (n: Amounting): Unit | null =>
    n.unit ?? (lastReading?.is === 'reading' ? lastReading.amount.v.unit : context.pressureUnit);
  const notForm = negAt > 0 && (nums.length === 2 || (places.length === 2 && nums.length === 0));
  if (!lead && !notForm) return null;
  if (busy && !notForm) return null;
  if (nums.length > 2 || places.length > 3) return null;
  if (nums.length >= 1) {
    const leadingNot =
      negAt >= 0 &&
      nums.length === 2 &&
      items.indexOf(nums[0]!) > negAt &&
      nums.indexOf(nums[0]!) === 0 &&
      !items.slice(0, negAt).some((i) => i.k === 'num');
    const value = leadingNot ? nums[1]! : nums[0]!;
    const was = nums.length === 2 ? (leadingNot ? nums[0]! : nums[1]!) : null;
    if (nums.length === 2 && negAt < 0) return null;
    const unit = unitOf(value) ?? context.pressureUnit;
    const amount = amountSaid(value, unit);
    const said = places[0]?.k === 'place' ? makePlace(places[0].p) : undefined;
    const measure = items.find((i) => i.k === 'measure');
    return {
      ...blankAmend('put', [span]),
      says: {
        ...(amount ? { amount } : {}),
        ...(was ? { was: { ...amountSaid(was, was.unit ?? unit)! } } : {}),
        ...(said ? { where: said } : {}),
        ...(measure?.k === 'measure' &&
        measure.v !== 'pressure' &&
        measure.v !== 'height' &&
        !measure.phrase.startsWith('read')
          ? { what: measure.v }
          : {}),
      },
    };
  }
  if (places.length >= 1) {
    const leadNot =
      negAt >= 0 &&
      places.length === 2 &&
      items.indexOf(places[0]!) > negAt &&
      !items.slice(0, negAt).some((i) => i.k === 'place');
    const place = leadNot ? places[1]! : places[0]!;
    if (places.length >= 2 && negAt < 0) return null;
    if (place.k !== 'place') return null;
    return { ...blankAmend('put', [span]), says: { where: makePlace(place.p) } };
  }
  return null;
};

/** "95 no wait 98": what went before the correction gives way to what follows it. Works on settled items. */
const midway = (items: Settled[], text: string): { items: Settled[]; covered: Span[] } => {
  const { low, at } = flatten(text);
  const covered: Span[] = [];
  let out = items;
  for (const m of low.matchAll(midCorrection)) {
    const from = at[m.index]!;
    const to = at[Math.min(m.index + m[0].trimEnd().replace(/,$/, '').length, at.length - 1)]!;
    const before = out.filter((i) => i.span[1] <= from && i.k !== 'filler' && i.k !== 'prep');
    const after = out.filter((i) => i.span[0] >= to && i.k !== 'filler' && i.k !== 'sep' && i.k !== 'join');
    const next = after[0];
    if (!next || before.length === 0) continue;
    const kin = (i: Settled): boolean =>
      next.k === 'num'
        ? i.k === 'num' && i.clock === undefined
        : i.k === next.k && (next.k === 'place' || next.k === 'sign' || next.k === 'cond');
    const old = before.findLast(kin);
    if (!old) continue;
    covered.push([from, to], old.span);
    const drop = new Set<Settled>(
      out.filter(
        (i) =>
          (i.span[0] >= from && i.span[1] <= to) ||
          (i.k === 'sep' && i.span[0] >= old.span[1] && i.span[1] <= next.span[0]),
      ),
    );
    drop.add(old);
    // the new value moves to the old one's place, so that its subject stays; its own neighbours come along
    if (next.k === 'place' && old.k === 'place') {
      const merged: Settled = {
        ...next,
        p: { ...old.p, ...Object.fromEntries(Object.entries(next.p).filter(([, v]) => v !== undefined)) },
      };
      out = out.map((i) => (i === old ? merged : i)).filter((i) => i !== next && (!drop.has(i) || i === merged));
    } else if (next.k === 'num' && old.k === 'num') {
      const moved: Settled = { ...next, unit: next.unit ?? old.unit };
      const placeBetween = out.some((i) => i.k === 'place' && i.span[0] >= to && i.span[1] <= next.span[0]);
      out = placeBetween
        ? out.filter((i) => !drop.has(i))
        : out.map((i) => (i === old ? moved : i)).filter((i) => i !== next && (!drop.has(i) || i === moved));
    } else out = out.filter((i) => !drop.has(i));
  }
  return { items: out, covered };
};

const factTouches = (reading: Reading, text: string, unread: readonly Settled[]): Span[] => {
  const spans = unread.map((i) => i.span).toSorted((a, b) => a[0] - b[0]);
  const out: Span[] = [];
  for (const span of spans) {
    const last = out.at(-1);
    if (last && /^[\s-]*$/.test(text.slice(last[1], span[0]))) last[1] = Math.max(last[1], span[1]);
    else out.push([span[0], span[1]]);
  }
  void reading;
  return out;
};

const askFacts = (
  sentence: Sentence,
  found: { kind: Ask['ask']; topic: string; span: Span; words: string; command?: string },
  context: Context,
): Ask => {
  const at = sentence.low.indexOf(found.topic);
  const topicText = found.topic !== '' && at >= 0 ? found.topic : sentence.low;
  const items = settle(itemsOf(smooth(scan(topicText)), topicText), topicText, context);
  const whole = settle(itemsOf(smooth(scan(sentence.low)), sentence.low), sentence.low, context);
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
    .map((n) => ({ n, unit: n.unit ?? ('count' as Unit) }))
    .map(({ n, unit }) => ({ si: toSi(n.value, unit), pm: 0, unit, text: n.text }));
  const about = found.command ?? topicOf(items, found.kind) ?? topicOf(whole, found.kind);
  return {
    ask: found.kind,
    words: found.words,
    facts: (read?.facts ?? []).map((f, i) => ({ ...f, id: `${context.note}.${900 + (i % 90)}` })),
    amounts,
    spans: [found.span],
    ...(about ? { about } : {}),
  };
};

const readSafely = (text: string, context: Context): Reading => {
  const out = empty();
  if (text.trim() === '') return out;
  const { low } = flatten(text);
  const bare = low.trim().replace(/[.!, ]+$/, '');
  const whole: Span = [0, text.length];

  if (context.open?.yes !== undefined && yes.test(bare))
    return shift(readSafely(context.open.yes, { ...context, open: null }), 'carried', whole);
  if (context.open?.no !== undefined && no.test(bare))
    return shift(readSafely(context.open.no, { ...context, open: null }), 'carried', whole);

  const undo = wholeUndo(bare, whole);
  if (undo) return { ...out, amends: [aimAmend(undo, context, 0)] };
  const hazards = findHazards(text);
  const correction = putCorrection(text, context);
  if (correction) {
    const aimed = aimAmend(correction, context, 0);
    return { ...out, amends: [aimed], hazards };
  }
  out.hazards = hazards;

  const sentences = sentencesOf(text);
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
    const aside = asideIn(sentence);
    const dangerous = hazards.some((h) => h.spans.some((s) => s[0] < sentence.to && s[1] > sentence.from));
    if (aside?.ask === 'talk' && !dangerous) {
      out.asks.push(plainAsk('talk', sentence.text, [sentence.from, sentence.to]));
      quiet.push([sentence.from, sentence.to]);
    } else if (aside?.about !== undefined && !dangerous) readAside(sentence, aside.about, text, context, out, quiet);
  }

  const inQuiet = (span: Span): boolean => quiet.some((q) => span[0] >= q[0] && span[1] <= q[1]);
  const tokens = smooth(scan(text));
  const settled = settle(itemsOf(tokens, text), text, context);
  const { items, covered } = midway(
    settled.filter((i) => !inQuiet(i.span)),
    text,
  );
  const inHazardSpan = (span: Span): boolean =>
    hazards.some((h) => h.spans.some((s) => span[0] >= s[0] && span[1] <= s[1]));
  const read = readClauses(items, text, context);
  // a danger asked about, intended or warned against reports no work
  out.facts = read.facts.filter(
    (f) => !(f.is === 'work' && f.what.spans.some(inHazardSpan) && hazards.some((h) => h.mode !== 'done')),
  );
  out.facts.forEach((f, i) => {
    f.id = `${context.note}.${i}`;
  });
  out.ambiguous = read.ambiguous;
  setMoments(out.facts, context);
  repeats(low, items, out, context);

  const left = items.filter(
    (i) =>
      (i.k === 'unknown' ||
        (i.k !== 'filler' && i.k !== 'prep' && i.k !== 'sep' && i.k !== 'join' && i.k !== 'neg' && i.k !== 'wheel')) &&
      !read.used.has(i) &&
      !inHazardSpan(i.span) &&
      !covered.some((c) => i.span[0] >= c[0] && i.span[1] <= c[1]) &&
      !out.ambiguous.some((a) => a.spans.some((s) => i.span[0] >= s[0] && i.span[1] <= s[1])),
  );
  out.unread = factTouches(out, text, left);
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

/** A sentence that names another system: no fact comes of the words about it; other clauses of it are still read. */
const readAside = (
  sentence: Sentence,
  about: string,
  text: string,
  context: Context,
  out: Reading,
  quiet: Span[],
): void => {
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
  void context;
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

/** "same as before", "ditto right", "other side too": the facts of the last note, or of this one, said again elsewhere. */
const repeats = (low: string, items: readonly Settled[], out: Reading, context: Context): void => {
  const m =
    /\b(?:ditto|same (?:on|for|at|with|thing on|again on|story on|as the left on) (?:the )?|same|other side too|other side (?:the )?same|same (?:on )?(?:the )?other side|likewise)\b/.exec(
      low,
    );
  if (!m || /\bsame (?:time|moment|as (?:the )?(?:other|left|right)|gauge|day|height)\b/.test(low)) return;
  const source =
    out.facts.length > 0
      ? out.facts.at(-1)!
      : context.recent.flatMap((n) => n.facts).findLast((f) => f.is === 'sign' || f.is === 'reading');
  if (!source || source.is === 'condition') return;
  const place = items.find(
    (i) =>
      i.k === 'place' &&
      i.span[0] >= m.index - 14 &&
      (i.p.side !== undefined || i.p.part !== undefined) &&
      i.span[0] > m.index - 1,
  );
  const target =
    place?.k === 'place'
      ? makePlace({
          ...placeParts(source.where.v),
          ...Object.fromEntries(Object.entries(place.p).filter(([, v]) => v !== undefined)),
        })
      : /other side/.test(low)
        ? source.where.v.replace(/^(left|right)/, (s) => (s === 'left' ? 'right' : 'left'))
        : /same as before|same as last|as before|no change|same again/.test(low)
          ? source.where.v
          : null;
  if (target === null) return;
  if (
    out.facts.some(
      (f) =>
        f.where.v === target && f.is === source.is && 'what' in f && 'what' in source && f.what.v === source.what.v,
    )
  )
    return;
  out.facts.push({
    ...source,
    id: `${context.note}.${out.facts.length}`,
    at: context.at,
    where: { v: target, from: place ? 'said' : 'carried', spans: place ? [place.span] : [] },
    what: { ...source.what, from: 'carried', spans: [[m.index, m.index + m[0].length]] },
  } as Fact);
};
const placeParts = (place: string): object => {
  const words = place.split(' ');
  const out: Record<string, string> = {};
  if (words[0] === 'left' || words[0] === 'right' || words[0] === 'both') out['side'] = words.shift()!;
  if (words[0] === 'front' || words[0] === 'rear') out['end'] = words.shift()!;
  if (words[0] === 'forward' || words[0] === 'aft') out['wheel'] = words.shift()!;
  if (words.length > 0) out['part'] = words.join(' ');
  return out;
};

/**
 * Reads `text` as `context` frames it. Total: never throws, whatever the text; a note it cannot read comes back as
 * unread from end to end.
 */
export const read = (text: string, context: Context): Reading => {
  try {
    return readSafely(text, context);
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
export const isPressure = (unit: Unit): boolean => dimensionOf(unit) === 'pressure';
