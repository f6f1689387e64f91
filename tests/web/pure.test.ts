/** The parts of the page that are plain functions: line, sheet, state, timers, drawings. */
import { describe, expect, test } from 'vitest';
import * as fc from 'fast-check';
import type { Entry, Draft } from '../../server/session/entry.ts';
import { blankContext, read } from '../../intents/read.ts';
import { mayFrame, roles } from '../../server/auth/roles.ts';
import { toSi } from '../../server/core/units.ts';
import { announcement } from '../../web/announce.ts';
import { complaints as complaintTexts } from '../../web/complaints.ts';
import { cautionOf, checkFor, checks, plain, wordFor, words } from '../../web/learn/book.ts';
import { mayRemark, mayWrite, whyNot } from '../../web/may.ts';
import { linkTerms } from '../../web/blocks/terms.ts';
import { placeAtEnd } from '../../web/chips.ts';
import { planChart } from '../../web/draw/chart.ts';
import { circuitParts, litPlace } from '../../web/draw/circuit.ts';
import { marks, stepFor } from '../../web/draw/scale.ts';
import { planStrip } from '../../web/draw/strip.ts';
import { exchangesOf, headline, takenBack } from '../../web/exchanges.ts';
import { readFrame } from '../../web/frame.ts';
import { sheetSource } from '../../web/sheet-source.ts';
import * as line from '../../web/note-line.ts';
import { hashOf, routeOf } from '../../web/route.ts';
import { addBoard, addEarlier, addEntries, freshState, missing, type SessionState } from '../../web/session-state.ts';
import { left, timersOf } from '../../web/timers.ts';

const numbered = (drafts: readonly Draft[]): Entry[] =>
  drafts.map((d, i) => ({ v: 1, session: 'session1', seq: i + 1, kept: 1000 + i, ...d }));
const nothingRead = { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] };
const note = (id: string, text: string, at = 0, read = {}): Draft => ({
  is: 'note',
  by: 'MK',
  id,
  text,
  at,
  seen: 0,
  read: { ...nothingRead, ...read },
});

describe('where a figure comes from', () => {
  test('a field of the sheet is read as words, the sheet named once, anything else left alone', () => {
    expect(sheetSource('sheet: heights.leftRear')).toBe('coach sheet: heights left rear');
    expect(sheetSource('sheet: supply.cutIn, sheet: supply.cutOut')).toBe('coach sheet: supply cut in, supply cut out');
    expect(sheetSource('sheet: supply.cutIn, supply.cutOut')).toBe('coach sheet: supply cut in, supply cut out');
    expect(sheetSource('sheet: pump.minVolts + electrics.drop')).toBe('coach sheet: pump min volts + electrics drop');
    expect(sheetSource('sheet: service.0')).toBe('coach sheet: service row 1');
    expect(sheetSource('sheet: supply.leakLimit, added in this session')).toBe(
      'coach sheet: supply leak limit, added in this session',
    );
    expect(sheetSource('common practice, no source')).toBe('common practice, no source');
  });
});

