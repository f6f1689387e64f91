/** Puts ailments on a coach: each becomes an opening, a restriction or a broken part of the patient. */
import { ImpossibleInput } from '../core/quantity.ts';
import { conductanceOfHole } from './gas.ts';
import type { CoachParams } from './params.ts';
import { type Patient, soundPatient } from './patient.ts';
import { type Ail, type Kind, checkAil, kindOf } from './sizes.ts';

const mm2 = 1e-6;

/** Raises ImpossibleInput when an ailment cannot be, or cannot be on this coach. */
export const afflict = (p: CoachParams, ails: readonly Ail[]): Patient => {
  const q = soundPatient(p, ails);
  const needsPanel: readonly Kind[] = ['panel leaks through', 'panel left shut', 'panel left empty'];
  for (const ail of ails) {
    checkAil(ail);
    const { kind, side } = kindOf(ail.ailment);
    if (needsPanel.includes(kind) && p.panel === null)
      throw new ImpossibleInput(ail.ailment, ail.size, 'this coach has no panel');
    if (kind === 'protection valve stuck' && p.protection === null)
      throw new ImpossibleInput(ail.ailment, ail.size, 'this coach has no protection valve');
    worsen(q, kind, side ?? 0, ail.size);
  }
  return q;
};

const worsen = (q: Patient, kind: Kind, side: 0 | 1, size: number): void => {
  const hole = conductanceOfHole(size * mm2);
  const blind = (): void => {
    q.cannotFill = [true, true];
  };
  switch (kind) {
    case 'tank leak':
      q.tankLeak += hole;
      return;
    case 'discharge check leak':
      q.checkLeak += hole;
      return;
    case 'supply line leak':
      q.supplyLeak += hole;
      return;
    case 'supply line clogged':
      q.supplyOpen = hole;
      return blind();
    case 'protection valve stuck':
      q.protectionOpen = hole;
      return blind();
    case 'panel leaks through':
      q.panelThrough += hole;
      return;
    case 'panel left shut':
      q.panelLeft = 'shut';
      return blind();
    case 'panel left empty':
      q.panelLeft = 'empty';
      return;
    case 'pump worn':
      q.deliveryShare *= size;
      q.currentShare *= 0.95;
      return;
    case 'intake clogged':
      q.deliveryShare *= size;
      q.currentShare *= 0.8 + 0.2 * size;
      return;
    case 'unloader stuck':
      q.unloaderStuck = true;
      return;
    case 'unloader leak':
      q.unloaderLeak = Math.max(q.unloaderLeak, size);
      return;
    case 'pump seized':
      q.seized = true;
      return;
    case 'motor open':
      q.motorOpen = true;
      return;
    case 'fuse blown':
      q.fuseBlown = true;
      return;
    case 'relay dead':
      q.relay = size < 0.6 ? 'clicks' : 'silent';
      return;
    case 'relay welded':
      q.relay = 'welded';
      return;
    case 'switch burnt':
      q.contacts = 'burnt';
      return;
    case 'switch welded':
      q.contacts = 'welded';
      return;
    case 'switch low':
      q.cutIn = Math.max(1e4, q.cutIn - size);
      q.cutOut = Math.max(q.cutIn + 1e4, q.cutOut - size);
      return;
    case 'switch high':
      q.cutIn += size;
      q.cutOut += size;
      return;
    case 'switch narrow':
      q.cutIn = q.cutOut - Math.max(0.05, size) * (q.cutOut - q.cutIn);
      return;
    case 'volts low':
      q.emf -= size;
      q.batteryResistance *= 1 + 2 * size;
      return;
    case 'feed resistance':
      q.feedExtra += size;
      return;
    case 'ground resistance':
      q.groundExtra += size;
      return;
    case 'tank water':
      q.water = Math.max(q.water, Math.min(0.95, size));
      return;
    case 'relief weak':
      q.relief = q.p.relief * size;
      return;
    case 'thermal cut-out':
      q.thermalTrip = size;
      return;
    case 'gauge stuck':
      q.gauge.stuckAt = size * q.p.cutOut;
      return;
    case 'gauge high':
      q.gauge.shift += size;
      return;
    case 'gauge low':
      q.gauge.shift -= size;
      return;
    case 'floor not level': {
      // A wheel in a hollow: that front corner hangs lower, the rear floor tilts a little. Which one: the size's last digit.
      const hollow = Math.round(size * 1e5) % 2 === 0 ? 0 : 1;
      q.frontDrop[hollow] += size;
      q.floor[hollow] += size * 0.3;
      return;
    }
    case 'cold night':
      q.nightDrop = size;
      return;
    case 'just pumped':
      q.justPumped = size;
      return;
    case 'inlet seat leak':
      q.inletLeak[side] += hole;
      return;
    case 'exhaust seat leak':
      q.exhaustLeak[side] += hole;
      return;
    case 'valve to panel leak':
      q.panelLineLeak[side] += hole;
      return;
    case 'valve cover leak':
      q.coverLeak[side] += hole;
      return;
    case 'delivery line leak':
      q.deliveryLeak[side] += hole;
      return;
    case 'bellows leak':
      q.bellowsLeak[side] += hole;
      return;
    case 'inlet check bad':
      q.checkBack[side] = hole;
      return;
    case 'valve stuck':
      q.stuck[side] = true;
      q.cannotFill[side] = true;
      return;
    case 'valve feed plugged':
      q.feedOpen[side] = hole;
      q.cannotFill[side] = true;
      return;
    case 'valve reversed':
      q.reversed[side] = true;
      return;
    case 'link slipped low':
      q.slip[side] -= size;
      return;
    case 'link slipped high':
      q.slip[side] += size;
      return;
    case 'link off':
      q.linkOff[side] = size < 0.4 ? 'exhaust' : size > 0.75 ? 'fill' : 'neutral';
      if (q.linkOff[side] === 'neutral') q.cannotFill[side] = true;
      return;
    case 'delivery line clogged':
      q.deliveryOpen[side] = hole;
      q.cannotFill[side] = true;
      return;
    case 'front corner weak':
      q.frontDrop[side] += size;
      return;
    case 'load heavy':
      q.load[side] *= 1 + size;
      return;
    case 'shock dead':
      return;
    default:
      kind satisfies never;
  }
};
