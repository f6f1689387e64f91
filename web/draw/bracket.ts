/**
 * An arm's bracket seen square on, its four bolts where they stand, front at the left: at each the shims to add, or to take
 * out, as a stack drawn to the thickness; a bolt that gets none is an empty ring.
 */
import { svg, type SVGTemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';

export type Bracket = Extract<Drawing, { is: 'bracket' }>;

const bolts: readonly (readonly [bolt: string, x: number, y: number])[] = [
  ['front top', 92, 52],
  ['rear top', 216, 52],
  ['front bottom', 92, 152],
  ['rear bottom', 216, 152],
];
/** The thickest stack, px. */
const thickest = 34;
const line = 19;
/** "1/16 in + 1/64 in" one shim under the other: side by side they run into the next bolt's. */
const shimLines = (text: string): string[] =>
  text.split(' + ').map((shim, i, all) => (i < all.length - 1 ? `${shim} +` : shim));

export const bracket = (d: Bracket, says: string): SVGTemplateResult => {
  const most = Math.max(...d.shims.map((s) => Math.abs(s.si)), 1e-6);
  const lines = Math.max(1, ...d.shims.map((s) => shimLines(s.text).length));
  const tall = 172 + lines * line;
  return svg`<svg class="drawing bracket" viewBox="0 0 300 ${tall + 8}" role="img" aria-label=${says}>
    <rect class="body" x="8" y="20" width="284" height=${tall - 18} rx="6" />
    <text class="small" x="14" y="14">front</text>
    <text class="small" x="286" y="14" text-anchor="end">rear</text>
    <text class="small" x="14" y="57">top</text>
    <text class="small" x="14" y="157">bottom</text>
    ${bolts.map(([bolt, x, y]) => {
      const shim = d.shims.find((s) => s.bolt === bolt);
      const wide = shim ? Math.max(4, (Math.abs(shim.si) / most) * thickest) : 0;
      return svg`<g>
        <circle class="node" cx=${x} cy=${y} r="8" />
        ${shim ? svg`<rect class=${shim.si < 0 ? 'take-out' : 'shim'} x=${x + 12} y=${y - 13} width=${wide} height="26" />` : null}
        ${(shim ? shimLines(shim.text) : ['none']).map(
          (words, i) =>
            svg`<text class=${shim ? 'value' : 'small'} x=${x} y=${y + 33 + i * line} text-anchor="middle">${words}</text>`,
        )}
      </g>`;
    })}
  </svg>`;
};
