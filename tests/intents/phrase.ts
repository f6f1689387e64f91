/** A phrase of shop talk put into the kind of note it stands in, and whether it is read as what it means. */
import { blankContext, read } from '../../intents/read.ts';
import { takePlace } from '../../intents/place.ts';
import type { Fact } from '../../intents/shapes.ts';

export type PhraseRow = {
  kind: 'sign' | 'cond' | 'work' | 'part' | 'measure';
  /** A canonical name; a condition that does not hold begins with "!". */
  name: string;
  phrases: string[];
  /** Known not to be read yet: the suite speaks up once one is. */
  missed?: string[];
};

/** What such a sign is said of; '' : nothing. */
const bearers = [
  '',
  'left bag ',
  'pump ',
  'left height valve ',
  'tank ',
  'shock ',
  'coach ',
  'gauge ',
  'rr tire ',
  'line ',
  'relay ',
  'left link ',
  'breaker ',
  'drain ',
];
const amounts = [
  ' 13 1/4 in',
  ' 88 psi',
  ' 12.4',
  ' 20 amps',
  ' 1/8 in',
  ' 0.5 deg',
  ' 60 percent',
  ' 120000 mi',
  ' 8 seconds',
  ' 350 ft lbs',
];

const notesOf = ({ kind }: PhraseRow, phrase: string): string[] => {
  switch (kind) {
    case 'sign':
      return bearers.map((b) => `${b}${phrase}`);
    case 'cond':
      return [phrase, `${phrase}, tank 95 psi`];
    case 'work':
      return [
        `${phrase} left height valve`,
        `${phrase} the left bag`,
        phrase,
        `left link ${phrase}`,
        `${phrase} tank`,
        `coach ${phrase}`,
        `tyres ${phrase}`,
        `replaced left bag, ${phrase}`,
      ];
    case 'part':
      return [
        `${phrase} cracked`,
        `left ${phrase} cracked`,
        `${phrase} dirty`,
        `bubbles at ${phrase}`,
        `${phrase} 95 psi`,
        `${phrase} 12.4 V`,
        `${phrase} worn`,
        `${phrase} 41 F`,
      ];
    case 'measure':
      return amounts.flatMap((a) => [
        `${phrase}${a}`,
        `lr ${phrase}${a}`,
        `left height valve ${phrase}${a}`,
        `motor ${phrase}${a}`,
        `lr fwd ${phrase}${a}`,
      ]);
  }
};

const means = (row: PhraseRow, f: Fact): boolean => {
  const name = row.name.replace(/^!/, '');
  switch (row.kind) {
    case 'sign':
      return f.is === 'sign' && f.there && f.what.v === name;
    case 'cond':
      return f.is === 'condition' && f.what.v === name && f.holds === !row.name.startsWith('!');
    case 'work':
      return f.is === 'work' && f.done && f.what.v === name;
    case 'part':
      return takePlace(f.where.v)?.part === name;
    case 'measure':
      return f.is === 'reading' && f.what.v === name;
  }
};

/** True when one of the notes it would stand in says what it means. */
export const isRead = (row: PhraseRow, phrase: string): boolean =>
  notesOf(row, phrase).some((note) =>
    read(note, blankContext('phrase', { at: 1_780_000_000_000 })).facts.some((f) => means(row, f)),
  );
