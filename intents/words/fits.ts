/** Which signs a part can have at all: what fits nowhere was misread. Data only; common practice, no source. */
import type { measures, parts, signs, works } from '../names.ts';

type PartName = (typeof parts)[number];
type SignName = (typeof signs)[number];
type MeasureName = (typeof measures)[number];

const list = <T extends string>(words: string): ReadonlySet<T> => new Set(words.split('|') as T[]);

/** Carries current and no air. */
export const wired = list<PartName>(
  'motor|relay|relay coil|relay output|switch input|switch output|fuse|breaker|battery|ground|feed cable|key switch|brushes',
);
/** Stands around the coach, or is put under it. */
export const around = list<PartName>('ambient|floor|load|jack|stand|water tank');
/** Metal and rubber of the axle's guidance. */
export const running = list<PartName>(
  'wheel bearing|shock|shock bushing|control arm|pin|bushing|bracket|shim|bolt|torsion bar|frame|axle',
);

/** Signs of air that escapes or is held back: of nothing that holds none. */
export const ofAir = list<SignName>(
  'bubbles|hiss|leaks|puffs|exhausts|fills|empties|does not fill|does not empty|kinked',
);
/** Moves or lets through, and is never filled itself. */
export const unfilled = list<PartName>('arm|link|regulator');
/** What a volume of air does. */
export const ofVolume = list<SignName>('fills|empties|does not fill|does not empty');
/** Only these blow, as a fuse does. */
export const blows = list<PartName>('fuse|breaker|relay|motor|battery');
/** What is heard to click as it switches. */
export const clicks = list<PartName>(
  'pump|motor|relay|relay coil|relay output|solenoid|pressure switch|switch input|switch output|breaker|key switch|unloader|protection valve|regulator|panel|coach|height valve|check valve|arm|link',
);
/** What water is let out of. */
export const drained = list<PartName>('tank|drain|dryer|supply line|line|bellows|discharge line|gauge line');
/** What the whole coach does on the road. */
export const ofRide = list<SignName>('wanders|pulls');
/** How high something stands: of a corner, the coach, what carries it. */
export const ofStance = list<SignName>(
  'leans|sags|on stops|bottoms|bounces|wanders|pulls|comes up driving|flat|low|high',
);
/** What befalls one thing: a corner as a whole is not bent. */
export const ofThings = list<SignName>('bent|slipped|corroded|welded|tripped|blown|burnt|plugged|kinked|stuck');
/** What only the pump, or what drives it, does. */
export const ofPump = list<SignName>(
  'runs on|wont run|runs constantly|short cycles|no air|slow build|blows fuse|quits hot|stalls|starts|stops|pulls down',
);
/** Of these a tank has none. */
export const pumpOnly = list<SignName>('starts|stops|stalls|quits hot|blows fuse|wont run');
/** What is set by turning it. */
export const turned = list<PartName>(
  'link|arm|torsion bar|pressure switch|regulator|bellows line|line|fitting|supply line|drain|bolt|relief|height valve|control arm|pin',
);
export const drives = list<PartName>(
  'pump|motor|pump head|intake filter|discharge line|unloader|discharge check|pressure switch|relay|solenoid|tank|coach',
);
/** What a tread looks like. */
export const ofTread = list<SignName>('worn inside|worn outside|feathered|cupped|scrubbed');
/** What rubber and cord do. */
export const ofRubber = list<SignName>('cords showing|swollen|torn|aged');
/** What stands that can be low or high: also the figure of a tank, a gauge, a battery. */
export const stands = list<PartName>('coach|bellows|tyre|axle|wheel|tank|gauge|battery|frame|water tank|bellows fold');

/** Where a pressure can be read. */
export const pressured = list<PartName>(
  'tank|bellows|tyre|wheel|gauge|test port|protection valve|regulator|relief|dryer|supply line|height valve|exhaust port|valve to panel line|panel|panel feed|panel port|bellows line|fitting|line|gauge line|pump|pump head|unloader|discharge check|discharge line|check valve|pressure switch|drain|bellows crimp|inlet check|solenoid|intake filter|axle',
);
/** Whose pressure is meant where none was named with it. */
export const holdsAir = list<PartName>(
  'tank|bellows|tyre|wheel|gauge|test port|protection valve|regulator|panel feed|panel|supply line|axle|pump|pump head|discharge line',
);
/** What is aired up. */
export const filled = list<PartName>('tank|bellows|tyre|wheel|coach|battery');
/** Measures that are of the air side where they have a place. */
export const ofPressure = list<MeasureName>('pressure|pressure fall|pressure rise|pump-up');

/** Done to one thing, and to no corner of a coach. */
export const ofThing: ReadonlySet<(typeof works)[number]> = list('removed|opened|closed|rebuilt|cleaned|lubricated');
/** Work on the coach as a whole. */
export const ofCoach: ReadonlySet<(typeof works)[number]> = list(
  'road tested|overnight tested|levelled|washed|weighed|checked|declined|repaired|pumped up|soaped|adjusted|set|inflated|vented|reset',
);
/** What can stand level. */
export const levels = list<PartName>('coach|floor|axle|bellows|frame|panel|tyre');
/** What gets warm at work. */
export const runsWarm = list<PartName>(
  'tyre|wheel|wheel bearing|pump|pump head|motor|discharge line|relay|shock|feed cable|unloader|discharge check|ambient|axle',
);
/** Whose temperature is taken. */
export const warmed = list<PartName>(
  'ambient|tyre|wheel|wheel bearing|pump|pump head|motor|tank|discharge line|relay|battery|dryer|coach|shock|feed cable|fuse|pressure switch|unloader|discharge check|check valve|line|height valve|drain|bellows',
);
