/** Draws a case to practise on: a coach, what ails it by level, and what its owner says of it. Pure by seed. */
import type { Sheet } from '../sheet/schema.ts';
import type { Ailment } from './ailments.ts';
import { makeCoach } from './coach.ts';
import { likelihood } from './evidence.ts';
import { observeIn } from './observe.ts';
import type { CoachParams } from './params.ts';
import { type Rng, makeRng, seedOf } from './rng.ts';
import { type Scene, makeScene } from './scene.ts';
import { type Ail, kindOf, sizes } from './sizes.ts';

export const levels = [1, 2, 3, 4, 5] as const;
/** 1: one clear fault. 2: one, of any size. 3: one, small, beside something innocent. 4: two, linked. 5: two, and a lying gauge. */
export type Level = (typeof levels)[number];

const both = (name: string): Ailment[] => [`left ${name}` as Ailment, `right ${name}` as Ailment];
const clear: readonly Ailment[] = [
  'tank leak',
  'supply line leak',
  'fuse blown',
  'panel left shut',
  'pump worn',
  'switch burnt',
  ...['bellows leak', 'delivery line leak', 'exhaust seat leak', 'link off', 'valve stuck', 'link slipped low'].flatMap(
    both,
  ),
];
const wide: readonly Ailment[] = [
  ...clear,
  'discharge check leak',
  'intake clogged',
  'unloader stuck',
  'relay dead',
  'switch welded',
  'switch low',
  'feed resistance',
  'ground resistance',
  'volts low',
  'motor open',
  'supply line clogged',
  'panel leaks through',
  ...[
    'inlet seat leak',
    'valve to panel leak',
    'valve cover leak',
    'valve feed plugged',
    'delivery line clogged',
  ].flatMap(both),
  ...['valve reversed', 'link slipped high'].flatMap(both),
];
/** Not faults: they look like one. */
export const innocent: readonly Ailment[] = ['cold night', 'floor not level', 'just pumped', 'tank water'];
const lying: readonly Ailment[] = ['gauge high', 'gauge low', 'gauge stuck'];
/** What kills what, or dies beside it: estimates, common practice, no published source. */
export const chains: readonly (readonly [Ailment, Ailment])[] = [
  ['tank leak', 'pump worn'],
  ['supply line leak', 'pump worn'],
  ['left bellows leak', 'pump worn'],
  ['right bellows leak', 'pump worn'],
  ['pump worn', 'switch burnt'],
  ['feed resistance', 'switch burnt'],
  ['discharge check leak', 'pump worn'],
  ['left bellows leak', 'right bellows leak'],
  ['left exhaust seat leak', 'right exhaust seat leak'],
  ['left inlet seat leak', 'right exhaust seat leak'],
  ['left shock dead', 'left bellows leak'],
  ['right shock dead', 'right bellows leak'],
  ['tank leak', 'left inlet check bad'],
  ['tank leak', 'right inlet check bad'],
  ['left link slipped high', 'left bellows leak'],
];

/** `from`..`to`: shares of the spread of sizes, where 1 is worst. A clog is worse the less it leaves open. */
const sized = (ailment: Ailment, rng: Rng, from: number, to: number): Ail => {
  const { low, high, law, of } = sizes[kindOf(ailment).kind];
  const worseSmall = /left open|delivery left|left$|at which it opens/.test(of);
  const share = rng.uniform(from, to);
  const at = worseSmall ? 1 - share : share;
  return { ailment, size: law === 'log' ? low * (high / low) ** at : low + (high - low) * at };
};

const drawAils = (level: Level, rng: Rng, fits: (a: Ailment) => boolean): Ail[] => {
  const pick = (list: readonly Ailment[]): Ailment => rng.pick(list.filter(fits));
  switch (level) {
    case 1:
      return [sized(pick(clear), rng, 0.6, 0.9)];
    case 2:
      return [sized(pick(wide), rng, 0.35, 0.95)];
    case 3:
      return [sized(pick(wide), rng, 0.15, 0.6), sized(pick(innocent), rng, 0.4, 0.9)];
    case 4:
    case 5: {
      const pair = rng.pick(chains.filter((c) => c.every((a) => fits(a))));
      const two = pair.map((a) => sized(a, rng, 0.35, 0.85));
      return level === 4 ? two : [...two, sized(pick(lying), rng, 0.3, 0.95)];
    }
    default:
      return level satisfies never;
  }
};

