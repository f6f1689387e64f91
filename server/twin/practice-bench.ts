/** The practice coach under the hand: what each instrument, and soapy water, says of it at this moment. */
import { showAmount } from '../core/amount.ts';
import type { Unit } from '../core/units.ts';
import type { Patient } from './patient.ts';
import { called } from './controls.ts';
import { running, stalled } from './electrics.ts';
import { clampMeter, freeFlow, shopGauge, soap, tankGauge, tape, voltmeter } from './instruments.ts';
import type { Side } from './params.ts';
import { reliefConductance, reliefRamp } from './plant.ts';
import type { Action, Instrument } from './practice-actions.ts';
import type { Rng } from './rng.ts';
import type { Sim } from './sim-shapes.ts';

/** One thing an instrument or a sense said. `si` with its kind where it is a number. */
export type Said = { what: string; words: string; si?: number; unit?: Unit };
export type Bench = { sim: Sim; q: Patient; rng: Rng; units: { pressure: Unit; length: Unit } };

export const pressureSaid = (b: Bench, what: string, si: number, pm: number): Said => ({
  what,
  si,
  unit: b.units.pressure,
  words: `${what} ${showAmount(si, b.units.pressure, pm)}`,
});
export const lengthSaid = (b: Bench, what: string, si: number): Said => ({
  what,
  si,
  unit: b.units.length,
  words: `${what} ${showAmount(si, b.units.length, b.q.p.tapeStep / 2)}`,
});
export const plain = (what: string, words: string): Said => ({ what, words });

export const bothOr = (side: Side | undefined): (0 | 1)[] => (side === 'left' ? [0] : side === 'right' ? [1] : [0, 1]);
export const name = (i: 0 | 1): Side => (i === 0 ? 'left' : 'right');

export const readOne = (b: Bench, instrument: Instrument, side: Side | undefined): Said[] => {
  const { sim, q, rng } = b;
  const g = sim.look();
  switch (instrument) {
    case 'tank gauge':
      return [pressureSaid(b, 'tank', tankGauge(q, g.tank, rng), q.p.gaugeStep / 4)];
    case 'second gauge':
      return [pressureSaid(b, 'tank by a second gauge', shopGauge(g.tank, rng), 2500)];
    case 'bellows gauge':
      return bothOr(side).map((i) => pressureSaid(b, `${name(i)} bellows`, shopGauge(g.bellows[i], rng), 2500));
    case 'supply gauge':
      return [pressureSaid(b, 'valve supply port', shopGauge(g.supply, rng), 2500)];
    case 'rear height':
      return bothOr(side).map((i) => lengthSaid(b, `${name(i)} rear`, tape(q, g.rear[i] + q.floor[i], rng)));
    case 'front height':
      return bothOr(side).map((i) => lengthSaid(b, `${name(i)} front`, tape(q, g.front[i], rng)));
    case 'motor volts': {
      const on = sim.controls.pump;
      const hums = called(q, sim.controls) && !on && q.seized;
      const open = called(q, sim.controls) && q.motorOpen;
      const volts = on ? running(q, g.engine, g.tank).motor : hums ? stalled(q, g.engine).motor : open ? q.emf : 0;
      return [
        {
          what: 'motor',
          si: voltmeter(volts, rng),
          unit: 'V',
          words: `${voltmeter(volts, rng).toFixed(1)} V at the motor, pump ${on ? 'running' : 'not running'}`,
        },
      ];
    }
    case 'battery volts': {
      const volts = sim.controls.pump ? running(q, g.engine, g.tank).battery : g.engine ? q.p.emfEngine : q.emf;
      const read = voltmeter(volts, rng);
      return [{ what: 'battery', si: read, unit: 'V', words: `${read.toFixed(1)} V at the battery` }];
    }
    case 'motor current': {
      const amps = sim.controls.pump ? clampMeter(running(q, g.engine, g.tank).amps, rng) : 0;
      return [{ what: 'motor current', si: amps, unit: 'A', words: `${amps.toFixed(1)} A` }];
    }
    default:
      return instrument satisfies never;
  }
};

export const soapOne = (b: Bench, action: Action & { do: 'soap' }): Said[] => {
  const { sim, q, rng } = b;
  const g = sim.look();
  const word = (where: string, flow: number, hidden = false): Said =>
    plain(`soap ${where}`, `${soap(flow, hidden, rng) ? 'bubbles' : 'no bubbles'} at the ${where}`);
  switch (action.zone) {
    case 'tank': {
      const relief = g.tank > q.relief ? reliefConductance * Math.min(1, (g.tank - q.relief) / reliefRamp) : 0;
      return [word('tank', freeFlow(q, q.tankLeak + relief, g.tank))];
    }
    case 'supply':
      return [word('supply line', freeFlow(q, q.supplyLeak, g.supply))];
    case 'panel':
      return [word('panel', freeFlow(q, q.panelThrough, Math.max(...g.bellows)))];
    default:
      return bothOr(action.side).map((i) => {
        const hole =
          action.zone === 'valve'
            ? q.coverLeak[i]
            : action.zone === 'valve to panel'
              ? q.panelLineLeak[i]
              : action.zone === 'delivery'
                ? q.deliveryLeak[i]
                : q.bellowsLeak[i];
        return word(`${name(i)} ${action.zone}`, freeFlow(q, hole, g.bellows[i]), action.zone === 'bellows');
      });
  }
};
