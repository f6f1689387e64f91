/** Joins what stands beside a place to it: its side, its part, which of its two wheels. */
import { compatible, glue, wheeled } from './merge-places.ts';
import { makePlace } from './place.ts';
import type { PlaceItem, Settled } from './settled.ts';
import { partFollows } from './side-words.ts';
import { airSide, partJoins } from './words/parts.ts';

/** "fwd", "aft wheel" after the place whose wheel it is. */
const addWheel = (out: Settled[], item: Extract<Settled, { k: 'wheel' }>): void => {
  const at = out.findLastIndex((o) => o.k !== 'filler' && o.k !== 'prep');
  const prev = out[at];
  if (
    prev?.k === 'place' &&
    prev.p.side &&
    prev.p.end !== 'front' &&
    (prev.p.part === undefined || wheeled.has(prev.p.part)) &&
    !prev.p.wheel
  ) {
    out.length = at + 1;
    // "drivers rear wheel": the corner's, when no end was said
    if (/^(?:rear|front|back) wheel/.test(item.phrase) && !prev.p.end && !prev.p.part) {
      out.length = at + 1;
      out[at] = {
        ...prev,
        p: { ...prev.p, end: item.v === 'aft' ? 'rear' : 'front', part: 'wheel' },
        spans: [...prev.spans, item.span],
        span: [prev.span[0], item.span[1]],
      };
      return;
    }
    const named = /wheel/.test(item.phrase) ? ('wheel' as const) : prev.p.part;
    out[at] = {
      ...prev,
      p: { ...prev.p, end: 'rear', wheel: item.v, ...(named ? { part: named } : {}) },
      spans: [...prev.spans, item.span],
      span: [prev.span[0], item.span[1]],
    };
    return;
  }
  // "rear aft plus 1": the other wheel, its end said again
  const before = out.findLast((o): o is PlaceItem => o.k === 'place' && o.p.wheel !== undefined);
  if (
    prev?.k === 'place' &&
    before &&
    prev.p.end === 'rear' &&
    !prev.p.side &&
    !prev.p.part &&
    before.p.wheel !== item.v
  ) {
    out[at] = {
      ...prev,
      p: { ...before.p, wheel: item.v },
      spans: [...prev.spans, item.span],
      span: [prev.span[0], item.span[1]],
      assumed: true,
    };
    out.length = at + 1;
    return;
  }
  // "aft ok": the other wheel of the place spoken of before
  const twin = out.findLast((o): o is PlaceItem => o.k === 'place' && o.p.wheel !== undefined);
  if (twin && prev?.k !== 'place') {
    out.push({
      k: 'place',
      p: { ...twin.p, wheel: item.v },
      span: item.span,
      spans: [item.span],
      phrase: item.phrase,
      assumed: true,
    });
    return;
  }
  if (/wheel/.test(item.phrase)) {
    out.push({
      k: 'place',
      p: { end: item.v === 'forward' ? 'front' : 'rear', part: 'wheel' },
      span: item.span,
      spans: [item.span],
      phrase: item.phrase,
    });
    return;
  }
  // "front 105 drive 100 tag 95": axles by name
  const axles = out.some(
    (o) =>
      (o.k === 'place' && (o.p.end === 'front' || ['tyre', 'axle', 'load'].includes(o.p.part ?? ''))) ||
      (o.k === 'work' && o.v === 'weighed'),
  );
  if (
    axles &&
    /^(?:drive|tag)(?: axle)?$/.test(item.phrase) &&
    !out.some((o) => o.k === 'measure' && o.v !== 'pressure')
  ) {
    const part = out.some((o) => o.k === 'place' && o.p.part === 'tyre') ? 'tyre' : 'axle';
    out.push({
      k: 'place',
      p: { end: 'rear', wheel: item.v, part },
      span: item.span,
      spans: [item.span],
      phrase: item.phrase,
    });
    return;
  }
  out.push({ ...item });
  return;
};