type Told = { see: string; outcome: string };
/** What an owner notices without tools, with the words for it. `{}` stands for the side. */
const noticed: readonly { see: string; outcome: string; words: readonly string[] }[] = [
  {
    see: 'as found',
    outcome: 'on stops',
    words: ['the {} back corner is right down in the morning', 'left it overnight and the {} rear was on the rubber'],
  },
  {
    see: 'as found',
    outcome: 'low',
    words: ['it sags a little at the {} rear when it stands', 'the {} back end is a bit down of a morning'],
  },
  {
    see: 'as found',
    outcome: 'far low',
    words: ['it sags at the {} rear when it stands', 'the {} back end is well down of a morning'],
  },
  {
    see: 'driving',
    outcome: 'low',
    words: ['rides a bit low at the {} rear', 'the {} back sits a little low on the road'],
  },
  {
    see: 'driving',
    outcome: 'far low',
    words: ['rides low at the {} rear', 'the {} back stays down even on the road'],
  },
  {
    see: 'driving',
    outcome: 'high',
    words: ['sits up too high at the {} rear', 'the {} back is way up since the last shop had it'],
  },
];
const noticedOnce: readonly { see: string; outcome: string; words: readonly string[] }[] = [
  {
    see: 'tank as found',
    outcome: 'zero',
    words: ['air gauge is at nothing in the morning', 'no air left after a night'],
  },
  {
    see: 'tank as found',
    outcome: 'at bellows pressure',
    words: ['the air gauge has dropped a lot by morning', 'loses most of its air overnight'],
  },
  { see: 'pump called', outcome: 'silent', words: ['the pump never comes on any more', "can't hear the pump"] },
  { see: 'pump called', outcome: 'clicks', words: ['just a click where the pump used to run'] },
  { see: 'pump called', outcome: 'hums', words: ['the pump only hums'] },
  { see: 'pump called', outcome: 'blows fuse', words: ['it blows the pump fuse every time'] },
  { see: 'pump restart', outcome: 'blows fuse', words: ['pump fuse blows now and then, fine from empty'] },
  { see: 'pump duty', outcome: 'constant', words: ['the pump never stops running'] },
  { see: 'pump duty', outcome: 'cycles', words: ['pump keeps coming on when we are parked with the key on'] },
  { see: 'pump-up', outcome: 'slow', words: ['takes forever to air up'] },
  { see: 'pump-up', outcome: 'never', words: ['it never gets up to pressure'] },
  { see: 'pump past cut-out', outcome: 'runs on', words: ['the gauge goes way past where it used to stop'] },
];

export type Case = {
  p: CoachParams;
  ails: readonly Ail[];
  /** In an owner's words. */
  complaint: string;
  /** The same as checks and outcomes: what the complaint already tells. */
  told: readonly Told[];
  /** Of the scene the coach stands in: its history and its night. */
  sceneSeed: number;
};

/** How much a noticed thing comes from what ails the coach, in bits over a sound one. */
const because = (told: Told, ails: readonly Ail[], hasPanel: boolean): number => {
  const of = (cause: Ailment | 'none'): number => likelihood(told.see, told.outcome, cause, hasPanel);
  return Math.max(...ails.map((a) => Math.log2(of(a.ailment) / of('none'))));
};

const complain = (scene: Scene, ails: readonly Ail[], rng: Rng): { words: string; told: Told[] } | null => {
  const found: { words: string; told: Told }[] = [];
  for (const side of ['left', 'right'] as const)
    for (const row of noticed)
      if (observeIn(scene, `${side} ${row.see}`) === row.outcome)
        found.push({
          words: rng.pick(row.words).replace('{}', side),
          told: { see: `${side} ${row.see}`, outcome: row.outcome },
        });
  for (const row of noticedOnce)
    if (observeIn(scene, row.see) === row.outcome)
      found.push({ words: rng.pick(row.words), told: { see: row.see, outcome: row.outcome } });
  // Owners tell of much that is not it; here they start with what is.
  const hasPanel = scene.q.p.panel !== null;
  const telling = found
    .map((f) => ({ ...f, bits: because(f.told, ails, hasPanel) }))
    .filter((f) => f.bits > 1)
    .toSorted((a, b) => b.bits - a.bits);
  const first = telling[0];
  if (!first) return null;
  const second = telling.length > 1 ? rng.pick(telling.slice(1, 3)) : null;
  const kept = second ? [first, second] : [first];
  const words = kept.map((k) => k.words).join(', and ');
  return { words: `${words[0]!.toUpperCase()}${words.slice(1)}.`, told: kept.map((k) => k.told) };
};

/** The first draw of this seed whose owner would notice something. */
export const drawCase = (seed: number, level: Level, sheet: Sheet): Case => {
  for (let n = 0; n < 200; n++) {
    const rng = makeRng(seedOf('practice', seed, level, n));
    const p = makeCoach(sheet, { seed: seedOf('practice coach', seed, n) });
    const fits = (a: Ailment): boolean => p.panel !== null || !a.startsWith('panel');
    const ails = drawAils(level, rng, fits);
    const sceneSeed = seedOf('scene', seed, n);
    const heard = complain(makeScene(p, ails, makeRng(sceneSeed)), ails, rng);
    if (heard) return { p, ails, complaint: heard.words, told: heard.told, sceneSeed };
  }
  throw new Error(`no owner would complain at level ${level} with seed ${seed}`);
};
