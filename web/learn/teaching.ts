/** What an apprentice is told about a block of a reply: how to read it, what it rests on, its words, what to read on. Pure. */
import type { Block, Taken } from '../../server/chat/reply.ts';
import type { Finding } from '../../server/findings/finding.ts';
import { allGates, checkAbout, checkFor, termsIn, wordFor, type Guide, type Term } from './book.ts';

export type Teaching = {
  lines: readonly string[];
  /** Words of the trade in it. */
  words: readonly Term[];
  /** A check that goes on from here, to be read step by step. */
  check: Guide | null;
};

const marks: readonly (readonly [(t: Taken) => boolean, string])[] = [
  [
    (t) => t.kind === 'unread',
    'Not read: these words did nothing. Say them another way if they matter; what was typed is kept as it was.',
  ],
  [(t) => t.kind === 'ambiguous', 'Which?: it can mean several things, so it counts for nothing until one is tapped.'],
  [
    (t) => t.kind === 'held',
    'Not believed yet: a figure that cannot be, or a slip of a digit. It waits until it is said again.',
  ],
  [
    (t) => t.kind === 'hunch',
    'Hunch: what somebody thinks or was told. It is kept, and weighs less than what was seen.',
  ],
  [
    (t) => t.from === 'assumed' || t.from === 'carried',
    'Dashed: the note left it out. It was taken from the sheet, from what is usual, or from the note before; a correction changes it.',
  ],
];

const verdicts: Readonly<Record<Finding['verdict'], string>> = {
  low: '▼ low: below its limit by more than the gauge or tape can be wrong.',
  high: '▲ high: above its limit by more than the gauge or tape can be wrong.',
  within:
    '■ in its limits: nothing here speaks of a fault, which rules faults out as much as a bad figure rules them in.',
  'cannot tell':
    'Cannot tell yet: the gauge or tape is too coarse for so small a change. More time between readings helps.',
  'no limit': 'No limit: the sheet has none for it and none is made up.',
};

const drawn: Readonly<Record<Extract<Block, { is: 'picture' }>['drawing']['is'], string>> = {
  strip:
    'A strip of tape: the window is what the limits allow, the pin is the reading, its whiskers what gauge or tape can tell apart.',
  chart:
    'Time runs to the right. Points are readings with what the gauge can tell apart, the line is the straight line that fits them, dashes are limits.',
  plan: 'The coach from above, front at the top: each corner with its height and how far it is off the sheet.',
  bracket: 'The bracket with its bolts, and how thick a shim goes in at each or comes out.',
  legs: 'The circuit leg by leg, and how many volts each loses. The thick one loses most: look there.',
  valve:
    'The height valve on the bench: where the air is put on, how the arm stands, and which port to watch for bubbles.',
  circuit: 'The air circuit: parts drawn thick are under suspicion, those hatched alike stand on the same air now.',
};

/** How the block itself is read. */
const reading = (b: Block): string[] => {
  switch (b.is) {
    case 'took':
      return [
        'What the note was taken for, piece by piece: only this counts in what follows.',
        ...marks.flatMap(([fits, words]) => (b.list.some(fits) ? [words] : [])),
      ];
    case 'caution': {
      const gate = allGates.find((g) => g.what === b.gate?.what);
      return [
        ...(b.gate
          ? [
              'A stop is asked before hands go near. Until it is answered nothing under the coach or in its air goes on; a wrong key is taken back by undo.',
            ]
          : ['Said before anything else because somebody could be hurt.']),
        ...(gate && gate.more !== b.more ? [`${gate.question} ${gate.more}`] : []),
        ...(gate?.or ?? []).map((other) => `“${other}” answers it as well.`),
      ];
    }
    case 'findings':
      return [
        'What the figures say when they are held against the limit that stands beside them; “why” shows the sum and where each number comes from.',
        ...[...new Set(b.list.map((f) => f.verdict))].map((v) => verdicts[v]),
        ...[...new Set(b.list.flatMap((f) => (f.drawing ? [f.drawing.is] : [])))].map((d) => drawn[d]),
      ];
    case 'suspects':
      return [
        'Faults that may be behind all that was noted. “1 in 4”: of four coaches with these notes, one has it.',
        'The bar is how likely, the tick on it where it stood before this note. “why” lists what speaks for it (+) and against it (−).',
      ];
    case 'check':
      return [
        'The check that tells the suspects apart for the fewest minutes, hands-on and waiting counted. Any other order works too: what you note is taken as it comes.',
        'A key writes a whole note; type it in your own words if none fits.',
        ...(b.destroys ? [`It wipes out what can be seen now: ${b.destroys}`] : []),
      ];
    case 'question':
      return [
        'Asked because the note can be taken in more than one way, or a figure is missing. It stands open until it is answered; talk on if you do not know.',
      ];
    case 'step': {
      const step = checkFor(b.guide)?.steps[b.step];
      return [
        ...(step?.outcomes ?? []).map((o) => `${o.when}: ${o.means}`),
        'Type what you see and the step is done; “back” and “stop” leave it.',
      ];
    }
    case 'teach':
      return b.why ? ['“why” shows the sum behind it.'] : [];
    case 'withdrawn':
      return [
        'Taken back, and all that rested on it with it. The log keeps both: what was said and that it was taken back.',
      ];
    case 'picture':
      return [drawn[b.drawing.is]];
  }
};

/** All that a block says in words, whatever its kind. */
const said = (b: Block): string => {
  switch (b.is) {
    case 'took':
      return b.list.map((t) => t.words).join('. ');
    case 'findings':
      return [b.words, ...b.list.map((f) => `${f.words}. ${f.key.replace('@', '. ')}`)].join('. ');
    case 'suspects':
      return b.list.map((s) => s.name).join('. ');
    case 'caution':
      return `${b.words} ${b.more}`;
    case 'teach':
      return [b.words, ...b.lines].join(' ');
    case 'check':
      return `${b.words} ${b.why}`;
    case 'question':
    case 'step':
    case 'withdrawn':
    case 'picture':
      return b.words;
  }
};

const checkOf = (b: Block): Guide | null => {
  switch (b.is) {
    case 'check':
      return checkAbout(b.guide ?? b.id) ?? null;
    case 'step':
      return checkFor(b.guide) ?? null;
    case 'findings':
      for (const f of b.list) {
        const found = f.key.split('@').flatMap((part) => checkAbout(part) ?? [])[0];
        if (found) return found;
      }
      return null;
    case 'took':
    case 'caution':
    case 'suspects':
    case 'question':
    case 'teach':
    case 'withdrawn':
    case 'picture':
      return null;
  }
};

export const teachingOf = (b: Block): Teaching => ({
  lines: reading(b),
  words: termsIn(said(b)).flatMap((id) => wordFor(id) ?? []),
  check: checkOf(b),
});
