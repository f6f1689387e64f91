/** A drawing of a reply by its kind. `says`: the same in words, for who cannot see it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';
import { bracket } from './bracket.ts';
import { chart } from './chart.ts';
import { circuit } from './circuit.ts';
import { coachPlan } from './coach-plan.ts';
import { legs } from './legs.ts';
import { strip } from './strip.ts';

export const drawing = (d: Drawing, says: string): TemplateResult | typeof nothing => {
  switch (d.is) {
    case 'strip':
      return d.pins.length === 0 && d.low === undefined && d.high === undefined ? nothing : html`${strip(d, says)}`;
    case 'chart':
      return d.points.length === 0 ? nothing : html`${chart(d, says)}`;
    case 'plan':
      return html`${coachPlan(d, says)}`;
    case 'bracket':
      return html`${bracket(d, says)}`;
    case 'legs':
      return html`${legs(d, says)}`;
    case 'circuit': {
      const panel = [...d.lit, ...d.joined].some((p) => p.includes('panel'));
      return html`${circuit({ lit: d.lit.map((part) => ({ part, p: 1 })), joined: d.joined, panel, texts: new Map(), tap: null }, says)}`;
    }
  }
};
