/** Walks a note clause by clause, left to right, and hands each word to the small reader it belongs to. */
import { dimensionOf } from '../server/core/units.ts';
import { dimension, type Amounting } from './amount-item.ts';
import { clausesOf, soapedToo } from './clauses.ts';
import { measureDims } from './dims.ts';
import { tidy } from './merge-places.ts';
import { isContent } from './near.ts';
import { readFall } from './read-fall.ts';
import { planned, readCondition } from './read-condition.ts';
import { readDoubt, readNone } from './read-denial.ts';
import { readFuse } from './read-fuse.ts';
import { readNumber } from './read-number.ts';
import { readSign } from './read-sign.ts';
import { readSpec } from './read-spec.ts';
import { dayOf } from './read-clock.ts';
import { readShared, readWork } from './read-work.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Ambiguity, Context, Fact } from './shapes.ts';
import { sideable } from './sideable.ts';
import { locOf } from './loc.ts';
import { phraseOf, skippable, startWalk, use, whereOf, type Clause, type Measured, type Walk } from './walk.ts';

export type ClauseResult = { facts: Fact[]; ambiguous: Ambiguity[]; used: Set<Settled> };

const ownWord = /^(?:i|ive|im|we|weve)$/;

/** "driver says it leans, i got 27 amps": what the tech says himself ends what was told. */
const speaksHimself = (c: Clause): boolean => {
  const first = c.items[0];
  if (!first || c.items.some((i) => i.k === 'told')) return false;
  return (
    ownWord.test(phraseOf(first)) ||
    (first.k === 'unknown' && ownWord.test(first.low)) ||
    c.items.some((i) => i.k === 'num' && i.unit !== null && dimension(i) !== 'duration')
  );
};

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

/** "soaped n/s bag, crimp and fold": a list goes on after a comma when it ends in "and". */
const lists = (w: Walk, c: Clause, before: Clause | undefined, after: readonly Clause[]): boolean => {
  const last = w.facts.at(-1);
  if (before === undefined || before.hard) return false;
  // a list ends in "and" or with its sentence; until there it is made of places alone
  const end = after.findIndex((a) => a.items.some((it) => isContent(it) || it.k === 'neg'));
  const tail = [c, ...after.slice(0, Math.max(end, 0))].at(-1);
  if (!c.joined && !(tail?.joined || (tail?.hard && last?.is === 'work' && last.what.v === 'soaped'))) return false;
  return (
    (last?.is === 'work' && (before.items.some((it) => it.k === 'work') || last.what.from === 'carried')) ||
    (last?.is === 'sign' && !last.there && before.items.some((it) => it.k === 'sign'))
  );
};