describe('the note line', () => {
  test('a place, digits and a fraction off the tape make what a person would type', () => {
    let s = line.tapPlace(line.emptyLine, 'left rear');
    for (const d of '13') s = line.tapDigit(s, d);
    s = line.tapFraction(s, '1/4');
    expect(s.text).toBe('left rear 13 1/4');
    expect(line.tapFraction(s, '3/8').text).toBe('left rear 13 3/8');
    expect(line.tapFraction(s, '').text).toBe('left rear 13');
    expect(line.tapPlace(s, 'right rear').text).toBe('left rear 13 1/4, right rear ');
  });

  test('a place tapped by mistake gives way to the next one, and undo brings it back', () => {
    const s = line.tapPlace(line.tapPlace(line.emptyLine, 'left rear'), 'tank');
    expect(s.text).toBe('tank ');
    expect(line.takeBackTap(s)?.text).toBe('left rear ');
  });

  test('every tap is taken back by one undo, to an empty line in the end', () => {
    const tap = fc.oneof(
      fc.constantFrom('left rear', 'tank').map((p) => (s: line.LineState) => line.tapPlace(s, p)),
      fc.constantFrom('1', '9', '.').map((d) => (s: line.LineState) => line.tapDigit(s, d)),
      fc.constantFrom('1/4', '7/8').map((f) => (s: line.LineState) => line.tapFraction(s, f)),
      fc.constantFrom('low', 'psi').map((w) => (s: line.LineState) => line.tapWords(s, w)),
    );
    fc.assert(
      fc.property(fc.array(tap, { minLength: 1, maxLength: 30 }), (taps) => {
        const states = taps.reduce<line.LineState[]>(
          (all, t) => [...all, t(all.at(-1) ?? line.emptyLine)],
          [line.emptyLine],
        );
        let s: line.LineState | null = states.at(-1) ?? null;
        for (const before of states.slice(0, -1).toReversed()) {
          s = s === null ? null : line.takeBackTap(s);
          expect(s?.text).toBe(before.text);
        }
      }),
    );
  });

  test('the place at the end of what is typed is known by its canonical words', () => {
    expect(placeAtEnd('tank 95, left rear ')).toBe('left rear');
    expect(placeAtEnd('left height valve')).toBe('left height valve');
    expect(placeAtEnd('left rear 13')).toBe(null);
  });
});

describe('the keys a fresh session begins with', () => {
  test.each(complaintTexts)('%s is read whole', (text) => {
    const reading = read(text, blankContext('key', { at: 0, zone: 'UTC' }));
    expect(reading.facts.length).toBeGreaterThan(0);
    expect([reading.unread, reading.ambiguous]).toEqual([[], []]);
  });
});

describe('what is read up', () => {
  test('every word and every check has a page, its links lead somewhere, and no figure of a sheet is left as a code', () => {
    expect(words.length).toBeGreaterThan(60);
    for (const t of words) {
      expect(wordFor(t.id)?.id).toBe(t.id);
      for (const id of t.see) expect(wordFor(id), `${t.id} -> ${id}`).toBeDefined();
    }
    for (const g of checks) {
      expect(checkFor(g.id)).toBe(g);
      for (const s of g.steps) {
        expect(plain(`${s.words} ${s.expect}`)).not.toMatch(/[{}]/);
        expect(cautionOf(s) === undefined, `${g.id}: ${s.caution}`).toBe(s.caution === undefined);
      }
    }
    expect(plain('to {panel.auto}, {supply.cutOut}')).toBe("to AUTO, [the coach's cut out]");
  });
});

describe('what a device may do', () => {
  test('as the server has it: works writes, reviews remarks, learns writes in practice only', () => {
    for (const role of roles)
      for (const practice of [false, true]) {
        const served = (is: 'note' | 'remark'): boolean => {
          const may = mayFrame(role, is);
          return may === 'yes' || (may === 'in practice' && practice);
        };
        expect(mayWrite(role, practice)).toBe(served('note'));
        expect(mayRemark(role, practice)).toBe(served('remark'));
        expect(whyNot(role) === '').toBe(role === 'works');
      }
  });
});

describe('a frame', () => {
  const entry = { v: 1, session: 'session1', seq: 1, kept: 5, by: 'MK' };
  test.each([
    { is: 'entries', session: 'session1', entries: [{ ...entry, is: 'opened', coach: 'c' }], more: false },
    { is: 'earlier', session: 'session1', entries: [] },
    { is: 'refused', code: 4001, why: 'bad json', words: 'no' },
    { is: 'answer', id: 'x', blocks: [{ is: 'teach', words: 'w', lines: [], terms: [] }] },
    { is: 'sessions', list: [], more: false },
  ])('of the protocol is taken: $is', (frame) => {
    expect(readFrame(JSON.stringify(frame))).toEqual(frame);
  });
  test.each([
    ['no JSON', '{"is":'],
    ['not text', new Uint8Array(3)],
    ['a list', '[]'],
    ['null', 'null'],
    ['a kind nobody knows', '{"is":"constructor"}'],
    ['entries that are none', '{"is":"entries","session":"s","entries":[null],"more":false}'],
    [
      'a note without text',
      JSON.stringify({ is: 'entries', session: 's', entries: [{ ...entry, is: 'note', id: 'n' }] }),
    ],
    [
      'a reply without blocks',
      JSON.stringify({ is: 'entries', session: 's', entries: [{ ...entry, is: 'reply', to: 'n' }] }),
    ],
    ['a board without its readings', '{"is":"board","board":{"session":"s","seq":1}}'],
  ])('that is none does not stop the page: %s', (_name, data) => {
    expect(readFrame(data)).toBeNull();
  });
});

