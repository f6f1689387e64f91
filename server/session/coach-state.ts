/** The state of the coach over a session: what a reading means depends on it. Pure; folded in order of time. */
import type { ConditionFact, Fact } from '../../intents/shapes.ts';
import type { CoachState, Held } from './standing.ts';
import { takePlace } from '../../intents/place.ts';

export const unknownState: CoachState = {
  key: null,
  engine: null,
  pump: null,
  panel: null,
  arm: { left: null, right: null },
  outletClosed: null,
  pumpedAt: null,
  mode: null,
  because: {},
};

/** Conditions that a change of the coach's air or stance makes stale: they must be asked again. */
const staleAfterAir = ['tank drained', 'air vented', 'bellows vented', 'head vented'] as const;

const without = (because: CoachState['because'], names: readonly string[]): CoachState['because'] =>
  Object.fromEntries(Object.entries(because).filter(([name]) => !names.includes(name)));

const holds = (state: Pick<CoachState, 'because'>, name: string): boolean => state.because[name]?.fact.holds === true;

const modeOf = (state: CoachState): CoachState['mode'] => {
  const vented = holds(state, 'air vented') || (holds(state, 'tank drained') && holds(state, 'bellows vented'));
  if (holds(state, 'on stands') && holds(state, 'pump power cut') && vented) return 'dead';
  if (holds(state, 'wheels chocked') || holds(state, 'over pit') || holds(state, 'cribbed')) return 'live';
  return null;
};

const panels = { 'panel auto': 'auto', 'panel fill': 'fill', 'panel empty': 'empty', 'panel shut': 'shut' } as const;
const arms = { 'arm neutral': 'neutral', 'arm fill': 'fill', 'arm exhaust': 'exhaust' } as const;

/** `state` after one condition was said of the coach. */
const afterCondition = (state: CoachState, held: Held & { fact: ConditionFact }): CoachState => {
  const { fact } = held;
  const name = fact.what.v;
  let next: CoachState = { ...state, because: { ...state.because, [name]: held } };
  const airComes = (): void => {
    next = { ...next, pumpedAt: fact.at, because: without(next.because, staleAfterAir) };
  };
  if (name in panels) {
    const position = panels[name as keyof typeof panels];
    // Who sets the panel in a later note has the tank's outlet open again: behind it the panel moves nothing.
    const closed = next.because['tank outlet closed'];
    const reopened = fact.holds && next.outletClosed === true && closed?.note !== held.note;
    if (reopened) next = { ...next, outletClosed: null };
    if (fact.holds) {
      next = {
        ...next,
        panel: position,
        because: without(
          next.because,
          Object.keys(panels).filter((p) => p !== name),
        ),
      };
      if (position === 'fill') airComes();
    } else if (next.panel === position) next = { ...next, panel: null };
  } else if (name in arms) {
    const side = takePlace(fact.where.v)?.side;
    const position = fact.holds ? arms[name as keyof typeof arms] : null;
    next = {
      ...next,
      arm: {
        left: side === 'right' ? next.arm.left : position,
        right: side === 'left' ? next.arm.right : position,
      },
    };
  } else
    switch (name) {
      case 'key on':
        next = { ...next, key: fact.holds, pump: fact.holds ? next.pump : false };
        break;
      case 'engine running':
        next = { ...next, engine: fact.holds, key: fact.holds ? true : next.key };
        break;
      case 'pump running':
        next = { ...next, pump: fact.holds };
        if (fact.holds) {
          next = { ...next, key: next.key ?? true };
          airComes();
        } else if (state.pump === true) next = { ...next, pumpedAt: fact.at };
        break;
      case 'pump power cut':
      case 'fuse out':
      case 'battery disconnected':
        if (fact.holds) next = { ...next, pump: false };
        break;
      case 'tank outlet closed':
        next = { ...next, outletClosed: fact.holds };
        break;
      case 'just pumped':
        if (fact.holds) airComes();
        break;
      case 'settled':
        if (fact.holds) next = { ...next, pumpedAt: null };
        break;
      case 'on stands':
      case 'on jacks':
        if (!fact.holds) next = { ...next, because: without(next.because, ['bellows vented']) };
        break;
      default:
        break;
    }
  return { ...next, mode: modeOf(next) };
};

/** What was said to be vented and is not: a gauge shows air there again. A tyre's air is another. */
const notVented = (where: string): readonly string[] => {
  const part = takePlace(where)?.part;
  if (part === 'tyre' || part === 'wheel') return [];
  if (part?.startsWith('bellows')) return ['air vented', 'bellows vented'];
  return part === undefined || part === 'tank' || part === 'gauge' || part === 'test port'
    ? ['air vented', 'tank drained']
    : ['air vented'];
};

/** What is without air once it was let out there: one bag or one line says nothing of the rest. */
const ventedAt: Readonly<Record<string, readonly [ConditionFact['what']['v'], boolean]>> = {
  bellows: ['bellows vented', true],
  'both bellows': ['bellows vented', true],
  tank: ['tank drained', true],
  coach: ['air vented', true],
  '': ['air vented', true],
};

/** `state` after any fact: conditions, and the works and readings that imply one. */
export const stateAfter = (state: CoachState, held: Held): CoachState => {
  const { fact } = held;
  if (fact.is === 'condition') return afterCondition(state, { ...held, fact });
  if (fact.is === 'work' && fact.done) {
    const implied: readonly [ConditionFact['what']['v'], boolean] | null =
      fact.what.v === 'pumped up' || fact.what.v === 'levelled'
        ? ['just pumped', true]
        : fact.what.v === 'drained' && /^(?:tank|drain|)$/.test(fact.where.v)
          ? ['tank drained', true]
          : fact.what.v === 'vented'
            ? (ventedAt[fact.where.v] ?? null)
            : null;
    if (implied)
      return afterCondition(state, {
        ...held,
        fact: {
          ...base(fact),
          is: 'condition',
          what: { v: implied[0], from: 'assumed', spans: [] },
          holds: implied[1],
        },
      });
  }
  if (fact.is === 'reading' && fact.what.v === 'pressure' && !fact.held && fact.amount.v.si > 0) {
    const stale = notVented(fact.where.v).filter((name) => holds(state, name));
    if (stale.length > 0) {
      const next = { ...state, because: without(state.because, stale) };
      return { ...next, mode: modeOf(next) };
    }
  }
  if (fact.is === 'reading' && fact.what.v === 'settling time')
    return { ...state, pumpedAt: fact.at - fact.amount.v.si * 1000 };
  // the pump stopped there
  if (fact.is === 'reading' && fact.what.v === 'cut-out' && fact.word === 'own' && !fact.held)
    return { ...state, pumpedAt: fact.at };
  if (fact.is === 'reading' && fact.what.v === 'pump-up') return { ...state, pumpedAt: fact.at };
  return state;
};

const base = ({ id, at, where, word }: Fact): Pick<Fact, 'id' | 'at' | 'where' | 'word'> => ({ id, at, where, word });
