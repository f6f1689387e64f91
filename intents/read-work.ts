/** Work done, planned or left. */
import type { Span, When } from './shapes.ts';
import { months } from './words/cues.ts';
import { tidy } from './merge-places.ts';
import { makePlace } from './place.ts';
import { saidFlatly } from './certain.ts';
import { denied, find, nextReal, placeAt } from './near.ts';
import { dayWhen } from './read-condition.ts';
import type { PlaceItem, Settled } from './settled.ts';
import { carried, phraseOf, said, use, whereOf, type Clause, type Draft, type Loc, type Walk } from './walk.ts';
import { push } from './push.ts';
import { undone } from './undone.ts';
import { locOf } from './loc.ts';
import { share } from './share.ts';
import { sideable } from './sideable.ts';

type WorkItem = Extract<Settled, { k: 'work' }>;

const plans =
  /^(?:ordered|ordering|order|quoted|quote|awaiting|waiting for|waiting on|on order|to be|gonna|going to|going|will|ill|need to|needs to|need|needs|have to|plan to|want to|want|wanna|lets|let me|about to|should|next|try|got to|then ill|might|could)$/;

const lookOnly =
  /^(?:check|test|inspect|inspected|examined|went over|gone over|had a look at|looked over|checked|checking|looked at|drop|set the|levelled|leveled|traced|trace|tested|inv|chk|verified)$/;

const takesAfter = (w: Walk, c: Clause, index: number): Loc | null => {
  // "adjusting link two turns": what stands right after it
  const at = nextReal(c, index);
  const next = c.items[at];
  if (
    next?.k === 'place' &&
    next.p.part !== undefined &&
    !next.p.side &&
    !c.taken.has(at) &&
    !c.items.slice(index + 1, at).some((it) => it.k === 'prep')
  ) {
    c.taken.add(at);
    return locOf(w, next);
  }
  // "drained 1 pint from the tank": out of what, behind how much
  if (next?.k === 'num' && /^(?:from|out of|off)$/.test(phraseOf(c.items[at + 1]))) {
    const source = c.items[nextReal(c, at + 1)];
    if (source?.k === 'place' && source.p.part !== undefined) return locOf(w, source);
  }
  const near = placeAt(c, index, true);
  // "aired it up off the shop line": by what, not what
  const source =
    near?.after === true &&
    c.items.slice(index + 1, near.index).some((it) => /^(?:off|from|with|using|by)$/.test(phraseOf(it))) &&
    ['pumped up', 'inflated', 'cleaned', 'tapped'].includes((c.items[index] as WorkItem).v);
  // "zip tied it to the frame": what it was tied to
  const tiedTo =
    near?.after === true &&
    /\b(?:tied|clipped|strapped|secured|clamped|fixed) (?:it|them) to (?:the )?$/i.test(
      w.text.slice(0, near.item.span[0]).slice(-26),
    );
  if (tiedTo) {
    c.taken.add(near.index);
    return null;
  }
  if (near?.after && !source) return find(w, c, index, true);
  const before = c.places.filter((i) => i < index && !c.taken.has(i)).at(-1);
  if (before !== undefined) return locOf(w, c.items[before] as PlaceItem);
  return null;
};

/** A side and no part of it that was shut off: what shuts a side is its control on the panel. */
const shutSide = (c: Clause, index: number): PlaceItem | null => {
  const item = c.items[index] as WorkItem;
  if (item.v !== 'closed') return null;
  const sideOnly = (it: Settled | undefined): it is PlaceItem =>
    it?.k === 'place' && it.p.side !== undefined && it.p.part === undefined && it.p.end === undefined;
  const before = c.items[index - 1];
  if (sideOnly(before)) return before;
  const next = c.items[nextReal(c, index)];
  return sideOnly(next) && !c.taken.has(c.items.indexOf(next)) ? next : null;
};

/** "bag cover removed": of the bag, and not the bag. */
const ofItsOwn = (c: Clause, index: number): boolean => {
  const noun = c.items[index - 1];
  const owner = c.items[index - 2];
  return (
    noun?.k === 'unknown' &&
    /^(?!.*(?:ly|ed|ing)$|(?:bench|hand|twice)$)[a-z]{4,}$/.test(noun.low) &&
    owner?.k === 'place' &&
    owner.span[1] + 1 === noun.span[0] &&
    !c.places.some((i) => i > index)
  );
};

