/** Walks a note clause by clause, left to right, and hands each word to the small reader it belongs to. */
import { dimensionOf } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { changeOf, isDuration } from './changes.ts';
import { letOut, measuredOut, sameLine } from './afterwards.ts';
import { takeMeasure } from './clause-measure.ts';
import { readPlaceOnly } from './clause-place.ts';
import { hearVoice, shareOften } from './clause-voice.ts';
import { clausesOf, soapedToo } from './clauses.ts';
import { readFall } from './read-fall.ts';
import { planned, readCondition } from './read-condition.ts';
import { readDoubt, readNone } from './read-denial.ts';
import { fits } from './fits.ts';
import { lendUnit } from './lend-unit.ts';
import { locOf } from './loc.ts';
import { find, nextReal } from './near.ts';
import { push } from './push.ts';
import { readLegDrop } from './leg-drop.ts';
import { readFuse } from './read-fuse.ts';
import { readNumber } from './read-number.ts';
import { readPlay } from './read-play.ts';
import { readSign } from './read-sign.ts';
import { readSpec } from './read-spec.ts';
import { dayOf } from './read-clock.ts';
import { readWork } from './read-work.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Ambiguity, Context, Fact } from './shapes.ts';
import { assumed, phraseOf, said, skippable, startWalk, use, whereOf, type Clause, type Walk } from './walk.ts';

export type ClauseResult = { facts: Fact[]; ambiguous: Ambiguity[]; used: Set<Settled> };

/** A side that must be asked about: "kerb side" where the traffic is not known. */
const askSides = (w: Walk, c: Clause): void => {
  for (const i of c.places) {
    const item = c.items[i] as PlaceItem;
    if (!item.ask) continue;
    const span = item.spans[0]!;
    w.ambiguous.push({
      question: `Which side is the ${w.text.slice(...span)}?`,
      candidates: (['left', 'right'] as const).map((side) => ({
        label: side,
        text: w.text.slice(0, span[0]) + side + w.text.slice(span[1]),
      })),
      spans: [span],
    });
    use(w, item);
  }
};

/** "the right rear came up": a corner that rises, with no figure. */
const readRise = (w: Walk, c: Clause, i: number): number => {
  const loc = find(w, c, i, false);
  if (loc && !loc.p.part && (loc.p.side ?? loc.p.end) && !c.often)
    push(w, { is: 'sign', what: said('rises', c.items[i]!), there: true }, loc, c.items[i]!);
  return i + 1;
};

/** "nose up", "tail down front up": an end that stands high. */
const readUp = (w: Walk, c: Clause, i: number): number => {
  const place = c.items.slice(0, i).findLast((it) => !skippable(it));
  if (place?.k === 'place' && place.p.end && !place.p.part && c.items.slice(i + 1).every((it) => it.k === 'filler'))
    push(w, { is: 'sign', what: said('high', c.items[i]!), there: true }, find(w, c, i, false), c.items[i]!);
  return i + 1;
};

const readItem = (w: Walk, c: Clause, i: number): number => {
  const item = c.items[i]!;
  switch (item.k) {
    case 'measure':
      if (w.used.has(item)) return i + 1;
      if (!(
        c.measure &&
        c.measure.v !== 'height' &&
        /^(?:measures|measured|tapes|taped|reads|reading)$/.test(item.phrase)
      ))
        c.measure = item;
      else use(w, item);
      // a measure waits for its number; one that gets none says nothing
      if (
        !c.items.some((it, j) => it.k === 'num' && j > i) &&
        (c.items[i - 1]?.k === 'num' || w.lastReading === null || item.v === 'pressure' || item.v === 'height')
      )
        use(w, item);
      return i + 1;
    case 'cond':
      return readCondition(w, c, i);
    case 'work':
      return readWork(w, c, i);
    case 'sign':
      return readSign(w, c, i);
    case 'change': {
      const end = readFall(w, c, i);
      if (end !== null) return end;
      if (c.items.some((it) => it.k === 'num')) use(w, item);
      else if (/^(?:came|comes|come) (?:back )?up$/.test(item.phrase)) return readRise(w, c, i);
      else if (item.phrase === 'up') return readUp(w, c, i);
      return i + 1;
    }
    case 'neg':
      readNone(w, c, i);
      return i + 1;
    case 'num':
      return readNumber(w, c, item, i);
    case 'day':
      dayOf(w, c, i);
      return i + 1;
    case 'place':
      use(w, item);
      return i + 1;
    default:
      return i + 1;
  }
};

const fallNoun = /^(?:an? )?(?:drop|loss|lost|fall|dip|sag|rise|gain)(?: overnight)?$/;

