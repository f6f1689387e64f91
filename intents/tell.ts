/** The read-back: one line for each thing a note was taken for, in words, with taps that mend what was assumed. */
import { amountSaid, oftenSaid, whenSaid } from './plain.ts';
import { makePlace, takePlace } from './place.ts';
import type { Amend, Ask, Context, Fact, Measure, Part, Reading, ReadingFact } from './shapes.ts';
import type { Key, Taken } from './taken.ts';
import { dayMends, whenTaken } from './tell-day.ts';

export { plain } from './plain.ts';

/** Measures whose unit says enough: "tank 95 psi", "left rear 13 1/4 in". */
const unsaid: ReadonlySet<Measure> = new Set([
  'pressure',
  'height',
  'voltage',
  'current',
  'temperature',
  'resistance',
  'load',
]);

const labelled = (where: string, words: string): string => (where === '' ? words : `${where} ${words}`);

const readingWords = (fact: ReadingFact): string => {
  const where = fact.where.v;
  const what = fact.what.v;
  const cycle = what === 'run time' || what === 'on time';
  const over = fact.over ? ` ${cycle ? 'every' : 'in'} ${amountSaid(fact.over.v)}` : '';
  const across = fact.across ? ` over ${amountSaid(fact.across.v)}` : '';
  const amount = amountSaid(fact.amount.v);
  const change = amountSaid(fact.amount.v, true, 'left out');
  const below = fact.amount.v.si < 0;
  if (what === 'pump-up') return `pump-up: ${fact.from ? `${amountSaid(fact.from.v)} to ` : ''}${amount}${over}`;
  if (fact.from) return `${labelled(where, `from ${amountSaid(fact.from.v)} to ${amount}`)}${over}`;
  switch (what) {
    case 'height off':
      return labelled(where, `${change} ${below ? 'low' : 'high'}`);
    case 'height fall':
      return `${labelled(where, `${below ? 'up' : 'down'} ${change}`)}${over}`;
    case 'pressure fall':
      return `${labelled(where, `down ${change}`)}${over}`;
    case 'pressure rise':
      return `${labelled(where, `up ${change}`)}${over}`;
    case 'toe':
      return `${labelled(where, `toe ${change} ${below ? 'out' : 'in'}`)}${across}`;
    case 'camber':
      return `${labelled(where, `camber ${change}${below ? ', top in' : ', top out'}`)}${across}`;
    default:
      return `${labelled(where, `${unsaid.has(what) ? '' : `${what} `}${amount}`)}${over}${across}`;
  }
};

/** What a fact is in the read-back's words, place first. */
const factWords = (fact: Fact): string => {
  const where = fact.where.v;
  const often = fact.often ? `, ${fact.often === 'standing' ? 'after standing' : oftenSaid[fact.often]}` : '';
  const whose = fact.word === 'hunch' ? ' (a hunch, no evidence)' : fact.word === 'told' ? ' (second-hand)' : '';
  const tail = `${whenSaid(fact.when)}${whenTaken(fact)}${often}${whose}`;
  switch (fact.is) {
    case 'reading':
      return `${readingWords(fact)}${tail}`;
    case 'sign':
      return `${where === '' ? '' : `${where}: `}${fact.there ? '' : 'no '}${fact.what.v}${tail}`;
    case 'work':
      return `${fact.done ? '' : 'not done: '}${labelled(where, fact.what.v)}${tail}`;
    case 'condition':
      return `${labelled(where, `${fact.holds ? '' : 'not '}${fact.what.v}`)}${tail}`;
    case 'spec':
      if (fact.over)
        return `limit given: ${labelled(where, fact.what.v)} at most ${amountSaid(fact.high)} in ${amountSaid(fact.over)}`;
      return `limit given: ${labelled(where, fact.what.v)} ${fact.low.si === fact.high.si ? '' : `${amountSaid(fact.low)} to `}${amountSaid(fact.high)}`;
  }
};

/** The weakest of what a fact rests on. */
const certainty = (fact: Fact): Taken['from'] => {
  const froms = [
    fact.where.from,
    ...(fact.is === 'spec' ? [] : [fact.what.from]),
    ...(fact.is === 'reading' ? [fact.amount.from] : []),
  ];
  return froms.includes('assumed') || whenTaken(fact) !== ''
    ? 'assumed'
    : froms.includes('carried')
      ? 'carried'
      : 'said';
};

