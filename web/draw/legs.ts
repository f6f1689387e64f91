/** An electric circuit leg by leg, battery to ground; the guilty leg heavy and named, what it loses under its name. */
import { svg, type SVGTemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';

export type Legs = Extract<Drawing, { is: 'legs' }>;

export const legs = (d: Legs, says: string): SVGTemplateResult => {
  const row = 52;
  const height = d.legs.length * row + 18;
  return svg`<svg class="drawing legs" viewBox="0 0 300 ${height}" role="img" aria-label=${says}>
    ${d.legs.map((l, i) => {
      const y = 10 + i * row;
      return svg`<g>
        <path class=${l.guilty ? 'leg guilty' : 'leg'} d="M18 ${y}V${y + row}" />
        <circle class="node" cx="18" cy=${y} r="6" />
        <text class=${l.guilty ? 'strong' : ''} x="40" y=${y + row / 2 - 3}>${l.guilty ? '▶ ' : ''}${l.name}</text>
        <text class="value" x="40" y=${y + row / 2 + 17}>${l.text}</text>
      </g>`;
    })}
    <circle class="node" cx="18" cy=${10 + d.legs.length * row} r="6" />
  </svg>`;
};
