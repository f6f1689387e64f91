/** The owner's report of a session as data: what was said, found, done, left, and what must be known before it moves. Pure. */
import type { Entry } from '../session/entry.ts';
import type { Folded } from '../session/fold.ts';
import { doneMeaning } from '../session/works.ts';
import type { Sheet } from '../sheet/schema.ts';
import { comparedOf, limitWords, standingFindings, worthShowing } from './compared.ts';
import { estimateOf } from './estimate.ts';
import { notSafe } from './not-safe.ts';
import { plainPlace, workWords } from './plain-parts.ts';
import type { Due, Item, OwnerReport, Shop } from './shapes.ts';
import { verdictOf } from './verdict.ts';

/** Most of each, so that the report keeps to two pages; the rest stands on the job sheet, and it says so. */
const most = { found: 8, done: 12, compared: 6, photos: 2 } as const;

/** Below this a suspect is no cause to name to an owner. */
const leastCause = 0.3;

/** Worked out of the corners again: says nothing to an owner that they do not. */
const aside = new Set(['attitude']);

/** Seen, and nothing wrong with it: proof of the work, not what was found. */
const inOrder: ReadonlySet<string> = new Set(['ok', 'holds', 'level']);

const cut = (items: readonly Item[], limit: number): Item[] =>
  items.length <= limit
    ? [...items]
    : [
        ...items.slice(0, limit),
        { words: `and ${items.length - limit} more on the job sheet`, more: '', at: 0, seq: 0, by: '' },
      ];

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export type ReportIn = {
  entries: readonly Entry[];
  standing: Folded;
  sheet: Sheet;
  shop: Shop;
  due: readonly Due[];
  mark: string;
  now: number;
};

export const ownerReport = ({ entries, standing, sheet, shop, due, mark, now }: ReportIn): OwnerReport => {
  const works = standing.facts.flatMap(({ fact, seq, by }) => (fact.is === 'work' ? [{ fact, seq, by }] : []));
  const done = works.filter((w) => doneMeaning(w.fact, 'told'));
  const mended = done.filter((w) => doneMeaning(w.fact, 'repair'));
  const first = mended.reduce((s, w) => Math.min(s, w.seq), Infinity);
  const last = mended.reduce((s, w) => Math.max(s, w.seq), -Infinity);
  const all = standingFindings(entries, standing);
  const notes = entries.filter((e) => e.is === 'note' && !standing.voided.has(e.id));
  const noteAt = (seq: number): number => notes.find((n) => n.seq === seq)?.kept ?? 0;

  // what was off as it came in: each figure once, as first found
  const off = new Map<string, Item>();
  for (const { finding, seq, at } of all)
    if (
      seq < first &&
      !aside.has(finding.key.split('@')[0] ?? '') &&
      (finding.verdict === 'low' || finding.verdict === 'high')
    ) {
      const { limit } = finding;
      off.set(finding.key, {
        words: upper(finding.words),
        more: limit ? `limit ${limitWords(limit)} (${limit.source.words})` : '',
        at,
        seq,
        by: '',
      });
    }
  const signs = standing.facts.flatMap(({ fact, seq, by }): Item[] =>
    fact.is === 'sign' &&
    fact.there &&
    !inOrder.has(fact.what.v) &&
    fact.word === 'own' &&
    fact.where.v !== '' &&
    seq !== standing.complaint?.seq
      ? [{ words: upper(`${plainPlace(fact.where.v)}: ${fact.what.v}`), more: 'seen', at: fact.at, seq, by }]
      : [],
  );
  const before = entries.findLast(
    (e) => e.is === 'reply' && e.seq <= first && e.blocks.some((b) => b.is === 'suspects'),
  );
  const suspects =
    first === Infinity
      ? standing.suspects
      : before?.is === 'reply'
        ? (before.blocks.find((b) => b.is === 'suspects')?.list ?? [])
        : [];
  const top = suspects.find((s) => s.p >= leastCause && s.fault !== 'nothing wrong' && s.fault !== 'something else');

  const estimate = estimateOf(entries);
  const declined: Item[] = [
    ...works
      .filter((w) => !w.fact.done || w.fact.what.v === 'declined')
      .map(({ fact, seq, by }) => ({
        words: workWords({ ...fact, done: false }),
        more: fact.what.v === 'declined' ? 'declined' : 'not done',
        at: fact.at,
        seq,
        by,
      })),
    ...(estimate?.lines ?? []).flatMap((l): Item[] =>
      l.decided?.yes === false
        ? [
            {
              words: upper(l.words),
              more: `declined by ${l.decided.name}${l.decided.words === '' ? '' : `: ${l.decided.words}`}`,
              at: l.decided.at,
              seq: estimate!.seq,
              by: estimate!.by,
            },
          ]
        : [],
    ),
  ];

  const complaint =
    standing.complaint ?? (notes[0]?.is === 'note' ? { seq: notes[0].seq, words: notes[0].text } : null);
  const photos = notes.flatMap((n) =>
    n.is === 'note'
      ? (n.photos ?? []).map((p) => ({
          ...p,
          when: n.seq < first ? ('before' as const) : ('after' as const),
          note: p.words === '' ? n.text : p.words,
          at: n.at,
        }))
      : [],
  );
  const unsafe = notSafe(standing);
  const cautions = standing.pending.map((g) => ({
    words: g.words,
    more: g.answered ? 'answered no' : 'not answered',
    at: 0,
    seq: standing.seq,
    by: '',
  }));
  const closed = standing.closed ? entries.findLast((e) => e.is === 'closed') : undefined;
  const opened = entries[0];
  return {
    v: 1,
    session: standing.session,
    coach: sheet.coach,
    zone: standing.zone,
    practice: standing.practice !== null,
    shop: { name: shop.name ?? sheet.shop?.name ?? '', lines: shop.lines ?? '' },
    opened: opened?.kept ?? 0,
    closed: closed?.is === 'closed' ? { at: closed.kept, signed: closed.signed, words: closed.words } : null,
    typed: [...new Set(notes.map((n) => n.by))],
    sheet: { hash: standing.sheet, source: sheet.source },
    complaint: complaint
      ? {
          words: complaint.words,
          more: '',
          at: noteAt(complaint.seq),
          seq: complaint.seq,
          by: notes.find((n) => n.seq === complaint.seq)?.by ?? '',
        }
      : null,
    word: verdictOf(entries, last, unsafe, cautions),
    notSafe: unsafe,
    found: cut([...off.values(), ...dedupe(signs)], most.found),
    cause: top
      ? {
          words: upper(top.name),
          more: `how sure: ${top.rank}${top.of && top.of.rank !== top.rank ? `; that it is the ${top.of.part} in one way or another: ${top.of.rank}` : ''}`,
          at: 0,
          seq: before?.seq ?? standing.seq,
          by: 'soapwater',
        }
      : null,
    done: cut(
      dedupe(done.map(({ fact, seq, by }) => ({ words: workWords(fact), more: '', at: fact.at, seq, by }))),
      most.done,
    ),
    declined,
    compared: worthShowing(comparedOf(all, first, last), most.compared),
    photos: (['before', 'after'] as const).flatMap((when) => photos.filter((p) => p.when === when).slice(-most.photos)),
    due: [...due],
    cautions,
    estimate,
    mark,
    entries: standing.seq,
    printed: now,
  };
};

const dedupe = (items: readonly Item[]): Item[] => [...new Map(items.map((i) => [i.words, i])).values()];
