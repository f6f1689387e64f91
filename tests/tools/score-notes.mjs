/**
 * Scores the reader on note fixtures: `node tests/tools/score-notes.mjs [file.jsonl ...] [--quiet] [--grep=words]`.
 * For each voice: right of all, notes with a wrong or extra fact taken silently, notes with a missed hazard.
 */
import { runnerImport } from 'vite';

const { module } = await runnerImport(new URL('../intents/fixture.ts', import.meta.url).pathname, {
  logLevel: 'error',
});
const { fixtureFiles, fixturesOf, readFixture, differences, right } = module;
const flags = process.argv.slice(2).filter((a) => a.startsWith('--'));
const named = process.argv.slice(2).filter((a) => !a.startsWith('--'));
const grep = flags.find((f) => f.startsWith('--grep='))?.slice(7);
const quiet = flags.includes('--quiet');
const files = named.length > 0 ? named : fixtureFiles().filter((f) => f !== 'known-failures.jsonl');
const rows = new Map();
for (const file of files)
  for (const f of fixturesOf(file.includes('/') ? new URL(file, `file://${process.cwd()}/`) : file)) {
    if (grep && !f.note.includes(grep)) continue;
    const voice = f.voice ?? file;
    const row = rows.get(voice) ?? { voice, notes: 0, right: 0, wrong: 0, missedHazards: 0, falseHazards: 0 };
    rows.set(voice, row);
    const d = differences(f, readFixture(f));
    row.notes += 1;
    if (right(d)) {
      row.right += 1;
      if (!grep) continue;
    }
    if (d.wrongFacts.length > 0) row.wrong += 1;
    if (d.missing.some((m) => m.startsWith('hazard')) && !d.extra.some((m) => m.startsWith('hazard')))
      row.missedHazards += 1;
    if (d.extra.some((m) => m.startsWith('hazard')) && !d.missing.some((m) => m.startsWith('hazard')))
      row.falseHazards += 1;
    if (!quiet) {
      const setting = JSON.stringify({ before: f.before, open: f.open, traffic: f.traffic, units: f.units });
      console.log(`[${voice}] ${f.note}${setting === '{}' ? '' : `   ${setting}`}`);
      for (const m of d.missing) console.log(`    - ${m}`);
      for (const m of d.extra) console.log(`    + ${m}`);
    }
  }
console.table([...rows.values()]);
const sum = (key) => [...rows.values()].reduce((n, r) => n + r[key], 0);
console.log(
  `right ${sum('right')} of ${sum('notes')} (${((100 * sum('right')) / sum('notes')).toFixed(1)} %), wrong facts ${sum('wrong')}, hazards missed ${sum('missedHazards')}, false ${sum('falseHazards')}`,
);
