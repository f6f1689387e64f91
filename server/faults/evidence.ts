/**
 * What the facts in force say to the diagnosis: outcomes of observables, each with how far it is trusted. Pure.
 *
 * Signs speak through the tables in signs/, readings through the findings that judged them. The same outcome of the same
 * observable counts once in a situation, more trusted when it was measured again; a contradiction is less trusted on both
 * sides, so that the order of notes does not matter. What a firmer observation already says, a vaguer one hardly adds to.
 */
import { takePlace } from '../../intents/place.ts';
import type { ConditionFact, FactId, Measure, Place, ReadingFact, SignFact } from '../../intents/shapes.ts';
import type { Finding } from '../findings/finding.ts';
import { stillRests } from '../session/rests.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { sides } from './fault.ts';
import { askedBefore, fits, momentOf } from './moment.ts';
import { bridgedEvidence, bridgedNotes, notItsOwnCall } from './bridged.ts';
import { measuredEvidence } from './measured.ts';
import { kindOfSee, observableOf, sideOfSee } from './observables.ts';
import { air } from './signs/air.ts';
import { looks } from './signs/looks.ts';
import { pump_ } from './signs/pump.ts';
import type { SignRule } from './signs/rule.ts';
import { stance } from './signs/stance.ts';
import { type Mend, mendsOf } from './situation.ts';
import { leans } from '../twin/see-standing.ts';
import { touches } from './touch.ts';
import { assumedAuto, furtherLow, verdictEvidence } from './verdicts.ts';

export type Evidence = {
  see: string;
  /** One of its outcomes, or several as "drops|on stops". */
  outcome: string;
  weight: number;
  because: FactId[];
  seq: number;
  words: string;
  /** Place in the order of the facts: before or after a repair. */
  clock: number;
  /** Said again, against or instead of another. */
  note?: 'measured again' | 'contradicts' | 'echo' | 'gauge in doubt';
};

/** How far a report is trusted: seen by the tech, second-hand, a hunch. Estimates. */
export const trust = { own: 0.97, told: 0.7, hunch: 0.3 } as const;
/** What was read off an instrument and typed as a number: fewer slips than a remark. */
const trustRead = 0.99;
/** Watched in a position of the panel that was not said. */
const trustAssumed = 0.8;
const trustContradicted = 0.5;
const trustEcho = 0.2;
const trustGaugeInDoubt = 0.3;
/** A right switch point while the coach's gauge lies: read off the other gauge, most likely. */
const trustOtherGauge = 0.1;

const rules: readonly SignRule[] = [...air, ...looks, ...stance, ...pump_];

const wordsOfSign = (fact: SignFact): string =>
  `${fact.there ? '' : 'no '}${fact.what.v}${fact.where.v ? ` at ${fact.where.v}` : ''}${fact.often ? `, ${fact.often}` : ''}`;

const signEvidence = (standing: Standing, sheet: Sheet, index: number, fact: SignFact): Evidence[] => {
  const place = takePlace(fact.where.v);
  if (!place) return [];
  const moment = momentOf(standing, sheet, index);
  const part = place.part ?? '';
  const found = rules.find(
    (r) =>
      r.there === fact.there &&
      r.signs.includes(fact.what.v) &&
      r.parts.includes(part) &&
      (r.end === undefined || r.end === place.end) &&
      (r.side === 'any' ||
        (r.side === 'side'
          ? place.side !== undefined
          : place.side === undefined || (r.side === 'each' && place.side === 'both'))) &&
      fits(r.when, moment),
  );
  const front = place.end === 'front' && (part === '' || part === 'wheel');
  const on = place.side === undefined || place.side === 'both' ? sides : [place.side];
  const held = standing.facts[index]!;
  const one = (see: string, outcome: string): Evidence => ({
    see,
    outcome,
    weight: trust[fact.word],
    because: [fact.id],
    seq: held.seq,
    words: wordsOfSign(fact),
    clock: index,
  });
  if (front && fact.there && (fact.what.v === 'low' || fact.what.v === 'high' || fact.what.v === 'level'))
    return on.map((side) => one(`${side} front height`, fact.what.v === 'level' ? 'within' : fact.what.v));
  if (fact.what.v === 'leans' && fact.there && place.side && place.side !== 'both') return [one('lean', place.side)];
  if (!found || (front && found.end !== 'front')) return [];
  // The tandem's tyres are the ones whose wear and pressure the rear tells; a front one speaks by rules of its own.
  if (
    place.end === 'front' &&
    part === 'tyre' &&
    found.end !== 'front' &&
    found.gives.some(([see]) => see === 'tyre wear')
  )
    return [];
  return found.gives.flatMap(([see, outcome]) =>
    found.side === 'none' || found.side === 'any' || observableOf(see)
      ? [one(see, outcome)]
      : on.map((side) => one(`${side} ${see}`, outcome)),
  );
};

