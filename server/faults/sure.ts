/** How sure, what it hangs on, what would change it, and which reports disagree: in words. Pure. */
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { type Explained, whyNumbers } from './explain.ts';
import { hypothesesOf } from './hypotheses.ts';
import { candidates } from './candidates.ts';
import { mendedOf, openProof } from './proof.ts';
import { rankOf } from './rank.ts';
import { sensitivityOf } from './sensitivity.ts';
import { somethingElse, suspectsFrom } from './suspects.ts';
import { supposing } from './supposing.ts';
import { weigh, type Weighed } from './weigh.ts';

/** Reports that disagree, or that the leading explanation does not expect. */
export const contradictionsOf = (w: Pick<Weighed, 'evidence'>): string[] => {
  const disagree = w.evidence.filter((e) => e.note === 'contradicts');
  const sees = [...new Set(disagree.map((e) => e.see))];
  return sees.map((see) => {
    const both = disagree.filter((e) => e.see === see);
    return `Two reports disagree on ${see}: ${both.map((e) => `"${e.words}"`).join(' and ')}. Look at it once more; until then neither counts much.`;
  });
};

const nothing: Explained[] = [{ words: 'Nothing to be sure of yet.', lines: ['Tell me what you see first.'] }];

/** After a repair what counts is whether it holds, not who is left. */
const afterRepair = (w: Weighed, standing: Standing): Explained[] => {
  const mended = mendedOf(w);
  const [lead] = suspectsFrom(w);
  if (!mended || (lead && lead.p > mended.p)) return [];
  const open = openProof(w, standing);
  return [
    {
      words: `Most likely it was this, and it is mended: ${mended.fault.title}, ${rankOf(mended.p)}.`,
      lines: [
        lead ? `Of what is left the likeliest is ${lead.name}: ${lead.rank}.` : 'Nothing else is suspected.',
        ...(open ? [`Not proved yet: ${open.check.words}`] : ['The proof that fits the complaint was brought.']),
      ],
    },
  ];
};

/** "how sure": the leading suspect, who stands next to it, and what it hangs on. */
export const howSure = (standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const mended = afterRepair(w, standing);
  if (mended.length > 0) return mended;
  const [lead, second] = suspectsFrom(w);
  if (!lead) return nothing;
  const cause = w.model.index.get(lead.fault);
  if (cause === undefined)
    return [
      {
        words: `${lead.name}: ${lead.rank}.`,
        lines:
          lead.fault === somethingElse
            ? ['What you noted does not fit anything on my list. Check the oddest reading once more.']
            : ['Nothing noted needs a fault to explain it.'],
      },
    ];
  const s = sensitivityOf(w, cause);
  const hang = s.without.toSorted((a, b) => a.p - b.p)[0];
  const lines: string[] = second ? [`Next to it: ${second.name}, ${second.rank}.`] : [];
  if (hang && hang.p < s.p * 0.7)
    lines.push(
      `It hangs most on "${hang.what}": without it ${rankOf(hang.p)}${hang.leads ? '' : ', and another would lead'}.`,
    );
  lines.push(
    s.low.leads
      ? `It leads even if it were three times rarer than I take it to be (${rankOf(s.low.p)}).`
      : `If it were three times rarer than I take it to be, another would lead (${rankOf(s.low.p)}).`,
  );
  lines.push(...contradictionsOf(w));
  const [first] = candidates(standing, sheet, w, hypothesesOf(w));
  if (first) lines.push(`What would change it most for its minutes: ${first.check.words}`);
  return [{ words: `${lead.name}: ${lead.rank}.`, lines, why: whyNumbers(w, cause) }];
};

/** Checks that are looked through, and answers told. */
const looked = 5;
const most = 4;

/** "what would change your mind": answers to open checks after which another would lead. */
export const whatWouldChange = (standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const mended = afterRepair(w, standing);
  if (mended.length > 0) return mended;
  const [lead] = suspectsFrom(w);
  if (!lead) return nothing;
  const changes = candidates(standing, sheet, w, hypothesesOf(w))
    .slice(0, looked)
    .flatMap(({ check }) =>
      check.keys.flatMap(({ text, gives }) => {
        const then = supposing(w, standing, gives, text);
        const [first] = suspectsFrom(then);
        return first && first.fault !== lead.fault ? [{ text, first }] : [];
      }),
    )
    .toSorted((a, b) => b.first.p - a.first.p)
    .slice(0, most);
  const lines = changes.map(({ text, first }) => `"${text}": then ${first.name}, ${first.rank}.`);
  if (lines.length === 0)
    lines.push(
      'No single answer to an open check would put another first.',
      ...howSure(standing, sheet)[0]!.lines.slice(0, 2),
    );
  return [{ words: `Now ${lead.name}, ${lead.rank}. Another would lead after:`, lines }];
};
