/** Reads fixtures/notes/*.jsonl (grammar: fixtures/notes/FORMAT.md) and holds a reading against one. */
import { readdirSync, readFileSync } from 'node:fs';
import { unitNames, toSi, type Unit } from '../../server/core/units.ts';
import { blankContext, read } from '../../intents/read.ts';
import type { Amend, Context, Fact, Reading } from '../../intents/shapes.ts';

export type Fixture = {
  note: string;
  voice?: string;
  facts?: string[];
  asks?: string[];
  amends?: string[];
  hazards?: string[];
  ambiguous?: string[];
  unread?: string[];
  before?: string[];
  open?: Context['open'];
  traffic?: 'right' | 'left' | 'none';
  units?: 'psi-in' | 'kPa-mm';
};

export const folder = new URL('../../fixtures/notes/', import.meta.url);
export const fixtureFiles = (): string[] => readdirSync(folder).filter((f) => f.endsWith('.jsonl'));
export const fixturesOf = (file: string | URL): Fixture[] =>
  readFileSync(typeof file === 'string' ? new URL(file, folder) : file, 'utf8')
    .split('\n')
    .filter((l) => l.trim() !== '')
    .map((l) => JSON.parse(l) as Fixture);

/** A day whose clock is after any clock time in the notes, so that "at 9:05" is today. */
const typed = Date.UTC(2026, 9, 6, 23, 30);

export const contextFor = (f: Fixture, note: string, recent: Context['recent']): Context =>
  blankContext(note, {
    at: typed,
    traffic: f.traffic === 'none' ? null : (f.traffic ?? 'right'),
    pressureUnit: f.units === 'kPa-mm' ? 'kPa' : 'psi',
    lengthUnit: f.units === 'kPa-mm' ? 'mm' : 'in',
    labels: { road: 'panel auto', up: 'panel fill', down: 'panel empty', lock: 'panel shut' },
    open: f.open ? { ...f.open, id: 'open' } : null,
    recent,
  });

export const readFixture = (f: Fixture): Reading => {
  const recent: Context['recent'] = [];
  (f.before ?? []).forEach((text, i) => {
    const id = `before-${i}`;
    const r = read(text, contextFor({ ...f, open: null }, id, [...recent]));
    recent.push({ id, facts: [...r.facts, ...r.amends.flatMap((a) => a.puts)] });
  });
  return read(f.note, contextFor(f, 'note-id', recent));
};

