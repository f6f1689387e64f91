/** Whether a work stands where nothing was done: not yet, not at all, or only spoken of. Pure. */
import { comesNext, meantTo, nobodyDid, spokenOf, wouldBe } from './words/undone.ts';

/** 'left': it was meant, and is not done; 'idle': it is no work of anybody's; null: as the other words say. */
export const undone = (before: string, phrase: string, after: string): 'left' | 'idle' | null => {
  const led = before.toLowerCase().replace(/['’]/g, '');
  const [verb = ''] = phrase.split(' ');
  const base =
    !/(?:ed|ing|ept|uilt|ought)$|^(?:taken|undone|broken|given|driven|hidden)$/.test(verb) &&
    !/^(?:new|set|put|cut|took|did|made|hung|bled|fit)$/.test(verb);
  const gerund = /ing$/.test(verb);
  if (spokenOf.test(led) && (gerund || /\b(?:almost|nearly)\W*$/.test(led.trimEnd()))) return 'idle';
  if (nobodyDid.test(led)) return 'left';
  if (!base) return null;
  if (meantTo.test(led) || wouldBe.test(led) || spokenOf.test(led)) return 'left';
  return comesNext.test(after.toLowerCase()) ? 'left' : null;
};