describe('entries as they come', () => {
  const entries = numbered([
    { is: 'opened', by: 'MK', coach: 'c', sheet: 's', zone: 'UTC' },
    note('note01', 'a'),
    note('note02', 'b'),
  ]);

  test('twice, in any order and in pieces, they stand once and in order; a gap is told', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: 3 }), fc.integer({ min: 0, max: 3 }), (mixed, cut) => {
        let s = addEntries(freshState('session1'), entries.slice(0, cut), false).state;
        s = addEntries(s, mixed, false).state;
        expect(s.entries.map((e) => e.seq)).toEqual([1, 2, 3]);
      }),
    );
    const gapped = addEntries(
      addEntries(freshState('session1'), entries.slice(0, 1), false).state,
      entries.slice(2),
      false,
    );
    expect(gapped).toMatchObject({ gap: true, state: { entries: [{ seq: 1 }] } });
  });

  test('of a long session the newest stand alone, and earlier ones join them only where they meet', () => {
    const seqs = (s: SessionState): number[] => s.entries.map((e) => e.seq);
    const kept = addEntries(freshState('session1'), entries.slice(0, 1), false).state;
    const jumped = addEntries(kept, entries.slice(2), false, true);
    expect(jumped.gap).toBe(false);
    expect(seqs(jumped.state)).toEqual([3]);
    expect(missing(jumped.state)).toBe(2);
    expect(seqs(addEarlier(jumped.state, entries.slice(0, 1)))).toEqual([3]);
    const whole = addEarlier(jumped.state, entries.slice(0, 2));
    expect(seqs(whole)).toEqual([1, 2, 3]);
    expect(missing(whole)).toBe(0);
  });

  test('an older board never replaces a newer one', () => {
    const board = (seq: number): never => ({ seq }) as never;
    const s = addBoard(addBoard(freshState('session1'), board(5)), board(4));
    expect(s.board?.seq).toBe(5);
  });

  describe('what was taken back', () => {
    // as the desk stores it: a redo names the undo it takes back
    const by = (what: 'undo' | 'redo' | 'drop', notes: string[], drops: string[] = []): object => ({
      amends: [{ do: what, count: 1, says: {}, notes, drops, puts: [], spans: [] }],
    });
    const one = note('note01', 'a');
    const undo = note('note02', 'undo', 0, by('undo', ['note01']));
    const redo = note('note03', 'undo the undo', 0, by('redo', ['note02']));
    test.each<[string, Draft[], string[], string[]]>([
      ['a note undone', [one, undo], ['note01'], []],
      ['stands again when its undo is taken back', [one, undo, redo], ['note02'], []],
      [
        'is gone again when that is taken back too',
        [one, undo, redo, note('note04', 'undo', 0, by('undo', ['note03']))],
        ['note01', 'note03'],
        [],
      ],
      ['a reading dropped', [one, note('note02', 'ignore that', 0, by('drop', [], ['note01#1']))], [], ['note01#1']],
      [
        'a reading stands again when the note that dropped it is undone',
        [
          one,
          note('note02', 'ignore that', 0, by('drop', [], ['note01#1'])),
          note('note03', 'undo', 0, by('undo', ['note02'])),
        ],
        ['note02'],
        [],
      ],
    ])('%s', (_name, drafts, notes, facts) => {
      const back = takenBack(numbered(drafts));
      expect([...back.notes].toSorted()).toEqual(notes);
      expect([...back.facts]).toEqual(facts);
    });

    test('is struck in the job sheet, and nothing else', () => {
      const struck = exchangesOf(numbered([one, undo]), []).flatMap((x) => (x.is === 'note' ? [x.voided] : []));
      expect(struck).toEqual([true, false]);
    });
  });

  test('a note that waits stands last, and once it is kept it does not stand twice', () => {
    const pending = {
      key: 'k',
      made: 0,
      state: 'waiting' as const,
      frame: { is: 'note' as const, session: 'session1', id: 'note02', text: 'b', at: 5, seen: 1, by: 'MK' },
    };
    const shown = (all: readonly Entry[]): string[] =>
      exchangesOf(all, [pending]).flatMap((x) => (x.is === 'note' ? [`${x.text} ${x.state}`] : []));
    expect(shown(numbered([note('note01', 'a')]))).toEqual(['a kept', 'b waiting']);
    expect(shown(entries.slice(1))).toEqual(['a kept', 'b kept']);
  });

  test('a caution is announced before anything else is', () => {
    const reply: Draft = {
      is: 'reply',
      by: 'soapwater',
      to: 'note01',
      engine: 'e',
      blocks: [
        { is: 'caution', id: 'c', words: 'Stop.', more: 'Chock it.' },
        { is: 'teach', words: 'later', lines: [], terms: [] },
      ],
    };
    const all = numbered([note('note01', 'a'), reply]);
    expect(announcement(all, 1)).toEqual({ now: 'Stop. Chock it.', polite: '' });
    expect(announcement(all, 2)).toBe(null);
    expect(headline(all[1]?.is === 'reply' ? all[1] : null)).toBe('Stop.');
  });

  test('a stop still unanswered does not hide what a later note led to', () => {
    const said = (...more: object[]): string | null => {
      const stop = { is: 'caution', id: 'waiting-on stands', words: 'Stop. On stands?', more: 'Not answered yet.' };
      const all = numbered([
        note('note01', 'LR 12'),
        { is: 'reply', by: 'soapwater', to: 'note01', engine: 'e', blocks: [stop, ...more] } as unknown as Draft,
      ]);
      return headline(all[1]?.is === 'reply' ? all[1] : null);
    };
    expect(said({ is: 'teach', words: 'a crimp is rolled', lines: [], terms: [] })).toBe('a crimp is rolled');
    expect(said()).toBe('Stop. On stands?');
    expect(said({ is: 'caution', id: 'hot', words: 'Stop. Hot.', more: '' })).toBe('Stop. Hot.');
  });

  test('two sides that nothing tells apart are named together', () => {
    const suspect = (name: string, rank: string): object => ({ fault: name, name, p: 0.1, rank, speaks: [] });
    const said = (...list: object[]): string | null => {
      const all = numbered([
        note('note01', 'sags overnight'),
        {
          is: 'reply',
          by: 'soapwater',
          to: 'note01',
          engine: 'e',
          blocks: [{ is: 'suspects', words: '', list }],
        } as unknown as Draft,
      ]);
      return headline(all[1]?.is === 'reply' ? all[1] : null);
    };
    expect(said(suspect('right bellows leaks', '1 in 10'), suspect('left bellows leaks', '1 in 10'))).toBe(
      'left or right bellows leaks, 1 in 10 each',
    );
    expect(said(suspect('right bellows leaks', '1 in 4'), suspect('left bellows leaks', '1 in 10'))).toBe(
      'right bellows leaks, 1 in 4',
    );
  });
});

