/** Deeds at the practice coach that take time and say what happened meanwhile. */
import { showAmount } from '../core/amount.ts';
import { called } from './controls.ts';
import { ear, freeAir, freeFlow, hoseInWater, tankGauge } from './instruments.ts';
import { type Bench, type Said, name, plain } from './practice-bench.ts';

export const hoseOne = (b: Bench, i: 0 | 1): Said[] => {
  const { sim, rng } = b;
  let last = sim.look().exhausted[i];
  let minutes = 0;
  let flowing = 0;
  let puffs = false;
  sim.advance(sim.time() + 1200, 60, (g) => {
    const gone = g.exhausted[i] - last;
    last = g.exhausted[i];
    minutes += 1;
    if (hoseInWater(freeAir(gone / 60), rng)) flowing += 1;
    if (gone > 2e-5) puffs = true;
  });
  const words =
    flowing >= 0.7 * minutes
      ? 'a steady stream'
      : puffs || flowing > 2
        ? 'puffs now and then'
        : 'nothing in 20 minutes';
  return [plain(`${name(i)} exhaust`, `hose from the ${name(i)} exhaust: ${words}`)];
};

export const lookRound = (b: Bench): Said[] => {
  const { sim, q } = b;
  const said: Said[] = [];
  const c = sim.controls;
  if (q.p.panel) said.push(plain('panel', `panel: left ${c.panel[0]}, right ${c.panel[1]}`));
  for (const i of [0, 1] as const) {
    if (q.linkOff[i] !== 'linked') said.push(plain('link', `${name(i)} link hangs loose`));
    else if (q.slip[i] !== 0) said.push(plain('link', `${name(i)} link: bright marks at the clamp, it has moved`));
  }
  if (!said.some((s) => s.what === 'link')) said.push(plain('link', 'both links on, no marks'));
  for (const ail of q.ails)
    if (ail.ailment.endsWith('shock dead'))
      said.push(
        plain('shock', `${ail.ailment.split(' ')[0]} shock: wet with oil, and that corner swings on when pushed`),
      );
  return said;
};

export const listenNow = (b: Bench): Said[] => {
  const { sim, q, rng } = b;
  const g = sim.look();
  const said: Said[] = [
    plain(
      'pump',
      sim.controls.pump
        ? 'the pump runs'
        : sim.controls.fuseBlown
          ? 'the pump is silent, its fuse is blown'
          : 'the pump is silent',
    ),
  ];
  if (!sim.controls.pump && ear(freeFlow(q, q.checkLeak, g.tank), g.engine, rng))
    said.push(plain('hiss', 'a hiss at the intake and unloader that goes on'));
  const loud =
    freeFlow(q, q.tankLeak + q.supplyLeak, g.tank) +
    Math.max(
      ...([0, 1] as const).map((i) =>
        freeFlow(
          q,
          q.bellowsLeak[i] + q.deliveryLeak[i] + q.exhaustLeak[i] + q.panelLineLeak[i] + q.coverLeak[i],
          g.bellows[i],
        ),
      ),
    );
  said.push(plain('hiss', ear(loud, g.engine, rng) ? 'air hisses somewhere under the floor' : 'no other hiss heard'));
  return said;
};

export const pumpUpNow = (b: Bench): Said[] => {
  const { sim, q, rng } = b;
  const said: Said[] = [];
  sim.set({ key: true, engine: true });
  const start = sim.time();
  const from = tankGauge(q, sim.look().tank, rng);
  const was = sim.look().rear;
  let first = '';
  let past = false;
  for (let turn = 0; turn < 240; turn++) {
    sim.advance(sim.time() + 5);
    const g = sim.look();
    if (first === '') {
      const up = ([0, 1] as const).filter((i) => g.rear[i] - was[i] > 0.015);
      if (up.length > 0) first = up.length === 2 ? 'both sides rise together' : `the ${name(up[0]!)} side rises first`;
    }
    if (!sim.controls.pump && turn > 3) break;
    // Nobody watches a needle go past where it should have stopped.
    past = sim.controls.pump && tankGauge(q, g.tank, rng) > q.p.limits.cutOut[1] + 1.5 * q.p.gaugeStep;
    if (past) {
      sim.set({ key: false, engine: false });
      break;
    }
  }
  const minutes = (sim.time() - start) / 60;
  const to = tankGauge(q, sim.look().tank, rng);
  const ran = sim.changes.some((c) => c.what === 'pump on') || sim.controls.pump;
  const call = called(q, sim.controls);
  const p = b.units.pressure;
  const show = (v: number): string => showAmount(v, p, q.p.gaugeStep / 4);
  if (past)
    said.push(
      plain(
        'past cut-out',
        `past cut-out and still running at ${show(to)}: key off, ${sim.controls.pump ? 'which does not stop it; stand clear and cut the breaker' : 'it stops'}`,
      ),
    );
  else if (sim.controls.fuseBlown) said.push(plain('pump', 'the pump fuse is blown'));
  else if (sim.controls.pump)
    said.push(plain('pump', `still running after ${minutes.toFixed(0)} min, gauge from ${show(from)} to ${show(to)}`));
  else if (ran)
    said.push(
      plain(
        'pump',
        `ran ${minutes.toFixed(1)} min, gauge from ${show(from)} to ${show(to)}, ${sim.controls.tooHot ? 'then quit hot' : 'then stopped'}`,
      ),
      { ...plain('cut-out', `by the gauge at ${show(to)}`), si: to },
      plain('unloader', q.p.unloader && !q.unloaderStuck ? 'a short pssst at the stop' : 'no sound at the stop'),
    );
  else if (q.relay === 'clicks' || (q.motorOpen && q.p.relay && call)) said.push(plain('pump', 'a click, no more'));
  else if (q.seized || (call && !q.motorOpen)) said.push(plain('pump', 'it hums and does not turn'));
  else if (!call && to > 0 && sim.look().tank > q.cutIn) said.push(plain('rests', `silent, gauge at ${show(to)}`));
  else said.push(plain('pump', `silent, gauge at ${show(to)}`));
  if (first !== '') said.push(plain('rises first', first));
  return said;
};

/** What is heard when the key is on and the pump does not run. */
export const pumpWord = (b: Bench): string => {
  const { q, sim } = b;
  if (sim.controls.fuseBlown) return 'silent, its fuse is blown';
  if (!sim.controls.calls && q.contacts !== 'welded') return 'silent';
  if (q.relay === 'clicks' || (q.motorOpen && q.p.relay)) return 'a click';
  return q.seized ? 'it hums' : 'silent';
};
