/** A clause that is a place and nothing else: a list goes on, what was said is placed, or what follows is of it. */
import { guesses } from './read-denial.ts';
import { locOf } from './loc.ts';
import { tidy } from './merge-places.ts';
import { isContent } from './near.ts';
import { readShared } from './read-work.ts';
import type { PlaceItem } from './settled.ts';
import type { Span } from './shapes.ts';
import { sideable } from './sideable.ts';
import { phraseOf, skippable, use, whereOf, type Clause, type Walk } from './walk.ts';

/** "3 leaks: ...": several of them, and a colon. */
const headsList = (text: string, said: Span | undefined): boolean =>
  said !== undefined && /s$/i.test(text.slice(...said)) && /^\s*:/.test(text.slice(said[1], said[1] + 3));

/** "soaped n/s bag, crimp and fold": a list goes on after a comma when it ends in "and". */
const lists = (w: Walk, c: Clause, before: Clause | undefined, after: readonly Clause[]): boolean => {
  const last = w.facts.at(-1);
  if (before === undefined || before.hard) return false;
  // a list ends in "and" or with its sentence; until there it is made of places alone
  const end = after.findIndex((a) => a.items.some((it) => isContent(it) || it.k === 'neg'));
  const tail = [c, ...after.slice(0, end < 0 ? after.length : end)].at(-1);
  // "soaped the valve, the bag, all dry": what was found is of them all; a figure would be of the last place
  const found = after[end]?.items.find((it) => !skippable(it));
  const told = found?.k === 'sign' || found?.k === 'neg';
  const worked = last?.is === 'work' && (tail?.hard || (told && last.what.v === 'soaped'));
  // "3 leaks: lr fitting, drain, panel nut": one at each
  if (last?.is === 'sign' && last.there && last.where.v !== '' && headsList(w.text, last.what.spans[0])) return true;
  if (!c.joined && !tail?.joined && !worked) return false;
  return (
    (last?.is === 'work' && (before.items.some((it) => it.k === 'work') || last.what.from === 'carried')) ||
    (last?.is === 'sign' && !last.there && before.items.some((it) => it.k === 'sign'))
  );
};

/** True when the clause was such a one. */
export const readPlaceOnly = (w: Walk, c: Clause, before: Clause | undefined, after: readonly Clause[]): boolean => {
  const placeOnly =
    c.places.length > 0 && !c.items.some((it) => isContent(it) || it.k === 'neg' || guesses(it) || it.k === 'day');
  if (!placeOnly) return false;
  const item = c.items[c.places[0]!] as PlaceItem;
  // "im on the left side now and the bag is ok": where somebody is
  if (
    /^\s*(?:so |and |ok |uh |um )*(?:i['’]?m|i am|we['’]?re|we are|looking|now) (?:\w+ ){0,2}(?:on|at|under|round|around|by) /i.test(
      w.text.slice(c.items[0]!.span[0], item.span[0] + 1),
    )
  ) {
    w.here = locOf(w, item);
    w.subject = w.here;
    w.group = [];
    return true;
  }
  // "reset the right, LH left alone"
  if (
    /^ (?:side |one )?(?:is |was |were )?(?:left alone|not touched|untouched|left as (?:is|it was)|never touched)\b/i.test(
      w.text.slice(item.span[1], item.span[1] + 28),
    )
  ) {
    w.subject = locOf(w, item);
    return true;
  }
  const same = c.items.some(
    (it) => /^(?:same|ditto)$/.test(phraseOf(it)) || (it.k === 'unknown' && it.low === 'ditto'),
  );
  if (same) {
    use(w, item);
    return true;
  }
  // "i could hear it through the intake filter": where it was heard, and nothing of that part
  if (
    c.items.some((it) => it.k === 'prep' && it.phrase === 'through') &&
    c.items.some((it) => /^(?:hear|heard)/.test(phraseOf(it)))
  ) {
    use(w, item);
    return true;
  }
  // "then i got to the panel": where somebody went
  const went =
    c.items.some((it) => /^(?:i|we)$/.test(phraseOf(it))) &&
    c.items.some((it) => /^(?:got|went|came|go|moved)$/.test(phraseOf(it)));
  if (!went && (before?.joined || lists(w, c, before, after)) && readShared(w, c)) return true;
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
    (last.where.v === '' || (last.where.v === 'coach' && last.where.from === 'assumed' && loc.p.side && !loc.p.part)) &&
    before &&
    !before.hard &&
    !c.joined
  )
    last.where = whereOf(loc);
  if (c.joined) w.pending.push(loc);
  if (loc.p.part && !c.hard) w.listed.push(loc);
  w.subject = loc;
  w.group = [];
  return true;
};
