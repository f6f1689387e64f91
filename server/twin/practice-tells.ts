/**
 * Which checks of observables.ts a practice deed amounts to, and with what outcome: so that the end can say what each one
 * told. Two readings make a check when nothing was changed between them and time enough went by.
 */
import type { Patient } from './patient.ts';
import type { Controls } from './controls.ts';
import type { Action } from './practice-actions.ts';
import { type Bench, type Said, name } from './practice-bench.ts';
import { makeScene } from './scene.ts';
import { pumpCalled } from './see-pump.ts';
import { type Side, sides } from './params.ts';
import { judgeGauges } from './see-heights.ts';
import { judgeFall, judgeFound, judgeMove } from './see-standing.ts';

export type Told = { see: string; outcome: string };

/** A reading that stands for later ones to be held against: what it was, when, and the state it was taken in. */
export type Mark = { what: string; value: number; t: number; state: string };

export const stateOf = (c: Controls): string =>
  [c.key || c.engine ? 'on' : 'off', c.outletClosed ? 'closed' : 'open', ...c.panel, ...c.arm].join(' ');

const least = 600;

/** `what`: "tank" or "left rear"; `sincePump` s since the pump last ran. */
export const tellsOf = (
  q: Patient,
  c: Controls,
  marks: readonly Mark[],
  reading: Omit<Mark, 'state'>,
  sincePump: number,
): Told[] => {
  const state = stateOf(c);
  const first = marks.find((m) => m.what === reading.what && m.state === state);
  if (!first || reading.t - first.t < least) return [];
  const over = reading.t - first.t;
  const keyOff = state.startsWith('off');
  const pinned = c.arm.every((a) => a === 'neutral');
  const still = c.panel.every((p) => p === 'shut') || (q.p.panel === null && pinned);
  const auto = q.p.panel === null ? c.arm.every((a) => a === 'linked') : c.panel.every((p) => p === 'auto');
  const told: Told[] = [];
  if (reading.what === 'tank') {
    // Before it has settled a fall is the pump's heat as well as a leak; the check asks for 15 minutes.
    if (!keyOff || sincePump - over < 600) return [];
    const outcome = judgeFall(q.p, first.value - reading.value, over);
    if (c.outletClosed) told.push({ see: 'tank fall outlet closed', outcome });
    else if (still) told.push({ see: 'tank fall shut', outcome });
    else if (auto) told.push({ see: 'tank fall auto', outcome });
    return told;
  }
  const side = sides.find((s): s is Side => reading.what === `${s} rear`);
  if (!side) return [];
  const i = side === 'left' ? 0 : 1;
  const change = reading.value - first.value;
  if (still) told.push({ see: `${side} height shut`, outcome: judgeMove(q.p, change) });
  else if (c.panel[i] === 'auto' && c.arm[i] === 'linked' && keyOff) {
    if (over > 5 * 3600)
      told.push({
        see: `${side} overnight`,
        outcome:
          reading.value < q.p.rearHeight[i] - q.p.toStops + 0.012
            ? 'on stops'
            : change < -Math.max(0.0127, 2 * q.p.limits.tolerance)
              ? 'drops'
              : 'holds',
      });
    else told.push({ see: `${side} height auto`, outcome: judgeMove(q.p, change) });
  }
  return told;
};

const foundTells = (q: Patient, s: Said): Told[] => {
  const value = s.si ?? 0;
  if (s.what === 'tank') {
    const b = (q.p.limits.bellows[0] + q.p.limits.bellows[1]) / 2;
    return [
      { see: 'tank as found', outcome: value > 1.12 * b ? 'up' : value < 0.35 * b ? 'zero' : 'at bellows pressure' },
    ];
  }
  const i = s.what.startsWith('left') ? 0 : 1;
  const off = value - q.p.rearHeight[i];
  const outcome = off < -q.p.toStops + 0.012 ? 'on stops' : judgeFound(q.p, off);
  return [{ see: `${name(i)} as found`, outcome }];
};

/** What stood before the deed: readings, whether the coach was still as found, when the pump last stopped. */
export type Before = { marks: readonly Mark[]; safe: { touched: boolean }; pumpStopped: number };

