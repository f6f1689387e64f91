/**
 * The one drawing for every number: a strip of tape with a window for the limits, a pin for each reading and whiskers
 * for its resolution. Shape carries all of it, so it prints in one colour.
 */
import { svg, type SVGTemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';
import { tapeInches } from '../../server/core/amount.ts';
import { limitText } from '../../server/core/limit-text.ts';
import { fromSi, stepFromSi } from '../../server/core/units.ts';
import { marks, scale, stepFor } from './scale.ts';

export type Strip = Extract<Drawing, { is: 'strip' }>;

const width = 290;
const edge = 12;

export type StripPlan = {
  /** The limits themselves, written just outside the window. */
  edges: { x: number; label: string; anchor: 'start' | 'end' }[];
  ticks: { x: number; tall: 0 | 1 | 2; label: string }[];
  window: { x0: number; x1: number; openLeft: boolean; openRight: boolean } | null;
  nominal: number | null;
  pins: { x: number; left: number; right: number; label: string; row: number; textX: number }[];
  rows: number;
};

/** A digit of a limit's label, px. */
const digit = 8;
const plainText = (text: string, unit: Strip['unit']): string => text.replace(` ${unit}`, '');

/** Where everything stands, in pixels; a limit open to one side runs off the tape. */
export const planStrip = (d: Strip): StripPlan => {
  const value = (si: number): number => fromSi(si, d.unit);
  const pins = d.pins.map((p) => ({ v: value(p.si), pm: Math.abs(stepFromSi(p.pm, d.unit)), label: p.label }));
  const seen = [
    ...pins.flatMap((p) => [p.v - p.pm, p.v + p.pm]),
    ...[d.low, d.high, d.nominal].flatMap((v) => (v === undefined ? [] : [value(v)])),
  ];
  const low = Math.min(...seen);
  const high = Math.max(...seen);
  const inches = d.unit === 'in';
  const room = Math.max((high - low) * 0.28, inches ? 0.25 : Math.max(Math.abs(high) * 0.02, 1e-9));
  const limits = {
    low:
      d.low === undefined ? null : { v: value(d.low), label: plainText(d.lowText ?? limitText(d.low, d.unit), d.unit) },
    high:
      d.high === undefined
        ? null
        : { v: value(d.high), label: plainText(d.highText ?? limitText(d.high, d.unit), d.unit) },
  };
  // as much tape on either side as the label outside the window needs
  const lowWide = limits.low ? limits.low.label.length * digit + 8 : 0;
  const highWide = limits.high ? limits.high.label.length * digit + 8 : 0;
  const share = (px: number): number => Math.max(0, px - edge) / (width - 2 * edge);
  let [from, to] = [low - room, high + room];
  for (let n = 0; n < 60; n += 1) {
    const left = limits.low ? limits.low.v - from >= share(lowWide) * (to - from) : true;
    const right = limits.high ? to - limits.high.v >= share(highWide) * (to - from) : true;
    if (left && right) break;
    const more = (to - from) * 0.05;
    if (!left) from -= more;
    if (!right) to += more;
  }
  const x = scale(from, to, edge, width - edge);
  const fine = stepFor(to - from, 24, inches);
  const big = stepFor(to - from, 5, inches);
  const digits = Math.max(0, Math.ceil(-Math.log10(big) - 1e-9));
  const isBig = (v: number): boolean => Math.abs(v / big - Math.round(v / big)) < 1e-6;
  const isHalf = (v: number): boolean => Math.abs((v * 2) / big - Math.round((v * 2) / big)) < 1e-6;
  const ticks = marks(from, to, fine).map((v) => ({
    x: x.at(v),
    tall: isBig(v) ? (2 as const) : isHalf(v) ? (1 as const) : (0 as const),
    label: isBig(v) && x.at(v) > 22 && x.at(v) < width - 22 ? (inches ? tapeInches(v, 32) : v.toFixed(digits)) : '',
  }));
  const edges: StripPlan['edges'] = [
    ...(limits.low ? [{ x: x.at(limits.low.v) - 5, label: limits.low.label, anchor: 'end' as const }] : []),
    ...(limits.high ? [{ x: x.at(limits.high.v) + 5, label: limits.high.label, anchor: 'start' as const }] : []),
  ];
  const taken = edges.map((e) => {
    const wide = e.label.length * digit;
    return e.anchor === 'end' ? ([e.x - wide, e.x + 8] as const) : ([e.x - 8, e.x + wide] as const);
  });
  for (const t of ticks) {
    const half = t.label.length * 4;
    if (taken.some(([a, b]) => t.x + half + 3 > a && t.x - half - 3 < b)) t.label = '';
  }
  let rows = 1;
  const ends: number[] = [];
  const placed = pins
    .toSorted((a, b) => a.v - b.v)
    .map((p) => {
      const half = (p.label.length * 8.6) / 2;
      const textX = Math.min(Math.max(x.at(p.v), edge + half - 8), width - edge - half + 8);
      let row = 0;
      while ((ends[row] ?? -1e9) > textX - half - 6) row += 1;
      ends[row] = textX + half;
      rows = Math.max(rows, row + 1);
      return { x: x.at(p.v), left: x.at(p.v - p.pm), right: x.at(p.v + p.pm), label: p.label, row, textX };
    });
  return {
    edges,
    ticks,
    window:
      d.low === undefined && d.high === undefined
        ? null
        : {
            x0: d.low === undefined ? 2 : x.at(value(d.low)),
            x1: d.high === undefined ? width - 2 : x.at(value(d.high)),
            openLeft: d.low === undefined,
            openRight: d.high === undefined,
          },
    nominal: d.nominal === undefined ? null : x.at(value(d.nominal)),
    pins: placed,
    rows,
  };
};

export const strip = (d: Strip, says: string): SVGTemplateResult => {
  const p = planStrip(d);
  const labels = p.rows * 19;
  const tip = labels + 20;
  const top = tip + 10;
  const tall = 34;
  const unitY = top + tall;
  return svg`<svg class="drawing strip" viewBox="0 0 ${width} ${unitY + 4}" role="img" aria-label=${says}>
    <rect class="tape" x="1" y=${top} width=${width - 2} height=${tall} />
    ${p.window ? svg`<rect class="window" x=${p.window.x0} y=${top - 9} width=${Math.max(2, p.window.x1 - p.window.x0)} height=${tall + 9} />` : null}
    ${p.ticks.map((t) => svg`<path class="tick" d="M${t.x} ${top}v${[6, 9, 13][t.tall] ?? 6}" />`)}
    ${p.ticks.map((t) => (t.label ? svg`<text class="mark" x=${t.x} y=${top + tall - 6} text-anchor="middle">${t.label}</text>` : null))}
    ${p.edges.map((e) => svg`<text class="edge" x=${e.x} y=${top + tall - 6} text-anchor=${e.anchor}>${e.label}</text>`)}
    ${
      p.window
        ? svg`<path class="limits" d=${[
            p.window.openLeft ? `M${p.window.x0} ${top - 9}` : `M${p.window.x0} ${top + tall}V${top - 9}`,
            `H${p.window.x1}`,
            p.window.openRight ? '' : `V${top + tall}`,
          ].join('')} />`
        : null
    }
    ${p.nominal === null ? null : svg`<path class="nominal" d="M${p.nominal} ${top - 9}v9" />`}
    ${p.pins.map((pin) => {
      const base = labels - (p.rows - 1 - pin.row) * 0 + 2;
      return svg`<g class="pin">
        ${p.rows > 1 ? svg`<path class="lead" d="M${pin.textX} ${(pin.row + 1) * 19 - 2}L${pin.x} ${base + 2}" />` : null}
        <path class="whisker" d="M${pin.left} ${tip + 1}v8M${pin.left} ${tip + 5}H${pin.right}M${pin.right} ${tip + 1}v8" />
        <path class="point" d="M${pin.x} ${top + 1}l-8 -20h16z" />
        <text class="value" x=${pin.textX} y=${(pin.row + 1) * 19 - 4} text-anchor="middle">${pin.label}</text>
      </g>`;
    })}
  </svg>`;
};
