/** A key writes a note: the reader must read it, and the diagnosis must hear in it what the key stands for. */
import { describe, expect, test } from 'vitest';
import { checks } from '../../server/faults/checks.ts';
import { evidenceOf } from '../../server/faults/evidence.ts';
import { juniper, standingOf } from './bench.ts';

/** Notes before it that put the coach in the state the check is made in. */
const before: Readonly<Record<string, readonly string[]>> = {
  'quits hot': ['pump running'],
};

describe('each key of each check', () => {
  for (const check of checks)
    for (const { label, text, gives } of check.keys)
      test(`${check.key}: ${label}`, () => {
        const notes = ['sags overnight', ...(before[check.id] ?? []), text];
        const standing = standingOf(juniper, notes, { [notes.length - 1]: check.key });
        const heard = evidenceOf(standing, juniper).filter((e) =>
          e.because.some((id) => id.startsWith(`note-00${notes.length - 1}`)),
        );
        const plain = heard.map((e) => `${e.see} = ${e.outcome}`);
        for (const [see, outcome] of gives) expect(plain).toContain(`${see} = ${outcome}`);
      });
});
