/** Frames as they should not be: good ones with a field spoilt, cut short or stirred, and things that are no frame. */
import type { Draw } from './seeded.ts';
import { mutated, oddNote } from './odd-text.ts';

/** Sessions are changed now and then, so that they stay of ordinary length. */
const framesASession = 300;

const good = (n: number, draw: Draw): Record<string, unknown> => {
  const name = (which: number): string => `fuzz-${Math.floor(n / framesASession)}-${which}`;
  const session = name(draw.below(3));
  const note = (): Record<string, unknown> => ({
    is: 'note',
    session,
    id: `fuzz-note-${n}`,
    text: oddNote(draw),
    at: 1_790_000_000_000,
    seen: 1,
    by: 'FZ',
  });
  return draw.of<() => Record<string, unknown>>([
    () => ({ is: 'hello', v: 1 }),
    () => ({ is: 'open', session, coach: 'juniper-38', by: 'FZ' }),
    () => ({ is: 'follow', session, after: draw.below(20) }),
    () => ({ is: 'open', session, coach: 'juniper-38', by: 'FZ' }),
    note,
    note,
    note,
    note,
    () => ({ is: 'ask', session: draw.of([session, null]), id: `fuzz-ask-${n}`, text: oddNote(draw) }),
    () => ({ is: 'remark', session, about: draw.below(9), text: oddNote(draw), by: 'FZ' }),
    () => ({ is: 'close', session: name(0), signed: 'FZ', words: oddNote(draw) }),
    () => ({ is: 'reopen', session: name(0), words: oddNote(draw), by: 'FZ' }),
    () => ({ is: 'list', words: oddNote(draw).slice(0, 200) }),
  ])();
};

const strange = (draw: Draw): unknown =>
  draw.of<unknown>([
    null,
    true,
    -1,
    2 ** 53,
    1.5,
    '',
    [],
    {},
    [[[[]]]],
    'x'.repeat(5000),
    { is: 'note' },
    '../../etc',
    '\0',
    { toString: 1 },
    ['a', null],
  ]);

/** A frame as text; `n` makes its ids. */
export const oddFrame = (n: number, draw: Draw): string => {
  const frame = good(n, draw);
  const key = draw.of(Object.keys(frame));
  switch (draw.below(10)) {
    case 0:
      return mutated(JSON.stringify(frame), draw);
    case 1:
      return JSON.stringify({ ...frame, [key]: strange(draw) });
    case 2:
      return JSON.stringify(Object.fromEntries(Object.entries(frame).filter(([k]) => k !== key)));
    case 3:
      return JSON.stringify({ ...frame, [draw.of(['__proto__', 'constructor', 'extra', 'is '])]: strange(draw) });
    case 4:
      return JSON.stringify(strange(draw));
    case 5:
      return '['.repeat(draw.below(20_000));
    case 6:
      return oddNote(draw);
    case 7:
      return `{"__proto__":{"is":"hello"},${JSON.stringify(frame).slice(1)}`;
    default:
      return JSON.stringify(frame);
  }
};