describe('timers', () => {
  const command = (about: string, amounts: object[] = []): object => ({
    asks: [{ ask: 'command', about, words: '', facts: [], amounts, spans: [] }],
  });
  const five = { si: 300, pm: 0, unit: 'min', text: '5 min' };

  test('started by a note, stopped by a note, forgotten with the note that is taken back', () => {
    const all = numbered([note('note01', 'start timer 5 min', 1000, command('start timer', [five]))]);
    expect(timersOf(all, new Set())).toMatchObject([{ from: 1000, until: 301_000, stopped: null }]);
    expect(timersOf(all, new Set(['note01']))).toEqual([]);
    const stopped = numbered([
      note('note01', 'x', 1000, command('start timer', [five])),
      note('note02', 'x', 9000, command('stop timer')),
    ]);
    expect(timersOf(stopped, new Set())[0]?.stopped).toBe(9000);
  });

  test('a bare number is minutes', () => {
    const all = numbered([
      note('note01', 'timer 10', 0, command('start timer', [{ si: 10, pm: 0, unit: 'count', text: '10' }])),
    ]);
    expect(timersOf(all, new Set())[0]?.until).toBe(600_000);
  });

  test('what is left is written as a clock face has it', () => {
    expect([left(272_000), left(3_870_000), left(-40_000), left(0)]).toEqual(['4:32', '1:04:30', '+0:40', '0:00']);
  });
});

