/** "off" after a part: a cover or filter was taken off, a line or link came off. */
import type { Settled } from './settled.ts';

/** What comes off whole: off, it is disconnected. */
export const offable: ReadonlySet<string> = new Set([
  'line',
  'bellows line',
  'supply line',
  'gauge line',
  'discharge line',
  'link',
  'fitting',
  'ground',
  'feed cable',
  'valve to panel line',
  'arm',
]);

/** Gives such a word its meaning where it stands. */
export const takenOff = (out: Settled[]): void => {
  out.forEach((item, i) => {
    // "filter off: 0 to 90 in 4 min"
    const before = out[i - 1];
    if (
      'phrase' in item &&
      item.phrase === 'off' &&
      before?.k === 'place' &&
      ['intake filter', 'valve cover', 'pump head'].includes(before.p.part ?? '') &&
      out[i + 1]?.k !== 'num'
    ) {
      out[i] = { k: 'work', v: 'removed', span: item.span, phrase: 'off' };
      return;
    }
    // "air line off at lh bag": what is off is disconnected
    const prev = out[i - 1];
    if (
      !out.slice(0, i).some((o) => o.k === 'work' && / off$|^(?:took|taken|pulled|have|had)\b/.test(o.phrase)) &&
      (((item.k === 'filler' || item.k === 'prep') && item.phrase === 'off') ||
        (item.k === 'measure' && item.phrase === 'off at')) &&
      prev?.k === 'place' &&
      offable.has(prev.p.part ?? '') &&
      out[i + 1]?.k !== 'num'
    )
      out[i] = { k: 'sign', v: 'disconnected', span: item.span, phrase: 'off' };
  });
};
