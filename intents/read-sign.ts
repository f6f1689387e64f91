/** Signs: what was seen, heard or felt, where, and whether it was denied. */
import { denied, nextReal } from './near.ts';
import { readFall } from './read-fall.ts';
import { readLowBy } from './read-off.ts';
import { dayWhen } from './read-condition.ts';
import type { PlaceItem } from './settled.ts';
import type { Sign } from './shapes.ts';
import { fleeting, holdTest, noSignAt, type SignAt, type SignItem } from './no-sign.ts';
import { pumpParts, atPart, straightParts } from './sign-meaning.ts';
import { ofCorner, unknownThing, unknownLead, unknownIn, placeOfSign } from './sign-place.ts';
import { assumed, carried, phraseOf, said, use, whereOf, wordOf, type Clause, type Draft, type Walk } from './walk.ts';
import { sideable } from './sideable.ts';
import { tidy } from './merge-places.ts';
import { takePlace } from './place.ts';
import { coachSides } from './dims.ts';
import { push } from './push.ts';
import { locOf } from './loc.ts';
import { share } from './share.ts';
import { ofAir } from './words/fits.ts';
import { opposites, pumpSigns } from './words/signs.ts';

/** Where air is felt for by hand to see whether the pump moves any. */
const delivers: ReadonlySet<string> = new Set(['intake filter', 'discharge line', 'pump head']);

/** Where quiet says that nothing runs. */
const pumpSide: ReadonlySet<string> = new Set([
  'coach',
  'pump',
  'motor',
  'relay',
  'shock',
  'axle',
  'wheel',
  'wheel bearing',
]);

