/** Whether the fall of the tank would pass the one rule there is, which is not for private coaches. */
import { benchmark } from '../case.ts';
import { judge } from '../judge.ts';
import type { Workout } from './question.ts';

export const legal: Workout = {
  subject: 'rule for leaks',
  work: (q) => {
    if (!/\blegal|\bdot\b|\b393\b|\binspection\b|\bcfr\b|against the law/.test(q.words)) return null;
    const fall = judge(q.c.facts, q.c.standing, q.c.sheet).find((f) => f.key.startsWith('tank fall'));
    const held = fall?.why.notes.find((n) => n.startsWith(benchmark().words)) ?? benchmark().words;
    return {
      words: held,
      lines: [
        ...(fall ? [fall.words] : ['read the tank twice, half an hour apart, pump off and settled']),
        'I never clear a coach for the road: an inspector or a licensed technician does, by the rule of the place',
      ],
      ...(fall ? { why: fall.why } : {}),
    };
  },
};
