/** A drawing of a reply by its kind: the strip is here from the start, the rest comes when the first is wanted. */
import { html, nothing, type TemplateResult } from 'lit';
import { until } from 'lit/directives/until.js';
import type { Drawing } from '../../server/findings/finding.ts';
import { strip } from './strip.ts';

type More = typeof import('./more.ts');
let here: More | null = null;
let coming: Promise<More | null> | null = null;

const more = (): Promise<More | null> => {
  coming ??= import('./more.ts').then(
    (m) => {
      here = m;
      return m;
    },
    () => {
      // not reached: asked for again with the next drawing
      coming = null;
      return null;
    },
  );
  return coming;
};

/** `says`: the same in words, for who cannot see it and while the drawing is not here. */
export const drawing = (d: Drawing, says: string): TemplateResult | typeof nothing => {
  if (d.is === 'strip')
    return d.pins.length === 0 && d.low === undefined && d.high === undefined ? nothing : html`${strip(d, says)}`;
  if (here) return here.drawMore(d, says);
  return html`${until(
    more().then((m) => m?.drawMore(d, says) ?? html`<p class="soft">${says}</p>`),
    nothing,
  )}`;
};
