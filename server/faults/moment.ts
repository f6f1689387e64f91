/** The state of the coach when a sign was taken, in the words the rules ask for. Pure. */
import type { Fact } from '../../intents/shapes.ts';
import type { Amount } from '../core/amount.ts';
import type { CoachState, Held, Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { When } from './signs/rule.ts';

export type Moment = { [K in keyof When]-?: When[K] | undefined };

const said = (state: CoachState | undefined, name: string): boolean | undefined => state?.because[name]?.fact.holds;

/** Fact at which the air was let in or out, or the pump ran: a tank read after it says nothing of before. */
const stirs = (fact: Fact): boolean =>
  (fact.is === 'condition' && fact.what.v === 'pump running' && fact.holds) ||
  (fact.is === 'condition' && (fact.what.v === 'tank drained' || fact.what.v === 'just pumped')) ||
  (fact.is === 'sign' && fact.there && (fact.what.v === 'starts' || fact.what.v === 'works')) ||
  (fact.is === 'work' && fact.done);

/**
 * Where the tank stood, in the words of `where`: by its last reading up to `index`, or by the first one after it as long as nothing
 * was done in between ("pump dead", then "tank 240"); undefined where neither is known.
 */
const tankAt = <T>(
  facts: readonly Held[],
  index: number,
  note: string,
  where: (a: Amount) => T | undefined,
): T | undefined => {
  const side = ({ fact }: Held): T | undefined | null => {
    if (fact.is !== 'reading' || fact.what.v !== 'pressure') return null;
    if (fact.where.v !== 'tank' && fact.where.v !== 'gauge' && fact.where.v !== 'test port') return null;
    return where(fact.amount.v);
  };
  for (let i = facts.length - 1; i >= 0; i--) {
    const held = facts[i]!;
    if (i > index && held.note !== note) continue;
    const found = side(held);
    if (found !== null) return found;
  }
  for (const held of facts.slice(index + 1)) {
    if (stirs(held.fact)) return undefined;
    const found = side(held);
    if (found !== null) return found;
  }
  return undefined;
};

/** The check that was on the table when the note of `seq` was typed. */
export const askedBefore = (standing: Standing, seq: number): string | undefined =>
  standing.checks.findLast((c) => c.seq < seq)?.id;

/** Asked to be left overnight, and that long passed: a height taped ten minutes later proves no night. ms */
const leastNight = 4 * 3_600_000;
export const answersNight = (standing: Standing, index: number): boolean => {
  const { fact, seq } = standing.facts[index]!;
  if (askedBefore(standing, seq) !== 'overnight') return false;
  const before = standing.facts.slice(0, index).findLast((h) => h.seq < seq);
  return before === undefined || fact.at - before.fact.at >= leastNight;
};

/** The tank was said to fall while it was just pumped. */
const fellHot = (standing: Standing, index: number): boolean =>
  standing.facts
    .slice(0, index)
    .some(
      ({ fact }) =>
        fact.is === 'sign' &&
        fact.there &&
        (fact.what.v === 'drops' || fact.what.v === 'sags') &&
        fact.where.v === 'tank' &&
        said(standing.stateAt.get(fact.id), 'just pumped') === true,
    );

/** The tank's last reading up to there, 0 where it is within what the gauge can tell of nothing. Pa */
const tankRead = (facts: readonly Held[], index: number): number | undefined => {
  for (let i = index; i >= 0; i--) {
    const { fact } = facts[i]!;
    if (fact.is === 'condition' && fact.what.v === 'pump running' && fact.holds) return undefined;
    if (fact.is === 'reading' && fact.what.v === 'pressure' && fact.where.v === 'tank')
      return fact.amount.v.si <= fact.amount.v.pm ? 0 : fact.amount.v.si;
  }
  return undefined;
};

export const momentOf = (standing: Standing, sheet: Sheet, index: number): Moment => {
  const held = standing.facts[index]!;
  const fact: Fact = held.fact;
  const state = standing.stateAt.get(fact.id);
  const asked = askedBefore(standing, held.seq);
  const armsNeutral = state?.arm.left === 'neutral' && state.arm.right === 'neutral';
  // An arm set in fill is no test behind a shut panel: whichever was said last is how it stands.
  const panelAt = standing.facts.findIndex((h) => h.fact.id === state?.because['panel shut']?.fact.id);
  const armAt = standing.facts.findIndex((h) => h.fact.id === state?.because['arm fill']?.fact.id);
  const armAfterPanel = armAt > panelAt;
  const yes = (b: boolean | null | undefined): true | undefined => (b ? true : undefined);
  const linkOff = said(state, 'link connected') === false || asked?.endsWith('link off') === true;
  const { cutIn, cutOut } = sheet.supply ?? {};
  const parked = said(state, 'parked') === true && state?.engine !== true && state?.pump !== true;
  return {
    shut: yes((state?.panel === 'shut' && !armAfterPanel) || (!sheet.panel && armsNeutral)),
    outletClosed: yes(state?.outletClosed),
    auto: yes(state?.panel === 'auto' || (state?.panel === null && !sheet.panel)),
    onlyTankDown: yes(fact.manner?.includes('only tank down')),
    briefly: yes(fact.manner?.includes('briefly')),
    fellHot: yes(said(state, 'settled') === true && fellHot(standing, index)),
    handsOff: yes(!linkOff && state?.arm.left == null && state?.arm.right == null),
    panelFill: yes(state?.panel === 'fill'),
    keyOff: yes(state?.key === false),
    pumpRuns: state?.pump ?? undefined,
    justPumped: yes(said(state, 'just pumped') === true && said(state, 'settled') !== true && asked !== 'settle again'),
    tankEmpty: yes(said(state, 'tank drained') || tankRead(standing.facts, index) === 0),
    armFill: yes(
      (state?.arm.left === 'fill' || state?.arm.right === 'fill') && (state.panel !== 'shut' || armAfterPanel),
    ),
    armDump: yes(state?.arm.left === 'exhaust' || state?.arm.right === 'exhaust'),
    linkOff: yes(linkOff),
    standing: yes(fact.often === 'standing' || parked || asked === 'as found' || answersNight(standing, index)),
    driving: yes(
      fact.often === 'driving' || said(state, 'driving') === true || state?.engine === true || asked === 'drive',
    ),
    restart: yes(fact.often === 'restart' || asked === 'restart'),
    cold: yes(fact.often === 'cold'),
    unloaderTripped: yes(said(state, 'unloader tripped')),
    tank: tankAt(standing.facts, index, held.note, (a): Moment['tank'] =>
      cutIn && a.si < cutIn.low.si - a.pm
        ? 'below cut-in'
        : cutIn && a.si > cutIn.high.si + a.pm
          ? 'above cut-in'
          : undefined,
    ),
    underCutOut: tankAt(standing.facts, index, held.note, (a) => yes(cutOut && a.si < cutOut.low.si - a.pm)),
    asked,
    soaped: undefined,
  };
};

export const fits = (when: When | undefined, moment: Moment): boolean =>
  !when || (Object.keys(when) as (keyof When)[]).every((k) => when[k] === moment[k]);
