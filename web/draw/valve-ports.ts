/**
 * A height valve on the bench: its ports by name, a heavy arrow where air is put on, the arm as it is pinned, and rings
 * of bubbles where to look. Told apart by weight and shape, never by colour.
 */
import { svg, type SVGTemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';

export type ValvePorts = Extract<Drawing, { is: 'valve' }>;

type Port = ValvePorts['watch'][number];
/** Mouth of each port, and where its name stands; the drawing is ours and shows no maker's valve. */
const ports: Readonly<
  Record<Port, { x: number; y: number; nameX: number; nameY: number; anchor: 'start' | 'middle' | 'end'; pipe: string }>
> = {
  'inlet port': { x: 66, y: 112, nameX: 2, nameY: 150, anchor: 'start', pipe: 'M66 112H112' },
  'bellows port': { x: 254, y: 112, nameX: 318, nameY: 150, anchor: 'end', pipe: 'M208 112H254' },
  'exhaust port': { x: 160, y: 190, nameX: 186, nameY: 196, anchor: 'start', pipe: 'M160 148V190' },
  cover: { x: 112, y: 62, nameX: 84, nameY: 48, anchor: 'end', pipe: '' },
};

const armEnd: Readonly<Record<ValvePorts['arm'], readonly [x: number, y: number]>> = {
  neutral: [292, 66],
  fill: [278, 22],
  exhaust: [240, 92],
};

const bubbles = (x: number, y: number): SVGTemplateResult => svg`<g>
  <circle class="node" cx=${x - 9} cy=${y - 4} r="5" /><circle class="node" cx=${x + 2} cy=${y - 13} r="7" />
  <circle class="node" cx=${x + 12} cy=${y - 2} r="4" />
</g>`;

export const valvePorts = (d: ValvePorts, says: string): SVGTemplateResult => {
  const names = Object.keys(ports) as Port[];
  const airAt = d.airOn === 'inlet' ? 'inlet port' : 'bellows port';
  const inward = airAt === 'inlet port' ? 'M6 112H52M52 112l-14 -9v18z' : 'M314 112H268M268 112l14 -9v18z';
  const [ax, ay] = armEnd[d.arm];
  return svg`<svg class="drawing valve-ports" viewBox="0 0 320 212" role="img" aria-label=${says}>
    ${names.map((n) => svg`<path class="pipe" d=${ports[n].pipe} />`)}
    <rect class="part" x="112" y="76" width="96" height="72" rx="2" />
    <rect class="part" x="118" y="62" width="84" height="14" />
    <text x="160" y="120" text-anchor="middle">valve</text>
    <path class="leg guilty" d="M180 66L${ax} ${ay}" />
    <circle class="node" cx="180" cy="66" r="7" />
    <text class="strong" x="318" y="14" text-anchor="end">arm: ${d.arm}</text>
    <path class="leg guilty" d=${inward} />
    <text class="strong" x=${airAt === 'inlet port' ? 2 : 318} y="88" text-anchor=${airAt === 'inlet port' ? 'start' : 'end'}>air on</text>
    ${names.map((n) => {
      const p = ports[n];
      const watched = d.watch.includes(n);
      return svg`<g>
        ${watched ? bubbles(p.x, p.y - 2) : null}
        <text class=${watched ? 'strong' : ''} x=${p.nameX} y=${p.nameY} text-anchor=${p.anchor}>${n}${watched ? '?' : ''}</text>
      </g>`;
    })}
  </svg>`;
};
