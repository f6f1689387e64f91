/** A guide's picture of the air circuit shows this session's suspects, and what is joined in the state of that step. */
import { describe, expect, test } from 'vitest';
import { guides } from '../../server/guides/guides.ts';
import { joinedIn } from '../../server/guides/joined.ts';
import { block, typingOn, type Typing } from './session.ts';

/** Pictures of all steps of a guide as they are shown, by the words of the step. */
const pictures = async (t: Typing, how: string): Promise<{ lit: string[]; joined: string[]; panel?: boolean }[]> => {
  const out = [];
  let blocks = await t.type(how);
  for (let i = 0; i < 12 && block(blocks, 'step'); i++) {
    const picture = block(blocks, 'picture')?.drawing;
    if (picture?.is === 'circuit') out.push({ ...picture, panel: picture.panel === true });
    blocks = await t.type('next step');
  }
  return out;
};

describe('air circuit in a guide', () => {
  test('lights the suspects of the session, and joins what the step joins', async () => {
    const t = await typingOn();
    await t.type('left rear sags overnight');
    await t.type('left rear drops, panel shut');
    await t.type('wheels chocked, people clear, eyes covered, over the pit');
    const { suspects } = await t.standing();
    const shown = await pictures(t, 'how do i do a leak down');
    expect(shown.map((p) => p.joined)).toEqual([
      [...joinedIn.neutral],
      [...joinedIn.shut],
      [...joinedIn['outlet closed']],
      [...joinedIn['arms fill']],
    ]);
    for (const p of shown) {
      expect(p.lit).toContain('left bellows');
      expect(p.lit).toContain(suspects[0]!.where);
      expect(p.panel).toBe(true);
    }
  });

  test('lights nothing where nothing is suspected, and has no panel where the coach has none', async () => {
    const t = await typingOn('larkfield-11');
    await t.type('wheels chocked, people clear, eyes covered, over the pit');
    const shown = await pictures(t, 'how do i do a leak down');
    expect(shown.length).toBeGreaterThan(0);
    for (const p of shown) expect(p).toMatchObject({ lit: [], panel: false });
  });

  test('follows the suspects when they change', async () => {
    const t = await typingOn();
    await t.type('wheels chocked, people clear, eyes covered, over the pit');
    await t.type('tank drops overnight');
    const before = await pictures(t, 'how do i do a soap check');
    await t.type('bubbles at the drain');
    const after = await pictures(t, 'how do i do a soap check');
    expect(after[0]?.lit[0]).toBe('drain');
    expect(after).not.toEqual(before);
  });

  test('every guide in which the state of the circuit matters draws it', () => {
    const drawn = guides.filter((g) => g.steps.some((s) => s.joins !== undefined)).map((g) => g.id);
    for (const id of [
      'leak-down',
      'soap check',
      'levelling panel',
      'height valve on the coach',
      'clogged line',
      'pump-up',
    ])
      expect(drawn).toContain(id);
  });
});
