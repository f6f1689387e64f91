/** Folding on, entry by entry or in any portions, gives what folding all at once gives: undo, amends, times, late replies. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Amend } from '../../intents/shapes.ts';
import type { Block } from '../../server/chat/reply.ts';
import type { Entry } from '../../server/session/entry.ts';
import { type Folded, fold, foldOn } from '../../server/session/fold.ts';
import { type LooseFact, SessionMaker, amend, condition, psi, said, sign } from './entries.ts';

type Step = {
  kind: 'reading' | 'condition' | 'sign' | 'work' | 'held' | 'nothing' | 'undo' | 'drop' | 'put';
  /** Minutes its fact lies before the note; and which of the notes so far an amend is about. */
  back: number;
  about: number;
  reply: Block['is'] | 'none';
};
const step: fc.Arbitrary<Step> = fc.record({
  kind: fc.constantFrom(
    'reading',
    'condition',
    'sign',
    'work',
    'held',
    'nothing',
    'reading',
    'condition',
    'undo',
    'drop',
    'put',
  ),
  back: fc.constantFrom(0, 0, 0, 0, 7),
  about: fc.nat(20),
  reply: fc.constantFrom('none', 'findings', 'check', 'caution', 'step', 'teach', 'suspects', 'question'),
});

const names = ['panel auto', 'panel shut', 'pump running', 'on stands', 'tank drained', 'key on'];
const start = Date.UTC(2026, 9, 6, 15, 0);

const blocksOf = ({ reply, about }: Step, ids: readonly string[], n: number): Block[] => {
  const because = ids.length > 0 ? [`${ids[about % ids.length]!}.0`] : [];
  const blocks: Record<string, object> = {
    findings: { is: 'findings', words: 'f', list: [{ key: `f${about % 4}`, words: `${n}`, because }] },
    check: { is: 'check', id: `c${about % 3}`, words: `check ${n}`, open: { asks: `open ${n}` } },
    caution: {
      is: 'caution',
      words: `w${n}`,
      gate: { what: names[about % names.length], keys: [{ label: 'x', text: names[(about + 1) % names.length] }] },
    },
    step: { is: 'step', guide: 'g', step: n },
    teach: { is: 'teach', words: about % 2 ? 'Guide ended.' : 'word' },
    suspects: { is: 'suspects', words: 's', list: [{ name: `s${n}` }] },
    question: { is: 'question', words: 'q', open: { asks: `q${n}` } },
  };
  return reply === 'none' ? [] : [blocks[reply] as Block];
};

const sessionOf = (steps: readonly Step[]): Entry[] => {
  const s = new SessionMaker();
  const ids: string[] = [];
  for (const [n, step] of steps.entries()) {
    const at = start + (n + 1 - step.back) * 60_000;
    const name = names[step.about % names.length]!;
    const about = ids.length > 0 ? ids[step.about % ids.length]! : 'nobody';
    const facts: Record<string, LooseFact[]> = {
      reading: [{ ...psi(90 + n), at }],
      condition: [{ ...condition(name, step.about % 3 > 0), at }],
      sign: [{ ...sign('bubbles', 'left bellows'), at }],
      work: [
        { is: 'work', what: said('replaced'), done: true, where: `part ${step.about % 3}`, at } as unknown as LooseFact,
        { ...psi(80 + n), at },
      ],
      held: [{ ...psi(950), at, held: 'implausible' }],
    };
    const put = { ...psi(50 + n), at, id: `put-${n}.0`, where: said('tank') } as never;
    const amends: Record<string, Amend[]> = {
      undo: [amend({ do: 'undo', notes: [about] })],
      drop: [amend({ do: 'drop', drops: [`${about}.0`] })],
      put: [amend({ do: 'put', drops: [`${about}.0`], puts: [put] })],
    };
    ids.push(
      s.note(`note ${n}`, facts[step.kind] ?? [], {
        amends: amends[step.kind] ?? [],
        blocks: blocksOf(step, ids, n),
      }),
    );
  }
  return s.entries;
};

/** All of a standing, in its order; maps as lists, so that order counts. */
const plain = (folded: Folded): string =>
  JSON.stringify(folded, (_, value: unknown) =>
    value instanceof Map ? [...value] : value instanceof Set ? [...value].map(String).toSorted() : value,
  );

it('folds on in any portions to what folding all at once gives', () => {
  fc.assert(
    fc.property(
      fc.array(step, { maxLength: 25 }),
      fc.array(fc.nat(3), { minLength: 60, maxLength: 60 }),
      (steps, sizes) => {
        const entries = sessionOf(steps);
        let folded = fold([]);
        let from = 0;
        for (const size of sizes) {
          if (from >= entries.length) break;
          folded = foldOn(folded, entries.slice(from, from + size + 1));
          from += size + 1;
        }
        expect(plain(foldOn(folded, entries.slice(from)))).toBe(plain(fold(entries)));
      },
    ),
    { numRuns: 400, seed: 20_261_125 },
  );
});

it('folds replies that come late, or not at all, to the same', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 15 }), fc.nat(10), (steps, late) => {
      const made = sessionOf(steps);
      // one reply missing, one after all others
      const missing = made.filter((e) => e.is === 'reply')[late + 2];
      const moved = made.filter((e) => e !== missing);
      const reply = moved.findIndex((e, i) => e.is === 'reply' && i >= late);
      if (reply >= 0) moved.push(...moved.splice(reply, 1));
      const entries = moved.map((e, i) => ({ ...e, seq: i + 1 }));
      let folded = fold([]);
      for (const entry of entries) folded = foldOn(folded, [entry]);
      expect(plain(folded)).toBe(plain(fold(entries)));
    }),
    { numRuns: 200, seed: 7 },
  );
});

it('leaves what it folds on as it was', () => {
  const entries = sessionOf(
    Array.from({ length: 12 }, (_, n) => ({
      kind: n % 2 ? 'reading' : 'condition',
      back: 0,
      about: n,
      reply: n % 3 ? 'check' : 'findings',
    })),
  );
  const before = fold(entries.slice(0, 15));
  const was = plain(before);
  foldOn(before, entries.slice(15));
  expect(plain(before)).toBe(was);
});

it('adds to a long session for less than a third of making it anew', () => {
  const kinds = ['reading', 'condition', 'work'] as const;
  const entries = sessionOf(
    Array.from({ length: 600 }, (_, n) => ({ kind: kinds[n % 3]!, back: 0, about: n, reply: 'check' as const })),
  );
  const long = fold(entries.slice(0, -2));
  const best = (run: () => void): number =>
    Math.min(
      ...Array.from({ length: 30 }, () => {
        const from = performance.now();
        run();
        return performance.now() - from;
      }),
    );
  const on = best(() => foldOn(long, entries.slice(-2)));
  const anew = best(() => fold(entries));
  expect(on).toBeLessThan(anew / 3);
});
