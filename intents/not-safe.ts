/**
 * Words of a state that lets somebody work, where they tell no such thing: how it is found every morning, what ails it,
 * where the stands are kept. A gate must not open on a complaint. Pure.
 */
import { saidFlatly } from './certain.ts';
import { locOf } from './loc.ts';
import { denied } from './near.ts';
import { pushNoVolts } from './no-volts.ts';
import { push } from './push.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Sign } from './shapes.ts';
import { assumed, phraseOf, said, type Clause, type Loc, type Walk } from './walk.ts';

type CondItem = Extract<Settled, { k: 'cond' }>;

/** What lets somebody under a coach, into its air or at its pump. */
export const safe: ReadonlySet<string> = new Set([
  'tank drained',
  'bellows vented',
  'air vented',
  'pump power cut',
  'on stands',
  'wheels chocked',
  'over pit',
  'cribbed',
  'head vented',
  'people clear',
  'eyes covered',
  'battery disconnected',
  'fuse out',
]);

/** Of such a state found again and again, or after a night: what the tank or the bags did by themselves. */
const byItself: Readonly<Record<string, { sign: Sign; part: 'tank' | 'bellows' }>> = {
  'tank drained': { sign: 'drops', part: 'tank' },
  'bellows vented': { sign: 'flat', part: 'bellows' },
};
/** Where stands are that hold nothing up. */
const elsewhere = /^ (?:the |my |his |our )?(?:truck|van|shop|corner|store|other bay|trailer|boot|locker|way|rack)\b/i;

const tells = (w: Walk, c: Clause, index: number, sign: Sign, loc: Loc, often = c.often?.v): number => {
  const item = c.items[index]!;
  push(w, { is: 'sign', what: said(sign, item), there: true, ...(often ? { often } : {}) }, loc, item);
  w.subject = loc;
  return index + 1;
};

/** Reads such words at `index`; the index after what they took, null where they tell of the state itself. */
export const readNotSafe = (w: Walk, c: Clause, index: number): number | null => {
  const item = c.items[index] as CondItem;
  if (!item.holds || !safe.has(item.v)) return null;
  if (!denied(c, index) && !saidFlatly(w.text, c.items[0]!.span[0], item.span)) return index + 1;
  const after = w.text.slice(item.span[1], item.span[1] + 24);
  const before = c.places.filter((i) => i < index).map((i) => c.items[i] as PlaceItem);
  // "tank is empty every morning", "bags deflated overnight"
  if (c.often && /^(?:always|sometimes|standing)$/.test(c.often.v) && !c.items.some((it) => it.k === 'sign')) {
    const itself = byItself[item.v];
    if (itself) {
      const of = before.findLast((p) => p.p.part === itself.part);
      return tells(w, c, index, itself.sign, of ? locOf(w, of) : assumed({ part: itself.part }));
    }
    if (item.v === 'air vented') return index + 1;
  }
  // "bag has no air in it"
  const bag = before.findLast((p) => p.p.part === 'bellows');
  if (item.v === 'air vented' && bag && /^no air/.test(item.phrase)) return tells(w, c, index, 'flat', locOf(w, bag));
  // "no power to the pump": it gets none, and nobody cut it
  if (item.v === 'pump power cut' && /^no power/.test(item.phrase)) {
    pushNoVolts(w, item, assumed({ part: 'motor' }));
    return index + 1;
  }
  // "isolated the leak to the left side", "pump isolated from the tank by the check": no current was
  const next = c.items[index + 1];
  if (item.v === 'pump power cut' && /isolated$/.test(item.phrase) && next && next.k !== 'cond') {
    const pump = next.k === 'place' && (next.p.part === 'pump' || next.p.part === 'battery');
    if (item.phrase === 'isolated' ? !pump && !/^(?:at|now|and|ok)$/.test(phraseOf(next)) : phraseOf(next) === 'from')
      return index + 1;
  }
  if (item.v === 'on stands' && /\bin$/.test(item.phrase) && elsewhere.test(after)) return index + 1;
  // "wheels blocked with snow"
  return item.v === 'wheels chocked' && /^ (?:with|by|in) (?:snow|ice|mud|dirt|debris)\b/i.test(after)
    ? index + 1
    : null;
};
