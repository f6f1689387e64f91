/**
 * The canonical names of everything a note can speak of. Data only; spellings live in intents/words, meanings here.
 * They are stored in logs: add at will, rename never.
 */
export const parts = [
  'tank', 'drain', 'relief', 'gauge', 'test port', 'protection valve', 'regulator', 'dryer', 'supply line',
  'height valve', 'valve cover', 'inlet seat', 'inlet check', 'exhaust seat', 'exhaust port', 'valve to panel line', 'link', 'arm',
  'panel', 'panel feed', 'bellows line', 'fitting', 'line', 'gauge line',
  'bellows', 'bellows crimp', 'bellows fold', 'bead plate', 'piston', 'bump stop',
  'pump', 'motor', 'pump head', 'intake filter', 'unloader', 'discharge check', 'discharge line', 'check valve', 'reeds', 'rings',
  'pressure switch', 'relay', 'fuse', 'breaker', 'battery', 'ground', 'feed cable', 'key switch', 'solenoid', 'brushes',
  'wheel', 'tyre', 'wheel bearing', 'shock', 'shock bushing', 'control arm', 'pin', 'bushing', 'bracket', 'shim', 'bolt', 'torsion bar',
  'frame', 'axle', 'floor', 'coach', 'panel port', 'ambient', 'load', 'water tank', 'jack', 'stand',
] as const;

export const measures = [
  'pressure', // gauge, at a place; of a tyre too
  'pressure fall', // size of a fall, positive; `over` the time
  'pressure rise',
  'pump-up', // amount: the end, from: the start, over: the time
  'cut-in',
  'cut-out',
  'height',
  'height off', // against where it should be or against the other side; negative is low
  'height fall', // size, positive; over the time
  'voltage',
  'voltage drop',
  'current',
  'resistance',
  'temperature', // of the place: ambient, pump, tyre
  'humidity',
  'toe', // in is positive; of a wheel, or total of an axle where the place has no side
  'camber', // top out is positive
  'thrust',
  'tyre diameter',
  'rim diameter',
  'wheelbase difference',
  'torque',
  'load', // weight carried
  'water drained',
  'on time', // pump on per cycle
  'off time',
  'run time',
  'restart time',
  'standing time', // hours parked
  'settling time', // time since pumped or levelled
  'delay', // of a height valve
  'dead band',
  'arm length',
  'turns',
  'distance driven',
  'odometer',
  'shim thickness',
  'wire length',
  'wire gauge', // AWG number as a count
  'flow',
  'altitude',
  'barometer',
  'specific gravity',
  'bubble size',
  'free play',
  'count',
] as const;

export const signs = [
  'bubbles', 'hiss', 'leaks', 'puffs', 'exhausts', // air escaping
  'low', 'high', 'leans', 'level', 'on stops', 'sags', 'rises', 'holds', 'drops', 'comes up driving', 'flat', // attitude, movement
  'runs on', 'wont run', 'runs constantly', 'short cycles', 'clicks', 'hums', 'stalls', 'no air', 'slow build', 'blows fuse', 'quits hot',
  'starts', 'stops', 'pulls down', // pump
  'works', 'not working', 'stuck', 'stays closed', 'stays open', 'reversed', 'binding', // parts that work or not
  'hot', 'burnt', 'corroded', 'welded', 'tripped', 'blown', 'loose', 'bent', 'broken', 'disconnected', 'slipped', 'missing',
  'kinked', 'plugged', 'dirty', 'frozen', 'wet', 'oily', 'water', 'milky',
  'cracked', 'cords showing', 'chafed', 'torn', 'swollen', 'off line', 'worn', 'aged', 'noisy', 'bangs',
  'cold', 'warm', 'leaks oil', // shocks after a drive
  'bounces', 'bottoms', 'wanders', 'pulls', 'worn inside', 'worn outside', 'feathered', 'cupped', 'scrubbed',
  'reads wrong', 'reads right', 'does not move', 'gauges agree', 'gauges disagree', 'fills', 'does not fill', 'empties', 'does not empty', 'ok',
] as const;

export const conditions = [
  'key on', 'engine running', 'pump running', 'pump power cut', 'panel auto', 'panel fill', 'panel empty', 'panel shut',
  'arm neutral', 'arm fill', 'arm exhaust', 'link connected', 'tank outlet closed', 'on jacks', 'on stands', 'wheels chocked', 'over pit', 'cribbed',
  'floor level', 'loaded', 'water tank full', 'just pumped', 'settled', 'parked', 'driving', 'air vented', 'tank drained', 'bellows vented', 'head vented',
  'people clear', 'eyes covered', 'battery disconnected', 'fuse out', 'hot', 'cold', 'wet weather', 'same moment', 'unloader tripped',
  'no test port', 'no plug', 'no second gauge', 'no helper',
] as const;

export const works = [
  'replaced', 'repaired', 'rebuilt', 'cleaned', 'tightened', 'adjusted', 'set', 'soaped', 'drained', 'checked', 'removed', 'refitted', 'rerouted', 'lubricated',
  'shimmed', 'levelled', 'pumped up', 'vented', 'opened', 'closed', 'disconnected', 'connected', 'tripped', 'tapped', 'road tested', 'overnight tested', 'declined', 'reset', 'inflated', 'washed', 'weighed',
] as const;

export const hazards = [
  'under unsupported', // body or arm under or between with nothing but air or a jack
  'jack only',
  'soft ground', // blocks or stands on soil, stacked wood
  'open under pressure', // a line, fitting, drain plug or valve opened with air behind it
  'relief defeated', // plugged, capped, raised, taped
  'fuse enlarged', // bigger fuse, foil, bypass
  'bellows unrestrained', // inflated off the coach
  'shop air unregulated',
  'over-pressure', // pump runs past cut-out, tank over its limit
  'air at person', // blow-off air at skin or clothes
  'torsion bar under load',
  'cords driven', // cord showing or torn bellows, driven or inflated
  'drive disabled', // moving it on flat bellows, open line
  'link pulled under', // link or arm moved by hand while someone is under or between
  'eyes bare',
  'spark at battery',
  'weld near line',
  'hot parts',
  'pump may start', // hands at a resting pump with power on
  'brakes opened', // brake line, hub, arm: outside the assistant's word
  'heat on line', // torch, heat gun, fluid on a frozen line
  'relay tapped', // freed with a tap and trusted
  'interlock defeated', // jumpered switch left in, key-off lock bypassed
] as const;
