/** Text as it should not be: notes mutated, words thrown together, characters of every kind, one thing repeated. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../start/server.ts';
import type { Draw } from './seeded.ts';

const folder = join(root, 'fixtures', 'notes');
const notes = readdirSync(folder)
  .filter((f) => f.endsWith('.jsonl'))
  .flatMap((f) => readFileSync(join(folder, f), 'utf8').split('\n').filter(Boolean))
  .flatMap((l) =>
    [...l.matchAll(/"(?:note|text)":"((?:[^"\\]|\\.)*)"/g)].map((m) => JSON.parse(`"${m[1]}"`) as string),
  );
const words = [...new Set(notes.flatMap((n) => n.split(/\s+/)))];

/** Empty, control, combining, right to left, joined, half of a pair, beyond the first plane, digits of other scripts. */
const odd = ['', '\0', '\u0007', '\u001B[2J', '\t', '\r\n', '\u00A0', '\u0301', '\u202E', '\u200D', '\uD83D', '\uDE00']
  .concat([
    '\u{1F697}',
    '\u0663',
    '\u00BD',
    '\u2044',
    '\uFF11',
    '\u2032',
    '\u2033',
    '\u2013',
    '\uFEFF',
    '\u0130',
    '\u00DF',
  ])
  .concat(['<b>', '"', "'", '\\', '${', '{{', '--', '=1+1', '../', '%00', '__proto__', 'constructor', 'NaN', '1e309']);
const pieces = ['1/', '1', ' ', '.', ',', '-', ':', 'psi ', 'left rear ', 'not ', 'tank ', '9:05 ', 'and ', '13 1/4 '];

/** Most characters of a note that the socket takes. */
const most = 4000;

const repeated = (draw: Draw): string => {
  const unit = Array.from({ length: 1 + draw.below(4) }, () =>
    draw.of([draw.of(pieces), draw.of(words), draw.of(odd)]),
  ).join('');
  return unit.repeat(1 + draw.below(unit === '' ? 1 : Math.ceil(most / unit.length)));
};
const jumbled = (draw: Draw): string =>
  Array.from({ length: 1 + draw.below(60) }, () => draw.of([words, words, words, odd, pieces][draw.below(5)]!)).join(
    draw.of([' ', ' ', '', ', ', '. ']),
  );
const characters = (draw: Draw): string =>
  String.fromCharCode(
    ...Array.from({ length: draw.below(300) }, () => draw.below(draw.of([128, 128, 0x250, 0x3000, 0x10000]))),
  );

/** `text` with a few characters taken out, doubled, put in or swapped. */
export const mutated = (text: string, draw: Draw): string => {
  let out = text;
  for (let i = draw.below(6); i >= 0; i -= 1) {
    const at = draw.below(out.length + 1);
    const count = draw.below(8);
    const [before, cut, after] = [out.slice(0, at), out.slice(at, at + count), out.slice(at + count)];
    out = draw.of([
      () => before + after,
      () => before + cut + cut + after,
      () => before + draw.of(odd) + cut + after,
      () => before + draw.of(pieces) + after,
      () => after + cut + before,
    ])();
  }
  return out;
};

export const oddNote = (draw: Draw): string => {
  const kind = draw.below(20);
  const text =
    kind === 0
      ? repeated(draw)
      : kind < 7
        ? jumbled(draw)
        : kind < 9
          ? characters(draw)
          : kind < 12
            ? `${draw.of(notes)}${draw.of([' ', '\n', '. '])}${draw.of(notes)}`
            : mutated(draw.of(notes), draw);
  return text.slice(0, most);
};
