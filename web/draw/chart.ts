/** A reading over time: points with their whiskers, the fitted line, limits as dashed lines with their names. */
import { svg, type SVGTemplateResult } from 'lit';
import type { Drawing } from '../../server/findings/finding.ts';
import { tapeInches } from '../../server/core/amount.ts';
import { fromSi, stepFromSi } from '../../server/core/units.ts';
import { marks, scale, stepFor } from './scale.ts';

export type Chart = Extract<Drawing, { is: 'chart' }>;

const width = 320;
const height = 184;
const left = 54;
const right = 10;
const top = 26;
const foot = 30;

/** Time axis: seconds, minutes, hours or days, whichever keeps the numbers short. */
export const timeUnit = (seconds: number): { name: string; per: number } =>
  seconds <= 180
    ? { name: 's', per: 1 }
    : seconds <= 3 * 3600
      ? { name: 'min', per: 60 }
      : seconds <= 72 * 3600
        ? { name: 'h', per: 3600 }
        : { name: 'days', per: 86_400 };

export type ChartPlan = {
  x: { at: number; label: string }[];
  y: { at: number; label: string }[];
  points: { x: number; y: number; low: number; high: number }[];
  fit: string;
  limits: { y: number; label: string; above: boolean; side: 'left' | 'right' }[];
  unit: string;
  time: string;
};

type Spot = { x: number; y: number };
/** The name of each limit beside its line: outside a pair of them, so that it is clear whose it is, and off the readings. */
const named = (limits: readonly { y: number; label: string }[], points: readonly Spot[]): ChartPlan['limits'] => {
  const middle = limits.reduce((sum, l) => sum + l.y, 0) / limits.length;
  return limits.map((l) => {
    const fits = (above: boolean): boolean => (above ? l.y > top + 8 : l.y < height - foot - 16);
    const outside = limits.length < 2 || l.y <= middle;
    const spots = [outside, !outside]
      .filter(fits)
      .flatMap((above) => (['right', 'left'] as const).map((side) => ({ above, side })));
    const crossed = ({ above, side }: (typeof spots)[number]): number =>
      points.filter(
        (p) =>
          (side === 'right' ? p.x > width - right - 96 : p.x < left + 96) &&
          Math.abs(p.y - (above ? l.y - 9 : l.y + 10)) < 16,
      ).length;
    const best = spots.toSorted((a, b) => crossed(a) - crossed(b))[0] ?? { above: true, side: 'right' as const };
    return { ...l, ...best };
  });
};

export const planChart = (d: Chart): ChartPlan => {
  const value = (si: number): number => fromSi(si, d.unit);
  const values = [
    ...d.points.flatMap((p) => [value(p.si) - stepFromSi(p.pm, d.unit), value(p.si) + stepFromSi(p.pm, d.unit)]),
    ...d.fit.map((p) => value(p.si)),
    ...d.limits.map((l) => value(l.si)),
  ];
  const times = [...d.points.map((p) => p.t), ...d.fit.map((p) => p.t), 0];
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = Math.max((high - low) * 0.1, Math.abs(high) * 0.002, 1e-9);
  const y = scale(low - room, high + room, height - foot, top);
  const unit = timeUnit(Math.max(...times) - Math.min(...times));
  const x = scale(Math.min(...times) / unit.per, Math.max(...times) / unit.per || 1, left + 8, width - right - 8);
  const yStep = stepFor(y.to - y.from, 4, d.unit === 'in');
  const xStep =
    unit.name === 'min' && x.to > 20 ? Math.max(5, stepFor(x.to - x.from, 5, false)) : stepFor(x.to - x.from, 5, false);
  const digits = Math.max(0, Math.ceil(-Math.log10(yStep) - 1e-9));
  const xDigits = Math.max(0, Math.ceil(-Math.log10(xStep) - 1e-9));
  return {
    x: marks(x.from, x.to, xStep).map((v, i, all) => ({
      at: x.at(v),
      label: `${v.toFixed(xDigits)}${i === all.length - 1 ? ` ${unit.name}` : ''}`,
    })),
    y: marks(y.from, y.to, yStep).map((v) => ({
      at: y.at(v),
      label: d.unit === 'in' ? tapeInches(v, 32) : v.toFixed(digits),
    })),
    points: d.points.map((p) => ({
      x: x.at(p.t / unit.per),
      y: y.at(value(p.si)),
      low: y.at(value(p.si) - stepFromSi(p.pm, d.unit)),
      high: y.at(value(p.si) + stepFromSi(p.pm, d.unit)),
    })),
    fit: d.fit
      .map((p, i) => `${i === 0 ? 'M' : 'L'}${x.at(p.t / unit.per).toFixed(1)} ${y.at(value(p.si)).toFixed(1)}`)
      .join(''),
    limits: named(
      d.limits.map((l) => ({ y: y.at(value(l.si)), label: l.label })),
      d.points.map((p) => ({ x: x.at(p.t / unit.per), y: y.at(value(p.si)) })),
    ),
    unit: d.unit,
    time: unit.name,
  };
};

export const chart = (d: Chart, says: string): SVGTemplateResult => {
  const p = planChart(d);
  return svg`<svg class="drawing chart" viewBox="0 0 ${width} ${height}" role="img" aria-label=${says}>
    ${p.y.map((t) => svg`<path class="grid" d="M${left} ${t.at}H${width - right}" /><text x=${left - 6} y=${t.at + 5} text-anchor="end">${t.label}</text>`)}
    ${p.x.map((t) => svg`<path class="axis" d="M${t.at} ${height - foot}v5" /><text x=${t.at} y=${height - foot + 19} text-anchor="middle">${t.label}</text>`)}
    <path class="axis" d="M${left} ${top - 8}V${height - foot}H${width - right}" />
    <text class="small strong" x="2" y="12">${p.unit}</text>
    ${p.limits.map((l) => svg`<path class="limit" d="M${left} ${l.y}H${width - right}" /><text class="small strong halo" x=${l.side === 'right' ? width - right - 4 : left + 6} y=${l.above ? l.y - 5 : l.y + 15} text-anchor=${l.side === 'right' ? 'end' : 'start'}>${l.label}</text>`)}
    ${p.fit === '' ? null : svg`<path class="fit" d=${p.fit} />`}
    ${p.points.map((q) => svg`<path class="whisker" d="M${q.x - 4} ${q.high}h8M${q.x} ${q.high}V${q.low}M${q.x - 4} ${q.low}h8" /><circle class="dot" cx=${q.x} cy=${q.y} r="4.5" />`)}
  </svg>`;
};
