/** Whether what was read can be of the part it was read of; a pump's sign finds its way home. */
import { takePlace } from './place.ts';
import type { Fact, Part } from './shapes.ts';
import {
  around,
  blows,
  clicks,
  drained,
  drives,
  filled,
  holdsAir,
  levels,
  ofAir,
  ofCoach,
  ofPressure,
  ofPump,
  ofRide,
  ofRubber,
  ofStance,
  ofThing,
  ofThings,
  ofTread,
  ofVolume,
  pumpOnly,
  pressured,
  running,
  runsWarm,
  stands,
  turned,
  unfilled,
  warmed,
  wired,
} from './words/fits.ts';

/** Pa, gauge; above it a pressure whose place was not said is the tank's (common practice, no source). */
const mostCarried = 690_000;

/** True, false, or the part it must be of instead. */
export const fits = (f: Fact): boolean | Part | '' => {
  // so many of something that has no name here
  if (f.is === 'reading' && f.what.v === 'count') return false;
  const part = takePlace(f.where.v)?.part;
  if (f.is === 'work' && f.what.v === 'soaped')
    return part === undefined || !(wired.has(part) || around.has(part) || running.has(part) || part === 'wheel');
  // a link that is tied is no line led another way
  if (f.is === 'work' && f.what.v === 'rerouted' && (part === 'link' || part === 'arm')) return false;
  // "shut it off": the pump, by its switch
  if (
    f.is === 'work' &&
    /^(?:closed|opened)$/.test(f.what.v) &&
    part !== undefined &&
    drives.has(part) &&
    part !== 'unloader' &&
    part !== 'tank'
  )
    return false;
  if (f.is === 'work' && f.what.v === 'pumped up' && part !== undefined && !filled.has(part)) return 'coach';
  // "LR toe out, havent pulled the sheet": nobody takes a corner off
  if (f.is === 'work' && ofThing.has(f.what.v) && part === undefined && f.where.v !== '' && f.where.from !== 'said')
    return false;
  if (f.is === 'work') return part !== 'coach' || ofCoach.has(f.what.v);
  if (f.is === 'reading' && f.what.v === 'water drained')
    return part !== undefined && drained.has(part) ? true : 'tank';
  // "set cut-out 118, 1/4 turn in": of the screw, whatever was spoken of before
  if (f.is === 'reading' && f.what.v === 'turns' && f.where.from !== 'said' && !(part && turned.has(part))) return '';
  if (part === undefined || part === 'coach') {
    if (f.is !== 'sign' || f.where.v === '') return true;
    if (ofThings.has(f.what.v)) return false;
    // "raises slow on the left": a side does, and no pump
    if (f.what.v === 'slow build' && f.where.from === 'said' && part === undefined) return false;
    if (part === undefined)
      return ofPump.has(f.what.v) || (f.what.v === 'clicks' && f.where.from !== 'said') ? 'pump' : true;
  }
  if (f.is === 'reading') {
    // no bellows carries as much as a tank holds
    if (f.what.v === 'pressure' && part === 'bellows' && f.where.from !== 'said' && f.amount.v.si > mostCarried)
      return 'tank';
    if (f.what.v === 'temperature' && f.where.from !== 'said' && !runsWarm.has(part)) return 'ambient';
    if (f.what.v === 'temperature') return warmed.has(part);
    // "bad earth, cleaned, 12.1 now": what comes through it, and no drop in it
    if (f.what.v === 'voltage' && part === 'ground' && f.where.from !== 'said' && f.amount.v.si > 5) return 'motor';
    // "turned the link and got 1/4 inch": no arm is so short
    if (f.what.v === 'arm length' && f.amount.v.si < 0.05) return false;
    // "24v system": no volts of the tank
    if (f.what.v === 'voltage' && ['tank', 'bellows', 'tyre', 'coach'].includes(part)) return false;
    if (ofPressure.has(f.what.v) && f.where.from !== 'said' && !holdsAir.has(part)) return 'tank';
    if (!ofPressure.has(f.what.v) || pressured.has(part)) return true;
    return f.where.from !== 'said' || wired.has(part) ? 'tank' : false;
  }
  if (f.is !== 'sign') return true;
  const sign = f.what.v;
  if (sign === 'gauges agree' || sign === 'gauges disagree') return part === 'gauge' ? true : 'gauge';
  if (ofVolume.has(sign) && unfilled.has(part)) return false;
  if (sign === 'fills' && part === 'gauge' && f.where.from !== 'said') return 'coach';
  if (ofRide.has(sign)) return 'coach';
  if (sign === 'bounces' && part === 'gauge') return false;
  if (sign === 'binding' && (part === 'bellows' || part === 'tank')) return false;
  if (sign === 'bounces' && part === 'bellows' && f.where.from !== 'said') return 'coach';
  if (sign === 'clicks' && !clicks.has(part)) return 'pump';
  if (sign === 'drops' && wired.has(part)) return false;
  if ((sign === 'plugged' || sign === 'kinked') && (part === 'wheel' || part === 'tyre' || part === 'axle'))
    return false;
  if (sign === 'level') return levels.has(part);
  // "tank 118, restarts fine": the pump does
  if (part === 'tank' && pumpOnly.has(sign)) return 'pump';
  if (ofPump.has(sign)) return drives.has(part) || (part === 'fuse' && sign === 'blows fuse') ? true : 'pump';
  if (ofAir.has(sign)) return !wired.has(part) && !around.has(part) && !running.has(part);
  if (ofStance.has(sign))
    return sign === 'flat' ? ['bellows', 'tyre', 'battery', 'coach'].includes(part) : stands.has(part);
  if (sign === 'blown') return blows.has(part);
  if (
    sign === 'burnt' &&
    f.where.from !== 'said' &&
    ['tank', 'bellows', 'height valve', 'gauge', 'coach'].includes(part)
  )
    return false;
  if (
    sign === 'cords showing' &&
    !['bellows', 'tyre', 'bellows fold', 'bellows crimp', 'line', 'bellows line', 'supply line'].includes(part)
  )
    return false;
  if (ofTread.has(sign)) return ['tyre', 'wheel', 'axle', 'coach'].includes(part);
  if (ofRubber.has(sign)) return !wired.has(part) && !around.has(part);
  return !around.has(part) || ['ok', 'level', 'works', 'reads wrong'].includes(sign);
};
