/** Practice: cases, deeds, answers, hazards and the end. */
import { describe, expect, test } from 'vitest';
import { ailments } from '../../server/twin/ailments.ts';
import { observeIn } from '../../server/twin/observe.ts';
import { type Practice, act, replayPractice, startPractice } from '../../server/twin/practice.ts';
import type { Action } from '../../server/twin/practice-actions.ts';
import { type Level, drawCase, innocent, levels } from '../../server/twin/practice-case.ts';
import { reveal } from '../../server/twin/reveal.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { makeScene } from '../../server/twin/scene.ts';
import { psi, sheetOf, tight } from './coaches.ts';

const juniper = sheetOf('juniper-38');
const larkfield = sheetOf('larkfield-11');

const perform = (
  start: Practice,
  actions: readonly Action[],
): { state: Practice; words: string[]; notes: string[] } => {
  let state = start;
  const words: string[] = [];
  const notes: string[] = [];
  for (const action of actions) {
    const answer = act(state, action);
    state = answer.state;
    words.push(...answer.said.map((s) => s.words));
    notes.push(...answer.notes);
  }
  return { state, words, notes };
};

/** A practice on a coach of our choosing, so that its answers are known. */
const known = (ails: Practice['case']['ails'], panel = true): Practice => {
  const p = tight(panel ? {} : { panel: null });
  const scene = makeScene(p, ails, makeRng(1));
  return {
    ...startPractice(1, 1, juniper),
    case: { p, ails, complaint: '', told: [], sceneSeed: 1 },
    saved: scene.morning().save(),
  };
};
const support: Action[] = [
  { do: 'make safe', how: 'chocks' },
  { do: 'make safe', how: 'support' },
  { do: 'make safe', how: 'eyes' },
];

describe('cases', () => {
  const drawn = levels.flatMap((level) =>
    [juniper, larkfield].flatMap((sheet) =>
      Array.from({ length: 8 }, (_, seed) => ({ level, c: drawCase(seed, level, sheet) })),
    ),
  );
  test('the same seed gives the same case; seeds give many', () => {
    expect(drawCase(3, 4, juniper)).toEqual(drawCase(3, 4, juniper));
    expect(new Set(drawn.map(({ c }) => c.ails.map((a) => a.ailment).join())).size).toBeGreaterThan(30);
  });
  test.each(levels)('level %d holds what it says', (level: Level) => {
    for (const { c } of drawn.filter((d) => d.level === level)) {
      const gauges = c.ails.filter((a) => a.ailment.startsWith('gauge')).length;
      expect(c.ails.length - gauges - c.ails.filter((a) => innocent.includes(a.ailment)).length).toBe(
        level >= 4 ? 2 : 1,
      );
      expect(gauges).toBe(level === 5 ? 1 : 0);
      expect(c.ails.some((a) => innocent.includes(a.ailment))).toBe(level === 3);
    }
  });
  test('the complaint is true of that coach and does not name the fault', () => {
    for (const { c } of drawn) {
      const scene = makeScene(c.p, c.ails, makeRng(c.sceneSeed));
      expect(c.told.length).toBeGreaterThan(0);
      for (const t of c.told.filter((x) => /as found|pump called/.test(x.see))) {
        const again = observeIn(scene, t.see);
        // A tape or an eye may fall either side of a limit when it is read again; never further.
        expect([again === t.outcome || /low|level/.test(`${again}`), t.see]).toEqual([true, t.see]);
      }
      for (const a of c.ails) expect(c.complaint.toLowerCase()).not.toContain(a.ailment);
      expect(c.complaint).toMatch(/^[A-Z].*\.$/);
    }
  });
});

test('deeds are pure: the same deeds give the same answers, and the state handed in is not touched', () => {
  const start = startPractice(5, 2, juniper);
  const before = structuredClone(start);
  const deeds: Action[] = [
    { do: 'read', with: 'tank gauge' },
    { do: 'pump up' },
    { do: 'wait', seconds: 900 },
    { do: 'read', with: 'rear height' },
  ];
  const one = perform(start, deeds);
  expect(perform(startPractice(5, 2, juniper), deeds).words).toEqual(one.words);
  expect(start).toEqual(before);
  expect(replayPractice(5, 2, juniper, deeds)).toEqual(one.state);
});

