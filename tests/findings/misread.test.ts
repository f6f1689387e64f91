/** Notes that once were worked out as something else than what they say: typed, read, judged. */
import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../server/faults/evidence.ts';
import { typingOn } from '../chat/session.ts';
import { juniper } from './bench.ts';

/** Keys and words of the findings after the last note; `+20 text` is typed 20 minutes after the one before. */
const findingsAfter = async (...notes: string[]): Promise<Map<string, string>> => {
  const t = await typingOn();
  let blocks: Awaited<ReturnType<typeof t.type>> = [];
  for (const note of notes) {
    const m = /^\+(\d+) (.*)$/.exec(note);
    blocks = await t.type(m ? m[2]! : note, m ? Number(m[1]) : 2);
  }
  return new Map(blocks.flatMap((b) => (b.is === 'findings' ? b.list.map((f) => [f.key, f.words] as const) : [])));
};

describe('volts from battery to motor', () => {
  it('told as one reading are the whole way, and no leg of it', async () => {
    expect((await findingsAfter('1.2 v drop from battery to motor')).get('voltage drop@battery to motor')).toMatch(
      /^1\.2 V lost/,
    );
    const legs = await findingsAfter('1.2 v drop from battery to motor, 22 amps', '0.1 V drop across the switch');
    expect(legs.get('legs@circuit')).toMatch(/^no leg measured loses more/);
  });

  it('told from so much to so much are one reading at each end', async () => {
    const found = await findingsAfter('battery to motor 12.5 to 10.4');
    expect(found.get('voltage drop@battery to motor')).toMatch(/^2\.1 V lost/);
    expect(found.get('voltage@motor')).toMatch(/^10\.4 V at the motor, too low/);
  });
});

describe('both sides in one figure', () => {
  it('is a reading of each', async () => {
    const bags = await findingsAfter('60 in both bags');
    expect([...bags.keys()]).toEqual(['pressure@left bellows', 'pressure@right bellows', 'side to side@bellows']);
    const rears = await findingsAfter('panel auto, both rears 13 1/4');
    expect([...rears.keys()]).toEqual(['height@left rear', 'height@right rear', 'side to side@rear']);
  });
});

describe('a tank let down by hand', () => {
  it('has not leaked, whatever stood in it before', async () => {
    const found = await findingsAfter('tank 110, panel auto', '+20 tank drained to 20');
    expect([...found.keys()].filter((k) => k.startsWith('tank fall'))).toEqual([]);
    expect(found.get('pressure@tank')).toMatch(/^tank at 20 psi/);
  });
  it('has leaked where it came down overnight', async () => {
    const found = await findingsAfter('tank 110, panel auto', '+600 tank drained to 20 overnight');
    expect([...found.keys()].some((k) => k.startsWith('tank fall'))).toBe(true);
  });
});

describe('the hose of an exhaust under water', () => {
  it.each([
    ['held the hose from the left exhaust under water, bubbles', 'left exhaust', 'steady'],
    ['left exhaust hose under water, no bubbles', 'left exhaust', 'none'],
  ])('%s', async (note, see, outcome) => {
    expect(await evidenceAfter(note)).toEqual([[see, outcome]]);
  });
  it('is no supply line that bubbles', async () => {
    expect(await evidenceAfter('hose under water, bubbles')).toEqual([]);
  });
});

describe('a panel moved between two readings', () => {
  it.each([
    ['tank 110', '+10 panel shut', '+20 tank 104'],
    ['panel shut, tank 110', '+10 panel auto', '+10 panel shut', '+20 tank 100'],
    ['LR 13 1/2', '+30 panel shut', '+30 LR 13'],
    ['panel shut, LR 13 1/2', '+30 panel auto', '+5 panel shut', '+30 LR 13'],
  ])('makes no fall of them: %s, %s, %s', async (...notes) => {
    const found = await findingsAfter(...notes);
    expect([...found.keys()].filter((k) => /^(?:tank fall|sink)/.test(k))).toEqual([]);
  });
  it.each([
    ['read as it was moved', 'tank 110', '+1 panel shut', '+20 tank 104'],
    ['told in answer to where it stood', 'tank 110', '+10 tank 109', 'panel shut', '+20 tank 104'],
    ['never moved', 'panel shut, tank 110', '+20 tank 104'],
  ])('%s: they are', async (_, ...notes) => {
    expect([...(await findingsAfter(...notes)).keys()]).toContain('tank fall shut@tank');
  });
});

const evidenceAfter = async (note: string): Promise<(readonly [string, string])[]> => {
  const t = await typingOn();
  await t.type(note);
  return evidenceOf(await t.standing(), juniper).map((e) => [e.see, e.outcome] as const);
};
