/** The state of the coach when a sign was taken, in the words the rules ask for. Pure. */
import type { Fact } from '../../intents/shapes.ts';
import type { CoachState, Held, Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { When } from './signs/rule.ts';

export type Moment = { [K in keyof When]-?: When[K] | undefined };

const said = (state: CoachState | undefined, name: string): boolean | undefined => state?.because[name]?.fact.holds;

/** Where the tank stood by its last reading up to `index`, against cut-in; undefined where either is not known. */
const tankAt = (facts: readonly Held[], index: number, note: string, sheet: Sheet): Moment['tank'] => {
  const cutIn = sheet.supply?.cutIn;
  if (!cutIn) return undefined;
  for (let i = facts.length - 1; i >= 0; i--) {
    const held = facts[i]!;
    if (i > index && held.note !== note) continue;
    const { fact } = held;
    if (fact.is !== 'reading' || fact.what.v !== 'pressure') continue;
    if (fact.where.v !== 'tank' && fact.where.v !== 'gauge' && fact.where.v !== 'test port') continue;
    if (fact.amount.v.si < cutIn.low.si - fact.amount.v.pm) return 'below cut-in';
    if (fact.amount.v.si > cutIn.high.si + fact.amount.v.pm) return 'above cut-in';
    return undefined;
  }
  return undefined;
};

/** The check that was on the table when the note of `seq` was typed. */
export const askedBefore = (standing: Standing, seq: number): string | undefined =>
  standing.checks.findLast((c) => c.seq < seq)?.id;

export const momentOf = (standing: Standing, sheet: Sheet, index: number): Moment => {
  const held = standing.facts[index]!;
  const fact: Fact = held.fact;
  const state = standing.stateAt.get(fact.id);
  const asked = askedBefore(standing, held.seq);
  const armsNeutral = state?.arm.left === 'neutral' && state.arm.right === 'neutral';
  const yes = (b: boolean | null | undefined): true | undefined => (b ? true : undefined);
  const linkOff = said(state, 'link connected') === false || asked?.endsWith('link off') === true;
  const parked = said(state, 'parked') === true && state?.engine !== true && state?.pump !== true;
  return {
    shut: yes(state?.panel === 'shut' || (!sheet.panel && armsNeutral)),
    outletClosed: yes(state?.outletClosed),
    auto: yes(state?.panel === 'auto' || (state?.panel === null && !sheet.panel)),
    keyOff: yes(state?.key === false),
    pumpRuns: state?.pump ?? undefined,
    justPumped: yes(said(state, 'just pumped') === true && said(state, 'settled') !== true && asked !== 'settle again'),
    tankEmpty: yes(said(state, 'tank drained')),
    armFill: yes(state?.arm.left === 'fill' || state?.arm.right === 'fill'),
    armDump: yes(state?.arm.left === 'exhaust' || state?.arm.right === 'exhaust'),
    linkOff: yes(linkOff),
    standing: yes(fact.often === 'standing' || parked || asked === 'as found' || asked === 'overnight'),
    driving: yes(
      fact.often === 'driving' || said(state, 'driving') === true || state?.engine === true || asked === 'drive',
    ),
    restart: yes(fact.often === 'restart' || asked === 'restart'),
    cold: yes(fact.often === 'cold'),
    unloaderTripped: yes(said(state, 'unloader tripped')),
    tank: tankAt(standing.facts, index, held.note, sheet),
    asked,
    soaped: undefined,
  };
};

export const fits = (when: When | undefined, moment: Moment): boolean =>
  !when || (Object.keys(when) as (keyof When)[]).every((k) => when[k] === moment[k]);
