/** Servers with one thing wrong, made from the built one: the campaign must find each. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../start/server.ts';

/** Where the desk makes a note durable, and where it looks for a note sent before, as the build writes them. */
const append =
  /const kept = await (log\.append\(session, standing\.seq, drafts, now\(\), own\));\s*if \(kept === "moved on"\) continue;/g;
const known = /const looked = log\.findNote\(note\.id\);/g;
/** Makes room for a kill at the spot, so that a few kills are enough. */
const slow = 'await new Promise((resolve) => setTimeout(resolve, 15));';

/** `found`: what the campaign says of it. */
export type Mutant = { name: string; found: RegExp; edits: readonly (readonly [find: RegExp, put: string])[] };
export const mutants: readonly Mutant[] = [
  {
    name: 'shows a note before it is kept',
    found: /is lost|are lost|not the one that was shown|another entry/,
    edits: [
      [
        append,
        `const early = drafts.map((d, i) => ({ ...d, v: 1, session, seq: standing.seq + i + 1, kept: now() }));
        publish(session, { entries: early, bodies: early.map((e) => JSON.stringify(e)) });
        ${slow} const kept = await $1; if (kept === "moved on") continue;`,
      ],
    ],
  },
  {
    name: 'does not know a note that is sent again',
    found: /kept twice/,
    edits: [
      [known, 'const looked = Promise.resolve([]);'],
      [append, `$& ${slow}`],
    ],
  },
  {
    name: 'keeps the reply after the note, not with it',
    found: /0 replies/,
    edits: [
      [
        append,
        `const kept = { entries: [], bodies: [] };
        for (const [i, draft] of drafts.entries()) {
          const one = await log.append(session, standing.seq + i, [draft], now(), own);
          kept.entries.push(...one.entries); kept.bodies.push(...one.bodies);
          ${slow}
        }`,
      ],
    ],
  },
];

/** Writes the mutant beside the built server and gives its path. */
export const writeMutant = ({ name, edits }: Mutant): string => {
  const folder = join(root, '.build', 'server');
  let text = readFileSync(join(folder, 'main.js'), 'utf8');
  for (const [find, put] of edits) {
    if ([...text.matchAll(find)].length !== 1) throw new Error(`no place to make a server that ${name}`);
    text = text.replace(find, put);
  }
  const file = join(folder, `mutant-${name.replaceAll(/\W+/g, '-')}.js`);
  writeFileSync(file, text);
  return file;
};
