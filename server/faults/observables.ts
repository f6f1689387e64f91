/** Everything that can be observed: the air side as the twin shows it, what is seen and felt beside it, and what follows from both. */
import { type AirObservable, airObservables } from '../twin/observables.ts';
import { givens } from './givens.ts';
import type { Given } from './givens/given.ts';
import { sides } from './fault.ts';

/** `ordered`: outcomes run from healthy to worst, and with several faults the worst shows (noisy-max). */
type Base = {
  see: string;
  outcomes: readonly string[];
  state: string;
  side: 'left' | 'right' | null;
  ordered: boolean;
};
export type Observable = Base &
  (
    | { from: 'twin' }
    | { from: 'given'; given: Given }
    /** Mean of others: the state was not said. `maps` turns their outcomes into these. */
    | { from: 'mean'; of: readonly { see: string; maps: Readonly<Record<string, string>> }[] }
    /** Two outcomes, healthy and not: not when any of the others is not at its first outcome. */
    | { from: 'any'; of: readonly string[] }
  );

/** Air observables whose outcomes have no order from healthy to worst: with several faults each may be what shows. */
const nominalAir = new Set([
  'fall stops',
  'height auto',
  'height shut',
  'driving',
  'rises first',
  'cut-in',
  'cut-out',
  'pump called',
  'pump restart',
  'motor current',
  'second gauge',
  'bellows pressures',
  'rear height',
  'front height',
  'valve fills',
  'valve dumps',
]);
const baseOf = (o: AirObservable): string => (o.side ? o.see.slice(o.side.length + 1) : o.see);

const air = airObservables.map((o): Observable => ({
  see: o.see,
  outcomes: o.outcomes,
  state: o.state,
  side: o.side ?? null,
  ordered: !nominalAir.has(baseOf(o)),
  from: 'twin',
}));

const fromGiven = (given: Given): Observable[] =>
  (given.sided ? sides : [null]).map((side) => ({
    see: side ? `${side} ${given.see}` : given.see,
    outcomes: given.outcomes,
    state: given.state,
    side,
    ordered: given.nominal !== true,
    from: 'given',
    given,
  }));

const same = (...outcomes: string[]): Record<string, string> => Object.fromEntries(outcomes.map((o) => [o, o]));

const derived: Observable[] = [
  ...sides.flatMap((side): Observable[] => [
    {
      see: `${side} stance`,
      outcomes: ['level', 'low', 'far low', 'on stops', 'high'],
      state: 'how that side stands, state not said',
      side,
      ordered: false,
      from: 'mean',
      of: [
        { see: `${side} as found`, maps: same('level', 'low', 'far low', 'on stops') },
        { see: `${side} driving`, maps: same('level', 'low', 'far low', 'high') },
      ],
    },
    {
      see: `${side} soap side`,
      outcomes: ['none', 'bubbles'],
      state: 'at height; that side soaped, where is not said',
      side,
      ordered: true,
      from: 'any',
      of: ['soap valve', 'soap valve to panel', 'soap delivery', 'soap bellows'].map((s) => `${side} ${s}`),
    },
  ]),
  {
    see: 'coach overnight',
    outcomes: ['holds', 'goes down'],
    state: 'key off, overnight; which side is not said',
    side: null,
    ordered: true,
    from: 'any',
    of: ['left overnight', 'right overnight'],
  },
  {
    see: 'coach driving',
    outcomes: ['level', 'not level'],
    state: 'driven; which side is not said',
    side: null,
    ordered: true,
    from: 'any',
    of: ['left driving', 'right driving'],
  },
  {
    see: 'coach shut',
    outcomes: ['holds', 'moves'],
    state: 'panel SHUT; which side is not said',
    side: null,
    ordered: true,
    from: 'any',
    of: ['left height shut', 'right height shut'],
  },
];

export const observables: readonly Observable[] = [...air, ...givens.flatMap(fromGiven), ...derived];

const bySee = new Map(observables.map((o) => [o.see, o]));
export const observableOf = (see: string): Observable | undefined => bySee.get(see);

const kindIn = (see: string): string => see.replace(/^(?:left|right) /, '');
const kinds = new Map(observables.map(({ see }) => [see, kindIn(see)]));
/** Without the side: "left height shut" is "height shut". */
export const kindOfSee = (see: string): string => kinds.get(see) ?? kindIn(see);
export const sideOfSee = (see: string): 'left' | 'right' | null => bySee.get(see)?.side ?? null;
