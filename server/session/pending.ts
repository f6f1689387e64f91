/** Gates that were asked in a caution and are still open. Pure. */
import type { Condition } from '../../intents/shapes.ts';
import type { Finding } from '../findings/finding.ts';
import type { CoachState, Held, Standing } from './standing.ts';
import type { Asked } from './walk.ts';

/**
 * What was feared is not so: the pump stopped by itself, or the tank was read and is not above its cut-out. Only the power
 * of a pump that was said not to stop is let go so; a stop that keeps people out from under never is.
 */
const settled = (asked: Asked, facts: readonly Held[], findings: ReadonlyMap<string, Finding>): boolean => {
  if (asked.id !== 'over-pressure') return false;
  const tank = findings.get('pressure@tank');
  const calm = tank?.verdict === 'within' || tank?.verdict === 'low' ? tank.because : [];
  return facts.some(({ fact, seq }) => {
    if (seq < asked.since) return false;
    if (fact.is === 'sign')
      return seq > asked.since && fact.there && fact.what.v === 'stops' && fact.where.v === 'pump';
    if (fact.is === 'condition') return seq > asked.since && !fact.holds && fact.what.v === 'pump running';
    return calm.includes(fact.id);
  });
};

export const pendingOf = (
  asked: ReadonlyMap<Condition, Asked>,
  { state, gates, facts, findings }: Pick<Standing, 'gates' | 'facts' | 'findings'> & { readonly state: CoachState },
): Standing['pending'] =>
  [...asked]
    .filter(([what, { keys }]) => gates.get(what) !== true && !keys.some((k) => gates.get(k.text) === true))
    .filter(([, a]) => !settled(a, facts, findings))
    .map(([what, { seq, words, keys }]) => ({ what, words, keys, answered: (state.because[what]?.seq ?? 0) > seq }));
