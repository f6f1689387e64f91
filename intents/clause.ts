/** Reads settled items into facts: walks each clause, finds each thing's place, carries subject, side and unit forward. */
import { dimensionOf, stepToSi, toSi, type Dimension, type Unit } from '../server/core/units.ts';
import { dimension, type Amounting } from './items.ts';
import { heightRange, plausible } from './limits.ts';
import { makePlace, takePlace, type PlaceParts } from './place.ts';
import type { PlaceItem, Settled } from './settle.ts';
import { tidy } from './settle.ts';
import type { Ambiguity, Context, Fact, Measure, Said, Sign, Span, When, Work } from './shapes.ts';
import { sideable } from './sideable.ts';
import { opposites, placeAfter, pumpSigns, signHomes } from './words/signs.ts';

type Loc = { p: PlaceParts; from: 'said' | 'carried' | 'assumed'; spans: Span[] };
type AmountSaid = Said<Extract<Fact, { is: 'reading' }>['amount']['v']>;
type Partial0 = Omit<Fact, 'id' | 'at'>;

export type ClauseResult = { facts: Fact[]; ambiguous: Ambiguity[]; used: Set<Settled> };

const phraseOf = (item: Settled | undefined): string => (item && 'phrase' in item ? item.phrase : '');
const skippable = (item: Settled | undefined): boolean => item?.k === 'filler' || item?.k === 'prep';

const amountOf = (n: Amounting, unit: Unit, difference = false): AmountSaid['v'] => {
  const value = (v: number): number => (difference ? stepToSi(v, unit) : toSi(v, unit));
  return {
    si: value(n.value),
    pm: stepToSi(n.step, unit) * (n.about === 'about' ? 2.5 : 0.5),
    unit,
    text: n.text,
    ...(n.to === undefined ? {} : { to: value(n.to) }),
    ...(n.about ? { about: n.about } : {}),
  };
};

const measureDims: Readonly<Partial<Record<Measure, readonly Dimension[]>>> = {
  pressure: ['pressure'],
  'cut-in': ['pressure'],
  'cut-out': ['pressure'],
  'pump-up': ['pressure'],
  'pressure fall': ['pressure'],
  'pressure rise': ['pressure'],
  height: ['length'],
  'height fall': ['length'],
  'height off': ['length'],
  voltage: ['voltage'],
  'voltage drop': ['voltage'],
  current: ['current'],
  resistance: ['resistance'],
  temperature: ['temperature'],
  humidity: ['ratio'],
  toe: ['length', 'angle'],
  camber: ['angle', 'length'],
  thrust: ['angle', 'length'],
  'tyre diameter': ['length'],
  'rim diameter': ['length'],
  torque: ['torque'],
  load: ['mass'],
  'on time': ['duration'],
  'off time': ['duration'],
  'run time': ['duration'],
  'restart time': ['duration'],
  'standing time': ['duration'],
  'settling time': ['duration'],
  delay: ['duration'],
  'dead band': ['length'],
  'arm length': ['length'],
  'distance driven': ['length'],
  odometer: ['length'],
  'wire length': ['length'],
  'wire gauge': ['count'],
  flow: ['flow'],
  altitude: ['length'],
  barometer: ['pressure'],
  'specific gravity': ['density'],
  'free play': ['length'],
  'shim thickness': ['length'],
  'water drained': ['volume'],
};
const byDimension: Readonly<Partial<Record<Dimension, Measure>>> = {
  pressure: 'pressure',
  length: 'height',
  voltage: 'voltage',
  current: 'current',
  resistance: 'resistance',
  temperature: 'temperature',
  mass: 'load',
  torque: 'torque',
  volume: 'water drained',
  flow: 'flow',
  turns: 'turns',
};
const voltParts = new Set([
  'battery',
  'motor',
  'relay',
  'feed cable',
  'fuse',
  'breaker',
  'key switch',
  'ground',
  'solenoid',
]);
const pressureParts = new Set([
  'tank',
  'bellows',
  'tyre',
  'gauge',
  'test port',
  'supply line',
  'panel port',
  'regulator',
  'protection valve',
  'relief',
  'bellows line',
  'height valve',
  'panel feed',
  'discharge line',
  'pump head',
  'dryer',
]);
const fallWords =
  /^(?:drops?|dropped|dropping|falls?|fell|falling|fall|lost|loses|losing|down|went down|bleeds down|leaks down|goes down|going down|drops down|sags?|sank|sinks?|sinking|settles|came down|comes down|is down|leaks?|leaking|leaked|bled|loss|sagged|sagging|dropin|lowered|losing pressure|loses pressure|lost pressure|leak down|bleed down|drop overnight|goes down overnight|sunk|dipped|bleeds|bleeding|bleeding down|leaking down|airs down|decays|went down overnight|sat down|drops overnight|lower)$/;
const riseWords =
  /^(?:rises?|rose|climbs?|climbed|gained|came up|comes up|up|went up|builds?|built|goes up|rising|raises|lifts|gains|creeps up)$/;
const coachSides = (p: PlaceParts): boolean => !p.part && Boolean(p.side ?? p.end);

