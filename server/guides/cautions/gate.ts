/** The answer a caution waits for: a condition, and the notes that say yes and no to it. */
import type { Condition } from '../../../intents/shapes.ts';
import type { CautionGate } from '../cautions.ts';

export const waitsFor = (what: Condition, yes: string, no: string): CautionGate => ({
  what,
  yes,
  no,
  keys: [
    { label: yes, text: yes },
    { label: no, text: no },
  ],
});

export const onStands = waitsFor('on stands', 'on stands', 'not on stands');
export const peopleClear = waitsFor('people clear', 'people clear', 'people not clear');
export const powerCut = waitsFor('pump power cut', 'pump power cut', 'pump power not cut');
export const airVented = waitsFor('air vented', 'air vented', 'air not vented');
export const wheelsChocked = waitsFor('wheels chocked', 'wheels chocked', 'wheels not chocked');
