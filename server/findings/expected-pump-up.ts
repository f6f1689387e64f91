/** How long a pump-up should take: as the sheet says, else by its delivery curve over the volumes joined. */
import { type Delivery, deliveryAt, pumpUpTime, ratedVolts, speedShare } from '../core/pump-up.ts';
import { type Duration, si } from '../core/quantity.ts';
import { type Case, type Input, sheetSource } from './case.ts';
import { atmosphereOf } from './atmosphere.ts';
import { higherBellows } from './bellows-pressure.ts';
import type { Source } from './finding.ts';
import { spell } from './show.ts';
import { type Held, joinedVolume } from './tank-volume.ts';

export const curveOf = (c: Case): readonly Delivery[] | null =>
  c.sheet.pump?.delivery?.map((r) => ({ at: si(r.at.si), flow: si(r.flow.si) })) ?? null;

type Expected = {
  /** As long as it may take where open height valves let the bellows fill as well; `time` where they cannot. */
  most: Duration;
  time: Duration;
  source: Source;
  inputs: Input[];
  formula: string;
  notes: string[];
};

/** What the pump-up should take; null where the sheet cannot say. */
export const expectedPumpUp = (
  c: Case,
  from: number,
  to: number,
  panel: Parameters<typeof joinedVolume>[1],
  closed = false,
  water: Held | null = null,
): Expected | null => {
  const given = c.sheet.pump?.pumpUp;
  const volume = joinedVolume(c, panel, water);
  const dry = joinedVolume(c, panel);
  if (
    given &&
    Math.abs(given.from.si - from) < 0.02 * given.to.si &&
    Math.abs(given.to.si - to) < 0.03 * given.to.si &&
    panel !== 'fill'
  ) {
    // as the sheet's time was taken, without water
    const room = volume && dry ? volume.v / dry.v : 1;
    return {
      time: si(given.time.si * room),
      most: si(given.time.si * room),
      source: sheetSource(water ? 'pump.pumpUp, supply.tank' : 'pump.pumpUp'),
      formula: water
        ? 'time on the sheet x room for air / volume without water'
        : 'time taken over the time on the sheet',
      inputs: [
        {
          name: 'should take',
          text: `${given.time.text}, ${given.from.text} to ${given.to.text}`,
          from: 'sheet: pump.pumpUp',
        },
        ...(water && volume ? volume.inputs : []),
      ],
      notes: [],
    };
  }
  const curve = curveOf(c);
  if (!curve || !volume) return null;
  const { p, input } = atmosphereOf(c);
  const time = pumpUpTime(curve, volume.v, si(from), si(to), p);
  const { volume: one, perSide } = c.sheet.springs ?? {};
  const bellows = higherBellows(c);
  const open = panel === null || panel === 'auto';
  // Bellows that start empty take their volume at their pressure, delivered at about that pressure.
  const extra =
    open && !closed && one && perSide && bellows && from < bellows.p && to > bellows.p
      ? (2 * perSide * one.si * (bellows.p + p)) / p / deliveryAt(curve, si(bellows.p))
      : 0;
  return {
    time,
    most: si(time + extra),
    source: sheetSource('pump.delivery, supply.tank'),
    formula: 't = integral of V dp / (pa Q(p)), Q from the delivery curve, at constant temperature',
    inputs: [
      ...volume.inputs,
      {
        name: 'delivery',
        text: c.sheet.pump!.delivery!.map((r) => `${r.flow.text} at ${r.at.text}`).join(', '),
        from: 'sheet: pump.delivery',
      },
      input,
    ],
    notes: [
      'bellows counted only with the panel in fill: with the height valves open they take air too and it lasts longer',
    ],
  };
};

/** What few volts at the motor do to the time, at least. */
export const lowVolts = (text: string, volts: number, time: number, from: string): string => {
  const share = speedShare(si(volts), ratedVolts);
  return `at ${text} (${from}) the motor turns ${Math.round(share * 100)} % as fast as at ${ratedVolts} V, or slower: about ${spell(time / share)} by the volts alone (common practice, no source)`;
};
