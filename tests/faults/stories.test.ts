/** Whole sessions typed through reader, judge and diagnosis: the true fault leads at the end. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { typingOn } from '../chat/session.ts';

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

const folder = new URL('../../fixtures/stories/', import.meta.url);
const stories = readdirSync(folder)
  .filter((f) => f.endsWith('.jsonl'))
  .flatMap((f) => readFileSync(new URL(f, folder), 'utf8').trim().split('\n'))
  .map((line) => JSON.parse(line) as Story);

describe('stories', () => {
  test.each(stories.map((s) => [`${s.kind}: ${s.story}`, s] as const))('%s', async (_, s) => {
    const typing = await typingOn(s.coach);
    for (const note of s.notes) {
      const [text, after] = typeof note === 'string' ? [note, 2] : note;
      await typing.type(text, after);
    }
    const { suspects } = await typing.standing();
    expect(s.first).toContain(suspects[0]?.fault);
    expect(suspects[0]!.p).toBeGreaterThanOrEqual(s.least ?? 0.5);
    const missed = (s.both ?? []).filter((fault) => (suspects.find((x) => x.fault === fault)?.p ?? 0) < 0.22);
    expect(missed).toEqual([]);
  });
  test.each(stories.flatMap((s) => (s.mended ? [[s.story, s, s.mended] as const] : [])))(
    '%s: once mended it is no suspect any more, and its proof is asked for',
    async (_, s, mended) => {
      const typing = await typingOn(s.coach);
      for (const note of s.notes) {
        const [text, after] = typeof note === 'string' ? [note, 2] : note;
        await typing.type(text, after);
      }
      await typing.type(mended);
      const { suspects, next, complaint } = await typing.standing();
      const after = suspects.find((x) => x.fault === s.first[0]);
      expect(after?.p ?? 0).toBeLessThan(0.2);
      expect(next?.is === 'check' ? next.why : '').toMatch(/proof|proved/);
      expect(next?.is === 'check' && next.id === 'overnight').toBe(complaint?.standing === true);
    },
  );
});
