/** Whether anybody may be under the coach, as far as it was said: what holds it, what is out. Pure. */
import type { CoachState } from '../session/standing.ts';
import type { Board } from './protocol.ts';

type Because = CoachState['because'];
type Line = Board['under']['list'][number];

/** One thing that has to be so, by whichever of `names` was said last; the first of them asks for it. */
const line = (because: Because, names: readonly string[], yes: string, no: string, unknown: string): Line => {
  const said = names.flatMap((name) => because[name] ?? []).toSorted((a, b) => b.fact.at - a.fact.at);
  const last = said.find((held) => held.fact.holds) ?? said[0];
  if (!last) return { what: names[0]!, is: 'unknown', words: unknown };
  const { holds, at } = last.fact;
  return { what: last.fact.what.v, is: holds ? 'yes' : 'no', words: holds ? yes : no, at, by: last.by };
};

const frameOf = (because: Because): Line => {
  const frame = (name: string, words: string): Line => line(because, [name], words, words, words);
  for (const [name, words] of [
    ['on stands', 'frame on stands'],
    ['cribbed', 'frame on cribbing'],
    ['over pit', 'over a pit or on ramps'],
  ] as const)
    if (because[name]?.fact.holds) return frame(name, words);
  const jack = because['on jacks'];
  if (jack?.fact.holds) return { ...frame('on jacks', 'on jacks only, which hold nobody'), is: 'no' };
  return line(because, ['on stands'], 'frame on stands', 'frame not on stands', 'frame on stands: not said');
};

/** What is said first: a person reads this before going under. It never says more than was typed. */
const headOf = (frame: Line, mode: CoachState['mode']): Pick<Board['under'], 'held' | 'words' | 'short'> => {
  if (frame.is !== 'yes') {
    const words =
      frame.is === 'no' ? `Nobody under: ${frame.words}.` : 'Nobody under: what holds the frame was not said.';
    return { held: false, words, short: 'nobody under' };
  }
  if (frame.what === 'over pit')
    return { held: true, words: 'Over a pit or on ramps: for looking only, nothing is opened.', short: 'look only' };
  const on = frame.what === 'cribbed' ? 'on cribbing' : 'on stands';
  return mode === 'dead'
    ? {
        held: true,
        words: `Frame ${on}, power cut, air said to be out: the manual's order counts.`,
        short: `${on}, air out`,
      }
    : { held: true, words: `Frame ${on}. Air is not said to be out: nothing is opened.`, short: `${on}, air in` };
};

export const underOf = ({ because, mode }: CoachState): Board['under'] => {
  const frame = frameOf(because);
  return {
    ...headOf(frame, mode),
    list: [
      frame,
      line(because, ['wheels chocked'], 'wheels chocked', 'wheels not chocked', 'wheels chocked: not said'),
      line(
        because,
        ['pump power cut', 'fuse out', 'battery disconnected'],
        "pump's power cut",
        "pump's power on",
        "pump's power cut: not said",
      ),
      line(because, ['tank drained', 'air vented'], 'tank at zero', 'air in the tank', 'tank at zero: not said'),
      line(
        because,
        ['bellows vented', 'air vented'],
        'bellows at zero',
        'air in the bellows',
        'bellows at zero: not said',
      ),
      line(
        because,
        ['head vented', 'air vented'],
        'head and lines at zero',
        'air in the head',
        'head and lines at zero: not said',
      ),
    ],
  };
};
