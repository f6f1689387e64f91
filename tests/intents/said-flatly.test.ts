/** What lets somebody work under a coach or open its air is said flatly or not at all. */
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../intents/shapes.ts';
import { readFixture } from './fixture.ts';

const states: Readonly<Record<string, readonly string[]>> = {
  'on stands': ['on stands', 'stands are in', 'stands under it'],
  'wheels chocked': ['wheels chocked', 'chocks are in'],
  'tank drained': ['tank drained', 'tank empty', 'tank at zero'],
  'air vented': ['air is out', 'system bled down', 'all the air out'],
  'bellows vented': ['bags empty', 'bags vented', 'both bags down'],
  'pump power cut': ['power off', 'breaker is off'],
  'fuse out': ['fuse out', 'fuse is out'],
  'people clear': ['everybody out from under'],
  'over pit': ['over the pit'],
  cribbed: ['on cribbing'],
  'battery disconnected': ['battery disconnected'],
};
const works = ['drained the tank', 'bled the tank down', 'vented both bags', 'dumped the bags', 'pulled the pump fuse'];

const wished = [
  'make sure {} first',
  'should be {} before anybody goes under',
  'wait till {}',
  'is it {}?',
  'was it {}',
  'if {} then go ahead',
  'cant get {}',
  'hope {}',
  'not sure if {}',
  'dont know if {}',
  'told him to get {}',
  'will be {} tomorrow',
  'other bus {}',
  'unless {}',
  'never {}',
  'almost {}',
  'supposed to be {}',
  'thought {} but no',
  'not {} yet',
  '{} not yet',
  '{} soon',
  'gonna have {}',
  'who left {}',
  'why is {}',
  'yesterday {}',
  'on the last job {}',
  'needs {}',
  'want {}',
  'after {} we can start',
  'before {} dont go under',
  'until {} nobody goes under',
  '{} would be better',
  '{} tomorrow',
  'boss wants {}',
  'let me know when {}',
  'have you got {}',
  'trying to get {}',
  'get {}',
  '{}?',
  '{} maybe',
  'i think {}',
  'probably {}',
  'almost got {}',
  'isnt {}',
];
const flat = [
  '{}',
  '{} now',
  'ok {}',
  'checked, {}',
  '{}, left valve next',
  'yes {}',
  'rr 13 1/4, {}',
  '{} and key off',
];

const safe = new Set(Object.keys(states));
const opens = (f: Fact): boolean =>
  // another day is another day: the session keeps it there
  f.when?.day === undefined &&
  f.word === 'own' &&
  ((f.is === 'condition' && f.holds && safe.has(f.what.v)) ||
    (f.is === 'work' && f.done && /^(?:drained|vented|removed)$/.test(f.what.v)));
const opened = (note: string): string[] => (readFixture({ note }).facts.some(opens) ? [note] : []);
const said = [...Object.values(states).flat(), ...works];

describe('a state that lets somebody work', () => {
  test('is not read from a wish, a condition, a guess, an order, a question, another day or another coach', () => {
    expect(wished.flatMap((frame) => said.flatMap((words) => opened(frame.replace('{}', words))))).toEqual([]);
  });

  test('is read where it is said', () => {
    const missed = flat.flatMap((frame) =>
      Object.entries(states).flatMap(([state, list]) =>
        list.flatMap((words) => {
          const note = frame.replace('{}', words);
          return readFixture({ note }).facts.some((f) => f.is === 'condition' && f.holds && f.what.v === state)
            ? []
            : [note];
        }),
      ),
    );
    expect(missed).toEqual([]);
  });

  test.each([
    ['went under after it was on stands', 'on stands'],
    ['I set it on stands and chocked the wheels before i looked', 'on stands'],
    ['made sure tank is empty', 'tank drained'],
    ['fuse is out then i put my hands on the pump', 'fuse out'],
    ['weve got it on stands', 'on stands'],
  ])('is read from %s', (note, state) => {
    expect(readFixture({ note }).facts.map((f) => (f.is === 'condition' && f.holds ? f.what.v : ''))).toContain(state);
  });

  const open = { id: 'stop', yes: 'air vented', no: 'air not vented' };
  test.each([
    'yes i think so',
    'yeah should be',
    'should be',
    'yes but not the left bag',
    'yes except left bag',
    'yes nearly',
    'yes, tank only',
    'yes in a minute',
    'yes?',
    'yes he says',
    'ok',
    'sure',
    'yes tank still has 20',
    'yes left bag has 5 psi',
  ])('is still asked after "%s"', (note) => {
    expect(readFixture({ note, open }).facts.filter((f) => f.is === 'condition')).toEqual([]);
  });

  test.each([
    ['yes', true],
    ['yes all of them', true],
    ['yep', true],
    ['no', false],
    ['not yet', false],
  ])('is answered by "%s"', (note, holds) => {
    expect(readFixture({ note, open }).facts).toMatchObject([{ is: 'condition', what: { v: 'air vented' }, holds }]);
  });

  test('is shown as unread where it was not said flatly', () => {
    const note = 'let me know when stands are in';
    expect(
      readFixture({ note })
        .unread.map((s) => note.slice(...s))
        .join(' '),
    ).toContain('stands are in');
  });
});
