/**
 * Whether the tank leaks and how fast, from all readings that belong together, or from a fall said with its time. First
 * how long the coach stays level, then the rate against the sheet's limit, or the benchmark where it has none.
 */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { kneeOf } from '../../core/fall-shape.ts';
import { ImpossibleInput } from '../../core/quantity.ts';
import { readingDeviation } from '../../core/reading-error.ts';
import { type Case, type Judge, latest, middle, stateAt } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import type { Finding } from '../finding.ts';
import { clock, shown, typed } from '../show.ts';
import {
  type Episode,
  type Timed,
  divisionOf,
  episodeOf,
  fitPoints,
  settleSeconds,
  tankSide,
} from '../tank-episode.ts';
import { switchRange } from './tank-pressure.ts';
import { fallFinding } from '../tank-fall.ts';
import { mostByCooling, settledBy } from '../where-it-stops.ts';

/** Cooling between first and last reading, where both temperatures are known: ratio T/T0 at each point. */
const cooling = (c: Case, points: readonly Timed[]): { factor: (at: number) => number; note: string } | null => {
  const first = points[0]!.at;
  const last = points.at(-1)!.at;
  const near = (at: number): ReadingFact | undefined =>
    c.facts.find(
      (f): f is ReadingFact =>
        f.is === 'reading' &&
        f.what.v === 'temperature' &&
        /^(?:ambient|tank|)$/.test(f.where.v) &&
        Math.abs(f.at - at) <= 900_000,
    );
  const a = near(first);
  const b = near(last);
  if (!a || !b || a === b || last === first) return null;
  const [t0, t1] = [a.amount.v.si, b.amount.v.si];
  return {
    factor: (at) => (t0 + ((t1 - t0) * (at - first)) / (last - first)) / t0,
    note: `cooling taken out by Gay-Lussac: ${typed(a.amount.v)} at the start (${a.id}), ${typed(b.amount.v)} at the end (${b.id})`,
  };
};

/** Hot air: readings sooner after pumping than it takes to settle are left out, or waited for. */
const settled = (
  episode: Episode,
  zone: string,
): { points: readonly Timed[]; notes: string[]; until: number | null } => {
  const pumpedAt = episode.state.pumpedAt;
  if (pumpedAt === null)
    return { points: episode.points, notes: ['assumed: 15 min or more since the last pumping'], until: null };
  const from = pumpedAt + settleSeconds * 1000;
  const late = episode.points.filter((p) => p.at >= from);
  if (late.length === episode.points.length) return { points: late, notes: [], until: null };
  // More than cooling can take, over longer than it takes: a leak, however soon after pumping it was watched.
  const [a, b] = [episode.points[0]!, episode.points.at(-1)!];
  if (b.at - a.at >= settleSeconds * 1000 && a.p - b.p > mostByCooling * (a.p + 1e5))
    return {
      points: episode.points,
      notes: ['watched from the pumping on: it falls by more than cooling alone can take, 8 % of absolute'],
      until: null,
    };
  if (late.length >= 2)
    return { points: late, notes: [`readings before ${clock(from, zone)} left out: hot air settling`], until: null };
  return { points: late, notes: [], until: from };
};

const hotAir = (c: Case, episode: Episode, until: number): Finding => {
  const last = episode.points.at(-1)!;
  const unit = last.fact.amount.v.unit;
  const fall = episode.points[0]!.p - last.p;
  return {
    key: 'settling@tank',
    verdict: 'cannot tell',
    words: `hot air just pumped falls by itself: wait, read the tank at ${clock(Math.max(until, last.at), c.standing.zone)} and again later`,
    amount: shown(fall, unit, divisionOf(c, last.fact) / 2, { difference: true }),
    because: episode.points.map((p) => p.fact.id),
    why: {
      formula: 'p/T constant: air that cools falls without a leak; 14 F (8 K) colder is 3 psi at 100 psi',
      inputs: episode.points.map((p) => ({
        name: `tank at ${clock(p.at, c.standing.zone)}`,
        text: shown(p.p, unit, p.fact.amount.v.pm).text,
        from: p.fact.id,
      })),
      source: { kind: 'practice', words: 'common practice, no source: 15 min to settle' },
      notes: [],
    },
  };
};