/** A link was off before: its being on again says that it was put back. */
const takenOff = (standing: Standing, index: number): boolean =>
  standing.facts
    .slice(0, index)
    .some(({ fact }) => fact.is === 'condition' && fact.what.v === 'link connected' && !fact.holds);

/** The key was turned off in this very note, or the pump was heard with it off. */
const keySaidOff = (standing: Standing, index: number): boolean => {
  const { fact, note } = standing.facts[index]!;
  const key = standing.stateAt.get(fact.id)?.because['key on'];
  if (fact.is !== 'condition' || !key) return false;
  const ran = standing.facts
    .slice(0, index)
    .some(({ fact: f }) => f.is === 'sign' && f.there && f.what.v === 'runs on');
  return fact.holds || (ran && key.note === note) || askedBefore(standing, standing.facts[index]!.seq) === 'key off';
};

const conditionEvidence = (standing: Standing, index: number, fact: ConditionFact): Evidence[] => {
  const held = standing.facts[index]!;
  const one = (see: string, outcome: string, words: string): Evidence[] => [
    { see, outcome, weight: trust[fact.word], because: [fact.id], seq: held.seq, words, clock: index },
  ];
  const panel = /^panel (auto|fill|empty|shut)$/.exec(fact.what.v)?.[1];
  const asked = askedBefore(standing, held.seq);
  // A note that measures tells where it was put for that, not where it was found.
  const looked = standing.facts.every((h) => h.note !== held.note || h.fact.is === 'condition');
  if (panel && fact.holds && asked === 'panel look' && looked)
    return one('panel look', panel, `panel found in ${panel.toUpperCase()}`);
  // Off by itself, not taken off for a test.
  const side = takePlace(fact.where.v)?.side;
  if (fact.what.v === 'link connected' && !fact.holds && side && side !== 'both' && !asked?.endsWith('link off'))
    return one(`${side} link look`, 'off', `${side} link off`);
  // "Links on" leaves open whether they are straight.
  if (fact.what.v === 'link connected' && fact.holds && !asked?.endsWith('link off') && !takenOff(standing, index))
    return (side && side !== 'both' ? [side] : sides).flatMap((s) =>
      one(`${s} link look`, 'fine|bent or slipped', `${s} link on`),
    );
  if (fact.what.v === 'pump running' && !fact.holds && asked === 'runs on')
    return one('pump past cut-out', 'stops', 'pump stops');
  // Said not to run, and now it does, by its own switch.
  const quiet = standing.facts
    .slice(0, index)
    .some(({ fact: f }) => f.is === 'sign' && f.there && f.what.v === 'wont run' && /^(?:pump|motor)$/.test(f.where.v));
  if (fact.what.v === 'pump running' && fact.holds && quiet && standing.stateAt.get(fact.id)?.key !== false)
    return one('pump called', 'runs', 'pump runs');
  // A welded relay ignores the key.
  if (fact.what.v === 'pump running' && standing.stateAt.get(fact.id)?.key === false && keySaidOff(standing, index))
    return one(
      'key off',
      fact.holds ? 'runs on' : 'stops',
      fact.holds ? 'pump runs with the key off' : 'pump stops with the key off',
    );
  if (fact.what.v === 'floor level')
    return one('floor', fact.holds ? 'level' : 'not level', fact.holds ? 'floor level' : 'floor not level');
  return [];
};

