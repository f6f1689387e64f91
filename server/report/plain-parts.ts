/**
 * Parts of the trade with the few words an owner needs beside them, and work said as a sentence. A thing keeps the name
 * it has in replies and on the coach's sheet (bellows, pump, height valve): one word for it on every paper. Data only.
 */
import { takePlace } from '../../intents/place.ts';
import type { Part, Place, WorkFact } from '../../intents/shapes.ts';

const plain: Partial<Record<Part, string>> = {
  tank: 'air tank',
  drain: 'drain of the air tank',
  relief: 'safety relief valve',
  'test port': 'test fitting of the air tank',
  gauge: 'air gauge',
  dryer: 'air dryer',
  'supply line': 'air line from tank to valves',
  'inlet check': 'one-way valve of the height valve',
  'exhaust seat': 'height valve (its exhaust seat)',
  'inlet seat': 'height valve (its inlet seat)',
  'exhaust port': 'exhaust of the height valve',
  link: 'link rod of the height valve',
  arm: 'arm of the height valve',
  panel: 'levelling panel',
  'panel feed': 'air line to the levelling panel',
  'bellows line': 'air line to the bellows',
  'bellows crimp': 'bellows (crimped ring)',
  'bellows fold': 'bellows (rubber fold)',
  'bead plate': 'bellows (top plate)',
  piston: 'foot of the bellows',
  'bump stop': 'rubber stop',
  pump: 'air pump',
  motor: "pump's motor",
  'pump head': "pump's head",
  'intake filter': "pump's intake filter",
  unloader: "pump's unloader valve",
  'discharge check': 'one-way valve of the pump',
  'discharge line': 'air line from pump to tank',
  'check valve': 'one-way valve',
  'pressure switch': 'pressure switch of the pump',
  relay: "pump's relay",
  ground: 'ground (earth) connection',
  'feed cable': 'supply cable',
  shock: 'shock absorber',
  'shock bushing': 'bushing of the shock absorber',
  shim: 'alignment shim',
};

/** "left bellows"; the place as it stands where it is no part. */
export const plainPlace = (place: Place): string => {
  const at = takePlace(place);
  if (!at?.part) return place;
  return [at.side, at.end, at.wheel, plain[at.part] ?? at.part].filter(Boolean).join(' ');
};

/** The deed still to do, where it is not the word less its ending. */
const toDo: Readonly<Record<string, string>> = {
  set: 'Set',
  rebuilt: 'Rebuild',
  refitted: 'Refit',
  shimmed: 'Shim',
  'road tested': 'Road test',
  'overnight tested': 'Test overnight',
  'pumped up': 'Pump up',
  levelled: 'Level',
  replaced: 'Replace',
  rerouted: 'Reroute',
  lubricated: 'Lubricate',
  removed: 'Remove',
  inflated: 'Inflate',
  tightened: 'Tighten',
  declined: 'Work on',
};

const sided = new Set(['left', 'right', 'both', 'front', 'rear']);
/** "Replaced the left bellows"; "Road tested"; not done: "Replace the left bellows". */
export const workWords = (work: Pick<WorkFact, 'what' | 'where'> & { done?: boolean }): string => {
  const deed = work.done === false ? (toDo[work.what.v] ?? work.what.v.replace(/ed$/, '')) : work.what.v;
  const said = `${deed.charAt(0).toUpperCase()}${deed.slice(1)}`;
  const where = work.where.v;
  if (where === '') return said;
  const place = plainPlace(where);
  // a corner alone is a place, not a thing
  const corner = where.split(' ').every((w) => sided.has(w));
  return corner ? `${said}, ${place}` : `${said} the ${place}`;
};