/** "soaped the grommets": what it was done on was said, and is not known. */
const unknownObject = (c: Clause, index: number): boolean => {
  const lead = c.items[index + 1];
  const thing = c.items.slice(index + 1).find((it) => !(it.k === 'filler' || it.k === 'prep'));
  return (
    (lead?.k === 'filler' && /^(?:the|a|an|all|both|my|his|her|every)$/.test(lead.phrase) && thing?.k === 'unknown') ||
    (lead?.k === 'unknown' && /^[a-z]{3,}s$/.test(lead.low))
  );
};

const monthDayForm = new RegExp(`^[^,.;\\n]{0,24}?\\b((${months.join('|')})[a-z]* (\\d{1,2})(?:st|nd|rd|th)?)\\b`, 'i');
/** "drained august 2": how many days back that was, of the last such day; null when no day of a month follows. */
const monthDay = (w: Walk, from: number): When | null => {
  const m = monthDayForm.exec(w.text.slice(from, from + 50));
  const day = Number(m?.[3]);
  if (!m || day < 1 || day > 31) return null;
  const now = new Date(w.context.at);
  const month = months.indexOf(m[2]!.toLowerCase());
  const then = new Date(Date.UTC(now.getUTCFullYear(), month, day));
  if (then.getTime() > w.context.at) then.setUTCFullYear(then.getUTCFullYear() - 1);
  const span: Span = [from + m[0].length - m[1]!.length, from + m[0].length];
  return { text: w.text.slice(...span), day: Math.floor((w.context.at - then.getTime()) / 86_400_000), spans: [span] };
};

