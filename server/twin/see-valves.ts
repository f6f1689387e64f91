/** Checks at the height valves, the exhausts, and with soapy water. */
import { freeAir, freeFlow, hoseInWater, shopGauge, soap, tape } from './instruments.ts';
import { massFlow, referenceDensity } from './gas.ts';
import { reliefConductance, reliefRamp } from './plant.ts';
import type { Scene } from './scene.ts';
import { moveOutcome } from './see-standing.ts';
import type { Arm } from './patient.ts';
import type { Sim } from './sim-shapes.ts';

type I = 0 | 1;
const both = (arm: Arm): { arm: [Arm, Arm] } => ({ arm: [arm, arm] });

/** Hose from an exhaust into water in AUTO, key off, over the first 20 minutes. */
export const exhaust = (scene: Scene, i: I): 'none' | 'puffs' | 'steady' => {
  const night = scene.night();
  let last = night.start.exhausted[i];
  let flowing = 0;
  let minutes = 0;
  let puffed = false;
  for (const m of night.every) {
    if (m.t > night.start.t + 1201) break;
    const gone = m.exhausted[i] - last;
    last = m.exhausted[i];
    minutes += 1;
    if (hoseInWater(freeAir(gone / 60), scene.rng)) flowing += 1;
    if (gone > 2e-5) puffed = true;
  }
  if (flowing >= 0.7 * minutes) return 'steady';
  return puffed || flowing > 2 ? 'puffs' : 'none';
};

export const exhaustTankZero = (scene: Scene, i: I): 'none' | 'steady' => {
  const sim = scene.settled();
  scene.auto(sim);
  sim.set(both('neutral'));
  sim.tankTo(0);
  const start = sim.look();
  sim.advance(start.t + 300);
  return hoseInWater(freeAir((sim.look().exhausted[i] - start.exhausted[i]) / 300), scene.rng) ? 'steady' : 'none';
};

export const inletCheck = (scene: Scene, i: I): 'holds' | 'sinks' | null => {
  const sim = scene.settled();
  scene.auto(sim);
  sim.tankTo(0);
  sim.set(both('fill'));
  const start = sim.look();
  if (start.bellows[i] < 0.5e5) return null;
  // The tank is held open while the check is made: what comes back is let out.
  for (let minute = 0; minute < 15; minute++) {
    sim.advance(sim.time() + 60);
    sim.tankTo(0);
  }
  return moveOutcome(scene, start, sim.look(), i) === 'drops' ? 'sinks' : 'holds';
};

/** Link off, the arm moved by hand, and what the side does in 90 s. `sign` 1 to fill, -1 to exhaust. */
export const valveMoves = (scene: Scene, i: I, sign: 1 | -1): 'yes' | 'slow' | 'no' | 'wrong way' | null => {
  const { q, rng } = scene;
  const { p } = q;
  const sim = scene.settled();
  scene.auto(sim);
  if (sim.look().tank < p.cutIn) sim.tankTo(p.cutOut);
  // A fill starts from a coach let down, an exhaust from one at height, so that there is way to go.
  if (sign === 1) sim.stand(-0.5 * p.toStops, -0.5 * p.toStops);
  else if (sim.look().rear[i] < p.rearHeight[i] - 0.5 * p.toStops) sim.stand(0, 0);
  const start = sim.look();
  const arm: [Arm, Arm] = ['neutral', 'neutral'];
  arm[i] = sign === 1 ? 'fill' : 'exhaust';
  sim.set({ arm });
  sim.advance(start.t + 90);
  const moved = sign * (tape(q, sim.look().rear[i], rng) - tape(q, start.rear[i], rng));
  const told = Math.max(0.003, 1.5 * p.tapeStep);
  if (moved < -2 * told) return 'wrong way';
  if (moved > 0.02) return 'yes';
  return moved > told ? 'slow' : 'no';
};

/** Soapy water at a coach with the tank up and the sides as high as they will stay. */
const soaped = (scene: Scene): Sim => {
  const sim = scene.settled();
  if (sim.look().tank < scene.q.p.cutIn) sim.tankTo(scene.q.p.cutOut);
  return sim;
};
const bubbles = (found: boolean): 'none' | 'bubbles' => (found ? 'bubbles' : 'none');

export const soapTank = (scene: Scene): 'none' | 'bubbles' => {
  const { q, rng } = scene;
  const tank = soaped(scene).look().tank;
  const relief = tank > q.relief ? reliefConductance * Math.min(1, (tank - q.relief) / reliefRamp) : 0;
  return bubbles(soap(freeFlow(q, q.tankLeak + relief, tank), false, rng));
};
export const soapSupply = (scene: Scene): 'none' | 'bubbles' => {
  const { q, rng } = scene;
  return bubbles(soap(freeFlow(q, q.supplyLeak, soaped(scene).look().supply), false, rng));
};
export const soapSide = (
  scene: Scene,
  i: I,
  zone: 'valve' | 'valve to panel' | 'delivery' | 'bellows',
): 'none' | 'bubbles' => {
  const { q, rng } = scene;
  const pressure = soaped(scene).look().bellows[i];
  const hole =
    zone === 'valve'
      ? q.coverLeak[i]
      : zone === 'valve to panel'
        ? q.panelLineLeak[i]
        : zone === 'delivery'
          ? q.deliveryLeak[i]
          : q.bellowsLeak[i];
  return bubbles(soap(freeFlow(q, hole, pressure), zone === 'bellows', rng));
};
export const soapPanel = (scene: Scene): 'none' | 'bubbles' | null => {
  const { q, rng } = scene;
  if (q.p.panel === null) return null;
  const [l, r] = soaped(scene).look().bellows;
  return bubbles(soap(freeFlow(q, q.panelThrough, Math.max(l, r)), false, rng));
};

/** Line and gauge at the port, m3, and how long one waits after the tank is up again, s. Estimates. */
const portVolume = 1e-4;
const portWait = 60;

/** Line vented, gauge teed in at the valve's supply port, recharged, read after a minute: a clog shows as a slow rise. */
export const regulatedSupply = (scene: Scene): 'within' | 'low' | 'none' => {
  const { q, rng } = scene;
  const { p } = q;
  const g = soaped(scene).look();
  const up = g.supply + p.atmosphere;
  const arrived =
    q.supplyOpen === Infinity
      ? g.supply
      : (massFlow(q.supplyOpen, p.criticalRatio, up, p.ambient, p.atmosphere) / referenceDensity) *
        (portWait / portVolume) *
        p.atmosphere;
  const port = shopGauge(Math.min(g.supply, arrived), rng);
  const wanted = Math.min(p.regulator ?? Infinity, g.tank);
  return port < 0.15 * wanted ? 'none' : port < 0.85 * wanted ? 'low' : 'within';
};
