/** Several reports of one observable in one situation: said again, narrowed, of several things, or against each other. Pure. */
import { kindOfSee, observableOf } from './observables.ts';
import { disagree, type Evidence, outcomesOf, trustContradicted } from './told.ts';

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
  'pump restart',
  'pump called',
]);
const severalThings: ReadonlySet<string> = new Set(['pry bushings', 'tank bubbles at', 'motor legs', 'tyre wear']);

/** How many readings an evidence names at most. */
const shownBecause = 40;
/** Of the same observable in one situation: one entry per outcome. */
export const settle = (same: readonly Evidence[]): Evidence[] => {
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
  if (out.length > 1 && (kind === 'tank bubbles at' || kind === 'pry bushings'))
    return out.filter((e) => e.outcome !== sound);
  // toe and camber of two wheels are several measurements under one name: one that is out says so for all
  if (out.length > 1 && out[0]!.see.endsWith(' toe camber')) return out.filter((e) => e.outcome !== 'within');
  if (out.length > 1)
    for (const e of out) Object.assign(e, { note: 'contradicts', weight: Math.min(e.weight, trustContradicted) });
  return out;
};
