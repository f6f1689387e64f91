/**
 * What the facts in force say to the diagnosis: outcomes of observables, each with how far it is trusted. Pure.
 *
 * Signs speak through the tables in signs/, readings through the findings that judged them. The same outcome of the same
 * observable counts once in a situation, more trusted when it was measured again; a contradiction is less trusted on both
 * sides, so that the order of notes does not matter. What a firmer observation already says, a vaguer one hardly adds to.
 */
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { bridgedEvidence, bridgedNotes, notItsOwnCall } from './bridged.ts';
import { findingEvidence } from './found.ts';
import { measuredEvidence } from './measured.ts';
import { kindOfSee, observableOf, sideOfSee } from './observables.ts';
import { frostEvidence, needleEvidence, temperatureEvidence } from './read-off.ts';
import { conditionEvidence, signEvidence } from './said.ts';
import { risenEvidence } from './risen.ts';
import { settle } from './settle.ts';
import { type Mend, mendsOf } from './situation.ts';
import { type Evidence, noteOf, outcomesOf, trustRead } from './told.ts';
import { downWithTankUp, movedEvidence, onSlope, thawEvidence, thawsOf } from './turns.ts';

export { type Evidence, trust } from './told.ts';

const trustEcho = 0.2;
const trustGaugeInDoubt = 0.3;
/** A right switch point while the coach's gauge lies: read off the other gauge, most likely. */
const trustOtherGauge = 0.1;

/** Which repair or thaw an evidence lies after: evidence of different situations is kept apart. */
const eraOf = (e: Evidence, turns: readonly Pick<Mend, 'clock' | 'side'>[]): number =>
  turns.filter(
    (m) => m.clock < e.clock && (m.side === null || sideOfSee(e.see) === null || m.side === sideOfSee(e.see)),
  ).length;

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

/** A habit that one night did not show: trusted so far. An estimate of ours. */
const trustNight = 0.5;
const allStood = (list: readonly Evidence[], sees: readonly string[]): boolean => {
  const told = list.filter((e) => sees.includes(e.see));
  return told.length > 0 && told.every((e) => e.outcome === 'level' || e.outcome === 'holds');
};

const weighTogether = (list: readonly Evidence[]): Evidence[] => {
  const seen = new Set(list.map((e) => e.see));
  const gaugeLies = list.some(
    (e) => (e.see === 'second gauge' && e.outcome !== 'agrees') || (e.see === 'needle' && e.outcome === 'stuck'),
  );
  return list.map((e) => {
    const side = sideOfSee(e.see);
    const firmer = echoes[kindOfSee(e.see)] ?? echoes[e.see] ?? [];
    const beside = firmer.map((f) => (side ? f.replace(/^S /, `${side} `) : f));
    // Said to go down night after night, and found level this once: no echo, the two speak against each other.
    if (/overnight$/.test(e.see) && e.outcome !== 'holds' && allStood(list, beside))
      return { ...e, weight: Math.min(e.weight, trustNight) };
    if (beside.some((f) => seen.has(f))) return { ...e, weight: Math.min(e.weight, trustEcho), note: 'echo' };
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
    ...[...measuredEvidence(standing, sheet), ...bridgedEvidence(standing), ...risenEvidence(standing, sheet)].map(
      (m) => ({ ...m, weight: trustRead }),
    ),
  );
  const bridged = bridgedNotes(standing);
  const known = raw.filter((e) => {
    if (notItsOwnCall.has(e.see) && e.because.some((id) => bridged.has(noteOf(id)))) return false;
    const o = observableOf(e.see);
    return o !== undefined && outcomesOf(e).every((x) => o.outcomes.includes(x));
  });
  const mends = mendsOf(standing);
  const thaws = thawsOf(standing);
  known.push(...thawEvidence(known, thaws), ...movedEvidence(known), ...downWithTankUp(known));
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
