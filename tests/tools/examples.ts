/** Writes the README's example notes with the answers the program really gives. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import type { Block } from '../../server/chat/reply.ts';

const root = process.env['SOAPWATER_ROOT'] ?? process.cwd();
const notes = [
  'sags overnight, fine when driving',
  'key off, floor level, jacks up, panel road',
  'tank 96, LR 12 1/2 RR 13 3/4 LF 15 1/4 RF 15 1/4',
  'panel shut, left rear 12 1/2 at 9, 12 at 9:30',
  'soaped the left crimp, bubbles',
  'cut in 88 cut out 117',
  '10.4v at motor 12.5 at batt 22 amps',
  'toe lr front wheel 1/8 out, camber +0.5',
  'what does 95 psi mean',
  'gonna crack the line loose, 110 in the tank',
];
const words = (block: Block): string | null => {
  switch (block.is) {
    case 'caution':
      return `**${block.words}** ${block.more}`;
    case 'findings':
      return block.list
        .map(
          (f) =>
            `${f.words}${f.limit ? ` (limit: ${[f.limit.low?.text, f.limit.high?.text].filter(Boolean).join(' to ')}, ${f.limit.source.words})` : ''}`,
        )
        .join('; ');
    case 'suspects':
      return `Suspects: ${block.list
        .slice(0, 2)
        .map((s) => `${s.name}, ${s.rank}`)
        .join('; ')}`;
    case 'check':
      return `Next, ${block.hands} min hands-on${block.wait > 0 ? ` and ${block.wait} waiting` : ''}: ${block.words}`;
    case 'question':
      return block.words;
    case 'teach':
      return [block.words, ...block.lines.slice(0, 2)].join(' ');
    case 'withdrawn':
      return `Withdrawn: ${block.words}`;
    case 'took':
    case 'step':
    case 'picture':
      return null;
  }
};
const sheet = loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38');
// the tech starts at 8:30 by the coach's clock; the fourth note is typed after its half hour of waiting
let clock = Date.UTC(2026, 9, 6, 14, 30);
const pauses: Readonly<Record<number, number>> = { 3: 60 };
const desk = makeDesk({
  log: memoryLog(),
  sheets: new Map([['juniper-38', sheet]]),
  engine: 'examples',
  now: () => clock,
});
await desk.open({ session: 'examples', coach: 'juniper-38', by: 'KD' });
const rows: string[] = ['| note | answer |', '| --- | --- |'];
for (const [i, text] of notes.entries()) {
  clock += (pauses[i] ?? 2) * 60_000;
  const [, reply] = await desk.note('examples', { id: `example-${i}`, text, at: clock, seen: 9999, by: 'KD' });
  const said = reply?.is === 'reply' ? reply.blocks.flatMap((b) => words(b) ?? []) : [];
  rows.push(`| \`${text}\` | ${said.join('<br>').replaceAll('|', '\\|')} |`);
}
const file = join(root, 'README.md');
const readme = readFileSync(file, 'utf8');
writeFileSync(
  file,
  readme.replace(
    /<!-- examples -->[^]*?<!-- \/examples -->/,
    `<!-- examples -->\n\n${rows.join('\n')}\n\n<!-- /examples -->`,
  ),
);
