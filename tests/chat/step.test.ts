import { describe, expect, it } from 'vitest';
import { block, typingOn, words } from './session.ts';

const findings = async (text: string, coach?: string) =>
  block(await (await typingOn(coach)).type(text), 'findings')?.list ?? [];

describe('a reply', () => {
  it('reads back, judges with limit and source, names suspects and the next check with its reason', async () => {
    const t = await typingOn();
    await t.type('sags overnight, fine when driving');
    const blocks = await t.type('LR 13 1/4 RR 14 LF 15 3/8 RF 15 1/4');
    expect(block(blocks, 'took')?.list).toHaveLength(4);
    const low = block(blocks, 'findings')?.list.find((f) => f.key === 'height@left rear');
    expect(low).toMatchObject({
      verdict: 'low',
      limit: { source: { kind: 'sheet', words: 'sheet: heights.leftRear' } },
    });
    expect(low?.words).toContain('1/2 in low');
    expect(low?.why.formula.length).toBeGreaterThan(5);
    expect(low?.why.inputs.length).toBeGreaterThan(0);
    expect(block(blocks, 'suspects')?.list[0]?.rank).toMatch(/\d in \d|likely/);
    const check = block(blocks, 'check') ?? block(blocks, 'question');
    expect(check).toBeDefined();
  });

  it('asks for what was found before anything is touched when the complaint is about standing, until it is told', async () => {
    const t = await typingOn();
    const first = block(await t.type('sags overnight, fine when driving'), 'check');
    expect(first?.id).toBe('as found');
    expect(first?.words).toMatch(/tank/);
    expect(first?.words).toMatch(/heights/);
    await t.type('tank 96, LR 12 RR 13 3/4 LF 15 1/4 RF 15 1/4, parked 10 hours, key off');
    const next = block(await t.type('panel road'), 'check');
    expect(next?.id).not.toBe('as found');
  });

  it('says what is wrong with every number that is shown as off', async () => {
    for (const text of [
      'LR 13 1/4 RR 14',
      'cut in 70 cut out 117',
      '10.4v at motor 12.5 at batt 22 amps',
      '0 to 90 took 11 min',
      'toe left front wheel 1/8 out',
    ])
      for (const f of await findings(text)) {
        if (f.verdict !== 'low' && f.verdict !== 'high') continue;
        expect(f.limit?.source.words, `${text}: ${f.key}`).toMatch(/sheet|given|CFR|practice|common/);
        expect(f.amount?.text, `${text}: ${f.key}`).toMatch(/[a-zA-Z%]/);
      }
  });
});

describe('timed readings', () => {
  it('say first how long it stays level, then the rate with its unit', async () => {
    const t = await typingOn();
    await t.type('key off, panel road, settled');
    const list = block(await t.type('tank 112 at 9:05, 104 at 9:35, comp off'), 'findings')?.list ?? [];
    const leak = list.find((f) => /psi\/min/.test(f.words));
    expect(leak?.verdict).toBe('high');
    expect(leak?.words).toMatch(/hour/);
    // 8 psi in 30 min by hand: 0.27 psi/min
    expect(leak?.words).toContain('0.27 psi/min');
  });

  it('cannot tell from two readings a minute apart on a 2 psi gauge, and say how long to wait', async () => {
    const t = await typingOn();
    const list = block(await t.type('key off, settled, tank 112 at 9:30, 111 at 9:31'), 'findings')?.list ?? [];
    const leak = list.find((f) => f.verdict === 'cannot tell');
    expect(leak?.words ?? '').toMatch(/again|wait|min/);
  });
});