type Remembered = Standing & { tape?: { replies: ReadonlyMap<string, { blocks: readonly { is: string }[] }> } };

/** Findings whose facts still stand: the newest of each key, and older ones where the replies are at hand. */
const findingsOf = (standing: Remembered): Finding[] => {
  const rests = stillRests(standing);
  const all = new Map<string, Finding>();
  const put = (f: Finding): void => {
    if (rests(f)) all.set(`${f.key} ${f.because.length} ${f.because[0] ?? ''} ${f.because.at(-1) ?? ''}`, f);
  };
  for (const reply of standing.tape?.replies.values() ?? [])
    for (const block of reply.blocks)
      if (block.is === 'findings') for (const f of (block as { list?: Finding[] }).list ?? []) put(f);
  for (const f of standing.findings.values()) put(f);
  return [...all.values()];
};

/** Readings in force of one measure at the places, each with its place in the order of the facts. */
const readingsAt = (
  standing: Standing,
  what: Measure,
  places: readonly Place[],
): { fact: ReadingFact; seq: number; i: number }[] =>
  standing.facts.flatMap(({ fact, seq }, i) =>
    fact.is === 'reading' && fact.what.v === what && places.includes(fact.where.v) ? [{ fact, seq, i }] : [],
  );

/** What the coach's gauge showed while another, or the switch, told where the tank was: the same at different pressures. */
const stuckNeedle = (standing: Standing): Evidence | null => {
  const shown = standing.facts.flatMap(({ fact, seq, note }, i) =>
    fact.is === 'reading' && fact.what.v === 'pressure' && fact.where.v === 'gauge' ? [{ fact, seq, note, i }] : [],
  );
  const truths = shown.flatMap(({ note }) => {
    const other = standing.facts.find(
      (h) => h.note === note && h.fact.is === 'reading' && beside.has(`${h.fact.what.v} ${h.fact.where.v}`),
    );
    return other?.fact.is === 'reading' ? [other.fact.amount.v.si] : [];
  });
  const values = shown.map((x) => x.fact.amount.v.si);
  const last = shown.at(-1);
  if (!last || truths.length < 2) return null;
  const moved = Math.max(...values) - Math.min(...values);
  const ranged = Math.max(...truths) - Math.min(...truths);
  if (ranged < 20 * last.fact.amount.v.pm || moved > 0.1 * ranged) return null;
  return {
    see: 'needle',
    outcome: 'stuck',
    weight: trust.own,
    because: shown.map((x) => x.fact.id),
    seq: last.seq,
    words: `gauge shows ${last.fact.amount.v.text} whatever the tank holds`,
    clock: last.i,
  };
};
/** Readings of the same air that do not come from the coach's gauge. */
const beside: ReadonlySet<string> = new Set([
  'pressure test port',
  'pressure tank',
  'cut-in pressure switch',
  'cut-out pressure switch',
]);

/** The coach's gauge has shown different pressures: its needle is not stuck. */
const needleEvidence = (standing: Standing): Evidence[] => {
  const said = standing.facts.some(({ fact }) => fact.is === 'sign' && takePlace(fact.where.v)?.part === 'gauge');
  const sorted = readingsAt(standing, 'pressure', ['gauge', 'tank']).toSorted(
    (a, b) => a.fact.amount.v.si - b.fact.amount.v.si,
  );
  const low = sorted[0];
  const high = sorted.at(-1);
  const stuck = stuckNeedle(standing);
  if (stuck && !said) return [stuck];
  const second = standing.facts.some(({ fact }) => fact.is === 'reading' && fact.where.v === 'test port');
  if (said || !second || !low || !high) return [];
  if (high.fact.amount.v.si - low.fact.amount.v.si <= 2 * (low.fact.amount.v.pm + high.fact.amount.v.pm)) return [];
  return [
    {
      see: 'needle',
      outcome: 'moves',
      // Which gauge a pressure of the tank was read off is not always said.
      weight: trust.told,
      because: [low.fact.id, high.fact.id],
      seq: Math.max(low.seq, high.seq),
      words: `gauge read ${low.fact.amount.v.text} and ${high.fact.amount.v.text}`,
      clock: Math.max(low.i, high.i),
    },
  ];
};