const readClause = (w: Walk, c: Clause, before: Clause | undefined, after: readonly Clause[]): void => {
  // a time that leads a sentence is of all its readings, until another is said
  const timed = c.items.some((i) => (i.k === 'num' && i.clock !== undefined) || i.k === 'day');
  if (!before || before.hard || timed) w.lineWhen = null;
  if (speaksHimself(c)) w.told = false;
  if (c.items.some((i) => i.k === 'told')) w.told = true;
  w.hunch = c.items.some(
    (i, j) =>
      i.k === 'hedge' &&
      !(/^(?:looks|seems|appears)/.test(i.phrase) && c.items.slice(j + 1).find((it) => !skippable(it))?.k === 'num'),
  );
  for (const i of c.items) if (i.k === 'hedge' || i.k === 'told' || i.k === 'often') use(w, i);
  if (
    before &&
    !before.hard &&
    !c.often &&
    before.often &&
    ((before.joined && before.items[0] === before.often) ||
      (before.often.v === 'driving' && before.items.every((it) => it === before.often || skippable(it))))
  )
    c.often = before.often;
  const last = w.facts.at(-1);
  if (
    c.often &&
    last &&
    !last.often &&
    c.places.length === 0 &&
    !c.items.some((it) => isContent(it) || it.k === 'day' || it.k === 'told' || it.k === 'unknown') &&
    (last.is === 'sign' || last.is === 'reading')
  )
    last.often = c.often.v;
  // "much play, 2 mm": a measure that found no number in its clause takes the one that opens the next
  const head = c.items.find((it) => !skippable(it));
  if (
    w.waiting &&
    before &&
    !before.hard &&
    head?.k === 'num' &&
    head.unit !== null &&
    (measureDims[w.waiting.v] ?? []).includes(dimensionOf(head.unit)) &&
    !c.items.some((it) => it.k === 'measure' || it.k === 'place')
  )
    c.measure = w.waiting;
  // "camber: lr fwd -0.3, lr aft 0.4": a heading holds until something else is measured
  if (w.heading && !c.items.some((it) => it.k === 'measure')) c.measure ??= w.heading;
  else w.heading = null;
  const real = c.items.filter((it) => !skippable(it));
  // "rear toe: LR fwd 0.1 in": an end may stand before it
  const lead = real[0];
  const head0 =
    real.length === 1
      ? lead
      : real.length === 2 && lead?.k === 'place' && !lead.p.side && !lead.p.part
        ? real[1]
        : undefined;
  if (
    head0?.k === 'measure' &&
    !c.hard &&
    ['camber', 'toe', 'height', 'load', 'voltage', 'voltage drop', 'current'].includes(head0.v)
  ) {
    w.heading = head0;
    use(w, head0);
  }
  const idle = c.items.findLast((it): it is Measured => it.k === 'measure');
  w.waiting = idle && !c.items.some((it) => it.k === 'num') ? idle : null;
  // "camber 0.5 degree, the top is in": which way, said after it
  const [way] = real;
  const leaned = w.facts.at(-1);
  if (
    real.length === 1 &&
    way?.k === 'dir' &&
    leaned?.is === 'reading' &&
    (leaned.what.v === 'camber' || leaned.what.v === 'toe') &&
    leaned.amount.v.si > 0 &&
    way.v === 'out'
  )
    leaned.amount = {
      ...leaned.amount,
      v: { ...leaned.amount.v, si: -leaned.amount.v.si },
      spans: [...leaned.amount.spans, way.span],
    };
  if (real.length === 1 && way?.k === 'dir') use(w, way);
  if (w.waiting?.v === 'free play' && c.places.length === 1) w.subject = locOf(w, c.items[c.places[0]!] as PlaceItem);
  if (w.waiting?.v === 'delay') w.lastMeasure = 'delay';
  // "bounces and wanders on the highway": both
  const lastFact = w.facts.at(-1);
  if (
    before?.joined &&
    c.often &&
    !before.often &&
    lastFact?.is === 'sign' &&
    !lastFact.often &&
    c.places.length === 0 &&
    before.items.some((it) => it.k === 'sign') &&
    c.items.indexOf(c.often) > c.items.findIndex((it) => it.k === 'sign')
  )
    lastFact.often = c.often.v;
  askSides(w, c);
  for (const i of c.places) w.lastEnd = (c.items[i] as PlaceItem).p.end ?? w.lastEnd;
  readFuse(w, c);
  if (readSpec(w, c)) return;
  const placeOnly =
    c.places.length > 0 && !c.items.some((it) => isContent(it) || it.k === 'neg' || it.k === 'hedge' || it.k === 'day');
  if (placeOnly) {
    const item = c.items[c.places[0]!] as PlaceItem;
    const same = c.items.some(
      (it) => /^(?:same|ditto)$/.test(phraseOf(it)) || (it.k === 'unknown' && it.low === 'ditto'),
    );
    if (same) {
      use(w, item);
      return;
    }
    if ((before?.joined || lists(w, c, before, after)) && readShared(w, c)) return;
    const said = locOf(w, item);
    const kin = w.subject?.p.part;
    // "not the right bag, only left": the same part
    const loc =
      kin && sideable.has(kin) && w.subject?.p.side && said.p.side && !said.p.part && !said.p.end && kin !== 'tyre'
        ? { ...said, p: tidy({ ...said.p, part: kin }) }
        : said;
    // "found the leak, o/s supply fitting": where it was, said after it
    const last = w.facts.at(-1);
    if (
      last?.is === 'sign' &&
      (last.where.v === '' ||
        (last.where.v === 'coach' && last.where.from === 'assumed' && loc.p.side && !loc.p.part)) &&
      before &&
      !before.hard &&
      !c.joined
    )
      last.where = whereOf(loc);
    if (c.joined) w.pending.push(loc);
    if (loc.p.part && !c.hard) w.listed.push(loc);
    w.subject = loc;
    w.group = [];
    return;
  }
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
  readDoubt(w, c);
  const lasted = c.items.find(
    (it): it is Amounting =>
      it.k === 'num' && it.unit !== null && dimensionOf(it.unit) === 'duration' && !w.used.has(it),
  );
  w.spell =
    lasted &&
    c.items.some(
      (it, i) =>
        (it.k === 'cond' && /^(?:panel|settled|key|tank outlet|pump running|arm)/.test(it.v)) ||
        (it.k === 'sign' && it.phrase === 'hold' && c.items[i - 1] === lasted),
    )
      ? lasted
      : null;
  w.planned = c.joined && (w.planned || planned(c, c.items.length));
  if (!c.joined) w.pending = [];
  w.listed = [];
};

/** "bubbles at the crimp, none at the fitting": a bag's fitting, and the line after a bag, are its own. */
const sameLine = (facts: readonly Fact[]): void => {
  facts.forEach((f, i) => {
    const side = f.where.from === 'carried' ? /^(left|right|both) (?:fitting|line)$/.exec(f.where.v)?.[1] : undefined;
    if (side && facts.slice(0, i).some((g) => g.where.v.startsWith(`${side} bellows`)))
      f.where = { ...f.where, v: `${side} bellows line` };
  });
};

/** "tank drained, 150 ml out": water let out is a work, not a state. */
const letOut = (facts: Fact[]): void => {
  if (!facts.some((f) => f.is === 'reading' && f.what.v === 'water drained')) return;
  facts.forEach((f, i) => {
    if (f.is !== 'condition' || f.what.v !== 'tank drained' || !f.holds) return;
    const { holds, ...rest } = f;
    facts[i] = {
      ...rest,
      is: 'work',
      what: { ...f.what, v: 'drained' },
      where: { v: 'tank', from: 'said', spans: f.what.spans },
      done: holds,
    };
  });
};

/** Reads settled items into facts. State lives in the walk; nothing outlives it. */
export const readClauses = (all: readonly Settled[], text: string, context: Context): ClauseResult => {
  const w = startWalk(all, text, context);
  const clauses = clausesOf(all).flatMap((c, i, list) => soapedToo(c, list[i - 1]));
  clauses.forEach((c, i) => {
    readClause(w, c, clauses[i - 1], clauses.slice(i + 1, i + 6));
    if (c.hard) {
      w.heading = null;
      w.told = false;
      w.spec = false;
    }
  });
  sameLine(w.facts);
  letOut(w.facts);
  return { facts: w.facts, ambiguous: w.ambiguous, used: w.used };
};
