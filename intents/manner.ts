/** Words of a note that bear on all it tells: as it was found, for a moment only, only with the tank down. */
import type { Fact, Manner } from './shapes.ts';

const manners: readonly (readonly [RegExp, Manner])[] = [
  [/\bas (?:it was )?found\b/i, 'as found'],
  [
    /\b(?:once|(?:then|and) (?:it )?(?:quits|quit|stops|stopped|goes quiet|is quiet|quiet)|for a (?:moment|second|few seconds))\b/i,
    'briefly',
  ],
  [
    /\bonly (?:when|if|once|after|with)\b[^.;,]*\btank\b[^.;,]*\b(?:down|empty|drained|bled|zero|nothing|dumped|flat|at 0)\b/i,
    'only tank down',
  ],
];

/** `facts` of the note `text`, each with what bears on it: briefly and only so is a sign, as found a reading or a sign. */
export const withManner = (text: string, facts: readonly Fact[]): Fact[] => {
  const said = manners.filter(([form]) => form.test(text)).map(([, manner]) => manner);
  if (said.length === 0) return [...facts];
  return facts.map((fact) => {
    if (fact.is !== 'sign' && fact.is !== 'reading') return fact;
    const manner = fact.is === 'sign' ? said : said.filter((m) => m === 'as found');
    return manner.length > 0 ? { ...fact, manner } : fact;
  });
};
