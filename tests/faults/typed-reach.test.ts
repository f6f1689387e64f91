/**
 * Every fault by typing: for each, a short session of notes, keys of checks and what an instrument shows, that ends with it
 * as the leading suspect. Notes go through reader, judge and diagnosis like any other.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../server/faults/catalogue.ts';
import { checks } from '../../server/faults/checks.ts';
import { modelOf } from '../../server/faults/model.ts';
import { suspectsFrom } from '../../server/faults/suspects.ts';
import { weigh } from '../../server/faults/weigh.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { Sheet } from '../../server/sheet/schema.ts';
import { typingOn } from '../chat/session.ts';

/** A coach that has everything, so that every fault is possible on it. */
const raw = JSON.parse(readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8')) as {
  supply: object;
};
const text = JSON.stringify({
  ...raw,
  supply: { ...raw.supply, dryer: true, protection: '60 psi', regulator: '100 psi', unloader: true, relay: true },
});
const loaded = loadSheet(text, 'juniper-38');
const full = Sheet.parse(JSON.parse(text));
const model = modelOf(full);

/** What is typed as a figure or a remark, and has no key: by the outcome it stands for. `S` is the side. */
const figures: Readonly<Record<string, string>> = {
  'pump duty: cycles': 'pump short cycles',
  'pump-up: slow': '0 to 90 took 9 min',
  'pump past cut-out: runs on': 'pump wont shut off',
  'pump quiet: yes': 'pump wont run',
  'quiet at: above cut-in': 'pump wont run, tank 104',
  'motor volts: low': 'pump running, battery 12.6 V, 9.8 V at motor',
  'battery volts: low': 'pump running, battery 10.4 V, motor 10.1 V',
  'motor current: high': 'motor draws 31 A',
  'motor current: low': 'motor draws 9 A',
  'cut-in: low': 'cut in 60',
  'cut-in: high': 'cut in 104',
  'cut-out: low': 'cut out 92',
  'cut-out: high': 'cut out 132',
  'S toe camber: out': 'S rear forward wheel toe 0.6 deg, S rear aft wheel toe 0.5 deg',
  'string check: not parallel': 'thrust 0.5 deg',
  'string check: bent': 'frame bent',
  'second gauge: coach gauge high': 'test gauge 100, dash gauge 122',
  'second gauge: coach gauge low': 'test gauge 112, dash gauge 80',
  'bellows pressures: left light': 'bellows left 46 psi right 64 psi',
  'bellows pressures: right light': 'bellows left 64 psi right 46 psi',
  'S front height: low': 'S front 14 1/4',
  'needle: stuck': 'gauge does not move',
  'tank water: much': 'drained 2 qt of water from the tank',
  'past protection: nothing': 'protection valve: 110 in, 0 out',
  'regulated supply: low': '60 psi at left height valve, tank 110',
  'temperature: much colder': 'it was 70 F when parked, 28 F now',
  'frost trouble: yes': 'line frozen',
  'warm up: cured': 'right height valve frozen',
  'dryer look: spent': 'dryer oily and wet',
  'floor: not level': 'floor not level',
  'S valve heard: once': 'S height valve hisses once when parking then quiet',
  'S spin wheel: hops': 'S rear wheel hops',
  'S tyre wear: cupped': 'S rear tyre cupped',
  'S tyre wear: outside': 'S rear tyre worn outside',
  'S tyre pressure: far low': 'S rear tyre 60 psi',
  'shut-off puff: remarked': 'unloader puffs when the pump stops',
  'fall after pumping: falls': 'just pumped, tank drops',
  'settle again: stands': 'settled, tank holds',
  'S shock length: wrong': 'S shock wrong part',
  'discharge look: clogged': 'discharge line plugged',
  'S bump stop look: broken': 'S bump stop broken',
  'S bellows look: rubbed': 'S bellows rubbed through',
  'S bellows look: torn': 'S bellows torn at the plate',
  'S overnight: drops': 'S rear sags overnight',
};

type Typed = { note: string; gives: readonly (readonly [see: string, outcome: string])[] };
const put = (words: string, side: string): string => words.replaceAll(/\bS\b/g, side);
const options: readonly Typed[] = [
  ...checks.flatMap((c) => c.keys.map((k): Typed => ({ note: k.text, gives: k.gives }))),
  ...Object.entries(figures).flatMap(([shows, note]) =>
    (/\bS\b/.test(shows) ? ['left', 'right'] : ['']).map((side): Typed => {
      const [see = '', outcome = ''] = put(shows, side).split(': ');
      return { note: put(note, side), gives: [[see, outcome]] };
    }),
  ),
];

/** How much likelier the fault makes it than the leading explanation does; -Infinity where it hardly shows it. */
const gain = (option: Typed, index: number, leader: number | null): number =>
  option.gives.reduce((sum, [see, outcome]) => {
    const view = model.view(see);
    if (!view) return -Infinity;
    const at = outcome.split('|').map((o) => view.observable.outcomes.indexOf(o));
    const under = (c: number | null): number =>
      at.reduce((p, k) => p + (c === null ? view.healthy[k]! : view.rows[c * view.width + k]!), 0);
    return under(index) < 0.2 ? -Infinity : sum + Math.log(under(index) / under(leader));
  }, 0);

/** How the story begins where what tells it is told by its order. */
const openings: Readonly<Record<string, readonly string[]>> = {
  'left inlet check bad': ['left rear goes down only when the tank is let down'],
  'right inlet check bad': ['right rear goes down only when the tank is let down'],
  'heat settling': ['just pumped, tank drops', 'settled, tank holds'],
};
const mostNotes = 9;
/** Types what tells it from whoever leads, until it leads itself; the notes, or where it got stuck. */
const lead = async (index: number): Promise<{ notes: string[]; led: string }> => {
  const t = await typingOn('juniper-38', loaded);
  const notes: string[] = [];
  let led = '';
  const key = model.faults[index]!.key;
  for (const note of openings[key] ?? []) {
    notes.push(note);
    await t.type(note, 20);
  }
  while (notes.length <= mostNotes) {
    const w = weigh(await t.standing(), full);
    const top = suspectsFrom(w)[0];
    led = top?.fault ?? '';
    if (led === key) return { notes, led };
    const leader = top ? (model.index.get(top.fault) ?? null) : null;
    const [pick] = options
      // typed out of the blue, one normal puff is a complaint about it
      .filter((o) => !notes.includes(o.note) && (o.note !== 'unloader puffs' || key === 'unloader puff'))
      .map((o) => ({ o, by: gain(o, index, leader) }))
      .filter((x) => x.by > 0.02)
      .toSorted((a, b) => b.by - a.by);
    if (!pick) break;
    notes.push(pick.o.note);
    await t.type(pick.o.note, 5);
  }
  return { notes, led };
};

describe('by typing', () => {
  test.each(catalogue.map((f, i) => [f.key, i] as const))(
    '%s can be led to',
    async (key, i) => {
      const { notes, led } = await lead(i);
      expect(`${led} after ${notes.join(' / ')}`).toBe(`${key} after ${notes.join(' / ')}`);
    },
    30_000,
  );
});