/** Reads one note's items. Walks left to right once; state lives in this closure, nothing outlives it. */
export const readClauses = (all: readonly Settled[], text: string, context: Context): ClauseResult => {
  const facts: Fact[] = [];
  const ambiguous: Ambiguity[] = [];
  const used = new Set<Settled>();
  let subject: Loc | null = null;
  let lastUnit: Unit | null = null;
  let lastMeasure: Measure | null = null;
  let lastSign: Sign | null = null;
  let lastWork: Work | null = null;
  let lastReading: Extract<Fact, { is: 'reading' }> | null = null;
  let pendingWhen: When | null = null;
  let told = false;
  let hunch = false;
  const lCount = all.some((i) => i.k === 'place' && i.bare === 'l');

  const use = (...items: (Settled | undefined)[]): void => {
    for (const item of items) if (item) used.add(item);
  };
  const push = (fact: Partial0, item: Settled): Fact | null => {
    if (facts.length >= 200) return null;
    const when = pendingWhen;
    const full = {
      ...fact,
      id: `${context.note}.${facts.length}`,
      at: context.at,
      ...(when && !fact.when ? { when } : {}),
    } as Fact;
    if (full.is === 'reading') {
      const limits = plausible[full.what.v];
      const si = full.amount.v.si;
      if (limits && (si < limits[0] - 1e-9 || si > limits[1] + 1e-9)) full.held = 'implausible';
      lastReading = full;
      lastUnit = full.amount.v.unit;
      lastMeasure = full.what.v;
      pendingWhen = null;
    }
    use(item);
    facts.push(full);
    return full;
  };
  const word = (): 'own' | 'told' | 'hunch' => (hunch ? 'hunch' : told ? 'told' : 'own');
  const where = (loc: Loc | null): Said<string> =>
    loc ? { v: makePlace(loc.p), from: loc.from, spans: loc.spans } : { v: '', from: 'assumed', spans: [] };
  const said = <T>(v: T, ...items: Settled[]): Said<T> => ({
    v,
    from: items.some((i) => ('near' in i && i.near) || ('slip' in i && i.slip)) ? 'assumed' : 'said',
    spans: items.map((i) => i.span),
  });
  const locOf = (item: PlaceItem): Loc => {
    use(item);
    return {
      p: item.p,
      from: item.near || item.assumed || (item.bare === 'r' && !lCount) ? 'assumed' : 'said',
      spans: item.spans,
    };
  };

  // clauses: between separators and joins
  const clauses: { items: Settled[]; hard: boolean }[] = [];
  let current: Settled[] = [];
  for (const item of all) {
    if (item.k === 'sep' || item.k === 'join') {
      if (current.length > 0) clauses.push({ items: current, hard: item.k === 'sep' && item.hard });
      else if (clauses.length > 0 && item.k === 'sep' && item.hard) clauses.at(-1)!.hard = true;
      current = [];
    } else current.push(item);
  }
  if (current.length > 0) clauses.push({ items: current, hard: true });

  const unreadable = (n: Amounting): void => {
    const p = context.pressureUnit;
    const t = n.text;
    const own = n.unit ? '' : ` ${p}`;
    if (n.unit && dimensionOf(n.unit) === 'voltage')
      ambiguous.push({
        question: `${t}: where?`,
        candidates: ['battery', 'motor', 'relay'].map((w) => ({ label: w, text: `${w} ${t}` })),
        spans: [n.span],
      });
    else if (n.unit && dimensionOf(n.unit) === 'length')
      ambiguous.push({
        question: `${t}: which corner?`,
        candidates: ['left rear', 'right rear', 'left front', 'right front'].map((w) => ({
          label: w,
          text: `${w} ${t}`,
        })),
        spans: [n.span],
      });
    else
      ambiguous.push({
        question: `${t}: of what?`,
        candidates: [
          { label: 'tank', text: `tank ${t}${own}` },
          { label: 'left bellows', text: `left bellows ${t}${own}` },
          { label: 'right bellows', text: `right bellows ${t}${own}` },
          { label: 'tyre', text: `tyre ${t}${own}` },
        ],
        spans: [n.span],
      });
    use(n);
  };

  for (const clause of clauses) {
    const items = clause.items;
    const places = items.map((item, i) => (item.k === 'place' ? i : -1)).filter((i) => i >= 0);
    const taken = new Set<number>();
    const hedged = items.some((i) => i.k === 'hedge');
    if (items.some((i) => i.k === 'told')) told = true;
    hunch = hedged;
    const often = items.find((i): i is Extract<Settled, { k: 'often' }> => i.k === 'often');
    for (const i of items) if (i.k === 'hedge' || i.k === 'told' || i.k === 'often') use(i);
    const flags = (): Partial<Fact> => (often ? { often: often.v } : {});
    const isContent = (i: number): boolean => {
      const k = items[i]?.k;
      return k === 'num' || k === 'sign' || k === 'work' || k === 'measure' || k === 'cond';
    };
    const nextReal = (i: number): number => {
      let j = i + 1;
      while (j < items.length && skippable(items[j])) j += 1;
      return j;
    };
    const placeAt = (i: number, after: boolean): { item: PlaceItem; index: number; after: boolean } | null => {
      let j = i + 1;
      let prep = false;
      while (j < items.length && (skippable(items[j]) || items[j]!.k === 'often' || (after && items[j]!.k === 'neg'))) {
        if (items[j]!.k === 'prep') prep = true;
        j += 1;
      }
      const before = places.filter((p) => p < i && !taken.has(p)).at(-1);
      const next = items[j];
      if (next?.k === 'place') {
        const follow = items[nextReal(j)];
        const owned = follow !== undefined && (follow.k === 'num' || follow.k === 'sign' || follow.k === 'neg');
        if (prep && !(owned && before !== undefined && follow.k === 'num')) {
          if (before === undefined || !(items[before] as PlaceItem).p.part || after)
            return { item: next, index: j, after: true };
          if (items[i]!.k === 'num') return { item: next, index: j, after: true };
        } else if (before === undefined && (!owned || after)) return { item: next, index: j, after: true };
      }
      if (before !== undefined) return { item: items[before] as PlaceItem, index: before, after: false };
      return null;
    };
    const find = (i: number, after: boolean): Loc | null => {
      const hit = placeAt(i, after);
      if (!hit) return null;
      if (hit.after) taken.add(hit.index);
      return locOf(hit.item);
    };
    const carried = (loc: Loc | null): Loc | null =>
      loc ? { ...loc, from: loc.from === 'assumed' ? 'assumed' : 'carried', spans: [] } : null;
    const denied = (i: number): Settled | null => {
      for (let j = i - 1; j >= 0 && i - j <= 4; j -= 1) {
        const it = items[j]!;
        if (it.k === 'neg') return it;
        if (it.k !== 'filler' && it.k !== 'prep' && it.k !== 'sign' && it.k !== 'place' && it.k !== 'often')
          return null;
        if (it.k === 'sign' && j < i - 1 && !skippable(items[j + 1])) return null;
      }
      return null;
    };
    // a side or relative word that must be asked about
    for (const i of places) {
      const item = items[i] as PlaceItem;
      if (item.ask) {
        ambiguous.push({
          question: `Which side is the ${text.slice(...item.spans[0]!)}?`,
          candidates: (['left', 'right'] as const).map((side) => ({
            label: side,
            text: text.slice(0, item.spans[0]![0]) + side + text.slice(item.spans[0]![1]),
          })),
          spans: [item.spans[0]!],
        });
        use(item);
      }
    }

    // spec: limits given in the note
    const specAt = items.findIndex((i) =>
      /^(?:spec|specs|should be|supposed to be|limit|limits|sheet says|book says|manual says|target|nominal)$/.test(
        phraseOf(i),
      ),
    );
    if (specAt >= 0) {
      const n = items.findIndex((i, j) => i.k === 'num' && j > specAt);
      const num = items[n];
      if (num?.k === 'num' && num.clock === undefined) {
        const m = items.find((i): i is Extract<Settled, { k: 'measure' }> => i.k === 'measure');
        const place = places[0] === undefined ? null : locOf(items[places[0]] as PlaceItem);
        const unit = num.unit ?? unitFor(m?.v ?? null, place?.p ?? {}, num, context, lastUnit);
        const measure = m?.v ?? (unit ? byDimension[dimensionOf(unit)] : undefined);
        if (unit && measure) {
          const other = items.slice(n + 1).find((i): i is Amounting => i.k === 'num');
          const low = num.tol === undefined ? num.value : num.value - num.tol;
          const high = num.tol === undefined ? (num.to ?? other?.value ?? num.value) : num.value + num.tol;
          const loc =
            place ??
            (measure === 'cut-in' || measure === 'cut-out'
              ? { p: { part: 'pressure switch' as const }, from: 'assumed' as const, spans: [] }
              : null);
          push(
            {
              is: 'spec',
              where: where(loc),
              word: 'own',
              what: said(measure, m ?? num),
              low: { ...amountOf({ ...num, value: Math.min(low, high) }, unit), to: undefined },
              high: { ...amountOf({ ...num, value: Math.max(low, high) }, unit), to: undefined },
            } as Partial0,
            num,
          );
          use(m, other, items[specAt]);
          continue;
        }
      }
    }

    let measureHere: Extract<Settled, { k: 'measure' }> | null = null;
    let i = 0;
    while (i < items.length) {
      const item = items[i]!;
      const index = i;
      i += 1;
      switch (item.k) {
        case 'measure': {
          measureHere = item;
          // "on 88 off 117" is caught below as numbers; a measure waits for its number
          if (!items.some((it, j) => it.k === 'num' && j > index)) {
            // number before: "13 1/4 height", or nothing at all
            const before = items[index - 1];
            if (before?.k === 'num') use(item);
            else if (lastReading === null || item.v === 'pressure' || item.v === 'height') use(item);
          }
          break;
        }
        case 'cond': {
          const neg = denied(index);
          use(item, neg ?? undefined);
          const loc =
            item.v.startsWith('panel') || item.v.startsWith('arm') || item.v === 'link connected'
              ? find(index, false)
              : null;
          const place =
            loc && (loc.p.side === 'left' || loc.p.side === 'right') ? { ...loc, p: { side: loc.p.side } } : null;
          const bare = item.phrase === 'runs' || item.phrase === 'running';
          const near = bare ? placeAt(index, false) : null;
          if (bare && near && near.item.p.part !== 'pump' && near.item.p.part !== 'motor') break;
          if (bare && near) use(near.item);
          if (
            item.v === 'parked' &&
            items.some((it) => it.k === 'num' && it.unit && dimensionOf(it.unit) === 'duration')
          )
            break;
          push(
            {
              is: 'condition',
              where: where(place),
              word: word() === 'hunch' ? 'own' : word(),
              what: said(item.v, item),
              holds: neg ? !item.holds : item.holds,
              ...whenNear(items, index),
            } as Partial0,
            item,
          );
          break;
        }
        case 'work': {
          if (
            /^(?:check|test|inspect|checked|looked at|drop|set the|levelled|leveled)$/.test(item.phrase) &&
            !placeAt(index, true) &&
            !items.some((it) => it.k === 'num')
          ) {
            use(item);
            break;
          }
          const neg = denied(index);
          const next = items[nextReal(index)];
          const loc: Loc | null = next?.k === 'place' ? find(index, true) : (find(index, true) ?? carried(subject));
          const plan = items
            .slice(0, index)
            .some(
              (it) =>
                /^(?:gonna|going to|going|will|ill|need to|needs to|need|needs|have to|plan to|want to|lets|let me|about to|should|next|try)$/.test(
                  phraseOf(it),
                ) ||
                (it.k === 'unknown' && /^(?:gonna|ill|wanna|gotta|theyll|well)$/.test(it.low)),
            );
          const fact = push(
            {
              is: 'work',
              where: where(loc),
              word: told ? 'told' : 'own',
              what: said(item.v, item),
              done: !neg && !plan,
              ...whenNear(items, index),
            } as Partial0,
            item,
          );
          if (neg) use(neg);
          if (fact && loc) subject = loc;
          lastWork = item.v;
          // "replaced left valve with new": the second word of the same work
          while (items[nextReal(i - 1)]?.k === 'work' && nextReal(i - 1) === i) {
            use(items[i]);
            i += 1;
          }
          break;
        }
        case 'sign': {
          // change with an amount: "drops 6 psi in 10 min"
          const ahead = items[nextReal(index)];
          const changing = fallWords.test(item.phrase) ? 'fall' : riseWords.test(item.phrase) ? 'rise' : null;
          const toNum = phraseOf(items[index + 1]) === 'to';
          if (
            changing &&
            ahead?.k === 'num' &&
            ahead.clock === undefined &&
            !toNum &&
            phraseOf(items[index + 1]) !== 'at'
          ) {
            const u =
              ahead.unit ??
              (ahead.whole && lastUnit && !['duration'].includes(dimensionOf(lastUnit)) ? lastUnit : null) ??
              (context.pressureUnit && ahead.whole && !subjectIsCorner(items, index) ? context.pressureUnit : null) ??
              context.lengthUnit;
            const d = dimensionOf(u);
            if ((d === 'pressure' || d === 'length') && nextReal(index) < items.length) {
              const at = nextReal(index);
              const over = durationAfter(items, at);
              const loc: Loc | null =
                find(index, false) ?? find(at, true) ?? (d === 'pressure' ? tankOrCarried(subject) : carried(subject));
              const what: Measure =
                d === 'pressure' ? (changing === 'fall' ? 'pressure fall' : 'pressure rise') : 'height fall';
              // "down 3/8", "1/2 low": how it stands, when no time was said
              const off =
                d === 'length' &&
                !over &&
                !often &&
                /^(?:down|low|lower|is down|up)$/.test(item.phrase) &&
                !/^(?:went|came|has)/.test(item.phrase);
              push(
                {
                  is: 'reading',
                  where: where(loc),
                  word: word(),
                  what: said(off ? 'height off' : what, item),
                  amount: said(
                    amountOf(
                      { ...ahead, value: off ? (changing === 'fall' ? -ahead.value : ahead.value) : ahead.value },
                      u,
                      true,
                    ),
                    ahead,
                  ),
                  ...(over ? { over: said(amountOf(over, over.unit!), over) } : {}),
                  ...flags(),
                } as Partial0,
                item,
              );
              use(ahead, over ?? undefined);
              if (loc) subject = loc;
              i = at + 1;
              break;
            }
          }
          // "3/8 low", "2 in down"
          const prev = items[index - 1];
          if ((item.v === 'low' || item.v === 'high') && prev?.k === 'num' && !used.has(prev)) break;
          if (
            ['low', 'high'].includes(item.v) &&
            ahead?.k === 'num' &&
            ahead.clock === undefined &&
            (phraseOf(items[index + 1]) === 'by' || nextReal(index) === index + 1) &&
            lengthy(ahead, context) &&
            !ahead.to &&
            Math.abs(ahead.value) < (context.lengthUnit === 'mm' && !(ahead.unit === 'in') ? 100 : 4)
          ) {
            const loc: Loc | null = find(index, false) ?? carried(subject);
            const u = ahead.unit ?? context.lengthUnit;
            push(
              {
                is: 'reading',
                where: where(loc),
                word: word(),
                what: said('height off', item),
                amount: said(
                  amountOf({ ...ahead, value: item.v === 'low' ? -ahead.value : ahead.value }, u, true),
                  ahead,
                ),
                ...flags(),
              } as Partial0,
              item,
            );
            use(ahead);
            if (loc) subject = loc;
            i = nextReal(index) + 1;
            break;
          }
          let neg = denied(index);
          let name: Sign = item.v;
          let loc: Loc | null = find(index, placeAfter.has(name));
          if (name === 'hot' && loc === null && !subject) {
            use(item);
            break;
          }
          const home = signHomes[name];
          const sided = loc?.p.part ?? '';
          if (!loc) {
            const c = carried(subject);
            if (pumpSigns.has(name)) loc = { p: { part: 'pump' }, from: 'assumed', spans: [] };
            else if (
              c &&
              !(
                home === 'coach' &&
                c.p.part &&
                !['bellows', 'coach', 'tank', 'height valve', 'gauge'].includes(c.p.part) &&
                name !== 'ok'
              )
            )
              loc = c;
            else if (home) loc = { p: tidy({ part: home as never }), from: 'assumed', spans: [] };
          }
          if (
            /^(?:down|is down)$/.test(item.phrase) &&
            loc?.p.part &&
            ['pump', 'motor', 'relay', 'pressure switch'].includes(loc.p.part)
          )
            name = 'not working';
          if (name === 'blows fuse') loc = { p: { part: 'pump' }, from: 'assumed', spans: [] };
          if (name === 'leans' && loc && !loc.p.side && loc.p.part !== 'coach')
            loc = { p: { part: 'coach' }, from: 'assumed', spans: [] };
          if (
            (name === 'level' || name === 'sags' || name === 'bounces') &&
            loc &&
            !loc.p.part &&
            !loc.p.side &&
            !loc.p.end
          )
            loc = { p: { part: 'coach' }, from: 'assumed', spans: [] };
          if (neg && opposites[name]) {
            if (name === 'ok' && sided === '') {
              use(item, neg);
              break;
            }
            name = opposites[name]!;
            use(neg);
            neg = null;
          }
          push(
            {
              is: 'sign',
              where: where(loc),
              word: word(),
              what: said(name, item),
              there: !neg,
              ...flags(),
              ...whenNear(items, index),
            } as Partial0,
            item,
          );
          if (neg) use(neg);
          if (loc && !pumpSigns.has(name)) subject = loc;
          lastSign = name;
          break;
        }
        case 'neg': {
          // "none on the left": the last sign, denied there
          const next = nextReal(index);
          if (
            lastSign &&
            /^(?:none|nothing|not|no|nil|nope|nada)$/.test(item.phrase) &&
            (items[next]?.k === 'place' || next >= items.length) &&
            !items.slice(index + 1).some((it) => it.k === 'sign' || it.k === 'num' || it.k === 'work')
          ) {
            const at = placeAt(index, true);
            if (at && at.index > index) {
              const p: PlaceParts = { ...at.item.p };
              if (!p.part && subject?.p.part && sideable.has(subject.p.part)) p.part = subject.p.part;
              const loc: Loc = { p: tidy(p), from: 'said', spans: at.item.spans };
              use(at.item, item);
              push(
                {
                  is: 'sign',
                  where: where(loc),
                  word: word(),
                  what: { v: lastSign, from: 'carried', spans: [] },
                  there: false,
                } as Partial0,
                item,
              );
              subject = loc;
            }
          } else if (
            /^(?:nothing|no leaks|none)$/.test(item.phrase) &&
            items[next]?.k === 'place' &&
            !items.slice(next).some((it) => it.k === 'sign' || it.k === 'num' || it.k === 'work')
          ) {
            const soap = lastWork === 'soaped';
            const loc = find(index, true);
            if (loc) {
              push(
                {
                  is: 'sign',
                  where: where(loc),
                  word: word(),
                  what: { v: soap ? 'bubbles' : 'leaks', from: 'assumed', spans: [item.span] },
                  there: false,
                } as Partial0,
                item,
              );
              subject = loc;
            }
          }
          break;
        }
        case 'num': {
          const done = readNumber(item, index);
          if (done > index) i = Math.max(i, done);
          break;
        }
        case 'place': {
          use(item);
          if (!items.some((_, j) => isContent(j) && items[j] !== item)) {
            // a place alone: the subject of what follows, or the other side of what came before
            const loc = locOf(item);
            if (
              /^(?:same|ditto)$/.test(phraseOf(items[index - 1])) ||
              items.some((it) => it.k === 'unknown' && it.low === 'ditto')
            )
              break;
            subject = loc;
          }
          break;
        }
        default:
          break;
      }
    }

    /** Reads the number at `index`; returns the index after what it took, or `index`. */
    function readNumber(n: Amounting, index: number): number {
      if (used.has(n)) return index;
      if (n.clock !== undefined) {
        setClock(n, n.clock, n.text);
        return index + 1;
      }
      const prevPhrase = phraseOf(items[index - 1]);
      const d = dimension(n);
      const nextAt = nextReal(index);
      const next = items[nextAt];
      // "at 9", "at 0905": a clock after a reading
      if (
        (prevPhrase === 'at' || prevPhrase === 'by') &&
        n.unit === null &&
        n.whole &&
        !measureHere &&
        lastReading &&
        !lastReading.when &&
        clauseHasReading(items, index)
      ) {
        const clock =
          n.value < 24
            ? n.value * 60
            : n.value >= 100 && n.value < 2400 && n.value % 100 < 60 && /^\d{3,4}$/.test(n.text)
              ? Math.floor(n.value / 100) * 60 + (n.value % 100)
              : null;
        if (clock !== null) {
          setClock(n, clock, n.text);
          return index + 1;
        }
      }
      if (n.unit === null && /^0\d{3}$/.test(n.text) && n.value < 2400 && n.value % 100 < 60) {
        setClock(n, Math.floor(n.value / 100) * 60 + (n.value % 100), n.text);
        return index + 1;
      }
      // ordinals: "No 2"
      if (prevPhrase === 'no' && n.whole && n.value < 20 && n.unit === null) {
        use(n, items[index - 1]);
        return index + 1;
      }
      if (d === 'duration') return readDuration(n, index);
      // on 88 off 117
      if (prevPhrase === 'on' || prevPhrase === 'off') {
        const pressureLike =
          (n.unit === null || d === 'pressure') &&
          items.some((it) => phraseOf(it) === 'on') &&
          items.some((it) => phraseOf(it) === 'off') &&
          placesNear(index) === null;
        if (pressureLike) {
          const u = n.unit ?? context.pressureUnit;
          push(
            {
              is: 'reading',
              where: { v: 'pressure switch', from: 'assumed', spans: [] },
              word: word(),
              what: said(prevPhrase === 'on' ? 'cut-in' : 'cut-out', items[index - 1]!),
              amount: said(amountOf(n, u), n),
            } as Partial0,
            n,
          );
          return index + 1;
        }
      }
      // A down to B in D; from A to B in D; A to B took D; A - B
      const toWord = items.slice(index + 1, index + 4).findIndex((it) => it.k === 'prep' && it.phrase === 'to');
      const second =
        toWord >= 0 ? items.slice(index + 1 + toWord).find((it): it is Amounting => it.k === 'num') : undefined;
      const secondAt = second ? items.indexOf(second) : -1;
      if (
        second &&
        second.clock === undefined &&
        secondAt - index <= 4 &&
        items
          .slice(index + 1, secondAt)
          .every((it) => skippable(it) || it.k === 'sign' || it.k === 'place' || it.k === 'unit') &&
        (dimension(second) ?? d ?? 'pressure') !== 'duration'
      ) {
        const over = durationAfter(items, secondAt) ?? durationBefore(items, index);
        const before = placesNear(index);
        const unit =
          second.unit ??
          n.unit ??
          measureUnit(measureHere?.v ?? null) ??
          (before && !pressureParts.has(before.part ?? '') && coachSides(before) && heightLike(n, context)
            ? context.lengthUnit
            : null) ??
          (lastUnit && ['pressure', 'length'].includes(dimensionOf(lastUnit)) && !over
            ? lastUnit
            : context.pressureUnit);
        const dim = dimensionOf(unit);
        if (dim === 'pressure' || dim === 'length' || dim === 'temperature' || dim === 'voltage') {
          const up = second.value > n.value;
          const range =
            !over &&
            !items
              .slice(0, secondAt)
              .some(
                (it) =>
                  it.k === 'sign' ||
                  phraseOf(it) === 'from' ||
                  fallWords.test(phraseOf(it)) ||
                  riseWords.test(phraseOf(it)),
              ) &&
            up;
          if (range) {
            n.to = second.value;
            n.unit = n.unit ?? second.unit;
            use(second);
          } else {
            const loc =
              find(index, false) ??
              find(secondAt, true) ??
              (dim === 'pressure' ? tankOrCarried(subject) : carried(subject));
            const what: Measure =
              dim === 'pressure' && up && (loc?.p.part ?? 'tank') !== 'bellows' && loc?.p.part !== 'tyre'
                ? 'pump-up'
                : (byDimension[dim] ?? 'pressure');
            push(
              {
                is: 'reading',
                where: where(
                  what === 'pump-up'
                    ? { p: { part: 'tank' }, from: loc?.from ?? 'assumed', spans: loc?.spans ?? [] }
                    : loc,
                ),
                word: word(),
                what: said(what, n),
                amount: said(amountOf(second, unit), second),
                from: said(amountOf(n, unit), n),
                ...(over ? { over: said(amountOf(over, over.unit!), over) } : {}),
                ...flags(),
              } as Partial0,
              second,
            );
            use(n, over ?? undefined);
            for (const it of items.slice(index, secondAt)) if (it.k === 'sign') use(it);
            if (loc && what !== 'pump-up') subject = loc;
            const resume = over ? Math.max(secondAt, items.indexOf(over)) : secondAt;
            return resume + 1;
          }
        }
      }
      // n units low / high / down
      if (
        next?.k === 'sign' &&
        (next.v === 'low' || next.v === 'high') &&
        lengthy(n, context) &&
        Math.abs(n.value) <= (n.unit === 'mm' || (n.unit === null && context.lengthUnit === 'mm' && n.whole) ? 150 : 6)
      ) {
        const loc = find(index, false) ?? find(nextAt, true) ?? carried(subject);
        const u = n.unit ?? context.lengthUnit;
        const sign = next.v === 'low' ? -1 : 1;
        push(
          {
            is: 'reading',
            where: where(loc),
            word: word(),
            what: said('height off', next),
            amount: said(amountOf({ ...n, value: sign * n.value }, u, true), n),
            ...flags(),
          } as Partial0,
          n,
        );
        use(next);
        if (loc) subject = loc;
        return nextAt + 1;
      }
      if (
        measureHere &&
        (measureHere.v === 'on time' || measureHere.v === 'off time' || measureHere.v === 'run time') &&
        d !== null
      )
        measureHere = null;
      return readPlain(n, index);
    }

    function setClock(n: Amounting, clock: number, words: string): void {
      const when: When = { text: words, clock, spans: [n.span] };
      use(n);
      const prev = lastReading;
      if (prev && !prev.when && clauseHasReading(items, items.indexOf(n)) && facts.includes(prev)) {
        prev.when = when;
        return;
      }
      const lastFact = facts.at(-1);
      if (
        lastFact &&
        !lastFact.when &&
        items
          .slice(0, items.indexOf(n))
          .some((it) => used.has(it) && (it.k === 'cond' || it.k === 'work' || it.k === 'sign')) &&
        !items.slice(items.indexOf(n) + 1).some((it) => it.k === 'num')
      ) {
        lastFact.when = when;
        return;
      }
      pendingWhen = when;
    }

    function readDuration(n: Amounting, index: number): number {
      const before = phraseOf(items[index - 1]);
      const beforeItem = items[index - 1];
      const after = phraseOf(items[nextFiller(items, index)]);
      const amount = amountOf(n, n.unit!);
      const set = (patch: Partial<When>): number => {
        const when: When = { text: n.text, spans: [n.span], ...patch };
        const day = n.unit === 'd' || n.unit === 'week' ? { day: Math.round(amount.si / 86_400) } : {};
        use(n);
        if (lastReading && !lastReading.when && clauseHasReading(items, index)) lastReading.when = { ...when, ...day };
        else pendingWhen = { ...when, ...day };
        return index + 1;
      };
      if (after === 'ago' || phraseOf(items[index + 1]) === 'ago') return set({ ago: amount.si });
      if (
        phraseOf(items[index + 1]) === 'later' ||
        after === 'later' ||
        (items[index + 1]?.k === 'unknown' && (items[index + 1] as { low: string }).low === 'after')
      )
        return set({ after: amount.si });
      const m =
        measureHere ??
        items.findLast((it, j): it is Extract<Settled, { k: 'measure' }> => it.k === 'measure' && j < index);
      const measures: readonly Measure[] = [
        'on time',
        'off time',
        'run time',
        'standing time',
        'settling time',
        'restart time',
        'delay',
      ];
      const trailing = items
        .slice(index + 1)
        .find((it): it is Extract<Settled, { k: 'measure' }> => it.k === 'measure' && measures.includes(it.v));
      const what = m && measures.includes(m.v) ? m.v : trailing?.v;
      const measureItem = m && measures.includes(m.v) ? m : trailing;
      if (what && measureItem) {
        const loc =
          what === 'delay'
            ? (find(index, false) ?? { p: { part: 'height valve' as const }, from: 'assumed' as const, spans: [] })
            : what === 'standing time'
              ? { p: { part: 'coach' as const }, from: 'assumed' as const, spans: [] }
              : what === 'settling time'
                ? null
                : { p: { part: 'pump' as const }, from: 'assumed' as const, spans: [] };
        push(
          {
            is: 'reading',
            where: where(loc),
            word: word(),
            what: said(what, measureItem),
            amount: said(amount, n),
            ...flags(),
          } as Partial0,
          n,
        );
        use(measureItem);
        return index + 1;
      }
      const condParked =
        items.find((it) => it.k === 'cond' && it.v === 'parked') ??
        items.find((it) => it.k === 'often' && /stood|parked|sat|standing|sitting/.test(it.phrase));
      if (condParked) {
        push(
          {
            is: 'reading',
            where: { v: 'coach', from: 'assumed', spans: [] },
            word: word(),
            what: said('standing time', condParked),
            amount: said(amount, n),
          } as Partial0,
          n,
        );
        use(condParked);
        return index + 1;
      }
      if (
        (before === 'after' || before === 'in' || before === 'over' || before === 'at') &&
        clauseHasReading(items, index) &&
        lastReading &&
        !lastReading.over
      ) {
        if (before === 'after' || before === 'in') return set({ after: amount.si });
        lastReading.over = said(amount, n);
        use(n);
        return index + 1;
      }
      if (before === 'after' && beforeItem) return set({ after: amount.si });
      // runs 20 min, ran 5 min, on 2 min off 8
      const pumpNear =
        items.some((it) => it.k === 'place' && it.p.part === 'pump') ||
        items.some((it) => it.k === 'cond' && it.v === 'pump running') ||
        subject?.p.part === 'pump';
      if (pumpNear && (before === 'on' || before === 'off')) {
        push(
          {
            is: 'reading',
            where: { v: 'pump', from: 'assumed', spans: [] },
            word: word(),
            what: said(before === 'on' ? 'on time' : 'off time', beforeItem!),
            amount: said(amount, n),
          } as Partial0,
          n,
        );
        return index + 1;
      }
      if (
        pumpNear &&
        (/^(?:runs|ran|running|run)/.test(
          phraseOf(items.slice(0, index).findLast((it) => it.k === 'cond' || it.k === 'sign' || it.k === 'measure')),
        ) ||
          before === 'for')
      ) {
        push(
          {
            is: 'reading',
            where: { v: 'pump', from: 'assumed', spans: [] },
            word: word(),
            what: said('run time', n),
            amount: said(amount, n),
          } as Partial0,
          n,
        );
        return index + 1;
      }
      if (
        lastReading &&
        !lastReading.over &&
        clauseHasReading(items, index) &&
        (lastReading.what.v === 'pressure fall' || lastReading.what.v === 'height fall' || lastReading.from)
      ) {
        lastReading.over = said(amount, n);
        use(n);
      }
      // a time beside signs ("bubbles after 30 s") qualifies, it measures nothing: shown as unread
      return index + 1;
    }

    function placesNear(index: number): PlaceParts | null {
      const hit = placeAt(index, false);
      return hit ? hit.item.p : null;
    }

    function readPlain(n: Amounting, index: number): number {
      const hit = placeAt(index, false);
      const m = measureHere;
      let measure: Measure | null = m?.v ?? null;
      let unit = n.unit;
      // lbs, #, pounds: pressure beside air, weight beside a load
      if (unit === 'lb') {
        const heavy = measure === 'load' || hit?.item.p.part === 'load' || n.value > 300;
        const torque = measure === 'torque';
        unit = torque ? 'lbf ft' : heavy ? 'lb' : 'psi';
      }
      if (unit === 'fl oz' || unit === 'cup') measure = 'water drained';
      if (unit === 'C' || unit === 'F') measure = 'temperature';
      let dim: Dimension | null = unit ? dimensionOf(unit) : null;
      if (measure && dim && !(measureDims[measure] ?? [dim]).includes(dim)) {
        const keep =
          (measure === 'pressure' && dim !== 'pressure') ||
          measure === 'height' ||
          measure === 'current' ||
          measure === 'voltage' ||
          measure === 'load' ||
          measure === 'run time' ||
          measure === 'on time' ||
          measure === 'off time' ||
          measure === 'standing time' ||
          measure === 'settling time';
        if (keep) measure = null;
        else if (measure === 'cut-in' || measure === 'cut-out' || measure === 'toe' || measure === 'camber')
          measure = null;
      }
      const corner = hit && coachSides(hit.item.p) ? hit.item.p : null;
      const carriedPressure = lastMeasure === 'pressure' && lastUnit !== null && dimensionOf(lastUnit) === 'pressure';
      const carriedHeight = lastMeasure === 'height' && lastUnit !== null;
      let from: 'said' | 'assumed' | 'carried' = 'said';
      let loc: Loc | null = null;

      if (!unit) {
        const part = hit?.item.p.part;
        if (measure === 'toe' || measure === 'camber' || measure === 'thrust') {
          unit =
            measure === 'camber' || measure === 'thrust'
              ? 'deg'
              : n.step < 1 && Number.isInteger(1 / n.step) && n.step !== 0.1 && n.step !== 0.01
                ? 'in'
                : null;
          if (!unit && phraseOf(items[index + 1]) === '') unit = null;
          from = 'assumed';
        } else if (measure === 'wire gauge' || measure === 'count') unit = 'count';
        else if (measure === 'specific gravity') unit = 'SG';
        else if (measure && measureUnit(measure)) {
          unit = measureUnit(measure);
          from = 'assumed';
        } else if (part && voltParts.has(part)) {
          unit = 'V';
          from = 'assumed';
        } else if (part && pressureParts.has(part)) {
          unit = lastUnit && dimensionOf(lastUnit) === 'pressure' ? lastUnit : context.pressureUnit;
          if (unit === 'kPa' && n.value < 13 && n.value > 0) unit = 'bar';
          from = 'assumed';
        } else if (corner) {
          if (carriedPressure && !(n.step < 1 && Number.isInteger(1 / n.step)) && !corner.end) {
            unit = lastUnit;
            from = 'carried';
          } else if (heightLike(n, context) && !(carriedPressure && subject?.p.part === 'bellows')) {
            unit = n.step < 1 && n.step !== 0.1 && n.step !== 0.01 ? 'in' : context.lengthUnit;
            from = 'assumed';
          } else if (subject?.p.part === 'bellows' && carriedPressure) {
            unit = lastUnit;
            from = 'carried';
          } else if (
            !corner.end &&
            (corner.side === 'left' || corner.side === 'right') &&
            n.whole &&
            n.value >= 30 &&
            context.pressureUnit === 'psi'
          ) {
            unit = 'psi';
            from = 'assumed';
          } else if (corner.end === undefined && context.pressureUnit === 'kPa' && n.whole && n.value >= 300) {
            unit = null;
          }
        } else if (context.open?.unit ?? context.open?.what) {
          unit = context.open?.unit ?? measureUnit(context.open?.what ?? null);
          measure = context.open?.what ?? null;
          loc = { p: takePlace(context.open?.where ?? '') ?? {}, from: 'carried', spans: [] };
          from = 'carried';
        } else if (
          !hit &&
          lastReading &&
          (carriedPressure || carriedHeight || lastMeasure === 'voltage') &&
          facts.includes(lastReading) &&
          n.value !== 0
        ) {
          unit = lastUnit;
          from = 'carried';
          measure = lastMeasure;
        } else if (!hit && subject?.p.part && pressureParts.has(subject.p.part) && subject.p.part !== 'height valve') {
          unit = context.pressureUnit;
          from = 'assumed';
        } else if (!hit && subject && coachSides(subject.p) && heightLike(n, context)) {
          unit = n.step < 1 && n.step !== 0.1 ? 'in' : context.lengthUnit;
          from = 'assumed';
        } else if (
          !hit &&
          n.step < 1 &&
          Number.isInteger(1 / n.step) &&
          n.step !== 0.1 &&
          n.step !== 0.01 &&
          subject &&
          coachSides(subject.p)
        ) {
          unit = 'in';
          from = 'assumed';
        }
        if (!unit) {
          unreadable(n);
          if (hit) use(hit.item);
          if (m) use(m);
          return index + 1;
        }
        dim = dimensionOf(unit);
      }

      measure ??= byDimension[dim!] ?? 'count';
      if (measure === 'height' && dim !== 'length') measure = byDimension[dim!] ?? 'count';
      if (m) use(m);
      const own = find(index, false);
      loc = own ?? loc;
      // which place a reading has when none stands by it
      if (measure === 'cut-in' || measure === 'cut-out')
        loc = {
          p: { part: 'pressure switch' },
          from: own?.p.part === 'pressure switch' ? 'said' : 'assumed',
          spans: own?.spans ?? [],
        };
      else if (measure === 'toe' || measure === 'camber') {
        let p: PlaceParts | null =
          own?.p ??
          (subject &&
          (subject.p.part === 'wheel' ||
            coachSides(subject.p) ||
            subject.p.part === 'tyre' ||
            subject.p.part === 'axle')
            ? subject.p
            : null);
        const source = own ?? carried(subject);
        if (p) {
          p = p.part === 'tyre' || (p.side && p.side !== 'both' && p.part === undefined) ? { ...p, part: 'wheel' } : p;
          const one = p.side === 'left' || p.side === 'right';
          if (one && p.end !== 'front' && !p.wheel) {
            const t = text.slice(...n.span);
            ambiguous.push({
              question: `${measure} ${t}: which wheel of that side?`,
              candidates: (['forward', 'aft'] as const).map((w) => ({
                label: w === 'forward' ? 'front wheel' : 'rear wheel',
                text: `${measure} ${p!.side} rear ${w} wheel ${t}${n.unit ? '' : ` ${unit!}`}${dirText(items, index)}`,
              })),
              spans: [n.span],
            });
            use(n);
            return nextReal(index);
          }
          loc = { p, from: source?.from ?? 'carried', spans: source?.spans ?? [] };
        }
      } else if (!loc) {
        if (dim === 'pressure')
          loc = tankOrCarried(
            lastReading && carriedPressure && facts.includes(lastReading)
              ? subject
              : subject?.p.part && (subject.p.part === 'bellows' || subject.p.part === 'tyre')
                ? subject
                : null,
          );
        else if (dim === 'current') loc = { p: { part: 'motor' }, from: 'assumed', spans: [] };
        else if (dim === 'voltage')
          loc =
            subject?.p.part && (voltParts.has(subject.p.part) || subject.p.part === 'pump') ? carried(subject) : null;
        else if (dim === 'temperature')
          loc =
            subject && ['pump', 'motor', 'tyre', 'pump head'].includes(subject.p.part ?? '')
              ? carried(subject)
              : { p: { part: 'ambient' }, from: 'assumed', spans: [] };
        else if (dim === 'volume') loc = { p: { part: 'tank' }, from: 'assumed', spans: [] };
        else loc = carried(subject);
      } else if (dim === 'pressure' && measure === 'pressure') {
        // a side alone is that side's bellows; a gauge is the tank's
        if (!loc.p.part && (loc.p.side ?? loc.p.end))
          loc = {
            ...loc,
            p: tidy({ side: loc.p.side, part: 'bellows', ...(loc.p.end === 'front' ? { end: 'front' } : {}) }),
            from: loc.from === 'said' ? 'said' : loc.from,
          };
        else if (loc.p.part === 'gauge' || loc.p.part === 'coach' || loc.p.part === 'pump')
          loc = { ...loc, p: { part: 'tank' } };
        else if (loc.p.part === 'bellows crimp' || loc.p.part === 'bellows line')
          loc = { ...loc, p: { ...loc.p, part: 'bellows' } };
      } else if (dim === 'current' && (loc.p.part === 'pump' || loc.p.part === 'battery')) {
        if (loc.p.part === 'pump') loc = { ...loc, p: { part: 'motor' } };
      } else if (dim === 'voltage' && loc.p.part === 'pump') loc = { ...loc, p: { part: 'motor' } };
      else if (dim === 'volume' && (loc.p.part === 'drain' || loc.p.part === 'dryer'))
        loc = { ...loc, p: { part: 'tank' } };

      if (dim === 'voltage' && !loc) {
        unreadable(n);
        return index + 1;
      }
      if (measure === 'height' && (!loc || loc.p.part)) {
        if (!loc || !['wheel', 'coach', 'frame', 'axle', 'bellows', 'tyre'].includes(loc.p.part ?? '')) {
          if (loc?.p.part === 'shim') measure = 'shim thickness';
          else if (loc?.p.part === 'arm' || loc?.p.part === 'link') measure = 'arm length';
          else if (!loc) {
            unreadable(n);
            return index + 1;
          }
        }
      }
      const dims = measureDims[measure];
      const difference = measure === 'toe' || measure === 'camber';
      let value = n;
      let resume = index + 1;
      if (difference) {
        const dirAt = nextReal(index) < items.length ? directionAt(items, index) : null;
        const out = dirAt?.out ?? (measure === 'toe' && /out/.test(m?.phrase ?? ''));
        if (out && !n.signed) value = { ...n, value: -Math.abs(n.value) };
        if (dirAt) {
          use(items[dirAt.index]);
          resume = dirAt.index + 1;
        }
      }
      void dims;
      const fact = push(
        {
          is: 'reading',
          where: where(loc),
          word: word(),
          what:
            m && m.v === measure
              ? said(measure, m)
              : {
                  v: measure,
                  from: from === 'carried' ? 'carried' : unit === n.unit ? 'said' : 'assumed',
                  spans: [n.span],
                },
          amount: { v: amountOf(value, unit), from: n.slip ? 'assumed' : n.unit ? 'said' : from, spans: [n.span] },
          ...flags(),
        } as Partial0,
        n,
      );
      if (loc && fact) subject = loc.p.part === 'pressure switch' ? subject : loc;
      // two values for both ends of an end: left, then right
      pairUp(fact);
      // "98 not 89": the second is what it was
      const neg = items[nextReal(index)];
      if (neg?.k === 'neg' && items[nextReal(nextReal(index))]?.k === 'num') use(neg, items[nextReal(nextReal(index))]);
      if (measure === 'toe' || measure === 'camber') {
        const over = items
          .slice(index + 1)
          .findIndex((it) => it.k === 'num' && it.unit !== null && dimensionOf(it.unit) === 'length');
        const across = over >= 0 ? (items[index + 1 + over] as Amounting) : null;
        if (across && fact?.is === 'reading' && /^(?:over|across|on)$/.test(phraseOf(items[index + over]))) {
          fact.across = said(amountOf(across, across.unit!), across);
          use(across);
          resume = index + 2 + over;
        }
      }
      return Math.max(resume, index + 1);
    }
    if (clause.hard) told = false;
  }

  function pairUp(fact: Fact | null): void {
    if (!fact || fact.is !== 'reading') return;
    const at = facts.indexOf(fact);
    const prev = facts[at - 1];
    if (prev?.is !== 'reading' || prev.what.v !== fact.what.v) return;
    const a = takePlace(prev.where.v);
    const b = takePlace(fact.where.v);
    if (!a || !b || makePlace(a) !== makePlace(b) || prev.when || fact.when) return;
    const open =
      (a.side === undefined || a.side === 'both') &&
      (a.end !== undefined || a.side === 'both' || (a.part !== undefined && sideable.has(a.part)));
    if (!open || fact.where.from === 'said') return;
    prev.where = { ...prev.where, v: makePlace({ ...a, side: 'left' }), from: 'assumed' };
    fact.where = { ...fact.where, v: makePlace({ ...a, side: 'right' }), from: 'assumed' };
  }

  function measureUnit(measure: Measure | null): Unit | null {
    if (!measure) return null;
    const dim = measureDims[measure]?.[0];
    if (dim === 'pressure') return context.pressureUnit;
    if (dim === 'length')
      return measure === 'altitude'
        ? context.lengthUnit === 'mm'
          ? 'm'
          : 'ft'
        : measure === 'odometer' || measure === 'distance driven'
          ? context.lengthUnit === 'mm'
            ? 'km'
            : 'mi'
          : measure === 'height'
            ? context.lengthUnit
            : null;
    if (dim === 'voltage') return 'V';
    if (dim === 'current') return 'A';
    if (dim === 'resistance') return 'ohm';
    if (dim === 'temperature') return context.lengthUnit === 'mm' ? 'C' : 'F';
    if (dim === 'ratio') return '%';
    if (dim === 'torque') return context.lengthUnit === 'mm' ? 'N m' : 'lbf ft';
    if (dim === 'mass') return context.lengthUnit === 'mm' ? 'kg' : 'lb';
    return null;
  }
  function tankOrCarried(loc: Loc | null): Loc {
    if (loc?.p.part && pressureParts.has(loc.p.part) && loc.p.part !== 'height valve')
      return { ...loc, from: 'carried', spans: [] };
    return { p: { part: 'tank' }, from: 'assumed', spans: [] };
  }
  function unitFor(measure: Measure | null, p: PlaceParts, n: Amounting, ctx: Context, last: Unit | null): Unit | null {
    return (
      measureUnit(measure) ??
      (coachSides(p) && heightLike(n, ctx)
        ? ctx.lengthUnit
        : p.part && pressureParts.has(p.part)
          ? ctx.pressureUnit
          : p.part && voltParts.has(p.part)
            ? 'V'
            : last)
    );
  }
  return { facts, ambiguous, used };
};

