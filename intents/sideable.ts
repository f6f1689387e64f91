/** Parts that stand on both sides, so that a side said near them is theirs. Data only. */
import { airSide } from './words/parts.ts';

const others = [
  'fitting',
  'line',
  'supply line',
  'bump stop',
  'wheel',
  'tyre',
  'wheel bearing',
  'shock',
  'shock bushing',
  'control arm',
  'pin',
  'bushing',
  'bracket',
  'shim',
  'bolt',
  'torsion bar',
  'axle',
  'panel',
  'panel port',
  'load',
  'frame',
  'check valve',
  'solenoid',
  'regulator',
];
export const sideable: ReadonlySet<string> = new Set([...airSide, ...others]);
