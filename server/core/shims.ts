/**
 * Shims between an arm's bracket and the frame that correct toe and camber together. The bracket is a flat plate with
 * bolts at four corners: a shim thicker at its front by s turns it by atan(s / toeBolts), thicker at the top by
 * atan(s / camberBolts). Thickness pushes that edge outboard, so front means toe out, top means camber top out; where a
 * maker's bracket works the other way the manual says so. All four bolts stay in one plane, or the bracket is bent.
 */
import { type Angle, ImpossibleInput, type Length, positive, si } from './quantity.ts';

export type Bracket = {
  /** Between the bolts fore and aft, and up and down, m. */
  readonly toeBolts: Length;
  readonly camberBolts: Length;
  /** Thicknesses in stock, m. */
  readonly shims: readonly Length[];
  /** Thickest stack at one bolt, m. */
  readonly most: Length;
};
export type Bolt = 'front top' | 'front bottom' | 'rear top' | 'rear bottom';
export type Fit = {
  /** Stack to add at each bolt, thickest shim first; none where nothing goes in. */
  readonly stacks: Readonly<Record<Bolt, readonly Length[]>>;
  /** Change that the stacks make, rad; toe in and top out positive. */
  readonly toe: Angle;
  readonly camber: Angle;
  /** Wanted less made, rad. */
  readonly toeLeft: Angle;
  readonly camberLeft: Angle;
};

const nanometre = 1e-9;

/** Every thickness that stacks of `shims` make up to `most`, each with its fewest shims, thickest first. */
const stacksUpTo = (shims: readonly Length[], most: Length): readonly { t: number; stack: Length[] }[] => {
  const sizes = [...new Set(shims)].toSorted((a, b) => b - a);
  const best = new Map<number, Length[]>([[0, []]]);
  let edge: { t: number; stack: Length[] }[] = [{ t: 0, stack: [] }];
  // Breadth first: the first stack to reach a thickness has the fewest shims.
  while (edge.length > 0) {
    const next: typeof edge = [];
    for (const { t, stack } of edge)
      for (const s of sizes) {
        const thick = t + s;
        const key = Math.round(thick / nanometre);
        if (thick > most + nanometre || best.has(key) || stack.length >= 6) continue;
        const grown = [...stack, s].toSorted((a, b) => b - a);
        best.set(key, grown);
        next.push({ t: thick, stack: grown });
      }
    edge = next;
  }
  return [...best].map(([key, stack]) => ({ t: key * nanometre, stack }));
};

/** Thickness difference across `bolts` for an angle: L tan(angle); inverse of atan(s / L). */
export const shimFor = (angle: Angle, bolts: Length): Length => si(positive('bolt distance', bolts) * Math.tan(angle));

/**
 * Stacks that come nearest to the wanted changes of toe (in positive) and camber (top out positive), rad, by the least
 * sum of squares of what remains, each measured in its own tolerance; a shim less is worth a tenth of the tolerance. A bolt that
 * serves both edges carries both stacks within `most`. Raises ImpossibleInput for bolts, shims or tolerances that are
 * not above zero.
 */
export const fitShims = (
  toe: Angle,
  camber: Angle,
  bracket: Bracket,
  tolerance: { readonly toe: Angle; readonly camber: Angle },
): Fit => {
  for (const s of bracket.shims) positive('shim thickness', s);
  if (bracket.shims.length === 0) throw new ImpossibleInput('number of shim sizes', 0, 'there must be one');
  positive('thickest stack', bracket.most);
  positive('toe tolerance', tolerance.toe);
  positive('camber tolerance', tolerance.camber);
  // Toe in wants the rear edge thicker, camber top out the top edge.
  const toeWant = shimFor(si(Math.abs(toe)), bracket.toeBolts);
  const camberWant = shimFor(si(Math.abs(camber)), bracket.camberBolts);
  const all = stacksUpTo(bracket.shims, bracket.most);
  let best = { cost: Infinity, a: all[0]!, b: all[0]! };
  for (const a of all)
    for (const b of all) {
      if (a.t + b.t > bracket.most + nanometre) continue;
      const toeOff = Math.atan(toeWant / bracket.toeBolts) - Math.atan(a.t / bracket.toeBolts);
      const camberOff = Math.atan(camberWant / bracket.camberBolts) - Math.atan(b.t / bracket.camberBolts);
      const cost =
        (toeOff / tolerance.toe) ** 2 + (camberOff / tolerance.camber) ** 2 + 0.01 * (a.stack.length + b.stack.length);
      if (cost < best.cost) best = { cost, a, b };
    }
  const { a, b } = best;
  const toeEdge = toe >= 0 ? 'rear' : 'front';
  const camberEdge = camber >= 0 ? 'top' : 'bottom';
  const at = (bolt: Bolt): readonly Length[] => {
    const thick = (bolt.startsWith(toeEdge) ? a.t : 0) + (bolt.endsWith(camberEdge) ? b.t : 0);
    return all.find((row) => Math.abs(row.t - thick) < nanometre)!.stack;
  };
  const made = Math.sign(toe) * Math.atan(a.t / bracket.toeBolts);
  const madeCamber = Math.sign(camber) * Math.atan(b.t / bracket.camberBolts);
  return {
    stacks: {
      'front top': at('front top'),
      'front bottom': at('front bottom'),
      'rear top': at('rear top'),
      'rear bottom': at('rear bottom'),
    },
    toe: si(made),
    camber: si(madeCamber),
    toeLeft: si(toe - made),
    camberLeft: si(camber - madeCamber),
  };
};
