/**
 * What is only supposed, in the place of what was seen: "what if the tank had held" leaves out that it fell. Weighed like
 * anything else, kept nowhere. Pure.
 */
import type { Suspect } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { type Evidence, evidenceOf, trust } from './evidence.ts';
import { modelOf } from './model.ts';
import { kindOfSee, sideOfSee } from './observables.ts';
import { mendsOf } from './situation.ts';
import { suspectsFrom } from './suspects.ts';
import { weighEvidence } from './weigh.ts';

/** What else the same supposition would have shown. `S` is the side. */
const goesWith: Readonly<Record<string, readonly (readonly [see: string, outcome: string])[]>> = {
  'tank fall auto: none': [
    ['tank as found', 'up'],
    ['fall stops', 'no fall'],
  ],
  'overnight: holds': [['S as found', 'level']],
  'height auto: holds': [
    ['S as found', 'level'],
    ['S overnight', 'holds'],
  ],
};

/** `then`: what stands with the supposed facts folded in; `ids`: theirs. */
export const suspectsInstead = (then: Standing, sheet: Sheet, ids: ReadonlySet<string>): Suspect[] => {
  const all = evidenceOf(then, sheet);
  const isSupposed = (e: Evidence): boolean => e.because.some((id) => ids.has(id));
  const supposed = all.filter(isSupposed).map((e): Evidence => {
    const alone = { ...e, weight: Math.max(e.weight, trust.own) };
    delete alone.note;
    return alone;
  });
  const with_ = supposed.flatMap((e) => {
    const side = sideOfSee(e.see);
    return (goesWith[`${kindOfSee(e.see)}: ${e.outcome}`] ?? []).map(([see, outcome]) => ({
      ...e,
      see: see.replace(/^S /, `${side ?? ''} `),
      outcome,
    }));
  });
  const said = new Set(supposed.map((e) => e.see));
  const changed = with_.filter((e) => !said.has(e.see) && all.some((a) => a.see === e.see));
  const gone = new Set([...supposed, ...changed].map((e) => e.see));
  const rest = all.filter((e) => !isSupposed(e) && !gone.has(e.see));
  return suspectsFrom(weighEvidence(modelOf(sheet), [...rest, ...supposed, ...changed], mendsOf(then)));
};
