/** How a sign at a part, in a state of the coach, speaks as an outcome of an observable. Data; evidence.ts reads it. */
import type { Part, Sign, Work } from '../../../intents/shapes.ts';

/** All that is named must hold. Where the state is not known, it does not. */
export type When = {
  readonly shut?: true;
  readonly outletClosed?: true;
  readonly auto?: true;
  readonly panelFill?: true;
  /** Neither link nor arm was touched: it is told of the coach as it stands. */
  readonly handsOff?: true;
  /** For a moment, then quiet: said with it. */
  readonly briefly?: true;
  /** Settled now, and watched falling straight after pumping before. */
  readonly fellHot?: true;
  /** "Goes down only when the tank is let down." */
  readonly onlyTankDown?: true;
  readonly keyOff?: true;
  readonly pumpRuns?: boolean;
  readonly justPumped?: true;
  readonly tankEmpty?: true;
  readonly armFill?: true;
  readonly armDump?: true;
  readonly linkOff?: true;
  /** Said of standing, or the coach is as it was found after standing. */
  readonly standing?: true;
  readonly driving?: true;
  readonly restart?: true;
  readonly cold?: true;
  readonly unloaderTripped?: true;
  /** Tank's latest reading against cut-in. */
  readonly tank?: 'below cut-in' | 'above cut-in';
  /** The tank's latest reading is under the lowest cut-out: whatever runs on there has not run past it. */
  readonly underCutOut?: true;
  readonly asked?: string;
  readonly soaped?: true;
};

/**
 * 'side': needs a side, `see` is prefixed with it ('both' gives both). 'none': has no side. 'each': no side said, speaks
 * for both. 'any': a side may be said, `see` has none.
 */
export type SignRule = {
  readonly signs: readonly Sign[];
  readonly there: boolean;
  /** '' is a place without a part. */
  readonly parts: readonly (Part | '')[];
  readonly side: 'side' | 'none' | 'each' | 'any';
  /** Speaks only of that end. */
  readonly end?: 'front';
  readonly when?: When;
  readonly gives: readonly (readonly [see: string, outcome: string])[];
};

export const rule = (
  there: boolean,
  signs: readonly Sign[],
  parts: readonly (Part | '')[],
  side: SignRule['side'],
  gives: SignRule['gives'],
  when?: When,
  end?: SignRule['end'],
): SignRule => ({ signs, there, parts, side, gives, ...(when ? { when } : {}), ...(end ? { end } : {}) });

/** Chance that work of a kind ends a fault of the part it was done on. Estimates. */
export const mending: Readonly<Partial<Record<Work, number>>> = {
  replaced: 0.95,
  repaired: 0.9,
  rebuilt: 0.9,
  rerouted: 0.85,
  cleaned: 0.75,
  tightened: 0.75,
  adjusted: 0.8,
  set: 0.85,
  reset: 0.6,
  refitted: 0.7,
  connected: 0.85,
  shimmed: 0.85,
  inflated: 0.9,
  levelled: 0.5,
  drained: 0.6,
};
