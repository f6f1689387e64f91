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
    const shown = suspects.map((x) => `${x.fault} ${x.p.toFixed(2)}`);
    expect(s.first, shown.join(', ')).toContain(suspects[0]?.fault);
    expect(suspects[0]!.p).toBeGreaterThanOrEqual(s.least ?? 0.5);
    for (const fault of s.both ?? [])
      expect(suspects.find((x) => x.fault === fault)?.p ?? 0, fault).toBeGreaterThan(0.22);
    if (s.mended) {
      await typing.type(s.mended);
      const after = (await typing.standing()).suspects.find((x) => x.fault === suspects[0]!.fault);
      expect(after?.p ?? 0).toBeLessThan(0.2);
    }
  });
});
