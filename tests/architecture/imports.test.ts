import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Room -> rooms it may import. `shapes` of a room are its files that hold only shapes. The table of DEVELOPERS.md. */
const rules: Readonly<Record<string, readonly string[]>> = {
  'server/core': [],
  intents: ['server/core'],
  'server/sheet': ['server/core'],
  'server/findings': ['intents', 'server/session', 'server/sheet', 'server/core'],
  'server/session': ['intents', 'server/sheet', 'server/core', 'server/findings:shapes', 'server/chat:shapes'],
  'server/twin': ['server/core', 'server/sheet'],
  'server/faults': [
    'intents',
    'server/findings',
    'server/chat:shapes',
    'server/session',
    'server/sheet',
    'server/core',
    'server/twin',
    'server/guides',
  ],
  'server/guides': ['intents', 'server/core', 'server/session:shapes', 'server/chat:shapes', 'server/sheet'],
  'server/chat': [
    'intents',
    'server/session',
    'server/findings',
    'server/faults',
    'server/guides',
    'server/sheet',
    'server/core',
    'server/twin',
  ],
  'server/log': ['server/session'],
  'server/backup': ['server/log'],
  'server/auth': ['server/chat:shapes'],
  'server/report': [
    'intents',
    'server/session',
    'server/findings',
    'server/chat',
    'server/sheet',
    'server/core',
    'server/guides',
    'server/faults',
  ],
  web: [
    'intents',
    'server/chat:shapes',
    'server/core:edges',
    'server/findings:shapes',
    'server/session:shapes',
    'server/twin:shapes',
    // the pages to read, fetched when somebody goes there: they work offline
    'server/guides',
    'server/report:shapes',
    'server/sheet:fields',
  ],
};
const shapes: Readonly<Record<string, readonly string[]>> = {
  'server/session:shapes': [
    'server/session/entry.ts',
    'server/session/estimate.ts',
    'server/session/standing.ts',
    // what corrections took back is one rule for board and page
    'server/session/taken-back.ts',
  ],
  'server/findings:shapes': ['server/findings/finding.ts'],
  'server/chat:shapes': ['server/chat/reply.ts', 'server/chat/protocol.ts'],
  // a pasted file becomes a note in the page, before it is sent
  'server/core:edges': [
    'server/core/units.ts',
    'server/core/amount.ts',
    'server/core/limit-text.ts',
    'server/core/range-text.ts',
    'server/core/logger-csv.ts',
    'server/core/logger-error.ts',
  ],
  'server/report:shapes': ['server/report/shapes.ts'],
  'server/sheet:fields': ['server/sheet/fields.ts', 'server/sheet/field-text.ts'],
  'server/twin:shapes': ['server/twin/observables.ts'],
};
/** `from -> to`, with the reason. */
const exceptions: Readonly<Record<string, string>> = {
  'server/twin/practice-actions.ts -> intents/shapes.ts':
    'practice takes its actions from what a note says; types only',
  'server/twin/practice-actions.ts -> intents/place.ts': 'places are taken apart in one place only',
  'server/auth/devices.ts -> server/atomic.ts': 'files are written whole in one place only',
};
/** Packages that belong to one room. */
const owned: Readonly<Record<string, readonly string[]>> = {
  'better-sqlite3': ['server/log'],
  express: ['server'],
  ws: ['server'],
  lit: ['web'],
  natural: ['intents'],
  'csv-parse': ['server/core'],
  uqr: ['server/auth'],
};

const filesIn = (folder: string): string[] =>
  readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return filesIn(path);
    return entry.name.endsWith('.ts') && !/\.config\.ts$|\.d\.ts$/.test(entry.name) ? [path] : [];
  });
const roomOf = (path: string): string => {
  const [top, second] = path.split('/');
  return top === 'server' && second && !second.endsWith('.ts') ? `server/${second}` : top!;
};
const importsOf = (path: string): string[] =>
  [
    ...readFileSync(join(root, path), 'utf8').matchAll(
      /^(?:import|export)[^;]*?from '([^']+)'|^import '([^']+)'|\bimport\('([^']+)'\)/gm,
    ),
  ].map((m) => (m[1] ?? m[2] ?? m[3])!);

const files = ['server', 'web', 'intents'].flatMap(filesIn);

describe('who may import whom', () => {
  it('reads the files it judges', () => {
    expect(files.length).toBeGreaterThan(40);
    expect(importsOf('server/session/fold.ts')).toContain('./coach-state.ts');
  });

  it('keeps the table of rooms', () => {
    const broken: string[] = [];
    for (const file of files) {
      const room = roomOf(file);
      const allowed = rules[room];
      if (!allowed) continue;
      for (const name of importsOf(file)) {
        if (!name.startsWith('.')) continue;
        const target = relative(root, join(root, dirname(file), name));
        const other = roomOf(target);
        if (other === room || target.endsWith('.json')) continue;
        const ok = allowed.includes(other) || allowed.some((a) => shapes[a]?.includes(target));
        if (!ok && !exceptions[`${file} -> ${target}`]) broken.push(`${file} -> ${target}`);
      }
    }
    expect(broken).toEqual([]);
  });

  it('keeps packages in the room that owns them', () => {
    const broken: string[] = [];
    for (const file of files)
      for (const name of importsOf(file)) {
        const homes = owned[name.split('/')[0]!];
        if (
          homes &&
          !homes.some((home) => (home === 'server' ? /^server\/[^/]+\.ts$/.test(file) : file.startsWith(`${home}/`)))
        )
          broken.push(`${file} -> ${name}`);
      }
    expect(broken).toEqual([]);
  });

  it('keeps clocks and chance out of the pure rooms', () => {
    const pure = [
      'intents',
      'server/core',
      'server/session',
      'server/findings',
      'server/faults',
      'server/guides',
      'server/chat',
      'server/report',
      'server/sheet',
      'server/twin',
    ];
    const broken = files.filter(
      (f) =>
        pure.includes(roomOf(f)) &&
        /\bDate\.now\(|\bMath\.random\(|\bprocess\.|from 'node:fs/.test(readFileSync(join(root, f), 'utf8')),
    );
    expect(broken.filter((f) => !/code-hash\.ts$|compile/.test(f))).toEqual([]);
  });

  it('has nothing at the top but what belongs there', () => {
    const top = readdirSync(root).filter((n) => !n.startsWith('.') && n !== 'node_modules');
    const allowed = [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'fixtures',
      'intents',
      'package-lock.json',
      'package.json',
      'server',
      'tests',
      'tsconfig.json',
      'web',
    ];
    expect(top.filter((n) => !allowed.includes(n))).toEqual([]);
  });
});
