/** Which figures there are. Each is a ratio in one run where it can be. */
import { measureDiagnosis } from './diagnosis.ts';
import { measureGrowth } from './growth.ts';
import { measureNote } from './note.ts';
import { measureReader } from './reader.ts';
import { measureStart } from './start.ts';
import { measureTwin } from './twin.ts';

const figures: Readonly<Record<string, () => Promise<void> | void>> = {
  reader: measureReader,
  start: measureStart,
  note: measureNote,
  growth: measureGrowth,
  twin: measureTwin,
  diagnosis: measureDiagnosis,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in figures));
if (unknown.length > 0) {
  console.error(`soapwater: no such figure: ${unknown.join(', ')}. There are: ${Object.keys(figures).join(', ')}`);
  process.exit(1);
}
for (const [name, measure] of Object.entries(figures)) if (asked.length === 0 || asked.includes(name)) await measure();