/** Where an amount may have been meant, by what it is. */
const otherPlaces: Readonly<Partial<Record<Measure, readonly Part[]>>> = {
  pressure: ['tank', 'bellows', 'tyre', 'test port'],
  'pressure fall': ['tank', 'bellows'],
  voltage: ['battery', 'motor', 'relay'],
  current: ['motor', 'battery'],
  temperature: ['ambient', 'pump', 'tyre'],
};

/** Corrections for a place that was assumed, each a whole note: "no, left bellows 95 psi". */
const mendsOf = (fact: Fact): Key[] => {
  if (fact.held) return [{ label: 'take it back', text: 'scratch that' }];
  if (fact.where.from !== 'assumed') return [];
  const p = takePlace(fact.where.v);
  if (!p) return [];
  if (p.side === 'left' || p.side === 'right') {
    const other = makePlace({ ...p, side: p.side === 'left' ? 'right' : 'left' });
    return [{ label: other, text: `no, ${other}` }];
  }
  if (fact.is !== 'reading') return [];
  const said = amountSaid(fact.amount.v);
  return (otherPlaces[fact.what.v] ?? [])
    .flatMap((part) => (part === 'bellows' ? ['left bellows', 'right bellows'] : [part as string]))
    .filter((place) => place !== fact.where.v)
    .map((place) => ({ label: place, text: `no, ${place} ${said}` }));
};

const amendWords = (amend: Amend): string => {
  const notes = amend.count === 1 ? 'the last note' : `the last ${amend.count} notes`;
  switch (amend.do) {
    case 'undo':
    case 'drop':
      return amend.drops.length > 0
        ? `took back ${amend.drops.length === 1 ? 'that' : `${amend.drops.length} readings`}`
        : `took back ${notes}`;
    case 'redo':
      return `brought back ${notes}`;
    case 'put': {
      const { amount, was, where, what, swapSides } = amend.says;
      if (amend.puts.length > 0) return `changed to ${amend.puts.map(factWords).join('; ')}`;
      if (swapSides) return 'sides changed over';
      const to = [where, what, amount ? amountSaid(amount) : undefined].filter(Boolean).join(' ');
      return `change to ${to}${was ? ` what was ${amountSaid(was)}` : ''}`;
    }
  }
};

const askWords = (ask: Ask): string => {
  const about = ask.about ? `: ${ask.about}` : '';
  switch (ask.ask) {
    case 'command':
      return `to do${about}`;
    case 'talk':
      return 'no reading in it';
    case 'elsewhere':
      return `another system${about}; not read as air suspension`;
    case 'meaning':
    case 'why':
    case 'why not':
    case 'next':
    case 'how':
    case 'what if':
    case 'what is':
    case 'how sure':
    case 'how long':
    case 'limit':
    case 'safe':
    case 'work out':
    case 'summary':
    case 'help':
      return `question, ${ask.ask}${about}`;
  }
};

/** One line for each thing the note was taken for; what must be asked and what was not read come last. */
export const tell = (reading: Reading, context: Context, text: string): Taken[] => [
  ...reading.facts.map((fact): Taken => ({
    words: fact.held ? `${factWords(fact)}: held back, not believed` : factWords(fact),
    from: certainty(fact),
    kind: fact.held ? 'held' : fact.word === 'hunch' ? 'hunch' : fact.is,
    mends: [...mendsOf(fact), ...dayMends(fact, reading.facts, text, context.at)],
  })),
  ...reading.amends.map((amend): Taken => ({ words: amendWords(amend), from: 'said', kind: 'amend', mends: [] })),
  ...reading.asks
    .filter((ask) => ask.ask !== 'talk')
    .map((ask): Taken => ({ words: askWords(ask), from: 'said', kind: 'ask', mends: [] })),
  ...reading.ambiguous.map((amb): Taken => ({
    words: amb.question,
    from: 'assumed',
    kind: 'ambiguous',
    mends: amb.candidates,
  })),
  ...(reading.unread.length === 0
    ? []
    : [
        {
          words: `not read: ${reading.unread.map(([from, to]) => text.slice(from, to)).join(' … ')}`,
          from: 'said',
          kind: 'unread',
          mends: [],
        } satisfies Taken,
      ]),
];
