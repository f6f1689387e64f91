/** How long it lasts, from the falls that stand. */
import type { Case } from '../case.ts';
import type { Finding } from '../finding.ts';
import { judge } from '../judge.ts';
import type { Workout } from './question.ts';

/** Findings of a fall or a sink that stand, the newest readings of each judged again. */
export const standingFalls = (c: Case): Finding[] =>
  judge(c.facts, c.standing, c.sheet).filter((f) => /^(?:tank fall|sink|stood)/.test(f.key) && f.words !== '');

export const howLong: Workout = {
  subject: 'how long it lasts',
  work: (q) => {
    if (q.ask.ask !== 'how long' || /pump|settle|delay|soap|hear|\brun\b|take|due|service/.test(q.words)) return null;
    const found = standingFalls(q.c);
    const moving = found.filter((f) => f.verdict === 'high' || f.verdict === 'low');
    // The coach before the tank, unless the tank was asked about.
    const tank = /tank|empty|cut.?in|pressure/.test(q.words);
    const order = (f: Finding): number => (f.key.startsWith('tank') === tank ? 0 : 1);
    const [first, ...rest] = (moving.length > 0 ? moving : found).toSorted((a, b) => order(a) - order(b));
    if (!first)
      return {
        words: 'not known yet: it needs a fall with its time',
        lines: [
          'read the tank, or the height of the side that sinks, pump off and settled; read it again half an hour later',
          'or type the fall: "drops 6 psi in 10 min", "down 2 in in 14 h"',
        ],
      };
    const lasts = first.why.notes.filter((n) => /after|down to|empty|interval/.test(n));
    // what was asked comes first
    const asked = /cut.?in|pump (?:comes|starts|kicks)/.test(q.words)
      ? lasts.find((n) => n.includes('down to cut-in'))
      : /empty|zero|gone/.test(q.words)
        ? lasts.find((n) => n.startsWith('empty'))
        : /stops|bump|bottom|ground|floor/.test(q.words) && first.key.startsWith('tank')
          ? lasts
              .find((n) => n.includes('down to bellows'))
              ?.replace(
                /^.*? in (.*?);.*$/,
                'not before the tank is down at bellows pressure, in $1; then the side that leaks sinks: tape it, half an hour apart, to know how fast',
              )
          : undefined;
    return {
      words: asked ?? first.words,
      lines: [...(asked ? [first.words] : []), ...lasts.filter((n) => n !== asked), ...rest.map((f) => f.words)],
      why: first.why,
      ...(first.drawing ? { drawing: first.drawing } : {}),
      ...(first.wants ? { wants: first.wants } : {}),
    };
  },
};
