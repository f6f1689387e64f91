/** The end of a practice: what it was, minutes beside the best sequence found, what each check told and could not tell. */
import { type Sequence, bestSequence } from './best-sequence.ts';
import type { Cause } from './compile.ts';
import { evidenceTable, likelihood } from './evidence.ts';
import type { Ailment } from './ailments.ts';
import type { Minutes, Practice } from './practice.ts';
import { type Ail, kindOf, sizes } from './sizes.ts';

export type Lesson = {
  /** Which deed of the session, from 0. */
  deed: number;
  see: string;
  outcome: string;
  /** Bits for (above 0) or against the fault it bears on most, over an average of all others. */
  bits: number;
  about: Ailment;
  /** Faults that would have shown the same at least half as often: what it could not tell apart. */
  couldNotTell: Cause[];
  misled: boolean;
};

export type Reveal = {
  faults: { ailment: Ailment; words: string }[];
  minutes: Minutes;
  /** All that was spent, hazards with it. */
  total: number;
  best: Sequence;
  lessons: Lesson[];
  risks: { hazard: string; why: string; minutes: number }[];
};

const shown = (n: number): string => (n >= 100 ? n.toFixed(0) : String(Number(n.toPrecision(2))));
export const wordsOf = (ail: Ail): string => {
  const { unit, of } = sizes[kindOf(ail.ailment).kind];
  const size =
    unit === 'kind'
      ? ''
      : unit === 'share'
        ? `, ${shown(ail.size * 100)} % ${of}`
        : unit === 'm'
          ? `, ${shown(ail.size * 1000)} mm, ${of}`
          : unit === 'Pa'
            ? `, ${shown(ail.size / 6894.757)} psi, ${of}`
            : `, ${shown(ail.size)} ${unit}, ${of}`;
  return `${ail.ailment}${size}`;
};

/** Causes that can be told apart on this coach. */
const causes = (hasPanel: boolean): Cause[] =>
  Object.keys(hasPanel ? evidenceTable.panel : evidenceTable.noPanel) as Cause[];

export const reveal = (state: Practice): Reveal => {
  const { p, ails } = state.case;
  const hasPanel = p.panel !== null;
  const all = causes(hasPanel);
  const lessons = state.done.flatMap((done, deed) =>
    done.told.map(({ see, outcome }): Lesson => {
      // Seen with the eyes: what hangs loose or has moved says so itself.
      const seen = ails.find((a) => a.ailment.startsWith(see) && /^panel left$| (?:link|shock)$/.test(see));
      if (seen)
        return {
          deed,
          see,
          outcome,
          bits: Math.log2(all.length),
          about: seen.ailment,
          couldNotTell: [],
          misled: false,
        };
      const chance = (c: Cause): number => likelihood(see, outcome, c, hasPanel);
      const mean = all.reduce((a, c) => a + chance(c), 0) / all.length;
      const scored = ails.map((a) => ({ ailment: a.ailment, bits: Math.log2(chance(a.ailment) / mean) }));
      const most = scored.toSorted((a, b) => b.bits - a.bits)[0]!;
      const same = all
        .filter((c) => !ails.some((a) => a.ailment === c) && chance(c) >= 0.5 * chance(most.ailment))
        .toSorted((a, b) => chance(b) - chance(a));
      return { deed, see, outcome, bits: most.bits, about: most.ailment, couldNotTell: same, misled: most.bits < -1 };
    }),
  );
  return {
    faults: ails.map((a) => ({ ailment: a.ailment, words: wordsOf(a) })),
    minutes: state.minutes,
    total: state.minutes.elapsed + state.minutes.hazards,
    best: bestSequence(state.case),
    lessons,
    risks: state.done.flatMap((d) => d.risks),
  };
};
