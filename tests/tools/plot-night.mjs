/** node tests/tools/plot-night.mjs : draws fixtures/pictures/night.svg, a night of the simulated coach under five faults. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { build } from 'vite';

const root = new URL('../../', import.meta.url).pathname;
const out = `${root}node_modules/.cache/soapwater/`;
await build({
  configFile: false,
  root,
  logLevel: 'error',
  build: {
    ssr: 'tests/tools/plot-entry.ts',
    outDir: out,
    emptyOutDir: false,
    rollupOptions: { output: { entryFileNames: 'plot-entry.mjs' } },
  },
});
const { nights, hours } = await import(`${out}plot-entry.mjs`);
const { lines, p } = nights((path) => readFileSync(root + path, 'utf8'));

const psi = 6894.757;
const inch = 0.0254;
const width = 840;
const left = 58;
const right = 20;
const plotWidth = width - left - right;
// Colours of Okabe and Ito, and a dash each, so that a copy in grey still tells them apart.
const strokes = [
  ['#0072b2', ''],
  ['#d55e00', '9 4'],
  ['#009e73', '2 4'],
  ['#cc79a7', '12 4 2 4'],
  ['#000000', '5 3'],
];
const x = (t) => left + (t / (hours * 3600)) * plotWidth;
const round = (v) => v.toFixed(1);

/** One panel: axis, grid and a curve for each fault. */
const panel = (top, height, low, high, step, title, value, marks) => {
  const y = (v) => top + height - ((v - low) / (high - low)) * height;
  const parts = [`<text x="${left}" y="${top - 10}" font-weight="600">${title}</text>`];
  for (let v = low; v <= high + 1e-9; v += step)
    parts.push(
      `<line x1="${left}" x2="${width - right}" y1="${round(y(v))}" y2="${round(y(v))}" stroke="#ddd"/>`,
      `<text x="${left - 8}" y="${round(y(v) + 4)}" text-anchor="end">${v}</text>`,
    );
  for (let h = 0; h <= hours; h += 2)
    parts.push(
      `<line x1="${round(x(h * 3600))}" x2="${round(x(h * 3600))}" y1="${top}" y2="${top + height}" stroke="#eee"/>`,
      `<text x="${round(x(h * 3600))}" y="${top + height + 17}" text-anchor="middle">${h} h</text>`,
    );
  for (const [at, label] of marks)
    parts.push(
      `<line x1="${left}" x2="${width - right}" y1="${round(y(at))}" y2="${round(y(at))}" stroke="#888" stroke-dasharray="1 3"/>`,
      `<text x="${width - right - 4}" y="${round(y(at) - 5)}" text-anchor="end" fill="#555">${label}</text>`,
    );
  for (const [i, line] of lines.entries()) {
    const d = line.points.map((pt, k) => `${k === 0 ? 'M' : 'L'}${round(x(pt.t))} ${round(y(value(pt)))}`).join('');
    parts.push(
      `<path d="${d}" fill="none" stroke="${strokes[i][0]}" stroke-width="2" stroke-dasharray="${strokes[i][1]}"/>`,
    );
  }
  return parts.join('\n');
};

const legend = lines
  .map((line, i) => {
    const lx = left + (i % 3) * 262;
    const ly = 44 + Math.floor(i / 3) * 22;
    return `<line x1="${lx}" x2="${lx + 34}" y1="${ly - 4}" y2="${ly - 4}" stroke="${strokes[i][0]}" stroke-width="2" stroke-dasharray="${strokes[i][1]}"/><text x="${lx + 42}" y="${ly}">${line.name}</text>`;
  })
  .join('\n');
const bellows = p.load[0] / p.area / p.lever / psi;
const stops = (p.rearHeight[0] - p.toStops) / inch;
const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} 660" font-family="system-ui, sans-serif" font-size="13" role="img" aria-label="Tank pressure and left rear height over a night of ${hours} hours under five faults">
<rect width="${width}" height="660" fill="#fff"/>
<text x="${left}" y="20" font-size="15" font-weight="600">A night of the simulated coach, key off, AUTO unless said, 10 K colder by morning</text>
${legend}
${panel(108, 240, 0, 120, 20, 'Tank, psi by a true gauge', (pt) => Math.max(0, pt.tank / psi), [[bellows, 'bellows pressure']])}
${panel(408, 200, 9, 15, 1, 'Left rear height, in', (pt) => pt.height / inch, [[stops, 'on the stops']])}
</svg>
`;
mkdirSync(`${root}fixtures/pictures`, { recursive: true });
writeFileSync(`${root}fixtures/pictures/night.svg`, svg);
console.log('fixtures/pictures/night.svg written');
