/**
 * The air circuit, pump to bellows, one branch a side. Parts that are suspect are filled, joined volumes hatched; parts
 * with a reading carry it. On the board each part is a key that writes its place.
 */
import { svg, type SVGTemplateResult } from 'lit';

export type CircuitView = {
  /** Parts or places lit, with how likely (1: just lit). */
  lit: readonly { part: string; p: number }[];
  joined: readonly string[];
  panel: boolean;
  /** Readings to write on parts, by place. */
  texts: ReadonlyMap<string, string>;
  /** A tap on a part; null: a picture only. */
  tap: ((place: string) => void) | null;
};

type Box = { place: string; label: string; x: number; y: number; w: number; h: number };
type Pipe = { place: string; d: string };

const w = 320;

/** Parts on the sheet of the drawing; y grows towards the bellows. */
export const circuitParts = (panel: boolean): { boxes: Box[]; pipes: Pipe[]; height: number } => {
  const low = panel ? 0 : -52;
  const boxes: Box[] = [
    { place: 'pump', label: 'pump', x: 6, y: 8, w: 82, h: 44 },
    { place: 'check valve', label: 'check', x: 118, y: 12, w: 64, h: 36 },
    { place: 'tank', label: 'tank', x: 212, y: 4, w: 102, h: 52 },
  ];
  const pipes: Pipe[] = [
    { place: 'discharge line', d: 'M88 30H118' },
    { place: 'supply line', d: 'M182 30H212' },
    { place: 'supply line', d: `M263 56V76H80V92M240 76V92` },
  ];
  for (const [side, x] of [
    ['left', 12],
    ['right', 172],
  ] as const) {
    boxes.push({ place: `${side} height valve`, label: 'height valve', x, y: 92, w: 136, h: 44 });
    if (panel) boxes.push({ place: `${side} panel`, label: 'panel', x: x + 22, y: 156, w: 92, h: 34 });
    boxes.push({ place: `${side} bellows`, label: `${side} bellows`, x, y: 214 + low, w: 136, h: 60 });
    pipes.push({ place: `${side} ${panel ? 'valve to panel line' : 'bellows line'}`, d: `M${x + 68} 136V156` });
    pipes.push({ place: `${side} bellows line`, d: `M${x + 68} ${panel ? 190 : 136}V${214 + low}` });
  }
  return { boxes, pipes, height: 282 + low };
};

/** "left bellows crimp" lights the left bellows; a part of the pump lights the pump; the rest is listed beside it. */
export const litPlace = (part: string, places: readonly string[]): string | null => {
  if (places.includes(part)) return part;
  const side = /^(left|right) /.exec(part)?.[0] ?? '';
  const bare = part.slice(side.length);
  const family: readonly (readonly [RegExp, string])[] = [
    [/^(bellows line|line)$/, 'bellows line'],
    [/^(bellows|bead plate|piston)/, 'bellows'],
    [/^(height valve|valve cover|inlet|exhaust|link|arm)/, 'height valve'],
    [/^(panel)/, 'panel'],
    [/^(tank|drain|relief|gauge|test port|protection valve)/, 'tank'],
    [/^(pump|motor|intake filter|unloader|reeds|rings|brushes)/, 'pump'],
    [/^(check valve|discharge check)/, 'check valve'],
    [/^(discharge line)/, 'discharge line'],
    [/^(supply line|dryer)/, 'supply line'],
  ];
  const found = family.find(([form]) => form.test(bare))?.[1];
  if (found === undefined) return null;
  const whole = `${side}${found}`;
  return places.includes(whole) ? whole : places.includes(found) ? found : null;
};

export const circuit = (v: CircuitView, says: string): SVGTemplateResult => {
  const { boxes, pipes, height } = circuitParts(v.panel);
  const places = [...new Set([...boxes, ...pipes].map((b) => b.place))];
  const lit = new Map<string, number>();
  for (const l of v.lit) {
    const place = litPlace(l.part, places);
    if (place !== null) lit.set(place, Math.max(lit.get(place) ?? 0, l.p));
  }
  const joined = new Set(v.joined.map((j) => litPlace(j, places)).filter((j) => j !== null));
  const tap = v.tap;
  return svg`<svg class="drawing circuit" viewBox="0 0 ${w} ${height}" role=${tap === null ? 'img' : 'group'} aria-label=${says}>
    <defs>
      <pattern id="joined" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect class="hatch-ground" width="7" height="7" /><path class="hatch" d="M0 0v7" />
      </pattern>
    </defs>
    ${pipes.map((p) => svg`<path class="pipe ${joined.has(p.place) ? 'joined' : ''} ${lit.has(p.place) ? 'lit' : ''}" d=${p.d} />`)}
    ${boxes.map((b) => {
      const p = lit.get(b.place);
      const text = v.texts.get(b.place);
      const state = `${p === undefined ? '' : 'lit'} ${joined.has(b.place) ? 'joined' : ''}`;
      const name = `${b.place}${text === undefined ? '' : `, ${text}`}${p === undefined ? '' : ', suspect'}`;
      const middle = b.y + b.h / 2 + 5;
      const inside = svg`<rect class="part ${state}" x=${b.x} y=${b.y} width=${b.w} height=${b.h} rx=${b.place.endsWith('bellows') ? 14 : 2} />
        ${p === undefined ? null : svg`<path class="flag" d=${b.place.endsWith('bellows') ? `M${b.x + b.w - 30} ${b.y}h16q14 0 14 14v16z` : `M${b.x + b.w - 20} ${b.y}h20v20z`} />`}
        <text class="part-name" x=${b.x + b.w / 2} y=${text === undefined ? middle : middle - 9} text-anchor="middle">${b.label}</text>
        ${text === undefined ? null : svg`<text class="value" x=${b.x + b.w / 2} y=${middle + 10} text-anchor="middle">${text}</text>`}`;
      return tap === null
        ? svg`<g>${inside}</g>`
        : svg`<g class="tap" role="button" tabindex="0" aria-label=${name} @click=${() => tap(b.place)}
            @keydown=${(e: KeyboardEvent) => {
              if (e.key === 'Enter' || e.key === ' ') {
                e.preventDefault();
                tap(b.place);
              }
            }}>${inside}</g>`;
    })}
  </svg>`;
};
