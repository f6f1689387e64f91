/** V lost between battery and motor, and how much of it the copper explains. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { resistanceOf, wireResistance } from '../core/wire.ts';
import { roomTemperature } from '../core/air.ts';
import { si } from '../core/quantity.ts';
import { type Case, type Input, type Range, inputOf, latest, middle, practice, rangeOf, spread } from './case.ts';
import type { Finding } from './finding.ts';
import { limitOf, rangeInputs } from './limits.ts';
import { shown } from './show.ts';

/** Readings of one moment: under the same load. */
export const moment = 10 * 60_000;

const copper = (c: Case): { ohm: number; inputs: Input[] } | null => {
  const { feed, ground } = c.sheet.electrics ?? {};
  if (!feed || !ground) return null;
  const ohm = [feed, ground].reduce((sum, leg) => sum + wireResistance(leg.awg, si(leg.length.si), roomTemperature), 0);
  return {
    ohm,
    inputs: [
      { name: 'feed', text: `${feed.length.text} of AWG ${feed.awg}`, from: 'sheet: electrics.feed' },
      { name: 'ground', text: `${ground.length.text} of AWG ${ground.awg}`, from: 'sheet: electrics.ground' },
    ],
  };
};

export const dropFinding = (
  c: Case,
  lost: number,
  pm: number,
  range: Range | null,
  inputs: Input[],
  because: string[],
  formula: string,
  when: number,
): Finding => {
  const limit = range?.high;
  const verdict: Finding['verdict'] =
    lost < -pm ? 'cannot tell' : !limit ? 'no limit' : lost > limit.si + pm ? 'high' : 'within';
  const amps = latest(c, 'current', (p) => p === 'motor' || p === '' || p === 'pump');
  const current = amps && Math.abs(amps.at - when) <= moment ? amps : null;
  const wires = copper(c);
  const notes: string[] = [];
  const more: Input[] = [];
  if (current && middle(current.amount.v) > 0 && lost > 0) {
    const ohm = resistanceOf(si(lost), si(middle(current.amount.v)));
    more.push(inputOf('current', current));
    notes.push(`${shown(ohm, 'mohm', Math.max(0.0005, (pm / lost) * ohm)).text} in the circuit, from V / I`);
    if (wires) {
      more.push(...wires.inputs);
      const own = wires.ohm * middle(current.amount.v);
      notes.push(
        `the copper alone should lose ${shown(own, 'V', 0.005).text} at that current (20 C assumed); the other ${shown(Math.max(0, lost - own), 'V', Math.max(pm, 0.05)).text} is joints, switch, relay, fuse or ground: measure leg by leg`,
      );
    }
  }
  const text = shown(lost, 'V', pm, { difference: true }).text;
  return {
    key: 'voltage drop@battery to motor',
    verdict,
    words:
      verdict === 'cannot tell'
        ? 'more volts at the motor than at the battery: not read at the same moment'
        : `${text} lost between battery and motor${limit ? `, limit ${shown(limit.si, 'V', limit.pm).text}` : ''}`,
    amount: shown(lost, 'V', pm, { difference: true }),
    ...(range ? { limit: limitOf(range, 'V') } : {}),
    because: [...because, ...(current ? [current.id] : [])],
    why: {
      formula,
      inputs: [...inputs, ...more, ...rangeInputs(range, 'V')],
      source: range?.source ?? practice(),
      notes: ['assumed: both read with the pump running, at the same moment', ...notes],
    },
    ...(range
      ? {}
      : {
          wants: { field: 'electrics.drop', question: 'How much may be lost between battery and motor on this coach?' },
        }),
  };
};

/** V lost between two readings of the same moment; or a drop said straight. */
export const drop = (c: Case, battery: ReadingFact, end: ReadingFact): Finding => {
  const lost = middle(battery.amount.v) - middle(end.amount.v);
  const pm = Math.hypot(spread(battery.amount.v), spread(end.amount.v));
  const range = rangeOf(
    c,
    'voltage drop',
    '',
    c.sheet.electrics?.drop ? { high: c.sheet.electrics.drop } : undefined,
    'electrics.drop',
  );
  return dropFinding(
    c,
    lost,
    pm,
    range,
    [inputOf('battery', battery), inputOf('motor', end)],
    [battery.id, end.id],
    'volts at the battery less volts at the motor, same moment',
    end.at,
  );
};
