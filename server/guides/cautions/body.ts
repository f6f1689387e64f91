/** Cautions for a coach that can drop, roll or spring: weight, stands, bars, brakes. */
import type { HazardName } from '../../../intents/shapes.ts';
import type { Caution } from '../cautions.ts';
import { onStands, onStandsOrPit, peopleClear, waitsFor, wheelsChocked } from './gate.ts';

export const bodyCautions: readonly (Caution & { id: HazardName })[] = [
  {
    id: 'under unsupported',
    words: 'Stop. Air does not hold it up: is the frame on rated stands?',
    more: "Come out from under and stay out. With bellows empty there is no room for a person. Frame on rated stands on firm level ground, where the maker's manual puts them, wheels chocked; or over a pit or ramps, for looking only. Local rules count too.",
    gate: onStandsOrPit,
  },
  {
    id: 'jack only',
    words: 'Stop. A jack lifts, it does not hold: is the frame on rated stands?',
    more: "Jacks sink, tip and let go, levelling jacks too. Lift by the maker's method, set rated stands under parts that do not move, let the weight down on them, and only then go near. Keep to the maker's manual and local rules.",
    gate: onStands,
  },
  {
    id: 'soft ground',
    words: 'Stop. Stands sink and blocks split: is the coach on firm, level ground?',
    more: "No soil, grass, gravel, bricks or stacked wood. Move it, if the maker allows it to be moved, to concrete or the like, and use rated stands or rated cribbing. If something has begun to lean, keep everyone out. The maker's manual and local rules come first.",
    gate: waitsFor('floor level', 'floor level', 'floor not level'),
  },
  {
    id: 'link pulled under',
    words: 'Stop. A link moved by hand drops the coach on whoever moves it: is everybody clear?',
    more: "Links and arms are moved from outside, or with the frame on rated stands, and with nobody under or between body and wheel. The valve acts some seconds later, so stay clear until it has finished. The maker's manual says how to reach it.",
    gate: peopleClear,
  },
  {
    id: 'torsion bar under load',
    words: 'Stop. The adjuster holds a loaded spring: is the frame on rated stands and the load off the bar?',
    more: "Take the load off by the maker's method before a bolt is turned; never back an adjuster off by hand under load, never stand in line with it. Without the maker's manual and its tool this is not begun.",
    gate: onStands,
  },
  {
    id: 'cords driven',
    words: 'Stop. Cord showing or torn means out of service: is everybody clear of it?',
    more: "Not inflated, not patched, not driven. It can burst without warning. Keep clear, let the air out from a distance with the frame on rated stands, replace it. Off the road it is towed by the maker's method.",
    gate: peopleClear,
  },
  {
    id: 'drive disabled',
    words: 'Stop. It does not move like this: are the wheels chocked?',
    more: "A coach on its stops, on an empty bellows or with a line open is not driven, at any speed or distance. Keep people clear of it and of the traffic, and have it towed by the maker's method under local rules.",
    gate: wheelsChocked,
  },
  {
    id: 'brakes opened',
    words: 'Stop. Brake lines, hubs and arms are outside my word: are the wheels chocked?',
    more: "Brake chambers hold springs that kill, and a coach with a line open may roll. The maker's manual, its torque figures, and a licensed technician where the law asks for one. Take no figure for it from here.",
    gate: wheelsChocked,
  },
];