describe('dangers', () => {
  it.each([
    ['going under to look', 'on stands'],
    ['gonna crack the line loose, 110 in the tank', 'air vented'],
    ['pump wont shut off, gauge says 135', 'pump power cut'],
  ])('"%s" stops first and waits for an answer', async (text, gate) => {
    const blocks = await (await typingOn()).type(text);
    expect(blocks[0]?.is).toBe('caution');
    expect(words(blocks.filter((b) => b.is === 'caution'))).toContain(gate);
    expect(block(blocks, 'check')).toBeUndefined();
  });

  it('are asked once: an answered gate is not asked again, an unanswered one stays in front', async () => {
    const t = await typingOn();
    await t.type('going under to look');
    expect((await t.type('tank 95 psi'))[0]?.is).toBe('caution');
    const answered = await t.type('on stands, wheels chocked');
    expect(answered.find((b) => b.is === 'caution')).toBeUndefined();
    const again = await t.type('going under to look');
    expect(again.find((b) => b.is === 'caution' && b.gate)).toBeUndefined();
  });

  it('ask again for venting when a gauge has shown air since', async () => {
    const t = await typingOn();
    await t.type('air vented');
    const stop = block(await t.type('gonna crack the left bag fitting, 60 in it'), 'caution');
    expect(stop?.gate?.keys.length).toBeGreaterThan(0);
  });

  it('warned against need no stop', async () => {
    const blocks = await (await typingOn()).type('told the lad to stay out from under it');
    expect(blocks.find((b) => b.is === 'caution')).toBeUndefined();
  });
});

describe('what was not read, not sure or not believed', () => {
  it('"95" asks what it is of, with one tap for each answer', async () => {
    const t = await typingOn();
    const question = block(await t.type('95'), 'question');
    expect(question?.keys.map((k) => k.label)).toEqual(['tank', 'left bellows', 'right bellows', 'tyre']);
    const after = await t.type(question!.keys[1]!.text);
    expect((await t.standing()).facts.map((h) => h.fact.where.v)).toEqual(['left bellows']);
    expect(block(after, 'question')?.words ?? '').not.toContain('of what');
  });

  it('"950 psi in the tank" is held back, asked about and not evaluated', async () => {
    const t = await typingOn();
    const blocks = await t.type('950 psi in the tank');
    expect(block(blocks, 'findings')).toBeUndefined();
    expect(block(blocks, 'question')?.words).toContain('950');
    // the number that follows is its answer
    await t.type('95');
    expect((await t.standing()).facts.map((h) => h.fact.is === 'reading' && h.fact.amount.v.text)).toEqual(['95']);
  });

  it('"blarg the fnord" says what it could not read', async () => {
    const took = block(await (await typingOn()).type('blarg the fnord'), 'took');
    expect(took?.list[0]).toMatchObject({ kind: 'unread' });
    expect(took?.list[0]?.words).toContain('blarg');
    expect(took?.list[0]?.words).toContain('fnord');
  });

  it('HTML in a note stays text', async () => {
    const took = block(await (await typingOn()).type('<img src=x onerror=alert(1)> tank 95 psi'), 'took');
    expect(took?.list.some((t) => t.words.includes('tank 95'))).toBe(true);
  });
});

describe('corrections', () => {
  it('"make that 105" changes the last reading and judges it anew', async () => {
    const t = await typingOn();
    await t.type('tank 95 psi');
    const blocks = await t.type('make that 105');
    expect(
      (await t.standing()).facts.map((h) => h.fact.is === 'reading' && Math.round(h.fact.amount.v.si / 6894.757)),
    ).toEqual([105]);
    expect(words(block(blocks, 'findings')?.list as never)).toContain('105');
  });

  it('"no, right side" moves it, "scratch that" takes it back, "undo" takes the taking back', async () => {
    const t = await typingOn();
    await t.type('left rear 13 1/4');
    await t.type('no, right side');
    expect((await t.standing()).facts.map((h) => h.fact.where.v)).toEqual(['right rear']);
    await t.type('scratch that');
    expect((await t.standing()).facts.map((h) => h.fact.where.v)).toEqual(['left rear']);
    await t.type('undo');
    expect((await t.standing()).facts.map((h) => h.fact.where.v)).toEqual(['right rear']);
  });

  it('an undone note takes its findings with it', async () => {
    const t = await typingOn();
    await t.type('left rear 13 1/4');
    await t.type('undo');
    expect([...(await t.standing()).findings.keys()]).toEqual([]);
  });

  it('a correction with nothing before it asks which', async () => {
    expect(block(await (await typingOn()).type('make that 105'), 'question')?.words).toMatch(/which|what/i);
  });
});