/** Water freezes below it, and no ice is left well above it. K. */
const freezing = 273.15;
const noIce = 278;
const frostEvidence = (standing: Standing): Evidence[] => {
  const coldest = readingsAt(standing, 'temperature', ['ambient']).toSorted(
    (a, b) => a.fact.amount.v.si - b.fact.amount.v.si,
  )[0];
  const k = coldest?.fact.amount.v.si ?? 0;
  if (!coldest || (k >= freezing && k <= noIce)) return [];
  return [
    {
      see: 'frost',
      outcome: k < freezing ? 'frost' : 'none',
      weight: trust[coldest.fact.word],
      because: [coldest.fact.id],
      seq: coldest.seq,
      words: `air around ${coldest.fact.amount.v.text}`,
      clock: coldest.i,
    },
  ];
};

/** Two readings of the air around, far enough apart to move a coach. K. */
const muchColder = 8;
const temperatureEvidence = (standing: Standing): Evidence[] => {
  const read = readingsAt(standing, 'temperature', ['ambient']);
  if (read.length < 2) return [];
  const values = read.map((r) => r.fact.amount.v.si);
  const apart = Math.max(...values) - Math.min(...values);
  const last = read.at(-1)!;
  return [
    {
      see: 'temperature',
      outcome: apart >= muchColder ? 'much colder' : 'about the same',
      weight: trust.own,
      because: read.map((r) => r.fact.id),
      seq: last.seq,
      words: `air around ${read.map((r) => r.fact.amount.v.text).join(' and ')}`,
      clock: last.i,
    },
  ];
};

/** Whether the intake filter was off at that place in the order of the facts: the pump then breathes freely. */
const filterOff =
  (standing: Standing): ((i: number) => boolean) =>
  (i) => {
    const last = standing.facts
      .slice(0, i + 1)
      .findLast(({ fact }) => fact.is === 'work' && fact.done && takePlace(fact.where.v)?.part === 'intake filter');
    return last?.fact.is === 'work' && last.fact.what.v === 'removed';
  };

/** One side watched by tape beside the other in the same note, and hardly moving against it: it only leans after it. */
const onlyLeans = (f: Finding, all: readonly Finding[]): boolean => {
  const side = /^sink .*@(left|right)\b/.exec(f.key)?.[1];
  if (!side || !f.amount) return false;
  const other = f.key.replace(/@(?:left|right)\b/, `@${side === 'left' ? 'right' : 'left'}`);
  const note = (id: string | undefined): string => noteOf(id ?? '.');
  return all.some(
    (o) =>
      o.key === other &&
      o.amount !== undefined &&
      note(o.because.at(-1)) === note(f.because.at(-1)) &&
      leans(Math.abs(f.amount!.si), Math.abs(o.amount.si)),
  );
};

const findingEvidence = (standing: Standing): Evidence[] => {
  const at = new Map(standing.facts.map((h, i) => [h.fact.id, { i, h }]));
  const touched = standing.facts.findIndex(({ fact }) => touches(fact));
  const untilTouched = touched < 0 ? standing.facts.length : touched;
  const open = filterOff(standing);
  const all = findingsOf(standing);
  return all.flatMap((f) => {
    const beside = onlyLeans(f, all);

    let last: { i: number; h: Standing['facts'][number] } | null = null;
    let weight = Infinity;
    for (const id of f.because) {
      const rest = at.get(id);
      if (!rest) continue;
      const { fact } = rest.h;
      if (!last || rest.i > last.i) last = rest;
      weight = Math.min(weight, fact.is === 'reading' && fact.word === 'own' ? trustRead : trust[fact.word]);
    }
    if (!last) return [];
    const guessed = assumedAuto(f);
    if (guessed.length > 0) weight = Math.min(weight, trustAssumed);
    const newest = last;
    return (
      [...(f.evidence ?? []), ...verdictEvidence(f), ...guessed]
        // How it was found is said once, before anything is touched.
        .filter(({ see }) => !see.endsWith('as found') || newest.i <= untilTouched)
        .map(({ see, outcome }): Evidence => ({
          ...(open(newest.i) && see.startsWith('pump-up')
            ? { see: 'pump-up without filter', outcome: outcome === 'within' ? 'quick' : 'as slow' }
            : { see, outcome: beside ? 'holds' : furtherLow(f, see, outcome) }),
          weight,
          because: f.because,
          seq: newest.h.seq,
          words: f.words,
          clock: newest.i,
        }))
    );
  });
};

