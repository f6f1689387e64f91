/**
 * Reading a note: time beside two general readers on the same lines in one run, how many of the quantities each gets
 * right, and how time grows with length. The general readers are counted right when the bare number is found: unit and
 * place are not asked of them. Ours is right only with number, unit, measure and place.
 */
import { createRequire } from 'node:module';
import compromise from 'compromise';
import { blankContext, read } from '../../intents/read.ts';
import { expectedLine, factLine, fixturesOf, readFixture } from '../intents/fixture.ts';
import { line, ms, percentile } from './clock.ts';

const suite = createRequire(import.meta.url)(
  '@microsoft/recognizers-text-suite',
) as typeof import('@microsoft/recognizers-text-suite');
const culture = suite.Culture.English;
const files = ['core', 'us', 'uk', 'owner', 'learner', 'dictation'].map((name) => `${name}.jsonl`);
const root = new URL(`file://${process.env['SOAPWATER_ROOT'] ?? process.cwd()}/fixtures/notes/`);
const fixtures = files.flatMap((file) => fixturesOf(new URL(file, root)));

/** Numbers the readings of a fixture expect: whole, decimal or with a fraction, as its facts write them; no sign. */
const wanted = (facts: readonly string[]): { fact: string; value: number }[] =>
  facts
    .filter((fact) => fact.startsWith('reading'))
    .flatMap((fact) =>
      [...(fact.split(' = ')[1] ?? '').replace(/ when .*|;.*/, '').matchAll(/(?:(\d+) )?(\d+)\/(\d+)|\d*\.?\d+/g)].map(
        (m) => ({
          fact,
          value: m[3] === undefined ? Number(m[0]) : Number(m[1] ?? 0) + Number(m[2]) / Number(m[3]),
        }),
      ),
    );
const numbersIn = (value: unknown): number[] =>
  [...JSON.stringify(value ?? '').matchAll(/\d+(?:\.\d+)?/g)].map((m) => Number(m[0]));

type Reader = { name: string; all: (text: string) => unknown; numbers: (text: string) => number[] };
const general: readonly Reader[] = [
  {
    name: 'recognizers-text-suite',
    all: (text) => [
      suite.recognizeNumber(text, culture),
      suite.recognizeDimension(text, culture),
      suite.recognizeTemperature(text, culture),
      suite.recognizeDateTime(text, culture),
    ],
    numbers: (text) =>
      [
        ...suite.recognizeNumber(text, culture),
        ...suite.recognizeDimension(text, culture),
        ...suite.recognizeTemperature(text, culture),
        ...suite.recognizeDateTime(text, culture),
      ].flatMap((found) => numbersIn(found.resolution)),
  },
  {
    name: 'compromise',
    all: (text) => compromise(text).numbers().json(),
    numbers: (text) =>
      (compromise(text).numbers().json() as { number?: { num?: number | null } }[]).map((n) => n.number?.num ?? NaN),
  },
];

const times = (texts: readonly string[], work: (text: string) => unknown): number[] =>
  texts.map((text) => {
    const from = performance.now();
    work(text);
    return performance.now() - from;
  });
const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6 * Math.max(1, Math.abs(b));

export const measureReader = (): void => {
  const texts = fixtures.map((f) => f.note);
  const context = blankContext('measure-1', { at: Date.UTC(2026, 9, 6, 23, 30) });
  // notes of about 200 characters, joined from the fixtures
  const long: string[] = [];
  for (const text of texts) {
    const last = long.at(-1);
    if (last !== undefined && last.length < 150) long[long.length - 1] = `${last}. ${text}`;
    else long.push(text);
  }
  const sized = long.map((text) => text.slice(0, 200));
  for (let i = 0; i < 5; i += 1) times(sized, (text) => read(text, context));
  const ours = times([...sized, ...sized, ...sized], (text) => read(text, context));
  line('read 200 characters, p50', ms(percentile(ours, 50)), '-', '-');
  line('read 200 characters, p99', ms(percentile(ours, 99)), '-', 'at most 1 ms warm');
  const mine = times(texts, (text) => read(text, context));
  const total = mine.reduce((a, b) => a + b, 0);
  for (const reader of general) {
    times(texts.slice(0, 60), reader.all);
    const theirs = times(texts, reader.all).reduce((a, b) => a + b, 0);
    line(
      `same ${texts.length} notes`,
      ms(total),
      `${reader.name} ${ms(theirs)}, ${(theirs / total).toFixed(1)} times ours`,
      reader.name === 'compromise' ? '-' : 'at least 10 times',
    );
  }
  const asked = fixtures.flatMap((f) => wanted(f.facts ?? []).map((w) => ({ ...w, f })));
  const got = new Map(fixtures.map((f) => [f, readFixture(f).facts.map(factLine)]));
  const right = asked.filter(({ f, fact }) => got.get(f)?.includes(expectedLine(fact))).length;
  const share = (n: number): string => `${n} of ${asked.length} (${((100 * n) / asked.length).toFixed(1)} %)`;
  line('quantities: fact right', share(right), '-', 'more than the others');
  for (const reader of general) {
    const found = new Map(fixtures.map((f) => [f, reader.numbers(f.note)]));
    const hits = asked.filter(({ f, value }) => found.get(f)!.some((n) => same(n, value))).length;
    line('quantities: bare number found', '-', `${reader.name} ${share(hits)}`, '-');
  }
  const grow = [1, 8].map((k) => {
    const text = `${sized.slice(0, 10).join('. ')} `.repeat(k);
    return Math.min(
      ...times(
        Array.from({ length: 9 }, () => text),
        (t) => read(t, context),
      ),
    );
  });
  line('8 times the length takes', `${(grow[1]! / grow[0]!).toFixed(1)} times`, '-', 'about 8');
};