describe('drawings', () => {
  const inch = (n: number): number => toSi(n, 'in');

  test('the pin of a low reading stands left of the window, its whiskers as wide as its resolution', () => {
    const p = planStrip({
      is: 'strip',
      unit: 'in',
      low: inch(13.5),
      high: inch(14),
      pins: [{ si: inch(13.25), pm: inch(1 / 16), label: '13 1/4' }],
    });
    const pin = p.pins[0];
    const window = p.window;
    if (!pin || !window) throw new Error('no pin or window');
    expect(pin.x).toBeLessThan(window.x0);
    expect((pin.right - pin.left) / (window.x1 - window.x0)).toBeCloseTo(1 / 8 / 0.5, 6);
    expect((window.x0 - pin.x) / (window.x1 - window.x0)).toBeCloseTo(0.5, 6);
    expect(p.edges.map((e) => e.label)).toEqual(['13 1/2', '14']);
  });

  test('whatever the numbers, all of a strip stays on the tape and no two labels of pins lie over one another', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 200, noNaN: true }), { minLength: 1, maxLength: 4 }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (values, low, width) => {
          const p = planStrip({
            is: 'strip',
            unit: 'psi',
            low: toSi(low, 'psi'),
            high: toSi(low + width, 'psi'),
            pins: values.map((v) => ({ si: toSi(v, 'psi'), pm: toSi(0.5, 'psi'), label: v.toFixed(0) })),
          });
          for (const pin of p.pins) expect(pin.x >= 0 && pin.x <= 290).toBe(true);
          for (const t of p.ticks) expect(t.x >= 0 && t.x <= 290).toBe(true);
          expect(p.ticks.length).toBeLessThan(40);
          const over = p.pins.flatMap((a, n) =>
            p.pins
              .slice(n + 1)
              .filter(
                (b) => a.row === b.row && Math.abs(a.textX - b.textX) < ((a.label.length + b.label.length) * 8.6) / 2,
              ),
          );
          expect(over).toEqual([]);
          const spans = p.edges.map((e) => {
            const wide = e.label.length * 8;
            return e.anchor === 'end' ? ([e.x - wide, e.x] as const) : ([e.x, e.x + wide] as const);
          });
          for (const [a, b] of spans) expect(a >= 0 && b <= 290).toBe(true);
          expect(spans[0]![1]).toBeLessThan(spans[1]![0]);
        },
      ),
    );
  });

  test('a limit is labelled as the words beside it write it, also where it was converted', () => {
    const edges = (more: { lowText?: string; highText?: string }) =>
      planStrip({
        is: 'strip',
        unit: 'in',
        low: toSi(340, 'mm'),
        high: toSi(350, 'mm'),
        pins: [{ si: inch(13.5), pm: inch(1 / 16), label: '13 1/2 in' }],
        ...more,
      }).edges.map((e) => e.label);
    expect(edges({ lowText: '13 3/8 in', highText: '13 3/4 in' })).toEqual(['13 3/8', '13 3/4']);
    // of a log that did not keep the words
    expect(edges({})).toEqual(['13 3/8', '13 3/4']);
  });

  test('marks of a tape are binary fractions, of a gauge 1, 2 and 5', () => {
    expect(stepFor(1, 8, true)).toBe(1 / 8);
    expect(stepFor(1.1, 8, true)).toBe(1 / 4);
    expect([stepFor(10, 5, false), stepFor(11, 5, false), stepFor(30, 5, false)]).toEqual([2, 5, 10]);
    expect(marks(0.1, 0.5, 0.1)).toEqual([0.1, 0.2, 0.3, 0.4, 0.5]);
  });

  test('a chart falls where the pressure falls, and its limit stands between', () => {
    const psi = (n: number): number => toSi(n, 'psi');
    const p = planChart({
      is: 'chart',
      unit: 'psi',
      points: [
        { t: 0, si: psi(112), pm: psi(1) },
        { t: 1800, si: psi(104), pm: psi(1) },
      ],
      fit: [],
      limits: [{ si: psi(108), label: 'limit' }],
    });
    const [a, b] = p.points;
    if (!a || !b) throw new Error('no points');
    expect(b.y).toBeGreaterThan(a.y);
    expect(p.limits[0]?.y).toBeCloseTo((a.y + b.y) / 2, 6);
    expect(p.time).toBe('min');
  });

  test('the names of two limits of a chart stand outside the pair and off the readings', () => {
    const inch = (n: number): number => toSi(n, 'in');
    const chartOf = (...readings: number[]) =>
      planChart({
        is: 'chart',
        unit: 'in',
        points: readings.map((n, i) => ({ t: i * 600, si: inch(n), pm: inch(1 / 8) })),
        fit: [],
        limits: [
          { si: inch(13.25), label: 'low limit' },
          { si: inch(13.75), label: 'high limit' },
        ],
      }).limits;
    expect(chartOf(11.5, 11.5, 14.5)).toMatchObject([
      { label: 'low limit', above: false },
      { label: 'high limit', above: true },
    ]);
    // a reading on the line at the right: the name goes to the left of it
    expect(chartOf(11.5, 12, 12.5, 13.75)[1]).toMatchObject({ above: true, side: 'left' });
  });

  test('a suspect lights the part of the circuit it belongs to', () => {
    const { boxes, pipes } = circuitParts(true);
    const places = [...boxes, ...pipes].map((b) => b.place);
    expect(litPlace('left bellows crimp', places)).toBe('left bellows');
    expect(litPlace('right exhaust seat', places)).toBe('right height valve');
    expect(litPlace('reeds', places)).toBe('pump');
    expect(litPlace('relay', places)).toBe(null);
  });
});

describe('words and ways', () => {
  test('terms of the glossary are linked once, longest first, and nothing of the text is lost', () => {
    const parts = linkTerms('The check valve checks.', ['check', 'check-valve']);
    expect(parts.map((p) => p.text).join('')).toBe('The check valve checks.');
    // whole words, plurals and hyphens with them
    expect(linkTerms('No harm to both arms at cut-in.', ['arm', 'cut-in']).filter((p) => p.term !== null)).toEqual([
      { text: 'arms', term: 'arm' },
      { text: 'cut-in', term: 'cut-in' },
    ]);
    expect(parts.filter((p) => p.term !== null)).toEqual([
      { text: 'check valve', term: 'check-valve' },
      { text: 'checks', term: 'check' },
    ]);
  });

  test('an address leads to its view and back', () => {
    for (const hash of [
      '#/',
      '#/session/abcdef12',
      '#/session/abcdef12/transcript',
      '#/learn',
      '#/learn/check%20valve',
    ])
      expect(hashOf(routeOf(hash))).toBe(hash);
    expect(routeOf('#/session/../../etc')).toEqual({ at: 'start' });
  });
});