const noteOf = (id: FactId): string => id.slice(0, id.lastIndexOf('.'));
const outcomesOf = (e: Evidence): string[] => e.outcome.split('|');
const disagree = (a: Evidence, b: Evidence): boolean => !outcomesOf(a).some((o) => outcomesOf(b).includes(o));

/** Which repair or thaw an evidence lies after: evidence of different situations is kept apart. */
const eraOf = (e: Evidence, turns: readonly Pick<Mend, 'clock' | 'side'>[]): number =>
  turns.filter(
    (m) => m.clock < e.clock && (m.side === null || sideOfSee(e.see) === null || m.side === sideOfSee(e.see)),
  ).length;

const freezes: readonly string[] = [
  'height valve',
  'line',
  'bellows line',
  'supply line',
  'valve to panel line',
  'drain',
];
/** Valves and lines that were warmed: what was frozen is free from then on. */
const thawsOf = (standing: Standing): Pick<Mend, 'clock' | 'side'>[] =>
  standing.facts.flatMap(({ fact }, clock) => {
    if (fact.is !== 'sign' || !fact.there || (fact.what.v !== 'warm' && fact.what.v !== 'hot')) return [];
    const place = takePlace(fact.where.v);
    if (!freezes.includes(place?.part ?? '')) return [];
    return [{ clock, side: place?.side === 'left' || place?.side === 'right' ? place.side : null }];
  });

/** Filled after it was warmed, and not before. */
const thawEvidence = (known: readonly Evidence[], thaws: readonly Pick<Mend, 'clock' | 'side'>[]): Evidence[] => {
  const fills = (e: Evidence, yes: boolean): boolean =>
    kindOfSee(e.see) === 'valve fills' && (yes ? e.outcome === 'yes' : e.outcome === 'no');
  return thaws.slice(0, 1).flatMap(({ clock }): Evidence[] => {
    const before = known.find((e) => e.clock < clock && fills(e, false));
    const after = known.find((e) => e.clock > clock && fills(e, true));
    return before && after ? [{ ...after, see: 'warm up', outcome: 'cured', words: `${after.words} once warmed` }] : [];
  });
};

/** A side that was off, taped again on a floor said to be level: did it come right by itself? */
const movedEvidence = (known: readonly Evidence[]): Evidence[] => {
  const moved = known.find((e) => e.see === 'floor' && e.outcome === 'level');
  if (!moved || !known.some((e) => e.clock < moved.clock && isOff(e))) return [];
  const offBefore = known.filter((e) => e.clock < moved.clock && isOff(e));
  const after = offBefore.flatMap((off) => known.find((e) => e.see === off.see && e.clock > moved.clock) ?? []);
  const [last] = after.toSorted((a, b) => b.clock - a.clock);
  if (!last) return [];
  const right = after.every((e) => e.outcome === 'within');
  return [
    {
      ...last,
      see: 'moved to level',
      outcome: right ? 'level' : 'still off',
      words: `${last.words} on the level floor`,
    },
  ];
};
const isOff = (e: Evidence): boolean =>
  kindOfSee(e.see) === 'rear height' && ['low', 'far low', 'high'].includes(e.outcome);
/** What stood on a floor that turned out not to be level says nothing of the coach. */
const onSlope = (known: readonly Evidence[]): ReadonlySet<Evidence> => {
  const came = known.find((e) => e.see === 'moved to level' && e.outcome === 'level');
  const moved = known.find((e) => e.see === 'floor' && e.outcome === 'level');
  return new Set(came && moved ? known.filter((e) => e.clock < moved.clock && (isOff(e) || e.see === 'lean')) : []);
};

