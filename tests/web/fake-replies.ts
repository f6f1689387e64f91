/** Canned replies: every kind of block and drawing that the page must show, with invented figures. */
import type { Block, Reply } from '../../server/chat/reply.ts';
import { cautionFor } from '../../server/guides/cautions.ts';
import type { Finding } from '../../server/findings/finding.ts';
import type { Taken } from '../../server/chat/reply.ts';

const inch = 0.0254;
const psi = 6894.757293168361;

const lowRear: Finding = {
  key: 'height@left rear',
  verdict: 'low',
  words: '1/2 in low left rear',
  amount: { si: 13.25 * inch, pm: inch / 16, unit: 'in', text: '13 1/4 in' },
  limit: {
    low: { si: 13.5 * inch, pm: 0, unit: 'in', text: '13 1/2 in' },
    high: { si: 14 * inch, pm: 0, unit: 'in', text: '14 in' },
    source: { kind: 'sheet', words: 'sheet: heights.leftRear' },
  },
  because: [],
  why: {
    formula: 'off = height - nominal',
    inputs: [
      { name: 'height', text: '13 1/4 in', from: 'your note' },
      { name: 'nominal', text: '13 3/4 in', from: 'sheet: heights.leftRear' },
    ],
    source: { kind: 'sheet', words: 'sheet: heights.leftRear' },
    notes: ['The tape is read to 1/8 in, so the height is known to 1/16 in.'],
  },
  drawing: {
    is: 'strip',
    unit: 'in',
    low: 13.5 * inch,
    high: 14 * inch,
    nominal: 13.75 * inch,
    pins: [{ si: 13.25 * inch, pm: inch / 16, label: '13 1/4' }],
  },
};

const leak: Finding = {
  key: 'leak@tank',
  verdict: 'high',
  words: 'tank loses 16 psi an hour',
  amount: { si: (16 * psi) / 3600, pm: (2 * psi) / 3600, unit: 'psi/min', text: '16 ± 2 psi an hour' },
  limit: {
    high: { si: (9 * psi) / 3600, pm: 0, unit: 'psi/min', text: '9 psi an hour' },
    source: { kind: 'sheet', words: 'sheet: supply.leakLimit' },
  },
  because: [],
  why: {
    formula: 'rate = (p1 - p2) / t, least squares over the readings',
    inputs: [
      { name: 'p1', text: '112 psi', from: '9:05' },
      { name: 'p2', text: '104 psi', from: '9:35' },
    ],
    source: { kind: 'physics', words: 'straight line through readings of a slow leak' },
    notes: [],
  },
  drawing: {
    is: 'chart',
    unit: 'psi',
    points: [
      { t: 0, si: 112 * psi, pm: psi },
      { t: 600, si: 109 * psi, pm: psi },
      { t: 1800, si: 104 * psi, pm: psi },
    ],
    fit: [
      { t: 0, si: 111.9 * psi },
      { t: 1800, si: 104 * psi },
    ],
    limits: [{ si: 107.5 * psi, label: 'limit after 30 min' }],
  },
};

const within: Finding = {
  key: 'pressure@tank',
  verdict: 'within',
  words: 'tank 95 psi, between cut-in and cut-out',
  amount: { si: 95 * psi, pm: psi, unit: 'psi', text: '95 psi' },
  limit: {
    low: { si: 88 * psi, pm: 0, unit: 'psi', text: '88 psi' },
    high: { si: 118 * psi, pm: 0, unit: 'psi', text: '118 psi' },
    source: { kind: 'sheet', words: 'sheet: supply.cutIn, supply.cutOut' },
  },
  because: [],
  why: {
    formula: 'cut-in <= pressure <= cut-out',
    inputs: [{ name: 'pressure', text: '95 psi', from: 'your note' }],
    source: { kind: 'sheet', words: 'sheet: supply.cutIn' },
    notes: [],
  },
  drawing: {
    is: 'strip',
    unit: 'psi',
    low: 88 * psi,
    high: 118 * psi,
    pins: [{ si: 95 * psi, pm: psi, label: '95' }],
  },
};

export const suspects = [
  {
    fault: 'bellows leaks',
    where: 'left bellows',
    name: 'left bellows or its line leaks',
    p: 0.52,
    was: 0.35,
    rank: '1 in 2',
    speaks: [
      { see: 'height', words: 'left rear stands 1/2 in low', bits: 1.4 },
      { see: 'tank', words: 'the tank holds', bits: -0.3 },
    ],
  },
  {
    fault: 'exhaust seat leaks',
    where: 'left height valve',
    name: 'left height valve, exhaust seat',
    p: 0.24,
    was: 0.33,
    rank: '1 in 4',
    speaks: [{ see: 'height', words: 'left rear stands 1/2 in low', bits: 0.6 }],
  },
  {
    fault: 'link slipped',
    where: 'left link',
    name: 'left link slipped or bent',
    p: 0.06,
    rank: 'unlikely',
    speaks: [],
  },
];

export const check: Extract<Block, { is: 'check' }> = {
  is: 'check',
  id: 'panel-shut',
  words: 'Panel to shut, both sides. Does left rear still drop in 5 min?',
  why: 'It parts the bellows from the valve: a drop with the panel shut is the bellows or its line.',
  hands: 1,
  wait: 5,
  keys: [
    { label: 'holds', text: 'left rear holds, panel shut' },
    { label: 'drops', text: 'left rear drops, panel shut' },
    { label: "can't", text: 'panel will not shut' },
  ],
  guide: 'check a bellows',
};