/** A place after others: of the one before it, or a new one. */
const addPlace = (out: Settled[], item: PlaceItem, raw: readonly Settled[]): void => {
  const at = out.findLastIndex(
    (o) =>
      !(o.k === 'filler' && glue.test(o.phrase)) &&
      !(o.k === 'prep' && ['of', 'on', 'at', 'in', 'from', 'to', 'near', 'by', 'around'].includes(o.phrase)),
  );
  const prev = out[at];
  const between = out.slice(at + 1);
  const prep = between.some((b) => b.k === 'prep');
  if (prev?.k === 'place' && !(prev.p.part === 'shim' && !item.p.part)) {
    const merged = compatible(prev.p, item.p);
    const same = merged && makePlace(merged) === makePlace(prev.p) && !prep;
    const joinsParts = Boolean(prev.p.part && item.p.part && prev.p.part !== item.p.part);
    // "bolts on the left control arm": whose side it is
    const follows = raw[raw.indexOf(item) + 1];
    const theirs =
      // "worn bush rear tyres ok": of the part right behind it
      ((Boolean((item.p.side ?? item.p.end) && !item.p.part && prev.p.part) &&
        !prep &&
        follows?.k === 'place' &&
        !follows.p.side) ||
        Boolean(item.p.side && !item.p.part && prev.p.part && !prev.p.side && prep)) &&
      follows?.k === 'place' &&
      follows.p.part !== undefined &&
      follows.p.part !== prev.p.part &&
      !(partJoins[prev.p.part!]?.[follows.p.part] ?? partJoins[follows.p.part]?.[prev.p.part!]);
    // "left bag leaks at the crimp right bag is fine": a new thing on the other side
    // "leans to the right, rr way low": a corner written whole is nobody's other half
    const whole = /^(?:lr|rr|lf|rf)$/.test(item.phrase) && !prev.p.part;
    const anew =
      whole ||
      // "from the floor to the frame left rear 13 3/8": between which it is measured
      (/^(?:frame|axle|floor)$/.test(prev.p.part ?? '') &&
        !item.p.part &&
        out.slice(0, at).some((o) => o.k === 'place' && /^(?:frame|axle|floor)$/.test(o.p.part ?? ''))) ||
      // "none on the left left valve leaks": its side is said again
      (!prep &&
        prev.p.side !== undefined &&
        !prev.p.part &&
        item.p.side === prev.p.side &&
        item.p.part !== undefined) ||
      (prev.p.part === 'check valve' && item.phrase === 'tank' && !prep) ||
      (Boolean(item.p.side && prev.p.part && !prev.p.side && !prep) &&
        (item.p.part !== undefined || partFollows(raw, item)) &&
        out.slice(0, at).some((o) => o.k === 'place' && o.p.side !== undefined && o.p.side !== item.p.side));
    const fits =
      merged && !anew && !theirs && (!prep || joinsParts || !prev.p.part || !item.p.part) && !(prev.ask && item.ask);
    if (merged && fits && !(same && !item.near && prev.phrase === item.phrase)) {
      const ask = prev.ask ?? item.ask;
      out.length = at + 1;
      out[at] = {
        ...prev,
        p: merged,
        spans: [...prev.spans, item.span],
        span: [prev.span[0], item.span[1]],
        ...(ask ? { ask } : {}),
        ...(prev.near || item.near ? { near: true } : {}),
        ...(item.one ? { one: true } : {}),
        ...(prev.other ? { other: true } : {}),
      };
      delete out[at].bare;
      return;
    }
  }
  // "the fuse for the pump": the first is the thing
  const forAt = out.findLastIndex((o) => o.k === 'filler' && o.phrase === 'for');
  const head = out.slice(0, forAt).findLast((o) => o.k !== 'filler');
  if (
    forAt > 0 &&
    out.slice(forAt + 1).every((o) => o.k === 'filler') &&
    head?.k === 'place' &&
    head.p.part !== undefined &&
    item.p.part !== undefined
  ) {
    head.spans.push(item.span);
    return;
  }
  // "forward lr wheel": a wheel word left standing before its place
  // "fwd left bag fold": which of two bags, and no wheel
  const next = raw[raw.indexOf(item) + 1];
  const ofAir = !item.p.part && next?.k === 'place' && next.p.part !== undefined && airSide.has(next.p.part);
  if (prev?.k === 'wheel' && item.p.side && !ofAir) {
    out.length = at;
    out.push({
      ...item,
      p: { ...item.p, end: 'rear', wheel: prev.v, part: item.p.part ?? 'wheel' },
      spans: [prev.span, item.span],
    });
    return;
  }
  out.push(item);
};

/** "bottom bolt on the left bag missing": the bolt, whose place was only told. */
const heldBy = (items: readonly Settled[]): Settled[] => {
  const out: Settled[] = [];
  items.forEach((item, i) => {
    const at = out.findLastIndex((o) => o.k !== 'filler' && o.k !== 'prep');
    const bolt = out[at];
    if (
      item.k === 'place' &&
      item.p.part !== undefined &&
      item.p.part !== 'bolt' &&
      bolt?.k === 'place' &&
      ((bolt.p.part === 'bolt' &&
        out.slice(at + 1).some((o) => o.k === 'prep' && /^(?:on|of|at|in)$/.test(o.phrase))) ||
        // "air line from the dryer is oily"
        (bolt.p.part === 'line' && out.slice(at + 1).some((o) => o.k === 'prep' && o.phrase === 'from'))) &&
      (bolt.p.part === 'bolt' ? items[i + 1] : items.slice(i + 1).find((o) => o.k !== 'filler'))?.k === 'sign'
    ) {
      out.length = at + 1;
      out[at] = { ...bolt, spans: [...bolt.spans, item.span], span: [bolt.span[0], item.span[1]] };
    } else out.push(item);
  });
  return out;
};

export const joinNeighbours = (raw: readonly Settled[]): Settled[] => {
  const out: Settled[] = [];
  for (const item of raw)
    if (item.k === 'wheel') addWheel(out, item);
    else if (item.k === 'place') addPlace(out, item, raw);
    else out.push(item);
  return heldBy(out);
};
