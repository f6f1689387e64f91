/** Where the session stands, in a few lines. */
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Block } from './reply.ts';

const most = 8;

export const summaryBlocks = (standing: Folded, sheet: Sheet): Block[] => {
  const lines: string[] = [];
  if (standing.complaint) lines.push(`Complaint: ${standing.complaint.words}`);
  const off = [...standing.findings.values()].filter((f) => f.verdict === 'low' || f.verdict === 'high');
  const within = [...standing.findings.values()].filter((f) => f.verdict === 'within');
  if (off.length > 0)
    lines.push(
      `Off: ${off
        .slice(-most)
        .map((f) => f.words)
        .join('; ')}`,
    );
  if (within.length > 0)
    lines.push(
      `Within limits: ${within
        .slice(-most)
        .map((f) => f.words)
        .join('; ')}`,
    );
  const work = standing.facts.flatMap(({ fact }) =>
    fact.is === 'work' && fact.done ? [`${fact.what.v} ${fact.where.v}`.trim()] : [],
  );
  if (work.length > 0) lines.push(`Done: ${work.slice(-most).join('; ')}`);
  if (standing.suspects.length > 0)
    lines.push(
      `Suspects: ${standing.suspects
        .slice(0, 3)
        .map((s) => `${s.name} (${s.rank})`)
        .join('; ')}`,
    );
  if (standing.pending.length > 0) lines.push(`Not answered: ${standing.pending.map((g) => g.words).join('; ')}`);
  if (standing.next?.is === 'check') lines.push(`Next: ${standing.next.words}`);
  const words =
    lines.length === 0 ? `${sheet.coach}: nothing typed yet.` : `${sheet.coach}, ${standing.tape.notes.length} notes.`;
  return [{ is: 'teach', words, lines, terms: [] }];
};
