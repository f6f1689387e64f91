/** What a word for a sign means at a part. */
import type { Sign } from './shapes.ts';
import { offable } from './taken-off.ts';

export const pumpParts = [
  'pump',
  'motor',
  'relay',
  'pressure switch',
  'gauge',
  'unloader',
  'dryer',
  'solenoid',
  'battery',
  'panel',
];

/** Parts that are as they should be when they are tight, or straight. */
const playless: ReadonlySet<string> = new Set([
  'check valve',
  'tank',
  'fitting',
  'bellows crimp',
  'bead plate',
  'valve cover',
  'line',
  'bellows line',
  'supply line',
  'ground',
  'feed cable',
  'wheel bearing',
  'shock bushing',
  'bushing',
  'pin',
  'bolt',
  'control arm',
  'link',
]);
export const straightParts: ReadonlySet<string> = new Set([
  'link',
  'arm',
  'bracket',
  'frame',
  'axle',
  'control arm',
  'shock',
]);

const blowers = ['relief', 'unloader', 'exhaust port', 'protection valve'];

/** The sign a word means at this part: a damper that weeps leaks oil, a link that came off is disconnected. */
export const atPart = (name: Sign, part: string | undefined, phrase: string): Sign => {
  if (/\bdry$/.test(phrase) && name === 'bubbles') {
    if (part === 'shock') return 'leaks oil';
    if (part === 'tank' || part === 'dryer') return 'water';
  }
  if (part === 'shock') {
    if (phrase === 'stiff') return 'ok';
    if (['leaks', 'oily', 'wet', 'leaks oil'].includes(name)) return 'leaks oil';
    if (name === 'hot') return 'warm';
    if (name === 'blown') return 'worn';
  } else if (['cold', 'warm'].includes(name) && part === 'pump') return name === 'warm' ? 'hot' : name;
  if (/^(?:broke|is broke)$/.test(phrase) && part !== undefined && !pumpParts.includes(part)) return 'broken';
  if (name === 'reads right' && part !== undefined && !['gauge', 'test port', 'tank', 'pressure switch'].includes(part))
    return 'ok';
  if (name === 'no air' && (part === 'bellows' || part === 'tyre') && phrase === 'no air') return 'flat';
  // "wheel bearings tight": without play, as they should be
  if (name === 'binding' && phrase === 'tight' && playless.has(part ?? '')) return 'ok';
  // "both links straight", "looked at the link, looks straight": not bent
  if (name === 'level' && phrase === 'straight' && straightParts.has(part ?? '')) return 'ok';
  if (['brushes', 'bushing', 'shock bushing', 'pin', 'wheel bearing'].includes(part ?? '') && name === 'not working')
    return 'worn';
  // "bump stop gone": it is not there any more
  if (phrase === 'gone' && /^(?:bump stop|bolt|valve cover|shim|bracket|pin)$/.test(part ?? '')) return 'missing';
  if (part === 'link' && /^(?:gone|shot|had it)$/.test(phrase)) return 'worn';
  if (
    blowers.includes(part ?? '') &&
    /^(?:blow|blowing|blows|blown|popping|pops|popped|popped off|lifting|lifts|venting)$/.test(phrase)
  )
    return 'exhausts';
  if (
    offable.has(part ?? '') &&
    /^(?:come off|came off|fallen off|fell off|is off|off|popped off|dropped off)$/.test(phrase)
  )
    return 'disconnected';
  if (/^(?:down|is down|gone|went down)$/.test(phrase) && pumpParts.includes(part ?? '')) return 'not working';
  if (part === 'pump' && name === 'does not move') return 'wont run';
  if ((part === 'gauge' || part === 'tank') && phrase === 'stuck') return part === 'gauge' ? 'does not move' : name;
  if ((part === 'bellows' || part === undefined) && name === 'fills' && phrase === 'comes up') return name;
  if (part === 'bellows' && /\bsplit\b/.test(phrase)) return 'torn';
  if (part === 'tyre' && name === 'flat') return name;
  if (part === 'pump' && name === 'slow build') return name;
  return name;
};
