/**
 * A session with every kind of entry and block, as written into the old logs of `fixtures/logs`. Never changed once a
 * log was written from it: a new kind goes into a new list and a new log.
 */
import type { Draft } from '../../server/session/entry.ts';

export const sheetJson = '{"coach":"Juniper 38 (demo)","id":"juniper-38"}';
export const sheetHash = 'b'.repeat(64);

const tank = { v: 'tank', from: 'said', spans: [[0, 4]] } as const;

export const writtenV1: readonly (readonly Draft[])[] = [
  [{ is: 'opened', by: 'KD', coach: 'juniper-38', sheet: sheetHash, zone: 'America/Denver' }],
  [
    {
      is: 'note',
      by: 'KD',
      id: 'written-1',
      text: 'tank 95 psi, “sags” överniht <b>&\nsecond line',
      at: 1_790_000_000_000,
      seen: 1,
      photos: [{ id: 'c'.repeat(64), width: 640, height: 480, words: 'crimp' }],
      read: {
        facts: [
          {
            is: 'reading',
            id: 'written-1.0',
            at: 1_790_000_000_000,
            where: { ...tank, spans: [[0, 4]] },
            word: 'own',
            what: { v: 'pressure', from: 'carried', spans: [] },
            amount: {
              v: { si: 655_001.9, pm: 6894.757, unit: 'psi', text: '95 psi' },
              from: 'said',
              spans: [[5, 11]],
            },
          },
        ],
        amends: [],
        asks: [],
        hazards: [],
        ambiguous: [],
        unread: [[20, 28]],
      },
    },
    {
      is: 'reply',
      by: 'soapwater',
      to: 'written-1',
      engine: 'fixture-engine-1',
      blocks: [
        { is: 'caution', id: 'under', words: 'Stop: is it on stands?', more: 'Air is not a support.' },
        { is: 'took', words: 'tank 95 psi', list: [] },
        { is: 'withdrawn', words: 'The earlier 93 psi no longer counts.' },
        { is: 'question', id: 'q1', words: 'Tank or bellows?', keys: [{ label: 'tank', text: 'tank 95 psi' }] },
        {
          is: 'suspects',
          words: 'check valve leaks back: 1 in 3',
          list: [{ fault: 'check-valve', name: 'check valve leaks back', p: 0.31, rank: '1 in 3', speaks: [] }],
        },
        {
          is: 'check',
          id: 'soap-crimps',
          words: 'Soap both crimps.',
          why: 'It splits the suspects best.',
          hands: 4,
          wait: 0,
          keys: [{ label: 'dry', text: 'no bubbles at the crimps' }],
        },
        { is: 'teach', words: 'What 95 psi means', lines: ['Between cut-in and cut-out.'], terms: ['cut-in'] },
      ],
    },
  ],
  [{ is: 'remark', by: 'RV', about: 2, text: 'Gauge was checked in May.' }],
  [{ is: 'closed', by: 'KD', signed: 'KD', words: 'level, tight and dry' }],
  [{ is: 'reopened', by: 'KD', words: 'came back' }],
];