/** "1.5 psi drop in 10 min", "half inch drop overnight": the amount before its noun, put after it. */
const nounsAfter = (c: Clause): Clause => {
  const items = [...c.items];
  items.forEach((n, i) => {
    const noun = items[i + 1];
    if (n.k !== 'num' || n.clock !== undefined || !noun || !changeOf(noun) || !fallNoun.test(phraseOf(noun))) return;
    const dim = n.unit === null ? null : dimensionOf(n.unit);
    const later = items.slice(i + 2).find((it): it is Amounting => it.k === 'num');
    const timed = isDuration(later);
    if (later && !timed && nextReal(c, i + 1) === items.indexOf(later)) return;
    if (dim === 'pressure' || dim === 'length' || (dim === null && timed)) items.splice(i, 2, noun, n);
  });
  return { ...c, items };
};

const readClause = (w: Walk, c: Clause, before: Clause | undefined, after: readonly Clause[]): void => {
  hearVoice(w, c, before);
  takeMeasure(w, c, before);
  shareOften(w, c, before);
  askSides(w, c);
  for (const i of c.places) w.lastEnd = (c.items[i] as PlaceItem).p.end ?? w.lastEnd;
  readFuse(w, c);
  if (readSpec(w, c)) return;
  if (readLegDrop(w, c)) return;
  if (readPlaceOnly(w, c, before, after)) return;
  const known = w.facts.length;
  let i = 0;
  const hedges = c.items.flatMap((it, j) => (it.k === 'hedge' ? [j] : []));
  const hedged = hedges.at(-1) ?? -1;
  const leads = hedged > 0 && c.items.slice(hedged + 1).some((it) => it.k === 'sign' || it.k === 'place');
  while (i < c.items.length) {
    // "humming but i think the rings are seized": seen before it, thought after it
    if (leads) w.hunch = i > hedges[0]!;
    i = Math.max(i + 1, readItem(w, c, i));
  }
  w.hunch = hedges.length > 0;
  // "left comes up fine, right side takes three minutes and stops": spoken of now, whatever was not understood of it
  const lead = c.items.find((it) => it.k !== 'filler');
  if (
    w.facts.length === known &&
    c.places.length === 1 &&
    lead?.k === 'place' &&
    (lead.p.side ?? lead.p.part) &&
    !lead.ask
  )
    w.subject = locOf(w, lead);
  readDoubt(w, c);
  readPlay(w, c);
  const lasted = c.items.find((it): it is Amounting => isDuration(it) && !w.used.has(it));
  w.spell =
    lasted &&
    c.items.some(
      (it, i) =>
        (it.k === 'cond' && /^(?:panel|settled|key|tank outlet|pump running|arm)/.test(it.v)) ||
        (it.k === 'sign' && it.phrase === 'hold' && c.items[i - 1] === lasted),
    )
      ? lasted
      : null;
  w.wanted =
    c.joined &&
    (w.wanted ||
      (w.facts.length === known &&
        c.items.some((it) => /^(?:needs?|wants?|due)$/.test(it.k === 'unknown' ? it.low : phraseOf(it)))));
  w.planned = c.joined && (w.planned || planned(c, c.items.length));
  if (!c.joined) w.pending = [];
  w.listed = [];
};

/** What was read without what cannot be: its word is given back as unread. */
const fitting = (w: Walk, all: readonly Settled[]): Fact[] =>
  w.facts.filter((f) => {
    const fit = fits(f);
    if (fit === true) return true;
    if (fit !== false) {
      f.where = whereOf(fit === '' ? null : assumed({ part: fit }));
      return true;
    }
    if ('what' in f)
      for (const item of all)
        if (f.what.spans.some((s) => item.span[0] < s[1] && item.span[1] > s[0])) w.used.delete(item);
    return false;
  });

/** Reads settled items into facts. State lives in the walk; nothing outlives it. */
export const readClauses = (all: readonly Settled[], text: string, context: Context): ClauseResult => {
  lendUnit(all);
  const w = startWalk(all, text, context);
  const clauses = clausesOf(all)
    .flatMap((c, i, list) => soapedToo(c, list[i - 1]))
    .map(nounsAfter);
  clauses.forEach((c, i) => {
    if (i === 0 || clauses[i - 1]!.hard) w.first = c.items[0];
    const before = w.facts.length;
    readClause(w, c, clauses[i - 1], clauses.slice(i + 1, i + 6));
    if (c.hard) {
      w.heading = null;
      if (w.facts.length > before) w.pendingWhen = null;
      if (w.subject) w.subject = { ...w.subject, old: true };
      w.lastEnd = undefined;
      w.told = false;
      w.spec = false;
    }
  });
  sameLine(w.facts);
  letOut(w.facts);
  measuredOut(w.facts);
  return { facts: fitting(w, all), ambiguous: w.ambiguous, used: w.used };
};
