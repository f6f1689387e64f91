/** The read-back: one line for each thing taken, with taps that mend what was assumed; and a fact said plainly. */
import { fromSi, dimensionOf } from '../server/core/units.ts';
import { takePlace } from './place.ts';
import type { Context, Fact, Reading } from './shapes.ts';
import type { Key, Taken } from './taken.ts';

const panelWord = (text: string): string => text;
const amount = (f: {
  v: { text: string; unit: string; si: number; about?: string | undefined; to?: number | undefined };
}): string => {
  const { unit, text, si, about, to } = f.v;
  const bare = /[a-z%#"'°]/i.test(text.replace(/^(?:about|around|~|roughly|just|over|under|at least)\s*/i, ''));
  const value = /^\d|^[-+.~]/.test(text) && !bare ? `${text} ${unit}` : undefined;
  if (value) return about && !text.startsWith('~') ? value : value;
  const n = fromSi(si, unit as never);
  const shown =
    dimensionOf(unit as never) === 'length' && unit === 'in' ? undefined : String(Math.round(n * 1000) / 1000);
  if (/^[\d.+-]/.test(text)) return text;
  return `${about ? `${about} ` : ''}${shown ?? String(Math.round(n * 10000) / 10000)}${to === undefined ? '' : `-${Math.round(fromSi(to, unit as never) * 1000) / 1000}`} ${unit}`;
};

/** The note that says this fact plainly, in words the reader takes the same way. */
export const plain = (fact: Fact): string => {
  const where = fact.where.v;
  const tag = fact.word === 'hunch' ? 'think ' : fact.word === 'told' ? 'driver says ' : '';
  const often = fact.often
    ? ` ${{ always: 'always', sometimes: 'sometimes', standing: 'overnight', driving: 'when driving', cold: 'when cold', hot: 'when hot', wet: 'in the rain', restart: 'on restart', loaded: 'when loaded' }[fact.often]}`
    : '';
  const when = fact.when
    ? fact.when.clock === undefined
      ? ''
      : ` at ${String(Math.floor(fact.when.clock / 60)).padStart(2, '0')}:${String(fact.when.clock % 60).padStart(2, '0')}`
    : '';
  switch (fact.is) {
    case 'reading': {
      const a = amount(fact.amount);
      const from = fact.from ? `from ${amount(fact.from)} to ` : '';
      const over = fact.over ? ` in ${amount(fact.over)}` : '';
      const what = fact.what.v;
      if (what === 'pressure' || what === 'height' || what === 'voltage' || what === 'current' || what === 'load')
        return `${tag}${where} ${from}${a}${over}${when}${often}`;
      if (what === 'pressure fall' || what === 'height fall') return `${tag}${where} drops ${a}${over}${often}`;
      if (what === 'height off')
        return `${tag}${where} ${a.replace(/^[-+]\s*/, '')} ${fact.amount.v.si < 0 ? 'low' : 'high'}${often}`;
      if (what === 'pump-up')
        return `${tag}tank ${fact.from ? `${amount(fact.from)} to ` : ''}${a}${over.replace(' in ', ' took ')}`;
      if (what === 'toe')
        return `${tag}toe ${where} ${a.replace(/^[-+]\s*/, '')} ${fact.amount.v.si < 0 ? 'out' : 'in'}`;
      return `${tag}${what} ${where} ${a}${when}`.replace(/\s+/g, ' ');
    }
    case 'sign':
      return `${tag}${where} ${fact.there ? '' : 'no '}${fact.what.v}${often}${when}`.trim();
    case 'work':
      return `${fact.done ? '' : 'not '}${fact.what.v} ${where}${when}`;
    case 'condition':
      return `${fact.holds ? '' : 'not '}${panelWord(fact.what.v)}${where ? ` ${where}` : ''}${when}`;
    case 'spec':
      return `spec ${fact.what.v} ${where} ${fact.low.text}`;
  }
};

const certainty = (fact: Fact): Taken['from'] => {
  const froms = [
    fact.where.from,
    'what' in fact ? fact.what.from : 'said',
    fact.is === 'reading' ? fact.amount.from : 'said',
  ];
  return froms.includes('assumed') ? 'assumed' : froms.includes('carried') ? 'carried' : 'said';
};

/** Places an assumed one may have meant, as whole notes. */
const mendsOf = (fact: Fact): Key[] => {
  if (fact.where.from !== 'assumed' || fact.is !== 'reading') return [];
  const said = amount(fact.amount);
  const others =
    fact.what.v === 'pressure'
      ? ['tank', 'left bellows', 'right bellows', 'tyre']
      : fact.what.v === 'current' || fact.what.v === 'voltage'
        ? ['motor', 'battery']
        : [];
  return others.filter((p) => p !== fact.where.v).map((p) => ({ label: p, text: `no, ${p} ${said}` }));
};

const words = (fact: Fact): string => {
  const where = fact.where.v ? `${fact.where.v}` : '';
  const flag = fact.often
    ? `, ${{ always: 'always', sometimes: 'now and then', standing: 'after standing', driving: 'when driven', cold: 'when cold', hot: 'when hot', wet: 'when wet', restart: 'on restart', loaded: 'when loaded' }[fact.often]}`
    : '';
  const told = fact.word === 'hunch' ? ' (a hunch)' : fact.word === 'told' ? ' (second-hand)' : '';
  const when = fact.when ? `, ${fact.when.text}` : '';
  switch (fact.is) {
    case 'reading': {
      const span = fact.from
        ? `${amount(fact.from)} to ${amount(fact.amount)}`
        : amount(fact.amount).replace(/^-/, fact.what.v === 'height off' ? '' : '-');
      const over = fact.over ? ` in ${amount(fact.over)}` : '';
      const side =
        fact.what.v === 'height off'
          ? fact.amount.v.si < 0
            ? ' low'
            : ' high'
          : fact.what.v === 'toe'
            ? fact.amount.v.si < 0
              ? ' out'
              : ' in'
            : '';
      const what =
        fact.what.v === 'pressure' ||
        fact.what.v === 'height off' ||
        (fact.what.v === 'height' && takePlace(where)?.part === undefined)
          ? ''
          : ` ${fact.what.v}`;
      return `${where}${what} ${span.replace(/^[-+]/, fact.what.v === 'toe' ? '' : '$&')}${side}${over}${when}${flag}${told}`.trim();
    }
    case 'sign':
      return `${where ? `${where}: ` : ''}${fact.there ? '' : 'no '}${fact.what.v}${when}${flag}${told}`;
    case 'work':
      return `${fact.done ? '' : 'not yet '}${fact.what.v} ${where}${when}`.trim();
    case 'condition':
      return `${fact.holds ? '' : 'not '}${fact.what.v}${where ? ` (${where})` : ''}${when}`;
    case 'spec':
      return `limit given: ${fact.what.v} ${where} ${amount({ v: fact.low })} to ${amount({ v: fact.high })}`;
  }
};

/** One line for each thing the note was taken for, in the order of the text; what was not read comes last. */
export const tell = (reading: Reading, _context: Context, text: string): Taken[] => {
  const out: Taken[] = reading.facts.map((fact) => ({
    words: fact.held ? `${words(fact)}: held back, not believed` : words(fact),
    from: certainty(fact),
    kind: fact.held ? 'held' : fact.word === 'hunch' ? 'hunch' : fact.is,
    mends: mendsOf(fact),
  }));
  for (const amend of reading.amends) {
    const n = amend.count === 1 ? 'the last note' : `the last ${amend.count} notes`;
    const to =
      amend.puts.length > 0 ? amend.puts.map(words).join(', ') : (amend.says.amount?.text ?? amend.says.where ?? '');
    const line =
      amend.do === 'redo'
        ? `brought back ${n}`
        : amend.do === 'undo' || amend.do === 'drop'
          ? `took back ${n}`
          : `changed to ${to}`;
    out.push({ words: line, from: 'said', kind: 'amend', mends: [] });
  }
  for (const amb of reading.ambiguous)
    out.push({ words: amb.question, from: 'assumed', kind: 'ambiguous', mends: amb.candidates });
  if (reading.unread.length > 0)
    out.push({
      words: `not read: ${reading.unread.map((s) => text.slice(...s)).join(' … ')}`,
      from: 'said',
      kind: 'unread',
      mends: [],
    });
  return out;
};