describe('a left bellows leak, checked as a good tech would', () => {
  const start = known([{ ailment: 'left bellows leak', size: 0.01 }]);
  const { state, words } = perform(start, [
    { do: 'read', with: 'tank gauge' },
    { do: 'read', with: 'rear height' },
    { do: 'pump up' },
    { do: 'key', on: false },
    { do: 'wait', seconds: 900 },
    { do: 'panel', position: 'shut' },
    { do: 'read', with: 'tank gauge' },
    { do: 'read', with: 'rear height' },
    { do: 'wait', seconds: 1800 },
    { do: 'read', with: 'tank gauge' },
    { do: 'read', with: 'rear height' },
    ...support,
    { do: 'soap', zone: 'bellows', side: 'right' },
    { do: 'soap', zone: 'bellows', side: 'left' },
  ]);
  const told = state.done.flatMap((d) => d.told);
  test('as found it is down on that side', () => {
    expect(told.find((t) => t.see === 'left as found')?.outcome).toBe('on stops');
    expect(told.find((t) => t.see === 'right as found')?.outcome).not.toBe('on stops');
  });
  test('SHUT: the tank holds, the left sinks, the right hardly', () => {
    expect(told).toContainEqual({ see: 'tank fall shut', outcome: 'none' });
    expect(told).toContainEqual({ see: 'left height shut', outcome: 'drops' });
    // The right only leans after it, by a quarter at most.
    const fall = (side: string): number => {
      const read = state.done.flatMap((d) => d.said).filter((s) => s.what === `${side} rear`);
      return read.at(-2)!.si! - read.at(-1)!.si!;
    };
    expect(fall('right')).toBeLessThan(0.35 * fall('left'));
  });
  test('bubbles left, none right', () => {
    expect(told).toContainEqual({ see: 'left soap bellows', outcome: 'bubbles' });
    expect(told).toContainEqual({ see: 'right soap bellows', outcome: 'none' });
  });
  test('numbers carry their unit in the coach’s own', () => {
    expect(words.find((w) => w.startsWith('tank'))).toMatch(/^tank \d+ psi$/);
    expect(words.find((w) => w.startsWith('left rear'))).toMatch(/^left rear \d+( \d\/\d+)? in$/);
  });
  test('time ran at the learner’s word, hands counted apart', () => {
    expect(state.minutes.elapsed).toBeGreaterThan(45);
    expect(state.minutes.hands).toBeLessThan(state.minutes.elapsed - 40);
    expect(state.minutes.hazards).toBe(0);
  });
  test('the end says what it was, what told most, and what SHUT could not tell', () => {
    const end = reveal({ ...state, case: { ...state.case, told: [{ see: 'left as found', outcome: 'on stops' }] } });
    expect(end.faults[0]!.ailment).toBe('left bellows leak');
    const best = end.lessons.toSorted((a, b) => b.bits - a.bits)[0]!;
    expect(best.see).toBe('left soap bellows');
    const shut = end.lessons.find((l) => l.see === 'left height shut')!;
    expect(shut.bits).toBeGreaterThan(1);
    expect(shut.couldNotTell).toContain('left delivery line leak');
    expect(shut.couldNotTell).not.toContain('left exhaust seat leak');
    expect(end.best.found).toBe(true);
    expect(end.best.minutes).toBeGreaterThan(0);
    expect(end.total).toBeCloseTo(state.minutes.elapsed, 6);
  });
});

test('a lying gauge is told from a second one', () => {
  const { words, state } = perform(known([{ ailment: 'gauge high', size: 12 * psi }]), [
    { do: 'read', with: 'tank gauge' },
    { do: 'read', with: 'second gauge' },
  ]);
  const [own, second] = words.map((w) => Number(/([\d.]+) psi/.exec(w)![1]));
  expect(own! - second!).toBeGreaterThan(8);
  expect(state.done.flatMap((d) => d.told)).toContainEqual(
    expect.objectContaining({ see: 'second gauge', outcome: expect.stringMatching(/^coach gauge/) as string }),
  );
});

test('a pump that rests above cut-in says nothing against it', () => {
  const { words, state } = perform(known([]), [{ do: 'pump up' }]);
  expect(words[0]).toMatch(/^silent, gauge at/);
  expect(state.done[0]!.told).toEqual([]);
});

test('what is in sight is seen by looking, and the best order begins there', () => {
  for (const [ailment, words] of [
    ['left link off', 'left link hangs loose'],
    ['right link slipped low', 'right link: bright marks'],
    ['left shock dead', 'left shock: wet with oil'],
    ['panel left shut', 'panel: left shut, right shut'],
  ] as const) {
    const { state, words: said } = perform(known([{ ailment, size: 0.03 }]), [{ do: 'look' }]);
    expect(said.join('; ')).toContain(words);
    const end = reveal(state);
    expect(end.lessons[0]).toMatchObject({ about: ailment, couldNotTell: [] });
    expect(end.best).toMatchObject({ minutes: 5, found: true, steps: [{ see: 'look round', outcome: ailment }] });
  }
});

test('a pump that runs past cut-out is stopped by the key, unless its relay is welded', () => {
  const drained: Action[] = [...support, { do: 'drain' }, { do: 'pump up' }];
  expect(perform(known([{ ailment: 'switch welded', size: 0 }]), drained).words.join(' ')).toMatch(
    /past cut-out and still running at \d+ psi: key off, it stops/,
  );
  const welded = perform(known([{ ailment: 'relay welded', size: 0 }]), drained);
  expect(welded.words.join(' ')).toMatch(/does not stop it; stand clear and cut the breaker/);
  expect(welded.state.done.flatMap((d) => d.told)).toContainEqual({ see: 'pump past cut-out', outcome: 'runs on' });
});

