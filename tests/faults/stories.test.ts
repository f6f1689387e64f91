/**
 * Whole sessions typed through reader, judge and diagnosis: the true fault leads at the end. Stories that are known to
 * fail stand in known-failures.jsonl with the reason; the suite speaks up once one of them passes.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Typing, typingOn } from '../chat/session.ts';

type Story = {
  story: string;
  kind: 'plain' | 'innocent' | 'double' | 'hunch' | 'corrected' | 'gauge';
  coach: string;
  notes: (string | [string, number])[];
  first: string[];
  both?: string[];
  least?: number;
  mended?: string;
};
type Failing = { story: string; part: 'first' | 'mended'; why: string };

const folder = new URL('../../fixtures/stories/', import.meta.url);
const lines = <T>(file: string): T[] =>
  readFileSync(new URL(file, folder), 'utf8')
    .trim()
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as T);
const known = lines<Failing>('known-failures.jsonl');
const stories = readdirSync(folder)
  .filter((f) => f.endsWith('.jsonl') && f !== 'known-failures.jsonl')
  .flatMap((f) => lines<Story>(f));
const failing = (story: string, part: Failing['part']): boolean =>
  known.some((k) => k.story === story && k.part === part);

const typed = async (s: Story): Promise<Typing> => {
  const typing = await typingOn(s.coach);
  for (const note of s.notes) {
    const [text, after] = typeof note === 'string' ? [note, 2] : note;
    await typing.type(text, after);
  }
  return typing;
};

/** What is amiss at the end, in words; null where all is as it must be. */
const amissFirst = async (s: Story): Promise<string | null> => {
  const { suspects } = await (await typed(s)).standing();
  const top = suspects[0];
  const led = suspects.map((x) => `${x.fault} ${x.p.toFixed(2)}`).join(', ');
  if (!top || !s.first.includes(top.fault)) return `led by ${led}`;
  if (top.p < (s.least ?? 0.5)) return `not sure enough: ${led}`;
  const missed = (s.both ?? []).filter((fault) => (suspects.find((x) => x.fault === fault)?.p ?? 0) < 0.22);
  return missed.length > 0 ? `missed ${missed.join(', ')}: ${led}` : null;
};

/** A note that tells no more than the work leaves its proof to be asked for. */
const amissMended = async (s: Story, mended: string): Promise<string | null> => {
  const typing = await typed(s);
  const before = (await typing.standing()).facts.length;
  await typing.type(mended);
  const { suspects, next, complaint, facts } = await typing.standing();
  const p = suspects.find((x) => x.fault === s.first[0])?.p ?? 0;
  if (p >= 0.2) return `still suspected: ${p.toFixed(2)}`;
  if (facts.slice(before).some(({ fact }) => fact.is !== 'work')) return null;
  const why = next?.is === 'check' ? next.why : '';
  if (!/proof|proved/.test(why)) return `no proof asked: ${why}`;
  const overnight = next?.is === 'check' && next.id === 'overnight';
  return overnight === (complaint?.standing === true) ? null : `wrong proof for the complaint: ${why}`;
};

describe('stories', () => {
  test.each(stories.map((s) => [`${s.kind}: ${s.story}`, s] as const))('%s', async (_, s) => {
    const amiss = await amissFirst(s);
    expect(amiss === null, amiss ?? 'passes now: take it out of known-failures.jsonl').toBe(!failing(s.story, 'first'));
  });
  test.each(stories.flatMap((s) => (s.mended ? [[s.story, s, s.mended] as const] : [])))(
    '%s: once mended it is no suspect any more, and its proof is asked for',
    async (_, s, mended) => {
      const amiss = await amissMended(s, mended);
      const good = !failing(s.story, 'mended');
      expect(amiss === null, amiss ?? 'passes now: take it out of known-failures.jsonl').toBe(good);
    },
  );
  test('every known failure names a story and says why', () => {
    expect(known.filter((k) => !stories.some((s) => s.story === k.story) || k.why === '')).toEqual([]);
  });
});
