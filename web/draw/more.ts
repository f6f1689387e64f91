/** The drawings that few replies hold, fetched with the first of them. `says`: the same in words, for who cannot see it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';
import { bracket } from './bracket.ts';
import { chart } from './chart.ts';
import { circuit } from './circuit.ts';
import { coachPlan } from './coach-plan.ts';
import { legs } from './legs.ts';
import { valvePorts } from './valve-ports.ts';

export type FewDrawing = Exclude<Drawing, { is: 'strip' }>;

export const drawMore = (d: FewDrawing, says: string): TemplateResult | typeof nothing => {
  switch (d.is) {
    case 'chart':
      return d.points.length === 0 ? nothing : html`${chart(d, says)}`;
    case 'plan':
      return html`${coachPlan(d, says)}`;
    case 'bracket':
      return html`${bracket(d, says)}`;
    case 'legs':
      return html`${legs(d, says)}`;
    case 'valve':
      return html`${valvePorts(d, says)}`;
    case 'circuit': {
      const panel = d.panel ?? [...d.lit, ...d.joined].some((p) => p.includes('panel'));
      return html`${circuit({ lit: d.lit.map((part) => ({ part, p: 1 })), joined: d.joined, panel, texts: new Map(), tap: null }, says)}`;
    }
  }
};
