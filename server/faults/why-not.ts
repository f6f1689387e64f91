/** "Why not the bellows": what tells it from the leading suspect, and what would change that. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Check } from './check.ts';
import { confirmOf } from './checks.ts';
import { type Explained, lineOf, speaking, whyNumbers } from './explain.ts';
import { hypothesesOf } from './hypotheses.ts';
import { faultsMeant } from './match.ts';
import { candidates } from './candidates.ts';
import { kindOfSee, observableOf } from './observables.ts';
import { rankOf } from './rank.ts';
import { preparedOf } from './seen.ts';
import { suspectsFrom } from './suspects.ts';
import { supposing } from './supposing.ts';
import { weigh, type Weighed } from './weigh.ts';

/** An outcome as a tech would type it: the key of the check that gives it; without one, what the check would show. */
const asTyped = (check: Check, see: string, outcome: string): string => {
  const typed = check.keys.find((k) => k.gives.some(([s, o]) => s === see && o.split('|').includes(outcome)))?.text;
  return typed === undefined ? `"${outcome}" when you look at ${kindOfSee(see)}` : `"${typed}"`;
};

/** Outcome of an open check that would lift `cause` most, and to where. */
const wouldLift = (w: Weighed, cause: number, standing: Standing, sheet: Sheet): string | null => {
  let best: { words: string; p: number } | null = null;
  // Its own check first: what settles it, said plainly, beats what only helps.
  const own = confirmOf(w.model.faults[w.faultOfCause[cause]!]!)?.key;
  const open = candidates(standing, sheet, w, hypothesesOf(w)).slice(0, 8);
  const first = open.filter((c) => c.check.key === own);
  for (const c of first.length > 0 ? first : open)
    for (const see of c.sees)
      for (const outcome of observableOf(see)?.outcomes ?? []) {
        const view = w.model.view(see);
        const fault = w.faultOfCause[cause]!;
        const k = view?.observable.outcomes.indexOf(outcome) ?? -1;
        // Only what is likely under it and not under a sound coach is worth the sum.
        if (!view || view.rows[fault * view.width + k]! < 2 * view.healthy[k]!) continue;
        const then = supposing(w, standing, [[see, outcome]]);
        const p = then.posterior.marginals[cause]!;
        if (!best || p > best.p) best = { words: asTyped(c.check, see, outcome), p };
      }
  return best && best.p > w.posterior.marginals[cause]! * 1.3 ? `${best.words} would make it ${rankOf(best.p)}.` : null;
};

/** Within that much of the leading one it is not ruled out, only not first. */
const beside = 0.5;
/** A word that means several parts ("check valve"): so many are told of. */
const kindsTold = 2;

/** What tells it from the leading suspect: bits against it, beside what the other would have shown. */
const apartFrom = (w: Weighed, cause: number, lead: number): ReturnType<typeof speaking> => {
  const n = w.causes.odds.length;
  const lines = new Map<string, { words: string; bits: number; note: string | undefined }>();
  for (const [k, e] of w.evidence.entries()) {
    const { underEach } = preparedOf(w.seen[k]!, n);
    const bits = Math.log2(underEach[cause]! / underEach[lead]!);
    const had = lines.get(e.words);
    if (had) had.bits += bits;
    else lines.set(e.words, { words: e.words, bits, note: e.note });
  }
  return [...lines.values()].filter((x) => x.bits <= -0.3).toSorted((a, b) => a.bits - b.bits);
};

const whyNotOne = (w: Weighed, cause: number, standing: Standing, sheet: Sheet): Explained => {
  const fault = w.model.faults[cause]!;
  const p = w.posterior.marginals[cause]!;
  const said = speaking(w, cause);
  const lead = suspectsFrom(w)[0];
  const leader = lead ? w.model.index.get(lead.fault) : undefined;
  const against =
    leader === undefined || leader === cause ? said.filter((x) => x.bits < 0) : apartFrom(w, cause, leader);
  const lift = wouldLift(w, cause, standing, sheet);
  const leads = lead?.fault === fault.key;
  const lines = against.map(lineOf);
  if (leads) lines.unshift('It is the one I suspect first.');
  else if (lead && p >= beside * lead.p)
    lines.unshift(
      `It is not ruled out: it stands beside ${lead.name}, ${lead.rank}.`,
      ...said.filter((x) => x.bits > 0).map(lineOf),
    );
  else if (lead)
    lines.push(
      ...(against.length === 0
        ? ['Nothing noted speaks against it; others explain what you saw as well, and are more common.']
        : []),
      `${lead.name} explains it better: ${lead.rank}.`,
    );
  if (lift) lines.push(`What would change that: ${lift}`);
  return { words: `${fault.title}: ${rankOf(p)}.`, lines, why: whyNumbers(w, cause) };
};

/** "why not ...": what speaks against it, and what would change that. */
export const explainWhyNot = (about: string | undefined, standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const meant = faultsMeant(about, '', w);
  if (meant.length === 0)
    return [
      {
        words: `I have no fault by that name${about ? ` ("${about}")` : ''}.`,
        lines: ['Name a part, such as "why not the left bellows".'],
      },
    ];
  // What is normal is no answer to why a part is not the fault, as long as the part can have one.
  const faulty = meant.filter((c) => w.model.faults[c]!.innocent !== true);
  const kinds = (faulty.length > 0 ? faulty : meant).filter(
    (c, i, all) => all.findIndex((o) => partOf(w, o) === partOf(w, c)) === i,
  );
  const told = takePlace(about ?? '')?.part === 'check valve' ? kinds.slice(0, kindsTold) : kinds.slice(0, 1);
  if (w.seen.length === 0)
    return told.map((c) => ({
      words: `${w.model.faults[c]!.title}: nothing noted yet speaks for or against it.`,
      lines: [],
    }));
  return told.map((c) => whyNotOne(w, c, standing, sheet));
};
const partOf = (w: Weighed, c: number): string => w.model.faults[c]!.part;
