/** What a check costs from where the coach is now: set-up and undo, the gate, the wait. Minutes, estimates of ours. */
import type { CoachState, Standing } from '../session/standing.ts';
import type { Check } from './check.ts';
import { touches } from './touch.ts';

export type Minutes = { readonly hands: number; readonly wait: number };

const settleMinutes = 15;
const said = (state: CoachState, name: string): boolean => state.because[name]?.fact.holds === true;

/** Worked out once for a standing: every check asks, and a long session has many facts. */
const once = <T>(work: (standing: Standing) => T): ((standing: Standing) => T) => {
  const kept = new WeakMap<Standing, { value: T }>();
  return (standing) => {
    const had = kept.get(standing) ?? { value: work(standing) };
    kept.set(standing, had);
    return had.value;
  };
};

/** Nothing has been touched since it stood: no key, pump, engine, panel move or arm. */
export const untouched = once(
  ({ state, facts }: Standing): boolean =>
    state.key !== true &&
    state.engine !== true &&
    state.pump !== true &&
    state.pumpedAt === null &&
    state.arm.left === null &&
    state.arm.right === null &&
    !facts.some(({ fact }) => touches(fact)),
);

/**
 * How it was found tells of the night it stood: it is worth the tape where standing is what was complained of, or nothing
 * was yet, or it is known to have stood. A pump that is slow or dead is not looked for with a tape at four corners.
 */
const stood = ({ complaint, state, facts }: Standing): boolean =>
  complaint === null ||
  complaint.standing ||
  said(state, 'parked') ||
  facts.some(
    ({ fact }) =>
      (fact.is === 'reading' && fact.what.v === 'standing time') || ('often' in fact && fact.often === 'standing'),
  );

/** Minutes still to wait until pumped air has cooled, by the newest fact's time. */
const settling = once(({ state, facts }: Standing): number => {
  if (state.pump === true || state.engine === true) return settleMinutes;
  if (state.pumpedAt === null) return 0;
  const now = facts.reduce((t, h) => Math.max(t, h.fact.at), state.pumpedAt);
  return Math.max(0, settleMinutes - (now - state.pumpedAt) / 60_000);
});

const none: Minutes = { hands: 0, wait: 0 };

/** null: cannot be made from here. */
const setting = (check: Check, standing: Standing): Minutes | null => {
  const { state, facts } = standing;
  const empty = said(state, 'tank drained');
  const refill = empty ? 8 : 0;
  switch (check.setting) {
    case 'as found':
      return untouched(standing) && stood(standing) ? none : null;
    case 'panel untouched':
      return facts.some(({ fact }) => fact.is === 'condition' && fact.what.v.startsWith('panel ')) ? null : none;
    case 'key off, settled':
      return { hands: 1, wait: settling(standing) + refill };
    case 'shut, settled':
      return { hands: state.panel === 'shut' ? 0 : 1, wait: settling(standing) + refill };
    case 'outlet closed, settled':
      return { hands: state.outletClosed ? 0 : 3, wait: settling(standing) + refill };
    case 'tank up':
      return { hands: 0, wait: refill };
    case 'tank empty':
      return empty ? none : { hands: 2, wait: 4 + 8 };
    case 'link off':
      return { hands: 4, wait: refill };
    case 'pump called':
      return { hands: state.key === true ? 0 : 1, wait: 1 };
    case 'pump running':
      return { hands: 1, wait: state.pump === true ? 0 : 1 };
    case 'after a drive':
      return { hands: 2, wait: said(state, 'driving') ? 0 : 20 };
    case 'ride height':
      return { hands: 0, wait: refill };
    case 'standing':
      return none;
    case 'off the coach':
      return { hands: 35, wait: 5 };
  }
};

const gate = (check: Check, { state }: Standing): Minutes => {
  if (check.gate === 'dead') return state.mode === 'dead' ? none : { hands: 12, wait: 5 };
  const back = state.mode === 'dead' && check.setting !== 'standing' ? { hands: 8, wait: 8 } : none;
  if (check.gate === 'live' && state.mode === null) return { hands: back.hands + 3, wait: back.wait };
  return back;
};

/** All of it, from the coach's present state; null where it cannot be made any more. */
export const minutesOf = (check: Check, standing: Standing): Minutes | null => {
  const s = setting(check, standing);
  if (!s) return null;
  const g = gate(check, standing);
  return { hands: check.hands + s.hands + g.hands, wait: Math.round(check.wait + s.wait + g.wait) };
};

/** Hands count whole; a wait counts less, and least where something else can be done meanwhile. */
export const burden = (m: Minutes, check: Pick<Check, 'meanwhile'>): number =>
  Math.max(1, m.hands + m.wait * (check.meanwhile ? 0.35 : 0.7));