const judgeEpisode = (c: Case, last: ReadingFact): Finding[] => {
  const episode = episodeOf(c, last);
  if (episode.points.length < 2 || episode.points.at(-1)!.at - episode.points[0]!.at < 1000) return [];
  const { points, notes, until } = settled(episode, c.standing.zone);
  if (until !== null) return [hotAir(c, episode, until)];
  if (points.filter((p) => p.p > 2 * p.sd).length < 2) return [];
  const { p: atmosphere, input } = atmosphereOf(c);
  // Past a knee the fall says nothing of the rate.
  const stop = kneeOf(fitPoints(points), atmosphere);
  const heat = stop !== null && settledBy(c, points[0]!.p, stop.at, divisionOf(c, points[stop.from]!.fact), atmosphere);
  // What hot air took as it settled is no leak: what the tank does after it counts.
  const falling = stop ? (heat ? points.slice(stop.from) : points.slice(0, stop.from)) : points;
  if (heat)
    notes.splice(
      0,
      notes.length,
      `readings before ${clock(points[stop.from]!.at, c.standing.zone)} left out: the fall stopped where no leak would, hot air settling`,
    );
  else if (stop)
    notes.push(
      `readings from ${clock(points[stop.from]!.at, c.standing.zone)} on left out: the fall has stopped there`,
    );
  const cool = cooling(c, falling);
  const right = cool ? falling.map((p) => ({ ...p, p: (p.p + atmosphere) / cool.factor(p.at) - atmosphere })) : falling;
  return [
    fallFinding({
      c,
      episode,
      points: right,
      atmosphere,
      atmosphereInput: input,
      notes: [...notes, ...(cool ? [cool.note] : [])],
      because: [...new Set(falling.map((p) => p.fact.id))],
      ...(stop !== null && !heat ? { stopped: { points: points.slice(stop.from), at: stop.at } } : {}),
    }),
  ];
};

/** "drops 6 psi in 10 min": two readings, the later one at the tank's last known pressure where there is one. */
export const saidFall = (
  c: Case,
  fact: ReadingFact,
  began?: { readonly at: number; readonly reading: ReadingFact },
): Finding[] => {
  if (!fact.over || fact.over.v.si <= 0) return [];
  const fall = middle(fact.amount.v);
  const state = stateAt(c, fact);
  const known = began?.reading ?? latest(c, 'pressure', tankSide);
  const cutOut = switchRange(c, 'cut-out');
  const start = began?.at ?? (known ? middle(known.amount.v) : (cutOut?.high?.si ?? null));
  const { p: atmosphere, input } = atmosphereOf(c);
  if (!known && start !== null && fall > start)
    throw new ImpossibleInput('fall', fall, (write) => `it cannot be more than the ${write(start)} of cut-out`);
  // a last reading below the fall was taken after it
  const from = known && start !== null && fall > start ? start + fall : (start ?? Math.max(7e5, fall * 1.2));
  const sd = readingDeviation(divisionOf(c, fact));
  const at = fact.at;
  const points: Timed[] = [
    { fact, at: at - fact.over.v.si * 1000, p: from, sd, tSd: 0 },
    { fact, at, p: from - fall, sd, tSd: Math.sqrt(1 / 3) * fact.over.v.pm },
  ];
  const notes = [
    known
      ? `fall taken from the tank's last reading of ${typed(known.amount.v)} (${known.id})`
      : `assumed: the fall began at ${shown(from, fact.amount.v.unit, fact.amount.v.pm).text}${start === null ? '' : ', cut-out'}; the start was not said`,
    'assumed: 15 min or more since the last pumping',
  ];
  const found = fallFinding({
    c,
    episode: { points, state },
    points,
    atmosphere,
    atmosphereInput: input,
    notes,
    because: [fact.id, ...(known ? [known.id] : [])],
  });
  return [
    {
      ...found,
      why: {
        ...found.why,
        inputs: [
          { name: 'fall', text: `${typed(fact.amount.v, true)} in ${typed(fact.over.v)}`, from: fact.id },
          ...found.why.inputs.slice(2),
        ],
      },
      ...(known ? {} : { wants: found.wants ?? { field: 'tank pressure', question: 'What does the tank read now?' } }),
    },
  ];
};

export const tankLeak: Judge = {
  subject: 'tank leak',
  judge: (c) => {
    const fresh = c.fresh.filter((f): f is ReadingFact => f.is === 'reading');
    const last = fresh.filter((f) => f.what.v === 'pressure' && tankSide(f.where.v)).at(-1);
    const falls = fresh.filter((f) => f.what.v === 'pressure fall' && tankSide(f.where.v));
    return [...(last ? judgeEpisode(c, last) : []), ...falls.flatMap((f) => saidFall(c, f))];
  },
};
