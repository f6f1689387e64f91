/** An arm bracket with its bolts, and the shims to add or take out at each: a stack drawn to the thickness. */
import { svg, type SVGTemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';

export type Bracket = Extract<Drawing, { is: 'bracket' }>;

export const bracket = (d: Bracket, says: string): SVGTemplateResult => {
  const row = 46;
  const height = d.shims.length * row + 16;
  const most = Math.max(...d.shims.map((s) => Math.abs(s.si)), 1e-6);
  return svg`<svg class="drawing bracket" viewBox="0 0 300 ${height}" role="img" aria-label=${says}>
    <rect class="body" x="4" y="4" width="22" height=${height - 8} />
    ${d.shims.map((s, i) => {
      const y = 8 + i * row;
      const wide = (Math.abs(s.si) / most) * 46;
      return svg`<g>
        <rect class=${s.si < 0 ? 'take-out' : 'shim'} x="28" y=${y + 4} width=${wide} height="30" />
        <rect class="body" x=${28 + (s.si > 0 ? wide : 0) + 2} y=${y + 8} width="14" height="22" />
        <text class="value" x="112" y=${y + 17}>${s.text}</text>
        <text x="112" y=${y + 34}>${s.bolt}</text>
      </g>`;
    })}
  </svg>`;
};
