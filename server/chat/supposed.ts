/** What a question supposes, laid over what stands and in the place of what it denies: judged and weighed, kept nowhere. Pure. */
import type { Ask, Fact } from '../../intents/shapes.ts';
import { suspectsInstead } from '../faults/instead.ts';
import { judge } from '../findings/judge.ts';
import { foldOn, type Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Block } from './reply.ts';
import { teach } from './teach.ts';

const note = 'supposed';
/** Suspects told with how they would move. */
const most = 3;

export const supposed = (ask: Ask, standing: Folded, sheet: Sheet, at: number): Block[] => {
  const facts: Fact[] = ask.facts.filter((f) => !f.held).map((f, i) => ({ ...f, at, id: `${note}.${i}` }));
  if (facts.length === 0) return [];
  const read = { facts, amends: [], asks: [], hazards: [], ambiguous: [], unread: [] };
  const then = foldOn(standing, [
    {
      v: 1,
      session: standing.session,
      seq: standing.seq + 1,
      kept: 0,
      by: note,
      is: 'note',
      id: note,
      text: ask.words,
      at,
      seen: standing.seq,
      read,
    },
  ]);
  const found = judge(facts, then, sheet);
  const judged: Folded = {
    ...then,
    findings: new Map([...standing.findings, ...found.map((f) => [f.key, f] as const)]),
  };
  const blocks: Block[] = [];
  if (found.length > 0) blocks.push({ is: 'findings', words: found.map((f) => f.words).join('; '), list: found });
  const suspects = suspectsInstead(judged, sheet, new Set(facts.map((f) => f.id)));
  const rank = (fault: string): string | undefined => standing.suspects.find((s) => s.fault === fault)?.rank;
  const lines = suspects
    .slice(0, most)
    .map((s) => `${s.name}: ${s.rank}, now ${rank(s.fault) ?? 'not among the suspects'}.`);
  const [lead] = standing.suspects;
  const still = suspects.find((s) => s.fault === lead?.fault);
  if (lead && !suspects.slice(0, most).includes(still!))
    lines.push(`${lead.name}: ${still ? still.rank : 'no suspect any more'}, now ${lead.rank}.`);
  const moved = suspects
    .slice(0, most)
    .some((s, i) => s.fault !== standing.suspects[i]?.fault || s.rank !== rank(s.fault));
  return [
    teach(
      moved || lines.length === 0
        ? 'Supposed only: nothing of this is kept.'
        : 'Supposed only: nothing of this is kept. It would move nothing.',
      lines,
    ),
    ...blocks,
  ];
};