/** Reads the work at `index`; the index after what it took. */
export const readWork = (w: Walk, c: Clause, index: number): number => {
  const item = c.items[index] as WorkItem;
  const items = c.items;
  const road =
    item.v === 'road tested' ||
    item.v === 'overnight tested' ||
    item.v === 'weighed' ||
    item.v === 'washed' ||
    item.v === 'levelled';
  if (!road && ofItsOwn(c, index)) return index + 1;
  // "hits the frame when dumped": whenever that is, and nobody's work now
  if (/\bwhen(?:ever)? (?:its |it is |it's |fully |they are )?$/i.test(w.text.slice(0, item.span[0]).slice(-22)))
    return index + 1;
  // "last time they changed the left bag": once, and not now
  if (/\blast time (?:\S+ ){0,2}$/i.test(w.text.slice(Math.max(0, item.span[0] - 28), item.span[0]))) return index + 1;
  // "cleared air leak": gone, and nothing cleaned; "6 min test 8.0-7.8": a test's figures
  if (
    /^cleared/.test(item.phrase) &&
    /^ (?:the |an? )?(?:air )?(?:leak|fault|code|blockage|problem)/i.test(w.text.slice(item.span[1], item.span[1] + 24))
  )
    return index + 1;
  if (item.phrase === 'test' && items[index - 1]?.k === 'num') {
    use(w, item);
    return index + 1;
  }
  // "put new sealant on": of something that has no name here
  const thing = items[index + 1];
  if (
    /\bnew$/.test(item.phrase) &&
    item.phrase !== 'new' &&
    thing?.k === 'unknown' &&
    /^[a-z]{4,}$/.test(thing.low) &&
    !/(?:ly|ed|ing)$/.test(thing.low)
  )
    return index + 1;
  // "before filter + check": the check valve, or nothing
  if (item.phrase === 'check' && items.length === 1) return index + 1;
  // "closed WO": the paper
  if (
    item.v === 'closed' &&
    items[index + 1]?.k === 'unknown' &&
    /^(?:wo|ro|job|ticket|card|order|out)$/.test((items[index + 1] as { low: string }).low)
  ) {
    use(w, item);
    return index + 1;
  }
  // "recheck bolts at 500 miles": an order for later
  if (/^re-?check$/i.test(w.text.slice(...item.span)) && items.slice(0, index).every((it) => it.k === 'filler')) {
    for (const it of items) if (it.k === 'num') use(w, it);
    return index + 1;
  }
  // "protection valve opens at 65": what it does, nobody's work
  if (/^opens$/i.test(w.text.slice(...item.span)) && items[index - 1]?.k === 'place') {
    use(w, item);
    return index + 1;
  }
  // "took both rods loose to test": what for
  if (
    lookOnly.test(item.phrase) &&
    /\b(?:off|loose|out|apart|down|up|it|them|back) to $/i.test(w.text.slice(0, item.span[0]).slice(-12)) &&
    items[nextReal(c, index)] === undefined
  ) {
    use(w, item);
    return index + 1;
  }
  // "checked toe again after shims": what was measured
  if (lookOnly.test(item.phrase) && items.slice(index + 1, index + 3).some((it) => it.k === 'measure')) {
    use(w, item);
    return index + 1;
  }
  // "with left shut the tank comes up", "shut the left off at the panel": one control of the panel
  const side = shutSide(c, index);
  if (side) {
    c.taken.add(c.items.indexOf(side));
    push(
      w,
      { is: 'condition', what: { v: 'panel shut', from: 'assumed', spans: [item.span] }, holds: true },
      locOf(w, side),
      item,
    );
    for (const it of items) if (it.k === 'place' && it.p.part === 'panel') use(w, it);
    return index + 1;
  }
  // "put it back to road": the panel, and no repair
  if (
    item.v === 'reset' &&
    / to$/.test(item.phrase) &&
    ['cond', 'unknown'].includes(items[nextReal(c, index)]?.k ?? '')
  ) {
    use(w, item);
    return index + 1;
  }
  const place = road ? null : takesAfter(w, c, index);
  const another = item.v === 'levelled' && w.facts.some((f) => f.is === 'work');
  if (lookOnly.test(item.phrase) && !place && !w.subject && !another && !(road && c.places.length > 0)) {
    use(w, item);
    return index + 1;
  }
  // "tapped the relay, pump took off": it ran
  const led = items[index - 1];
  if (
    item.phrase === 'took off' &&
    led?.k === 'place' &&
    led.p.part === 'pump' &&
    items[nextReal(c, index)]?.k !== 'place'
  ) {
    push(w, { is: 'sign', what: said('starts', item), there: true }, locOf(w, led), item);
    return index + 1;
  }
  if (item.phrase === 'new' && w.lastWork === 'declined' && items.slice(0, index).some((it) => it.k === 'work')) {
    use(w, item);
    return index + 1;
  }
  if (item.phrase === 'new' && (!place || place.item === undefined || items.indexOf(place.item) < index)) {
    use(w, item);
    return index + 1;
  }
  if (
    ['repaired', 'tapped', 'removed', 'opened', 'closed'].includes(item.v) &&
    !place &&
    !w.subject &&
    w.context.recent.length === 0
  )
    return index + 1;
  // "went over to the tank": walked there
  if (/over$/.test(item.phrase) && /^ to\b/i.test(w.text.slice(item.span[1], item.span[1] + 4))) {
    use(w, item);
    return index + 1;
  }
  if (item.v === 'set' && !place) {
    use(w, item);
    return index + 1;
  }
  // "swapped the valves side to side": each is where the other was
  if (
    item.v === 'replaced' &&
    /^[^,.;\n]{0,40}(?:^ (?:the |my )?(?:hoses|lines|pipes|sides|gauges)\b|\bside to side|\b(?:l|left|lh) ?(?:&|and|with|for|\/) ?(?:r|right|rh)\b|left to right|left for right|with each other|over to the other)\b/i.test(
      w.text.slice(item.span[1], item.span[1] + 70),
    )
  )
    return index + 1;
  if (!place && !road && unknownObject(c, index)) {
    w.subject = null;
    w.group = [];
    return index + 1;
  }
  // "new one on order": not here yet
  if (
    /^[^,.;]{0,24}\b(?:on order|order\b|ordered|arriving|arrives|is coming|coming (?:tomorrow|monday|next)|to come)\b/i.test(
      w.text.slice(item.span[1], item.span[1] + 50),
    )
  ) {
    use(w, item);
    return index + 1;
  }
  const neg = denied(c, index);
  let loc: Loc | null = place ?? (road ? { p: { part: 'coach' }, from: 'assumed', spans: [] } : carried(w.subject));
  if (
    item.v === 'drained' &&
    (!loc ||
      !['tank', 'drain', 'dryer', 'bellows', 'line', 'supply line'].includes(loc.p.part ?? '') ||
      (loc.p.part === 'drain' && !place && items.some((it) => it.k === 'sign' && it.v === 'water')))
  )
    loc = { p: { part: 'tank' }, from: 'assumed', spans: [] };
  if (!loc && item.v === 'pumped up') loc = { p: { part: 'tank' }, from: 'assumed', spans: [] };
  if (loc && item.v === 'shimmed') {
    const named = items.find(
      (it, j): it is PlaceItem => j > index && it.k === 'place' && /^(?:bracket|control arm)$/.test(it.p.part ?? ''),
    );
    const bracket =
      named ??
      items.find(
        (it): it is PlaceItem =>
          it.k === 'place' &&
          (it.p.part === 'bracket' ||
            it.p.part === 'control arm' ||
            it.p.wheel !== undefined ||
            it.p.side !== undefined),
      );
    if (bracket) loc = locOf(w, bracket);
    else if (loc.p.part === 'shim') loc = carried(w.subject) ?? loc;
  }
  if (
    /\b(?:no|dont|didnt|wont|not) (?:need|have) to\s*$|\bno need (?:to|for)\s*$/i.test(
      w.text.slice(Math.max(0, item.span[0] - 24), item.span[0]).replace(/['’]/g, ''),
    )
  ) {
    use(w, item, neg);
    return index + 1;
  }
  const toBe = /\b(?:to be|must be|should be|has to be|have to be|needs|need|wants|awaiting|due for)\s*$/i.test(
    w.text.slice(Math.max(0, item.span[0] - 12), item.span[0]),
  );
  const later =
    item.phrase === 'new' &&
    /^[^,.;]{0,24}\b(?:to be (?:fitted|put|installed)|to fit|needed|required)\b/i.test(
      w.text.slice(item.span[1], item.span[1] + 50),
    );
  const plan =
    toBe ||
    (w.wanted && !items.slice(0, index).some((it) => it.k === 'place')) ||
    later ||
    items
      .slice(0, index)
      .some(
        (it) =>
          plans.test(phraseOf(it)) ||
          (it.k === 'unknown' &&
            /^(?:ordered|ordering|order|quoted|quote|quoting|awaiting|waiting|gonna|ill|wanna|gotta|theyll|well)$/.test(
              it.low,
            )),
      );
  const not = undone(
    w.text.slice(items[0]!.span[0], item.span[0]),
    w.text.slice(...item.span).toLowerCase(),
    w.text.slice(item.span[1], item.span[1] + 60),
  );
  if (not === 'idle' && !neg && !plan) {
    w.subject = place ?? w.subject;
    return index + 1;
  }
  const dated = monthDay(w, item.span[1]);
  const draft: Draft = {
    is: 'work',
    word: 'own',
    what: said(item.v, item),
    done: !neg && !plan && not === null,
    ...(dated ? { when: dated } : dayWhen(w, c, index)),
  };
  // what lets somebody work is said flatly or not at all: "hope he drained the tank"
  const opens =
    item.v === 'drained' ||
    item.v === 'vented' ||
    (item.v === 'removed' && /^(?:fuse|breaker)$/.test(loc?.p.part ?? ''));
  if (
    opens &&
    draft.done &&
    draft.when === undefined &&
    !saidFlatly(w.text, items[0]!.span[0], [item.span[0], place?.item?.span[1] ?? item.span[1]])
  )
    return index + 1;
  const shared = place && item.v === 'soaped' ? w.pending.filter((p) => p.p.part !== undefined) : [];
  if (!place && w.group.length > 1 && !road)
    for (const g of w.group) push(w, { ...draft, where: whereOf(carried(g)) }, null, item);
  else share(w, push(w, draft, loc, item));
  use(w, neg);
  if (loc && !road) w.subject = loc;
  if (place) w.group = [...shared, place];
  w.lastWork = item.v;
  w.lastSign = null;
  let i = index + 1;
  // "swapped out and fitted new": the second word of the same work
  while (items[i]?.k === 'work' && (items[i] as WorkItem).v === item.v) {
    use(w, items[i]);
    i += 1;
  }
  return i;
};

/** "soaped the crimp and fold": a place alone, joined to the work or sign before it, has it too. */
export const readShared = (w: Walk, c: Clause): boolean => {
  const last = w.facts.at(-1);
  const item = c.items.find((it): it is PlaceItem => it.k === 'place');
  if (!last || !item || (last.is !== 'work' && last.is !== 'sign')) return false;
  if (item.p.part === 'coach') return false;
  const loc = locOf(w, item);
  const s = w.subject?.p;
  let p = loc.p;
  if (!p.side && s?.side && p.part && p.part !== 'check valve' && sideable.has(p.part)) p = { ...p, side: s.side };
  if (!p.part && s?.part) p = { ...p, part: s.part };
  const done = tidy(p);
  const full: Loc = { ...loc, p: done };
  if (whereOf(full).v === last.where.v) return false;
  // "soaped L & R height valve": the part is of both
  const before = w.subject;
  if (
    before &&
    !before.p.part &&
    before.p.side &&
    done.part &&
    done.side &&
    before.p.side !== done.side &&
    last.where.v === before.p.side
  ) {
    last.where = { ...last.where, v: makePlace(tidy({ ...before.p, part: done.part })) };
    w.group = [];
  }
  w.group = [...(w.group.length > 0 ? w.group : w.subject ? [w.subject] : []), full];
  const shared = { ...last, where: whereOf(full), what: { ...last.what, from: 'carried' } } as typeof last;
  // "replaced the cartridge, pressure switch next": not yet
  if (shared.is === 'work' && c.items.some((it) => phraseOf(it) === 'next')) shared.done = false;
  push(w, shared, full, item);
  w.subject = full;
  return true;
};