/** Reads the sign at `index`; the index after what it took. */
export const readSign = (w: Walk, c: Clause, index: number): number => {
  const item = c.items[index] as SignItem;
  if (w.used.has(item)) return index + 1;
  const quiet = item.v === 'hiss' && /quiet|silent/.test(item.phrase);
  const isDry = quiet || (item.v === 'bubbles' && /\bdry$/.test(item.phrase));
  // "both exhausts quiet": only where air is listened for
  if (quiet && !c.places.some((i) => !pumpSide.has((c.items[i] as PlaceItem).p.part ?? 'coach'))) return index + 1;
  // "ramp is dry": of nothing that is soaped or drained
  const wetted = (p?: string): boolean => p !== undefined && !['floor', 'coach', 'ambient', 'water tank'].includes(p);
  const soapedHere = w.facts.some(
    (f) =>
      (f.is === 'work' && f.what.v === 'soaped') ||
      (f.is === 'sign' && f.there && ['bubbles', 'leaks', 'hiss'].includes(f.what.v)),
  );
  if (isDry && !quiet && !c.places.some((i) => wetted((c.items[i] as PlaceItem).p.part)) && !soapedHere)
    return index + 1;
  const refused = denied(c, index);
  let neg = isDry ? (refused ? null : item) : refused;
  // "the drain stopped leaking", "quit hissing": no more
  const ceased = c.items[index - 1];
  if (
    !neg &&
    ceased &&
    fleeting.includes(item.v) &&
    /ing$/.test(item.phrase) &&
    /^(?:stopped|stops|quit|quits|ceased|done|finished|no longer|not anymore)$/.test(
      ceased.k === 'unknown' ? ceased.low : phraseOf(ceased),
    )
  ) {
    use(w, ceased);
    neg = ceased;
  }
  // "cap it so it quits hissing": what for
  if (
    neg &&
    neg === ceased &&
    /\bso (?:that )?(?:it|they|she|he)? ?$/i.test(w.text.slice(0, ceased.span[0]).slice(-12))
  )
    return index + 1;
  const at: SignAt = { w, c, index, item, neg };
  if (holdTest(at)) {
    use(w, item);
    return index + 1;
  }
  if (item.v === 'pulls' && /^pulls?$/.test(item.phrase) && c.items[nextReal(c, index)]?.k === 'num') return index + 1;
  // "a steady stream of bubbles": how they come
  if (item.v === 'holds' && item.phrase === 'steady' && ['unknown', 'sign'].includes(c.items[index + 1]?.k ?? '')) {
    use(w, item);
    return index + 1;
  }
  // "should hold": hoped for, not seen
  if (
    item.v === 'holds' &&
    /\b(?:should|shoulda|ought to|better|hopefully|hope it|hoping it|might|gotta|must)(?: be)? $/i.test(
      w.text.slice(Math.max(0, item.span[0] - 14), item.span[0]),
    )
  )
    return index + 1;
  // "the problem stayed on the left": no coach that holds
  const thing = c.items[index - 1];
  if (
    item.v === 'holds' &&
    thing?.k === 'unknown' &&
    /^(?:problem|trouble|fault|complaint|symptom|issue|noise|lean)$/.test(thing.low)
  )
    return index + 1;
  // "no pressure at the left test port", "no air from the exhaust": of that place, not of the pump
  if (item.v === 'no air' && /^no (?:air|pressure)$/.test(item.phrase) && c.items[index + 1]?.k === 'prep') {
    const of = c.items[nextReal(c, index)];
    const part = of?.k === 'place' ? of.p.part : undefined;
    // "no air to rear": it does not come up
    if (of?.k === 'place' && coachSides(of.p) && phraseOf(c.items[index + 1]) === 'to') {
      const loc = locOf(w, of);
      push(w, { is: 'sign', what: said('does not fill', item), there: true }, loc, item);
      w.subject = loc;
      return c.items.indexOf(of) + 1;
    }
    // "no air at the port": of something that has no name here
    if (/^(?:the|that|a|this)$/.test(phraseOf(c.items[index + 2])) && c.items[index + 3]?.k === 'unknown')
      return index + 1;
    // "no air to the dash gauge": its line, which nobody named
    if (part === 'gauge') return index + 1;
    if (of?.k === 'place' && part !== undefined && !pumpParts.includes(part) && !delivers.has(part)) {
      const led = phraseOf(c.items[index + 1]);
      const flat = (part === 'bellows' || part === 'tyre') && led === 'in';
      const starved = part === 'bellows' && /^(?:to|into|at)$/.test(led) && item.phrase === 'no air';
      if (part === 'exhaust port' || flat || starved) {
        const loc = locOf(w, of);
        push(
          w,
          {
            is: 'sign',
            what: said(starved ? 'does not fill' : flat ? 'flat' : 'exhausts', item),
            there: flat || starved,
          },
          loc,
          item,
        );
        w.subject = loc;
        return c.items.indexOf(of) + 1;
      }
      if ((part !== 'bellows' && part !== 'tyre') || phraseOf(c.items[index + 1]) === 'at') return index + 1;
    }
  }
  // "right valve: no air in with the arm up": of what was spoken of
  if (
    item.phrase === 'no air' &&
    phraseOf(c.items[index + 1]) === 'in' &&
    w.subject?.p.part !== undefined &&
    !pumpParts.includes(w.subject.p.part)
  )
    return index + 1;
  // "the left bag no have pressure": the bag is flat, the pump was not spoken of
  const bearer = c.places
    .filter((i) => i < index)
    .map((i) => c.items[i] as PlaceItem)
    .at(-1);
  if (item.v === 'no air' && /pressure$|^no air$/.test(item.phrase) && bearer?.p.part === 'bellows') {
    const loc = locOf(w, bearer);
    push(w, { is: 'sign', what: said('flat', item), there: true }, loc, item);
    w.subject = loc;
    return index + 1;
  }
  const changed = readFall(w, c, index) ?? readLowBy(w, c, index);
  if (changed !== null) return changed;
  const items = c.items;
  const none = noSignAt(at);
  if (none) {
    if (!none.unread) use(w, item);
    return index + 1;
  }
  const prev = items[index - 1];
  const ahead = items[nextReal(c, index)];
  // "pulls to the left": which way, not where
  if (item.v === 'pulls') for (const i of c.places) if (i > index && !(items[i] as PlaceItem).p.part) c.taken.add(i);
  // "tyres 830 kPa cold": how they were measured
  const gauged = w.lastReading;
  if (
    (item.v === 'cold' || item.v === 'hot') &&
    prev?.k === 'num' &&
    w.used.has(prev) &&
    gauged &&
    !gauged.often &&
    /tyre$/.test(gauged.where.v)
  ) {
    gauged.often = item.v;
    use(w, item);
    return index + 1;
  }
  // "bubbles gone", "leak stopped": looked for and not found any more
  let end = index + 1;
  while (
    items[end]?.k === 'filler' &&
    /^(?:is|are|was|were|has|have|had|now|all|just|then|since|again|anywhere)$/.test(phraseOf(items[end]))
  )
    end += 1;
  const ended = items[end] ?? null;
  const endWord = ended?.k === 'unknown' ? ended.low : phraseOf(ended ?? undefined);
  if (
    !neg &&
    ended &&
    (fleeting.includes(item.v) ||
      (['leans', 'sags', 'bounces', 'short cycles', 'wanders', 'pulls'].includes(item.v) &&
        /gone|away|cured|stopped/.test(endWord))) &&
    /^(?:gone|all gone|stopped|stops|went away|cleared|cured|disappeared|none|none found|nothing found)$/.test(endWord)
  ) {
    use(w, ended);
    neg = ended;
  }
  let name: Sign = prev?.k === 'sign' && prev.v === 'hiss' && item.v === 'leaks' && w.used.has(prev) ? 'hiss' : item.v;
  // "raise does nothing": of the pump only where the pump is spoken of
  const pumpTold =
    w.subject?.p.part === 'pump' || c.places.some((i) => pumpParts.includes((items[i] as PlaceItem).p.part ?? ''));
  if (
    /^(?:does nothing|doesnt do anything|no response|no sound|no noise|no life|no go|nothing happens)$/.test(
      item.phrase,
    ) &&
    !pumpTold
  ) {
    // "panel in raise, nothing happens at rr": it does not come up
    const panel = w.facts.findLast((f) => f.is === 'condition')?.what.v;
    const asked = panel === 'panel fill' || panel === 'panel empty';
    const side = c.places.find((i) => coachSides((items[i] as PlaceItem).p));
    if (asked && side !== undefined) {
      const at = locOf(w, items[side] as PlaceItem);
      const name = panel === 'panel fill' ? 'does not fill' : 'does not empty';
      push(w, { is: 'sign', what: said(name, item), there: true }, at, item);
      w.subject = at;
      return Math.max(index, side) + 1;
    }
    if (item.phrase === 'no noise' && w.lastWork === 'road tested')
      push(w, { is: 'sign', what: said('noisy', item), there: false }, assumed({ part: 'coach' }), item);
    return index + 1;
  }
  let loc = placeOfSign(w, c, index, name);
  // "comp keeps cutting in, loses air": not the pump does
  if (loc?.p.part === 'pump' && loc.from !== 'said' && /^(?:los|loos|wont hold|doesnt hold)/.test(item.phrase))
    loc = null;
  const looked = w.subject?.p.part;
  if (item.phrase === 'straight' && looked && straightParts.has(looked) && loc?.from !== 'said')
    loc = carried(w.subject);
  // "it takes too long": only a part can be too long
  if (name === 'wrong part' && / (?:long|short)$|than/.test(item.phrase) && loc?.p.part !== 'shock') return index + 1;
  // "cycles normal now": as often as it should, not short
  if (
    name === 'short cycles' &&
    /^(?:cycles|cycling|cycle)$/.test(item.phrase) &&
    ahead?.k === 'sign' &&
    (ahead.v === 'ok' || ahead.v === 'works') &&
    !neg
  ) {
    neg = ahead;
    use(w, ahead);
  }
  // "restarts fine": against the pressure it stopped at
  if (name === 'starts' && /^restart/.test(item.phrase))
    c.often ??= { k: 'often', v: 'restart', span: item.span, phrase: item.phrase };
  // "left bags and line soaped no bubbles": the line that was soaped, with its side
  const worked = w.facts.findLast((f) => f.is === 'work');
  const soaped = worked?.what.v === 'soaped' ? takePlace(worked.where.v) : null;
  if (loc && !loc.p.side && loc.p.part !== undefined && soaped?.part === loc.p.part && soaped.side)
    loc = { ...loc, p: soaped, from: 'carried' };
  // "offside bellows and shock ok": that side's shock
  const beside = w.pending.at(-1)?.p;
  if (loc && beside?.side && beside.part && !loc.p.side && loc.p.part !== undefined && sideable.has(loc.p.part))
    loc = { ...loc, p: tidy({ ...loc.p, side: beside.side }), from: 'carried' };
  // "both links on and straight": the links, whose name the state has taken
  const on = w.facts.at(-1);
  if (item.phrase === 'straight' && !loc?.p.part && on?.is === 'condition' && on.what.v === 'link connected')
    loc = { p: tidy({ ...loc?.p, part: 'link' }), from: 'carried', spans: loc?.spans ?? [] };
  if (
    (['hot', 'cold', 'warm'].includes(name) && (loc === null || loc.p.part === 'coach' || loc.p.part === undefined)) ||
    (name === 'reads wrong' && /^(?:lying|lies|is lying)$/.test(item.phrase) && loc?.item?.p.part !== 'gauge')
  ) {
    use(w, item);
    return index + 1;
  }
  if (name === 'leans' || (name === 'sags' && loc?.p.part === 'coach')) {
    const to = c.places.find(
      (i) =>
        i > index &&
        (c.items[i] as PlaceItem).p.side !== undefined &&
        (/ to$/.test(item.phrase) ||
          (i === index + 1 && (c.items[i] as PlaceItem).p.part === undefined) ||
          /^(?:to|toward|towards|on)$/.test(phraseOf(c.items.slice(index + 1, i).findLast((it) => it.k === 'prep')))),
    );
    if (to !== undefined) loc = locOf(w, c.items[to] as PlaceItem);
  }
  // "upper shock mount broke": the mount, which nobody knows
  const named = items[index - 1];
  const bearerAt = c.places.filter((i) => i < index).at(-1);
  if (
    ['broken', 'cracked', 'bent', 'missing', 'corroded', 'not working'].includes(name) &&
    named?.k === 'unknown' &&
    /^(?:mount|mounts|bracketry|sensor|strap|clip|grommet|shackle|eye|cap|boot|housing|tab|hanger)$/.test(named.low) &&
    bearerAt === index - 2
  )
    return index + 1;
  if (loc && !loc.p.part && !ofCorner.has(name) && !pumpSigns.has(name) && unknownThing(c, index)) return index + 1;
  if (loc?.from !== 'said' && !pumpSigns.has(name) && unknownLead(c, index)) return index + 1;
  if (loc === null && unknownIn(c, index)) return index + 1;
  const prior = w.facts.at(-1);
  if (
    name === 'worn' &&
    prior?.is === 'sign' &&
    (prior.what.v === 'worn inside' || prior.what.v === 'worn outside') &&
    prior.there &&
    items.slice(0, index).some((it) => w.used.has(it) && it.k === 'sign')
  ) {
    use(w, item);
    if (prior.where.v === '' || prior.where.from !== 'said') prior.where = loc ? whereOf(loc) : prior.where;
    return index + 1;
  }
  if (
    wordOf(w) === 'told' &&
    !c.often &&
    loc?.from !== 'said' &&
    (name === 'ok' || name === 'not working') &&
    /^(?:good|ok|fine|bad|no good)$/.test(item.phrase)
  )
    return index + 1;
  // "soaped the tank fittings, all dry": no bubbles
  const joints = c.places
    .map((i) => c.items[i] as PlaceItem)
    .find((it) => /^(?:fitting|line|bellows line|supply line)$/.test(it.p.part ?? ''));
  if (isDry && joints && loc?.p.part === 'tank') loc = locOf(w, joints);
  // "leaking at the exhaust, tank 0, still hissing": where it was
  const heard = w.facts.findLast((f) => f.is === 'sign' && ofAir.has(f.what.v) && f.there);
  if (
    ofAir.has(name) &&
    heard?.is === 'sign' &&
    loc?.p.part === 'tank' &&
    phraseOf(prev) === 'still' &&
    loc.spans.some((s) => s[1] < item.span[0])
  )
    loc = { p: takePlace(heard.where.v) ?? {}, from: 'carried', spans: [] };
  const soapDry = isDry && soapedHere && loc?.from !== 'said';
  if (!soapDry) name = atPart(name, loc?.p.part ?? (loc?.p.side || loc?.p.end ? 'coach' : undefined), item.phrase);
  if (
    loc?.p.part === 'fuse' &&
    ['burnt', 'blown', 'tripped'].includes(name) &&
    (c.often?.v === 'restart' ||
      /^(?:pops|pop|popping|burns)$/.test(item.phrase) ||
      (item.phrase === 'burn' && !/\bis $/i.test(w.text.slice(0, item.span[0]).slice(-4)))) &&
    !neg
  )
    name = 'blows fuse';
  if (name === 'blows fuse') {
    loc = assumed({ part: 'pump' });
    for (const it of items) if (it.k === 'place' && ['fuse', 'pump', 'breaker'].includes(it.p.part ?? '')) use(w, it);
  }
  if (name === 'worn' && loc?.p.part === 'tyre') {
    const edge = items.find((it) => /^(?:inside|inner|inner edge|inside edge)$/.test(phraseOf(it)));
    const outer = items.find((it) => /^(?:outside|outer|outer edge|outside edge)$/.test(phraseOf(it)));
    if (edge) name = 'worn inside';
    else if (outer) name = 'worn outside';
  }
  if (name === 'level' && loc?.p.part === 'floor') {
    push(w, { is: 'condition', word: 'own', what: said('floor level', item), holds: !neg }, null, item);
    use(w, neg);
    return index + 1;
  }
  // "the bogie is on its stops": that end of the coach
  if (loc?.p.part === 'axle' && ['on stops', 'low', 'high', 'sags', 'rises', 'holds'].includes(name))
    loc = { ...loc, p: { ...(loc.p.side ? { side: loc.p.side } : {}), end: loc.p.end ?? 'rear' } };
  if (name === 'leans' && loc && !loc.p.side && !loc.p.end && loc.p.part !== 'coach') loc = assumed({ part: 'coach' });
  if (
    name === 'level' &&
    loc?.from !== 'said' &&
    ['link', 'arm', 'height valve', 'bellows line'].includes(loc?.p.part ?? '')
  )
    loc = assumed({ part: 'coach' });
  // "rr 13 1/4 now, sits level": the coach does
  if (name === 'level' && loc?.from === 'carried' && !loc.p.part && loc.p.end && w.facts.at(-1)?.is !== 'sign')
    loc = assumed({ part: 'coach' });
  // a pull is the coach's, wherever it goes
  if ((name === 'pulls' || name === 'wanders') && loc && !loc.p.part) loc = assumed({ part: 'coach' });
  // what leaks oil at a corner is its shock
  if (name === 'leaks oil' && loc && !loc.p.part && loc.p.side) loc = { ...loc, p: { ...loc.p, part: 'shock' } };
  // "bangs from the rear and it bounces": the coach does
  if (name === 'bounces' && loc?.from === 'carried' && !loc.p.part && !loc.p.side) loc = assumed({ part: 'coach' });
  // "road tested, ok"
  if (name === 'ok' && loc?.from !== 'said' && w.facts.at(-1)?.is === 'work' && w.lastWork === 'road tested')
    loc = assumed({ part: 'coach' });
  if (['level', 'sags', 'bounces'].includes(name) && loc && !loc.p.part && !loc.p.side && !loc.p.end)
    loc = assumed({ part: 'coach' });
  if (name === 'drops' && c.often?.v === 'standing' && loc && (loc.p.part === 'coach' || !loc.p.part)) name = 'sags';
  if (name === 'sags' && loc?.p.part === 'tank') name = 'drops';
  if (name === 'fills' && c.often?.v === 'driving' && loc && (loc.p.part === 'coach' || loc.p.part === undefined))
    name = 'comes up driving';
  if (neg && opposites[name]) {
    if (name === 'ok' && loc?.p.part === undefined) {
      use(w, item, neg);
      return index + 1;
    }
    name = opposites[name]!;
    use(w, neg);
    neg = null;
  }
  // "no hiss anywhere"
  const where = items[index + 1];
  if (
    /^(?:anywhere|nowhere|all round|all over)$/.test(where?.k === 'unknown' ? where.low : phraseOf(where)) &&
    loc?.from !== 'said' &&
    ['hiss', 'leaks', 'noisy'].includes(name)
  ) {
    use(w, where);
    loc = assumed({ part: 'coach' });
  }
  // "bounces and wanders on the road"
  if (!c.often && / on the (?:road|highway|motorway)$/.test(item.phrase)) {
    c.often = { k: 'often', v: 'driving', span: item.span, phrase: item.phrase };
    const before = w.facts.at(-1);
    if (before?.is === 'sign' && !before.often && c.places.length === 0) before.often = 'driving';
  }
  if (!c.often && /overnight|over night/.test(item.phrase) && ['sags', 'drops', 'low'].includes(name) && w.told)
    c.often = { k: 'often', v: 'standing', span: item.span, phrase: item.phrase };
  const often =
    c.often && name !== 'comes up driving' && !(name === 'runs constantly' && c.often.v === 'always')
      ? c.often.v
      : null;
  const draft: Draft = {
    is: 'sign',
    what: said(name, item),
    there: !neg,
    ...(often ? { often } : {}),
    ...dayWhen(w, c, index),
  };
  const alone =
    loc !== null &&
    loc.from !== 'said' &&
    loc.spans.length === 0 &&
    w.group.length > 1 &&
    w.subject !== null &&
    !c.places.some((i) => i < index);
  if (alone) for (const g of w.group) push(w, { ...draft, where: whereOf(carried(g)) }, null, item);
  else {
    share(w, push(w, draft, loc, item));
    // "drain, relief, gauge line no bubbles", "soaped tank, drain, switch: no bubbles": none at any of them
    const looked = w.lastWork === 'soaped' && !c.places.some((i) => i < index);
    if (neg && loc && (loc.from === 'said' || looked) && ['bubbles', 'leaks', 'hiss'].includes(name)) {
      const soaped = looked ? w.facts.findLast((f) => f.is === 'work' && f.what.v === 'soaped') : undefined;
      const places = [...(soaped && w.listed.length > 0 ? [soaped.where] : []), ...w.listed.map(whereOf)];
      for (const where of places)
        if (where.v !== whereOf(loc).v) push(w, { ...draft, where: { ...where, from: 'carried' } }, null, item);
    }
  }
  w.listed = [];
  if (neg) use(w, neg);
  if (loc && !pumpSigns.has(name) && (loc.from === 'said' || loc.item?.p.part)) w.subject = loc;
  // "fuse blew, put a new one in": of the fuse
  else if (name === 'blows fuse') w.subject = assumed({ part: 'fuse' });
  else if (loc && pumpSigns.has(name)) w.subject ??= loc;
  else if (loc && !w.subject) w.subject = loc;
  w.lastSign = name;
  if (items[index + 1]?.k === 'sign' && (items[index + 1] as SignItem).v === name) use(w, items[index + 1]);
  return items[index + 1]?.k === 'sign' && w.used.has(items[index + 1]!) ? index + 2 : index + 1;
};
