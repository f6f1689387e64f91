/** The answer a caution waits for: a condition, and the notes that say yes and no to it. */
import type { Condition } from '../../../intents/shapes.ts';
import type { CautionGate } from '../cautions.ts';

/**
 * Keys that answer a gate, every `or` with one of its own. No comes first, under the thumb that taps without reading; yes
 * takes reaching for.
 */
export const gateKeys = ({ yes, no, or = [] }: Pick<CautionGate, 'yes' | 'no' | 'or'>): CautionGate['keys'] =>
  [no, ...or, yes].map((text) => ({ label: text, text }));

/** `or`: what answers it as well. */
export const waitsFor = (what: Condition, yes: string, no: string, or: readonly Condition[] = []): CautionGate => {
  const gate = { yes, no, ...(or.length > 0 ? { or } : {}) };
  return { what, ...gate, keys: gateKeys(gate) };
};

export const onStands = waitsFor('on stands', 'on stands', 'not on stands');
/** For looking: a pit or ramps leave room to live. */
export const onStandsOrPit = waitsFor('on stands', 'on stands', 'not on stands', ['over pit']);
export const peopleClear = waitsFor('people clear', 'people clear', 'people not clear');
export const powerCut = waitsFor('pump power cut', 'pump power cut', 'pump power not cut');
export const airVented = waitsFor('air vented', 'air vented', 'air not vented');
export const wheelsChocked = waitsFor('wheels chocked', 'wheels chocked', 'wheels not chocked');