const nextFiller = (items: readonly Settled[], index: number): number => Math.min(index + 1, items.length - 1);
const lengthy = (n: Amounting, context: Context): boolean => {
  const d = dimension(n);
  return d === 'length' || (d === null && (n.step < 1 || context.lengthUnit === 'mm' || n.value < 4));
};
const heightLike = (n: Amounting, context: Context): boolean => {
  const unit = n.step < 1 && n.step !== 0.1 && n.step !== 0.01 ? 'in' : context.lengthUnit;
  const range = heightRange[unit === 'mm' || unit === 'cm' ? unit : 'in'];
  return n.value >= range[0] && n.value <= range[1];
};
const subjectIsCorner = (items: readonly Settled[], index: number): boolean =>
  items.slice(0, index).some((i) => i.k === 'place' && !i.p.part);
const clauseHasReading = (items: readonly Settled[], index: number): boolean =>
  items.slice(0, index).some((i) => i.k === 'num' || i.k === 'sign');
const durationAfter = (items: readonly Settled[], index: number): Amounting | null => {
  const n = items.slice(index + 1, index + 7).find((i): i is Amounting => i.k === 'num');
  return n?.unit && dimensionOf(n.unit) === 'duration' ? n : null;
};
const durationBefore = (items: readonly Settled[], index: number): Amounting | null => {
  const n = items.slice(0, index).findLast((i): i is Amounting => i.k === 'num');
  return n?.unit && dimensionOf(n.unit) === 'duration' ? n : null;
};
const whenNear = (items: readonly Settled[], index: number): { when?: When } => {
  const low = items
    .slice(index + 1, index + 3)
    .find((i) => 'phrase' in i && /^(?:yesterday|last night)$/.test(i.phrase));
  return low ? { when: { text: 'yesterday', day: 1, spans: [low.span] } } : {};
};
const directionAt = (items: readonly Settled[], index: number): { out: boolean; index: number } | null => {
  for (let j = index + 1; j < Math.min(items.length, index + 4); j += 1) {
    const phrase = 'phrase' in items[j]! ? (items[j] as { phrase: string }).phrase : '';
    if (/^(?:out|toe out|toed out|negative|outward)$/.test(phrase)) return { out: true, index: j };
    if (/^(?:in|toe in|positive|inward)$/.test(phrase)) return { out: false, index: j };
  }
  return null;
};
const dirText = (items: readonly Settled[], index: number): string => {
  const dir = directionAt(items, index);
  return dir ? (dir.out ? ' out' : ' in') : '';
};