/** Keys that differ by their side, as they come: "two valves" in the note asks for them. */
export const sidedCheck: Extract<Block, { is: 'check' }> = {
  ...check,
  id: 'exhausts',
  words: 'Hose from each exhaust into water: bubbles?',
  keys: [
    { label: 'none', text: 'no bubbles at both exhausts' },
    { label: 'left steady', text: 'bubbles at left exhaust' },
    { label: 'right steady', text: 'bubbles at right exhaust' },
    { label: 'left puffs', text: 'left exhaust puffs' },
    { label: 'right puffs', text: 'right exhaust puffs' },
  ],
};

const gate: Block = {
  is: 'caution',
  id: 'stands',
  words: 'Stop. Is the frame on stands?',
  more: 'Chocked, level, stands under parts that do not move. Air or a jack alone is no support. The maker’s manual comes first.',
  gate: {
    what: 'on stands',
    keys: [
      { label: 'yes, on stands', text: 'on stands' },
      { label: 'not yet', text: 'not on stands' },
    ],
  },
};

/** "stop: air_at_person + dead": those cautions, worded as the guides word them; the reader takes no fact from it. */
const stopsFor = (text: string): Block[] =>
  (/^stop: (.*)/.exec(text)?.[1] ?? '').split(' + ').flatMap((id) => {
    const c = cautionFor(id.replaceAll('_', ' '));
    if (!c) return [];
    const gate = c.gate ? { gate: { what: c.gate.what, keys: [...c.gate.keys] } } : {};
    return [{ is: 'caution' as const, id, words: c.words, more: c.more, ...gate }];
  });

const drawings: Block[] = [
  {
    is: 'picture',
    words: 'Left rear is low, the rest are in limits.',
    drawing: {
      is: 'plan',
      unit: 'in',
      corners: [
        { where: 'left front', si: 15.375 * inch, text: '15 3/8 in', off: 0.125 * inch },
        { where: 'right front', si: 15.25 * inch, text: '15 1/4 in', off: 0 },
        { where: 'left rear', si: 13.25 * inch, text: '13 1/4 in', off: -0.5 * inch },
        { where: 'right rear', si: 14 * inch, text: '14 in', off: 0.25 * inch },
      ],
      notes: ['3/4 in across the rear'],
    },
  },
  {
    is: 'picture',
    words: 'Shims for the left rear forward wheel.',
    drawing: {
      is: 'bracket',
      where: 'left rear forward wheel',
      unit: 'mm',
      shims: [
        { bolt: 'front upper', si: 0.0015, text: 'add 1.5 mm' },
        { bolt: 'front lower', si: 0.0015, text: 'add 1.5 mm' },
        { bolt: 'rear upper', si: 0, text: 'leave' },
        { bolt: 'rear lower', si: -0.0005, text: 'take out 0.5 mm' },
      ],
    },
  },
  {
    is: 'picture',
    words: '2.1 V of 2.4 V lost in the feed.',
    drawing: {
      is: 'legs',
      legs: [
        { name: 'battery to relay', text: '2.1 V', guilty: true },
        { name: 'relay to motor', text: '0.2 V', guilty: false },
        { name: 'motor to ground', text: '0.1 V', guilty: false },
      ],
    },
  },
  {
    is: 'picture',
    words: 'Panel shut: each bellows stands alone.',
    drawing: {
      is: 'circuit',
      lit: ['left bellows', 'left bellows line'],
      joined: ['left bellows', 'left bellows line'],
    },
  },
];

/** The blocks a note gets, by words in it. */
export const fakeReply = (id: string, text: string, took: readonly Taken[]): Reply => {
  const low = text.toLowerCase();
  const blocks: Block[] = [];
  blocks.push(...stopsFor(text));
  if (/under/.test(low) && blocks.length === 0) blocks.push(gate);
  if (took.length > 0) blocks.push({ is: 'took', words: took.map((t) => t.words).join(' · '), list: [...took] });
  if (/^undo/.test(low)) blocks.push({ is: 'withdrawn', words: 'what rested on that note' });
  if (/why|what is/.test(low))
    blocks.push({
      is: 'teach',
      words: 'A height valve lets air into a bellows when its side sinks, and out when it rises.',
      lines: ['Its arm follows the axle through a link. A check valve on its feed keeps the bellows up.'],
      terms: ['check-valve', 'link'],
    });
  if (/13|low/.test(low)) blocks.push({ is: 'findings', words: lowRear.words, list: [lowRear] });
  if (/104/.test(low)) blocks.push({ is: 'findings', words: leak.words, list: [leak] });
  if (/95/.test(low)) blocks.push({ is: 'findings', words: within.words, list: [within] });
  if (/draw/.test(low)) blocks.push(...drawings);
  if (/blarg/.test(low))
    blocks.push({
      is: 'question',
      id: 'which',
      words: '95 of what?',
      keys: [
        { label: 'tank', text: 'tank 95 psi' },
        { label: 'left bellows', text: 'left bellows 95 psi' },
        { label: 'tyre', text: 'tyre 95 psi' },
      ],
    });
  if (/13|low|104|drops|holds/.test(low)) {
    blocks.push({ is: 'suspects', words: 'left bellows or its line leaks: 1 in 2', list: suspects });
    blocks.push(check);
  }
  return { to: id, engine: 'fake', blocks };
};
