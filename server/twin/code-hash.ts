/** Which code made the evidence table: a hash over the sources that decide its numbers, blind to comments and layout. */
import { createHash } from 'node:crypto';

/** Paths from the root of the project. What only reads the table is not among them. */
export const evidenceSources = [
  ...[
    'afflict',
    'ailments',
    'body',
    'coach',
    'compile',
    'controls',
    'electrics',
    'gas',
    'instruments',
    'observables',
    'observe',
    'params',
    'patient',
    'plant',
    'rng',
    'scene',
    'see-heights',
    'see-pump',
    'see-standing',
    'see-valves',
    'sim',
    'sim-shapes',
    'sizes',
    'spread',
    'stepper',
  ].map((name) => `server/twin/${name}.ts`),
  'fixtures/sheets/juniper-38.json',
  'fixtures/sheets/larkfield-11.json',
] as const;

/** Comments, white space and trailing commas are layout. No source here holds `//` inside a string. */
const bare = (text: string): string =>
  text
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/\/\/[^\n]*/g, '')
    .replaceAll(/\s+/g, '')
    .replaceAll(/,(?=[)\]}])/g, '');

/** `read` gives a source's text by its path. sha256, hex. */
export const codeHash = (read: (path: string) => string): string => {
  const hash = createHash('sha256');
  for (const path of evidenceSources) hash.update(`${path}\n${bare(read(path))}\n`);
  return hash.digest('hex');
};