/** Every check that this deed amounts to. */
export const toldBy = (b: Bench, before: Before, action: Action, said: readonly Said[]): Told[] => {
  const { q, sim } = b;
  const told: Told[] = [];
  for (const s of said) {
    const bubbles = (see: string): number =>
      told.push({ see, outcome: s.words.startsWith('no bubbles') ? 'none' : 'bubbles' });
    if (s.what === 'tank' || s.what.endsWith(' rear')) {
      told.push(
        ...tellsOf(
          q,
          sim.controls,
          before.marks,
          { what: s.what, value: s.si ?? 0, t: sim.time() },
          sim.time() - before.pumpStopped,
        ),
      );
      if (!before.safe.touched && !before.marks.some((m) => m.what === s.what)) told.push(...foundTells(q, s));
    } else if (s.what === 'soap tank') bubbles('soap tank');
    else if (s.what === 'soap supply line') bubbles('soap supply');
    else if (s.what === 'soap panel') bubbles('soap panel');
    else if (s.what.startsWith('soap ')) {
      const [, side, ...zone] = s.what.split(' ');
      bubbles(`${side} soap ${zone.join(' ')}`);
    } else if (s.what.endsWith(' exhaust') && action.do === 'hose')
      told.push({
        see: `${action.side} exhaust`,
        outcome: s.words.includes('steady') ? 'steady' : s.words.includes('puffs') ? 'puffs' : 'none',
      });
    else if (s.what === 'tank by a second gauge') {
      const mark = before.marks.find((m) => m.what === 'tank' && Math.abs(m.t - sim.time()) < 900);
      if (mark)
        told.push({
          see: 'second gauge',
          outcome: judgeGauges(mark.value, s.si ?? 0, q.p.gaugeStep),
        });
    } else if (s.what === 'rises first')
      told.push({
        see: 'rises first',
        outcome: s.words.startsWith('both') ? 'both' : s.words.includes('left') ? 'left' : 'right',
      });
    else if (s.what === 'motor' && sim.controls.pump)
      told.push({ see: 'motor volts', outcome: (s.si ?? 0) < q.p.minVolts ? 'low' : 'within' });
    else if (s.what === 'battery' && sim.controls.pump)
      told.push({ see: 'battery volts', outcome: (s.si ?? 0) < 11.8 ? 'low' : 'within' });
    else if (s.what === 'hiss' && s.words.includes('intake')) told.push({ see: 'hiss after stop', outcome: 'goes on' });
    else if (s.what === 'drain')
      told.push({ see: 'tank water', outcome: s.words.startsWith('a lot') ? 'much' : 'little' });
    else if (s.what === 'cut-out' && !sim.controls.tooHot) {
      const [low, high] = q.p.limits.cutOut;
      const room = 0.6 * q.p.gaugeStep;
      const value = s.si ?? 0;
      told.push({ see: 'cut-out', outcome: value < low - room ? 'low' : value > high + room ? 'high' : 'within' });
    } else if (s.what === 'unloader')
      told.push({ see: 'hiss after stop', outcome: s.words.startsWith('no') ? 'none' : 'once' });
    else if (s.what === 'past cut-out') told.push({ see: 'pump past cut-out', outcome: 'runs on' });
    else if (s.what === 'shock') told.push({ see: `${s.words.split(' ')[0]} shock`, outcome: 'dead' });
    else if (s.what === 'panel' && !before.safe.touched && q.panelLeft !== 'auto')
      told.push({ see: 'panel left', outcome: q.panelLeft });
    else if (s.what === 'link' && !s.words.startsWith('both'))
      told.push({ see: `${s.words.split(' ')[0]} link`, outcome: s.words.includes('hangs') ? 'off' : 'moved' });
    else if (s.what === 'pump' && action.do === 'pump up')
      told.push({
        see: 'pump called',
        outcome: /ran|running/.test(s.words)
          ? 'runs'
          : /click/.test(s.words)
            ? 'clicks'
            : /hums/.test(s.words)
              ? 'hums'
              : /fuse/.test(s.words)
                ? pumpCalled(makeScene(q.p, q.ails, b.rng))
                : 'silent',
      });
  }
  if (action.do === 'arm' && (action.to === 'fill' || action.to === 'exhaust'))
    for (const s of said) {
      const side = s.what.split(' ')[0] ?? '';
      const [see, wanted, wrong] =
        action.to === 'fill' ? (['fills', 'rises', 'sinks'] as const) : (['dumps', 'sinks', 'rises'] as const);
      told.push({
        see: `${side} valve ${see}`,
        outcome: s.words.includes(wanted) ? 'yes' : s.words.includes(wrong) ? 'wrong way' : 'no',
      });
    }
  return told;
};