/** A hole at a rub mark is rubbed through. */
const together = (outcomes: readonly string[]): string =>
  outcomes.includes('rubbed') && outcomes.includes('torn') ? 'rubbed' : outcomes.join('|');
const oneThing: ReadonlySet<string> = new Set([
  'bellows look',
  'shock after drive',
  'shock length',
  'line look',
  'second gauge',
  'ride',
]);
const severalThings: ReadonlySet<string> = new Set(['pry bushings', 'tank bubbles at', 'motor legs', 'tyre wear']);

/** How many readings an evidence names at most. */
const shownBecause = 40;
/** Of the same observable in one situation: one entry per outcome. */
const settle = (same: readonly Evidence[]): Evidence[] => {
  const out: Evidence[] = [];
  for (const e of same) {
    const like = out.find((o) => o.outcome === e.outcome);
    if (!like) {
      // A narrower word for the same thing replaces the wider one.
      const wider = out.find((o) => !disagree(o, e));
      if (!wider) out.push({ ...e, because: [...e.because] });
      else {
        const narrow = outcomesOf(wider)
          .filter((o) => outcomesOf(e).includes(o))
          .join('|');
        const base = outcomesOf(e).length < outcomesOf(wider).length ? e : wider;
        Object.assign(wider, {
          ...base,
          outcome: narrow,
          because: [...new Set([...wider.because, ...e.because])],
          weight: Math.max(wider.weight, e.weight),
          clock: Math.max(wider.clock, e.clock),
          seq: Math.max(wider.seq, e.seq),
        });
      }
      continue;
    }
    const again = e.seq !== like.seq && !e.because.some((id) => like.because.includes(id));
    // the newest are enough to show what it rests on
    like.because = [...new Set([...like.because, ...e.because])].slice(-shownBecause);
    like.clock = Math.max(like.clock, e.clock);
    like.seq = Math.max(like.seq, e.seq);
    like.weight = Math.max(like.weight, e.weight);
    if (again) like.note = 'measured again';
  }
  // Several marks of one thing (rubbed and torn, cold and oily) are one finding; of several things, each stands.
  const kind = kindOfSee(out[0]?.see ?? '');
  const sound = observableOf(out[0]?.see ?? '')?.outcomes[0];
  if (out.length > 1 && !out.some((e) => outcomesOf(e).includes(sound ?? ''))) {
    if (oneThing.has(kind)) {
      const [head, ...rest] = out;
      return [
        {
          ...head!,
          outcome: together([...new Set(out.flatMap(outcomesOf))]),
          because: [...new Set(out.flatMap((e) => e.because))],
          weight: Math.max(...out.map((e) => e.weight)),
          clock: Math.max(...out.map((e) => e.clock)),
          seq: Math.max(...out.map((e) => e.seq)),
          words: [head!, ...rest].map((e) => e.words).join(', '),
        },
      ];
    }
    if (severalThings.has(kind)) return out;
  }
  // dry at the tank and bubbles at its drain: both are so
  if (out.length > 1 && kind === 'tank bubbles at') return out.filter((e) => e.outcome !== sound);
  // toe and camber of two wheels are several measurements under one name: one that is out says so for all
  if (out.length > 1 && out[0]!.see.endsWith(' toe camber')) return out.filter((e) => e.outcome !== 'within');
  if (out.length > 1)
    for (const e of out) Object.assign(e, { note: 'contradicts', weight: Math.min(e.weight, trustContradicted) });
  return out;
};

