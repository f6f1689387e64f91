/** A fall of a bag that was told without its side. */
import { expect, test } from 'vitest';
import { typingOn } from './session.ts';

test('a bag that dropped is asked for its side, and the key says which of the two it was', async () => {
  const typing = await typingOn();
  await typing.type('panel shut');
  const blocks = await typing.type('the bag drops 3/16 in 20 min');
  const asked = blocks.find((b) => b.is === 'question');
  expect(asked).toMatchObject({ words: 'Which side went down?', keys: [{ label: 'left' }, { label: 'right' }] });
  await typing.type(asked?.is === 'question' ? asked.keys[1]!.text : '');
  const falls = (await typing.standing()).facts.filter((f) => f.fact.is === 'reading');
  expect(falls.map((f) => f.fact.where.v)).toEqual(['right bellows']);
});