const value =
  /^(?:(about|just under|just over|at least|at most) )?([-+]?)(?:(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|(\d*\.?\d+))(?:\.\.(?:(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|(\d*\.?\d+)))?(?: (.+))?$/;
const number = (w?: string, a?: string, b?: string, c?: string, d?: string, e?: string): number =>
  a ? Number(w) + Number(a) / Number(b) : c ? Number(c) / Number(d) : Number(e);
/** "about 13 1/4 in" -> SI and looseness. Differences (falls, toe) have no zero point, which only matters for temperature. */
export const parseAmountText = (text: string): { si: number; to?: number; about: string } | null => {
  const m = value.exec(text.trim());
  if (!m) return null;
  const unit = (m[15] ?? 'count') as Unit;
  if (!unitNames.includes(unit)) return null;
  const sign = m[2] === '-' ? -1 : 1;
  const v = number(m[3], m[4], m[5], m[6], m[7], m[8]);
  const up = m[11] ?? m[13] ?? m[14];
  return {
    si: toSi(sign * v, unit),
    about: m[1] ?? '',
    ...(up === undefined ? {} : { to: toSi(number(m[9], m[10], m[11], m[12], m[13], m[14]), unit) }),
  };
};

const close = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(1e-9, Math.abs(b) * 2e-4);
const round = (n: number): string => String(Number(n.toPrecision(4)));
const amountKey = (a: { si: number; to?: number | undefined; about?: string | undefined }): string =>
  `${a.about ? `${a.about} ` : ''}${round(a.si)}${a.to === undefined ? '' : `..${round(a.to)}`}`;

/** A canonical line for a fact, amounts in SI: what two equal facts share. */
export const factLine = (f: Fact): string => {
  const where = f.where.v ? ` @ ${f.where.v}` : '';
  const when = f.when
    ? ` when ${f.when.day === undefined ? '' : `d${f.when.day}`}${f.when.clock === undefined ? '' : `c${f.when.clock}`}${f.when.ago === undefined ? '' : `a${Math.round(f.when.ago)}`}${f.when.after === undefined ? '' : `l${Math.round(f.when.after)}`}`
    : '';
  const flags = [f.word === 'own' ? '' : f.word, f.held ? 'held' : '', f.often ?? '']
    .filter(Boolean)
    .toSorted()
    .map((x) => `; ${x}`)
    .join('');
  switch (f.is) {
    case 'reading':
      return `reading ${f.what.v}${where} = ${amountKey(f.amount.v)}${f.from ? ` from ${amountKey(f.from.v)}` : ''}${f.over ? ` over ${amountKey(f.over.v)}` : ''}${f.across ? ` across ${amountKey(f.across.v)}` : ''}${when}${flags}`;
    case 'sign':
      return `sign ${f.there ? '' : 'no '}${f.what.v}${where}${when}${flags}`;
    case 'work':
      return `work ${f.done ? '' : 'not '}${f.what.v}${where}${when}${flags}`;
    case 'condition':
      return `condition ${f.holds ? '' : 'not '}${f.what.v}${where}${when}${flags}`;
    case 'spec':
      return `spec ${f.what.v}${where} = ${round(f.low.si)} .. ${round(f.high.si)}${f.over ? ` over ${round(f.over.si)}` : ''}`;
  }
};

const whenLine = (text: string): string => {
  const t = text.trim();
  const m = /^(?:(\d+) (day|days|week|year|month)s? ago ?)?(?:(\d{1,2}):(\d{2}))?$/.exec(t);
  if (m && (m[1] || m[3]))
    return `${m[1] ? `d${Number(m[1]) * ({ day: 1, days: 1, week: 7, month: 30, year: 365 }[m[2]!] ?? 1)}` : ''}${m[3] ? `c${Number(m[3]) * 60 + Number(m[4])}` : ''}`;
  const ago = /^(.+) (ago|later)$/.exec(t);
  const amount = ago ? parseAmountText(ago[1]!) : null;
  return amount ? `${ago![2] === 'ago' ? 'a' : 'l'}${Math.round(amount.si)}` : `?${t}`;
};

/** The expected line in the same canonical form. */
export const expectedLine = (line: string): string => {
  const [head, ...flagParts] = line.split(';').map((s) => s.trim());
  const flags = flagParts
    .toSorted()
    .map((x) => `; ${x}`)
    .join('');
  let body = head!;
  let when = '';
  const w = / when (.+)$/.exec(body);
  if (w) {
    when = ` when ${whenLine(w[1]!)}`;
    body = body.slice(0, w.index);
  }
  if (body.startsWith('spec')) {
    const m = /^(spec .+?) = (.+?) \.\. (.+?)(?: over (.+))?$/.exec(body);
    if (m) {
      const unit = /[a-zA-Z%].*$/.exec(m[3]!)?.[0] ?? '';
      const low = parseAmountText(/[a-zA-Z%]/.test(m[2]!) ? m[2]! : `${m[2]!} ${unit}`);
      return `${m[1]} = ${round(low?.si ?? NaN)} .. ${round(parseAmountText(m[3]!)?.si ?? NaN)}${m[4] ? ` over ${round(parseAmountText(m[4])?.si ?? NaN)}` : ''}`;
    }
  }
  const eq = body.indexOf(' = ');
  if (eq < 0) return `${body}${when}${flags}`;
  const what = body.slice(0, eq);
  const rest = body.slice(eq + 3);
  const cut = rest.split(/ (?=from |over |across )/);
  const amounts = cut.map((part, i) => {
    const name = i === 0 ? '' : part.slice(0, part.indexOf(' ') + 1);
    const text = i === 0 ? part : part.slice(part.indexOf(' ') + 1);
    const a = parseAmountText(text);
    return `${name}${a ? amountKey(a) : `?${text}`}`;
  });
  return `${what} = ${amounts.join(' ')}${when}${flags}`;
};

const amendLine = (a: Amend): string => {
  if (a.do !== 'put') return `${a.do} ${a.count}`;
  const s = a.says;
  return [
    'put',
    s.amount ? `amount ${round(s.amount.si)}` : '',
    s.was ? `was ${round(s.was.si)}` : '',
    s.where ? `where ${s.where}` : '',
    s.what ? `what ${s.what}` : '',
    s.swapSides ? 'swap sides' : '',
  ]
    .filter(Boolean)
    .join(' ');
};
const expectedAmend = (line: string): string => {
  if (!line.startsWith('put')) return line;
  const parts = line
    .slice(3)
    .trim()
    .split(/ ?(?=\b(?:amount|was|where|what|swap) )/);
  return [
    'put',
    ...['amount', 'was', 'where', 'what', 'swap'].flatMap((key) => {
      const part = parts.find((p) => p.startsWith(`${key} `));
      if (!part) return [];
      const text = part.slice(key.length + 1).trim();
      if (key === 'amount' || key === 'was') return [`${key} ${round(parseAmountText(text)?.si ?? NaN)}`];
      return [key === 'swap' ? 'swap sides' : `${key} ${text}`];
    }),
  ].join(' ');
};
/** Scratching a note and undoing it come to the same. */
const amendClass = (line: string): string => line.replace(/^drop /, 'undo ');

export type Differences = { missing: string[]; extra: string[]; wrongFacts: string[] };

const near = (a: string, b: string): boolean => {
  if (a === b) return true;
  // numbers may differ in the last digit of rounding
  const na = a.match(/-?\d+\.?\d*(?:e[+-]?\d+)?/g) ?? [];
  const nb = b.match(/-?\d+\.?\d*(?:e[+-]?\d+)?/g) ?? [];
  if (
    na.length !== nb.length ||
    a.replace(/-?\d+\.?\d*(?:e[+-]?\d+)?/g, '#') !== b.replace(/-?\d+\.?\d*(?:e[+-]?\d+)?/g, '#')
  )
    return false;
  return na.every((x, i) => close(Number(x), Number(nb[i])));
};
const compare = (kind: string, got: string[], want: string[], out: Differences): void => {
  const left = [...got];
  for (const line of want) {
    const at = left.findIndex((g) => near(g, line));
    if (at >= 0) left.splice(at, 1);
    else out.missing.push(`${kind}: ${line}`);
  }
  for (const line of left) out.extra.push(`${kind}: ${line}`);
};

/** "what is dead band" and "meaning of dead band" ask the same; "what does 95 mean" has no other name. */
const sameKind = (got: string, want: string): boolean =>
  got === want || (got === 'what is' && want === 'meaning') || (got === 'meaning' && want === 'what is');
/** Another system may be named by the words of the note ("water pump"). */
const elsewhereOf = (kind: string, topic: string, words: string | undefined): boolean =>
  kind === 'elsewhere' && (words ?? '').toLowerCase().includes(topic);

/** English words that carry nothing of their own: FORMAT.md lets them be listed as unread or left out. */
const carriesNothing = new Set(
  'a an the i we you he she it they me us him her them my our his its their this that these those there is are am was were be been being has have had do does did will would can could shall should may might must to of in on at by for with from into about and but or so because if when while then than as just only even very little bit now not no yet up out off down over who what which whom here one some any all'.split(
    ' ',
  ),
);
const carries = (words: string): boolean =>
  words
    .toLowerCase()
    .split(/[^a-z0-9']+/)
    .some((w) => w !== '' && !carriesNothing.has(w));

export const differences = (f: Fixture, r: Reading): Differences => {
  const out: Differences = { missing: [], extra: [], wrongFacts: [] };
  const got = r.facts.map(factLine);
  const want = (f.facts ?? []).map(expectedLine);
  compare('fact', got, want, out);
  out.wrongFacts = out.extra.filter((l) => l.startsWith('fact'));
  const asksWanted = f.asks ?? [];
  const asks = r.asks.map((a) => ({ ask: a.ask, about: a.about ?? '' }));
  const free = [...asks];
  for (const line of asksWanted) {
    const [kind, topic] = line.split(/ about (.*)/s) as [string, string | undefined];
    const at = free.findIndex(
      (a, i) =>
        sameKind(a.ask, kind) &&
        (topic === undefined || a.about === topic || elsewhereOf(a.ask, topic, r.asks[i]?.words)),
    );
    if (at >= 0) free.splice(at, 1);
    else if (kind === 'safe' && r.hazards.some((h) => h.mode === 'asked')) continue;
    else out.missing.push(`ask: ${line}`);
  }
  for (const a of free)
    if (!(a.ask === 'safe' && r.hazards.length > 0)) out.extra.push(`ask: ${a.ask} about ${a.about}`);
  compare('amend', r.amends.map(amendLine).map(amendClass), (f.amends ?? []).map(expectedAmend).map(amendClass), out);
  compare(
    'hazard',
    r.hazards.map((h) => `${h.hazard} ${h.mode}`),
    f.hazards ?? [],
    out,
  );
  const ambiguous = r.ambiguous.map((a) => a.spans.map((s) => f.note.slice(...s)).join(' '));
  for (const words of f.ambiguous ?? [])
    if (!ambiguous.some((a) => a.includes(words) || words.includes(a))) out.missing.push(`ambiguous: ${words}`);
  for (const a of ambiguous)
    if (!(f.ambiguous ?? []).some((words) => a.includes(words) || words.includes(a))) out.extra.push(`ambiguous: ${a}`);
  for (const words of f.unread ?? []) {
    if (!carries(words)) continue;
    const at = f.note.indexOf(words);
    if (!r.unread.some((s) => s[0] < at + words.length && s[1] > at)) out.missing.push(`unread: ${words}`);
  }
  return out;
};
export const right = (d: Differences): boolean => d.missing.length === 0 && d.extra.length === 0;