/** What a firmer observation already says: a vaguer one of the same thing is an echo. `S` is the side. */
const echoes: Readonly<Record<string, readonly string[]>> = {
  stance: ['S as found', 'S driving', 'S rear height', 'S overnight'],
  lean: [
    'left stance',
    'right stance',
    'left as found',
    'right as found',
    'left driving',
    'right driving',
    'left rear height',
    'right rear height',
    'left overnight',
    'right overnight',
  ],
  overnight: ['S as found'],
  driving: ['S rear height'],
  'coach overnight': ['left overnight', 'right overnight', 'left as found', 'right as found'],
  'coach driving': ['left driving', 'right driving', 'left rear height', 'right rear height'],
  'coach shut': ['left height shut', 'right height shut'],
  'soap side': ['S soap valve', 'S soap valve to panel', 'S soap delivery', 'S soap bellows'],
  'soap tank': ['tank bubbles at'],
  'pump duty': ['pump cycles auto'],
  'pump cycles auto': ['tank fall auto'],
  'pump cycles shut': ['tank fall shut'],
  'tank as found': ['fall stops'],
  'pump quiet': ['pump called', 'tank below cut-in'],
  'quiet at': ['tank below cut-in'],
  'tank below cut-in': ['pump called'],
  'valve heard': ['S exhaust', 'S soap valve'],
  'motor volts': ['motor legs'],
};

/** Read off the coach's own gauge. */
const byGauge = new Set([
  'tank fall auto',
  'tank fall shut',
  'tank fall outlet closed',
  'fall stops',
  'tank as found',
  'pump-up',
  'pump-up shut',
  'settle again',
  'quiet at',
]);

const points: ReadonlySet<string> = new Set(['cut-in', 'cut-out', 'pump past cut-out']);

const weighTogether = (list: readonly Evidence[]): Evidence[] => {
  const seen = new Set(list.map((e) => e.see));
  const gaugeLies = list.some(
    (e) => (e.see === 'second gauge' && e.outcome !== 'agrees') || (e.see === 'needle' && e.outcome === 'stuck'),
  );
  return list.map((e) => {
    const side = sideOfSee(e.see);
    const firmer = echoes[kindOfSee(e.see)] ?? echoes[e.see] ?? [];
    if (firmer.some((f) => seen.has(side ? f.replace(/^S /, `${side} `) : f)))
      return { ...e, weight: Math.min(e.weight, trustEcho), note: 'echo' };
    // Switch points that are off agree with a gauge that lies; right ones were most likely read off the better gauge.
    if (gaugeLies && points.has(e.see))
      return e.outcome === 'within' || e.outcome === 'stops'
        ? { ...e, weight: Math.min(e.weight, trustOtherGauge), note: 'gauge in doubt' }
        : e;
    if (gaugeLies && byGauge.has(e.see))
      return { ...e, weight: Math.min(e.weight, trustGaugeInDoubt), note: 'gauge in doubt' };
    return e;
  });
};

/** All evidence in force, in the order of its facts. */
export const evidenceOf = (standing: Standing, sheet: Sheet): Evidence[] => {
  const raw: Evidence[] = [];
  for (const [index, { fact }] of standing.facts.entries()) {
    if (fact.is === 'sign') raw.push(...signEvidence(standing, sheet, index, fact));
    else if (fact.is === 'condition') raw.push(...conditionEvidence(standing, index, fact));
  }
  raw.push(
    ...findingEvidence(standing),
    ...temperatureEvidence(standing),
    ...frostEvidence(standing),
    ...needleEvidence(standing),
    ...[...measuredEvidence(standing, sheet), ...bridgedEvidence(standing)].map((m) => ({ ...m, weight: trustRead })),
  );
  const bridged = bridgedNotes(standing);
  const known = raw.filter((e) => {
    if (notItsOwnCall.has(e.see) && e.because.some((id) => bridged.has(noteOf(id)))) return false;
    const o = observableOf(e.see);
    return o !== undefined && outcomesOf(e).every((x) => o.outcomes.includes(x));
  });
  const mends = mendsOf(standing);
  const thaws = thawsOf(standing);
  known.push(...thawEvidence(known, thaws), ...movedEvidence(known));
  const sloped = onSlope(known);
  const groups = new Map<string, Evidence[]>();
  for (const e of known) {
    if (sloped.has(e)) continue;
    const key = `${e.see} ${eraOf(e, [...mends, ...thaws])}`;
    groups.set(key, [...(groups.get(key) ?? []), e]);
  }
  const settled = [...groups.values()]
    .flatMap(settle)
    .toSorted((a, b) => a.clock - b.clock || a.see.localeCompare(b.see));
  return weighTogether(settled);
};
