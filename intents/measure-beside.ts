/** What a number measures by what stands beside it, and in which unit it then is. */
import { runsWarm } from './words/fits.ts';
import { dimensionOf, type Dimension, type Unit } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { measureDims, tapeLike, timeMeasures, voltParts } from './dims.ts';
import { nextReal, type Hit } from './near.ts';
import type { Measure } from './shapes.ts';
import { phraseOf, use, type Clause, type Walk } from './walk.ts';

export type Beside = {
  readonly measure: Measure | null;
  readonly unit: Unit | null;
  readonly dim: Dimension | null;
  /** A temperature of the weather. */
  readonly outdoors: boolean;
};

/** null: the number says nothing a fact can hold. */
export const measureBeside = (w: Walk, c: Clause, n: Amounting, index: number, hit: Hit | null): Beside | null => {
  const items = c.items;
  // "3 mm toe out": said after it
  const follows = items[index + 1];
  if (!c.measure && follows?.k === 'measure' && (follows.v === 'toe' || follows.v === 'camber')) c.measure = follows;
  let measure: Measure | null = c.measure?.v ?? null;
  let unit = n.unit;
  // "relay has 12.4 in, 12.3 out": volts, not inches
  if (unit === 'in' && hit?.item.p.part && voltParts.has(hit.item.p.part) && /\din$|\d in$/.test(n.text)) unit = 'V';
  // "60 in both bags": in them, not inches of them
  if (
    unit === 'in' &&
    n.whole &&
    n.value >= 30 &&
    /\din$|\d in$/.test(n.text) &&
    hit &&
    hit.item === items[index + 1] &&
    (hit.item.p.part === 'bellows' || hit.item.p.part === 'tyre' || hit.item.p.part === 'tank')
  ) {
    unit = null;
    n.unit = null;
    n.text = n.text.slice(0, -2).trimEnd();
  }
  if (unit === 'lb') {
    const heavy =
      measure === 'load' ||
      hit?.item.p.part === 'load' ||
      n.value > 300 ||
      items.some((it) => it.k === 'place' && it.p.part === 'load');
    unit = measure === 'torque' ? 'lbf ft' : heavy ? 'lb' : 'psi';
  }
  if (measure && timeMeasures.includes(measure)) measure = null;
  let dim: Dimension | null = unit ? dimensionOf(unit) : null;
  if (dim === 'duration' || dim === 'rate') return null;
  const next = items[nextReal(c, index)];
  // "ambient is forty degrees"
  if (
    dim === 'angle' &&
    (measure === 'temperature' ||
      hit?.item.p.part === 'ambient' ||
      hit?.item.p.part === 'pump' ||
      (n.value >= 60 && hit?.item.p.part !== undefined && runsWarm.has(hit.item.p.part)))
  ) {
    unit = w.context.lengthUnit === 'in' ? 'F' : 'C';
    dim = 'temperature';
  }
  // "tank is 8 gallons": its size, which no fact holds
  if (
    dim === 'volume' &&
    !/\b(?:water|drain\w*|drip\w*|moisture|condensate|cup\w*|came out|come out|out of|outta|got|milky|rusty|emptied|sludge)\b/i.test(
      w.text,
    )
  )
    return null;
  if (dim === 'volume') measure = 'water drained';
  // "8F out", "forty degrees out here": the weather
  const outdoors =
    /^(?:out|outside|outdoors|out here)$/.test(phraseOf(items[index + 1])) ||
    phraseOf(items[index + 1]).startsWith('out ') ||
    // "its thirty eight degrees and raining"
    (/\b(?:its|it is|it was|was|about) (?:about |only )?$/i.test(
      w.text.slice(0, n.span[0]).replaceAll("'", '').slice(-18),
    ) &&
      c.places.length === 0 &&
      !/\b(?:camber|toe)\b/i.test(w.text));
  if (
    dim === 'angle' &&
    outdoors &&
    n.unit === 'deg' &&
    n.whole &&
    n.value >= 10 &&
    measure !== 'camber' &&
    measure !== 'toe'
  ) {
    unit = w.context.lengthUnit === 'in' ? 'F' : 'C';
    dim = 'temperature';
  }
  if (dim === 'temperature') measure = 'temperature';
  if (
    dim === 'voltage' &&
    (next?.k === 'change' || next?.k === 'sign') &&
    /^(?:drop|drops|dropped|lost|loss)$/.test(phraseOf(next))
  ) {
    measure = 'voltage drop';
    use(w, next);
  }
  const fell = items.slice(0, index).findLast((it) => !(it.k === 'filler' || it.k === 'prep'));
  if (
    dim === 'voltage' &&
    (fell?.k === 'sign' || fell?.k === 'change') &&
    /^(?:drop|drops|dropped|dropping|losing|loses|lost)$/.test(phraseOf(fell))
  ) {
    measure = 'voltage drop';
    use(w, fell);
  }
  // "drop on ground 0.9 v": volts lost there, nothing that goes down
  const dropped = w.facts.at(-1);
  if (
    dim === 'voltage' &&
    dropped?.is === 'sign' &&
    dropped.what.v === 'drops' &&
    dropped.there &&
    fell?.k === 'place' &&
    items.slice(0, index).some((it) => it.k === 'sign' && /^drops?$/.test(it.phrase) && w.used.has(it)) &&
    !items.slice(0, index).some((it) => it.k === 'num')
  ) {
    measure = 'voltage drop';
    w.facts.pop();
  }
  if (dim === 'length' && (unit === 'mi' || unit === 'km') && measure !== 'odometer')
    measure = n.value > 2500 ? 'odometer' : 'distance driven';
  // so many feet are no height of a coach
  if (unit === 'ft' && n.value >= 300 && !measure) measure = 'altitude';
  if (dim === 'voltage' && next?.k === 'measure' && next.v === 'voltage drop') {
    measure = 'voltage drop';
    use(w, next);
  }
  if (dim === 'ratio' && next?.k === 'measure' && next.v === 'humidity') {
    measure = 'humidity';
    use(w, next);
  }
  if (dim === 'length' && next?.k === 'sign' && next.v === 'bubbles') {
    measure = 'bubble size';
    use(w, next);
  }
  if ((dim === 'length' || (dim === null && tapeLike(n))) && next?.k === 'place' && next.p.part === 'shim') {
    measure = 'shim thickness';
    use(w, next);
  }
  if (
    (dim === 'length' || (dim === null && tapeLike(n))) &&
    next?.k === 'measure' &&
    ['free play', 'dead band', 'height'].includes(next.v) &&
    items[nextReal(c, items.indexOf(next))]?.k !== 'num'
  ) {
    measure = next.v;
    use(w, next);
  }
  if (measure && dim && !(measureDims[measure] ?? [dim]).includes(dim)) measure = null;
  return { measure, unit, dim, outdoors };
};
