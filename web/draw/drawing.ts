/** A drawing of a reply by its kind. `says`: the same in words, for who cannot see it. */
import { html, type TemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';
import { strip } from './strip.ts';

export const drawing = (d: Drawing, says: string): TemplateResult => {
  switch (d.is) {
    case 'strip':
      return d.pins.length === 0 && d.low === undefined && d.high === undefined ? html`` : html`${strip(d, says)}`;
    case 'chart':
    case 'plan':
    case 'bracket':
    case 'legs':
    case 'circuit':
      return html`<p>${says}</p>`;
  }
};