describe('questions', () => {
  it.each([
    ['what does 95 mean', /psi/],
    ['what next', /./],
    ['how do i check cut in', /cut/i],
    ['whats a height valve', /height valve/i],
    ['summary', /Juniper/],
    ['why the check valve', /./],
    ['what if the left was 14', /./],
    ['what should the tank be', /112|118|85/],
  ])('"%s" is answered', async (text, answer) => {
    const t = await typingOn();
    await t.type('left rear low, 95 psi, comp runs');
    const blocks = await t.ask(text);
    expect(words(blocks)).toMatch(answer);
    expect(words(blocks)).not.toContain('I have no answer');
  });

  it('supposing changes nothing', async () => {
    const t = await typingOn();
    await t.type('LR 13 1/4 RR 14');
    const before = await t.standing();
    await t.type('what if the left was 14');
    expect((await t.standing()).facts.map((h) => h.fact.id)).toEqual(before.facts.map((h) => h.fact.id));
  });

  it('a guide goes step by step and ends', async () => {
    const t = await typingOn();
    const first = block(await t.type('how do i check cut in'), 'step');
    expect(first?.step).toBe(0);
    const second = await t.type('next step');
    expect(block(second, 'step')?.step).toBe(1);
    // its gate's question holds the guide until it is answered
    const asked = block(second, 'caution')?.gate;
    expect(asked).toBeDefined();
    expect(block(await t.type('next'), 'step')).toBeUndefined();
    expect(block(await t.type(asked!.keys.at(-1)!.text), 'step')?.step).toBe(1);
    expect(block(await t.type('back'), 'step')?.step).toBe(0);
    expect(words(await t.type('stop guide'))).toContain('Guide ended');
  });
  it('a danger typed in the middle of a guide stops it; other questions are answered all the same', async () => {
    const t = await typingOn();
    await t.type('how do i test the height valve on the bench');
    await t.type('crawling under to look');
    for (const on of ['next', 'next step', 'what next']) {
      const blocks = await t.type(on);
      expect(block(blocks, 'caution')?.gate).toBeDefined();
      expect(block(blocks, 'step') ?? block(blocks, 'check')).toBeUndefined();
    }
    expect(words(await t.type('what is a relief valve'))).toContain('teach');
    expect(words(await t.type('stop guide'))).toContain('Guide ended');
  });
});

describe('work and proof', () => {
  it('a swapped part opens a new situation, and soaping it is evidence in that one', async () => {
    const t = await typingOn();
    await t.type('bubbles at rh bag crimp, none on the left');
    const lead = (await t.standing()).suspects[0];
    expect(lead?.where).toMatch(/^right bellows/);
    const blocks = await t.type('swapped the right bag, soaped it, no leaks');
    const now = block(blocks, 'suspects')?.list.find((s) => s.fault === lead?.fault);
    expect(now?.p ?? 0).toBeLessThan(lead!.p / 2);
  });
});

describe('the other coach', () => {
  it('is answered in its own units, without a panel', async () => {
    const t = await typingOn('larkfield-11');
    const blocks = await t.type('tank 720 kpa, both sides level');
    expect(words(block(blocks, 'findings')?.list as never)).toContain('kPa');
    expect(words(blocks)).not.toContain('panel SHUT');
  });

  it('asks for a value its sheet lacks, and takes it from a note', async () => {
    const t = await typingOn('larkfield-11');
    const blocks = await t.type('0 to 620 kpa took 9 min');
    expect(block(blocks, 'findings')).toBeDefined();
  });
});
