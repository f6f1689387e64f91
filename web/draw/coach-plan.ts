/** The coach from above with its corner heights: a corner off its limit by an arrow and its amount. */
import { svg, type SVGTemplateResult } from 'lit';
import { takePlace } from '../../intents/place.ts';
import { showAmount } from '../../server/core/amount.ts';
import type { Drawing } from '../../server/findings/finding.ts';

export type Plan = Extract<Drawing, { is: 'plan' }>;

/** Outline of the coach, front at the top; wheels, one in front, two of the tandem behind. */
const outline = 'M100 8h100q14 0 16 16v226h-132v-226q2-16 16-16z';
const wheels: readonly (readonly [number, number])[] = [
  [76, 44],
  [212, 44],
  [76, 178],
  [212, 178],
  [76, 214],
  [212, 214],
];

export const coachPlan = (d: Plan, says: string): SVGTemplateResult =>
  svg`<svg class="drawing coach-plan" viewBox="-28 0 356 ${262 + d.notes.length * 18}" role="img" aria-label=${says}>
    <path class="body" d=${outline} />
    <path class="grid" d="M100 30h100" />
    <text class="small" x="150" y="24" text-anchor="middle">front</text>
    ${wheels.map(([x, y]) => svg`<rect class="wheel" x=${x} y=${y} width="12" height="28" rx="3" />`)}
    ${d.corners.map((c) => {
      const at = takePlace(c.where);
      const isLeft = at?.side === 'left';
      const x = isLeft ? 68 : 232;
      const y = at?.end === 'front' ? 56 : 206;
      const off = c.off ?? 0;
      const mark = c.off === undefined || off === 0 ? '' : off < 0 ? '▼' : '▲';
      const offText = c.off === undefined || off === 0 ? '' : showAmount(Math.abs(off), d.unit, 0, true);
      return svg`<g>
        <text class="value" x=${x} y=${y} text-anchor=${isLeft ? 'end' : 'start'}>${c.text}</text>
        ${mark === '' ? null : svg`<text x=${x} y=${y + 19} text-anchor=${isLeft ? 'end' : 'start'}>${mark} ${offText} ${off < 0 ? 'low' : 'high'}</text>`}
      </g>`;
    })}
    ${d.notes.map((n, i) => svg`<text class="small" x="150" y=${268 + i * 18} text-anchor="middle">${n}</text>`)}
  </svg>`;