describe('hazards cost and are explained', () => {
  const start = known([{ ailment: 'left bellows leak', size: 0.01 }]);
  test('under a coach held by air alone', () => {
    const answer = act(start, { do: 'soap', zone: 'bellows', side: 'left' });
    expect(answer.risks.map((r) => r.hazard)).toContain('under unsupported');
    expect(answer.risks[0]!.why).toMatch(/maker.s manual/);
    expect(answer.minutes.hazards).toBeGreaterThan(30);
    expect(answer.state.minutes.hazards).toBe(answer.minutes.hazards);
  });
  test('an arm moved by hand, worse', () => {
    expect(act(start, { do: 'arm', to: 'exhaust', side: 'left' }).risks.map((r) => r.hazard)).toEqual([
      'under unsupported',
      'link pulled under',
    ]);
  });
  test('supported but not chocked', () => {
    const { state } = perform(start, [support[1]!]);
    expect(act(state, { do: 'hose', side: 'left' }).risks.map((r) => r.hazard)).toEqual(['wheels not chocked']);
  });
  test('none when it was made safe', () => {
    const { state } = perform(start, support);
    for (const action of [
      { do: 'soap', zone: 'bellows' },
      { do: 'arm', to: 'fill', side: 'left' },
      { do: 'drain' },
    ] as const)
      expect(act(state, action).risks).toEqual([]);
  });
  test('bare eyes at the drain of a charged tank', () => {
    const { state } = perform(start, [{ do: 'pump up' }]);
    expect(act(state, { do: 'drain' }).risks.map((r) => r.hazard)).toEqual(['eyes bare']);
  });
});

test('as found is warned of once it is gone, not when it was read', () => {
  const start = known([]);
  expect(act(start, { do: 'pump up' }).notes[0]).toMatch(/As found is gone now: tank and heights/);
  const { state } = perform(start, [
    { do: 'read', with: 'tank gauge' },
    { do: 'read', with: 'rear height' },
  ]);
  expect(act(state, { do: 'pump up' }).notes).toEqual([]);
});

test('a coach without a panel says so, and holds still by its arms', () => {
  const start = known([{ ailment: 'left bellows leak', size: 0.02 }], false);
  expect(act(start, { do: 'panel', position: 'shut' }).notes.join(' ')).toMatch(/no panel/);
  const { state } = perform(start, [
    ...support,
    { do: 'pump up' },
    { do: 'key', on: false },
    { do: 'arm', to: 'neutral' },
    { do: 'read', with: 'rear height' },
    { do: 'wait', seconds: 1800 },
    { do: 'read', with: 'rear height' },
  ]);
  expect(state.done.flatMap((d) => d.told)).toContainEqual({ see: 'left height shut', outcome: 'drops' });
});

test('a wait that is none is not made', () => {
  const start = known([]);
  for (const seconds of [0, -5, Number.NaN, 1e9]) {
    const answer = act(start, { do: 'wait', seconds });
    expect(answer.notes[0]).toMatch(/from a moment to two days/);
    expect(answer.minutes.elapsed).toBe(0);
  }
});

test('every kind of deed answers at every kind of fault', () => {
  const deeds: Action[] = [
    { do: 'look' },
    { do: 'listen' },
    { do: 'read', with: 'second gauge' },
    { do: 'read', with: 'bellows gauge' },
    { do: 'read', with: 'supply gauge' },
    { do: 'read', with: 'front height' },
    { do: 'key', on: true },
    { do: 'read', with: 'motor volts' },
    { do: 'read', with: 'battery volts' },
    { do: 'read', with: 'motor current' },
    { do: 'outlet', closed: true },
    { do: 'outlet', closed: false },
    { do: 'engine', on: true },
    { do: 'drive' },
    { do: 'hose', side: 'right' },
    { do: 'soap', zone: 'valve' },
    { do: 'soap', zone: 'panel' },
    { do: 'drain' },
    { do: 'pump up' },
    { do: 'arm', to: 'fill' },
    { do: 'arm', to: 'linked' },
    { do: 'panel', position: 'empty', side: 'left' },
  ];
  for (const ailment of ailments.filter((a) => !a.startsWith('right') && a !== 'protection valve stuck')) {
    const { state, words } = perform(known([{ ailment, size: 0.3 }]), deeds);
    expect(words.length).toBeGreaterThan(15);
    expect(words.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
    expect(Number.isFinite(state.minutes.elapsed)).toBe(true);
  }
});

test('the best sequence finds the fault in most cases of every level, and never for nothing', () => {
  for (const level of levels) {
    const ends = Array.from({ length: 4 }, (_, seed) =>
      reveal(startPractice(seed + 20, level, seed % 2 ? juniper : larkfield)),
    );
    expect(ends.filter((e) => e.best.found).length).toBeGreaterThanOrEqual(3);
    for (const e of ends) expect(e.best.minutes).toBeLessThan(600);
  }
});

test('a coach drawn for practice is the sheet’s own', () => {
  const { p } = drawCase(2, 2, juniper);
  expect(p.panel).not.toBeNull();
  expect(p.heightPerArm).toBe(juniper.valves!.heightPerArm);
  expect(drawCase(2, 2, larkfield).p.panel).toBeNull();
});
