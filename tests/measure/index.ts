/** Which figures there are. Each is a ratio in one run where it can be. */
import { measureDiagnosis } from './diagnosis.ts';
import { serveEcho } from './echo-process.ts';
import { measureFire } from './fire.ts';
import { measureFuzz } from './fuzz.ts';
import { measureGrowth } from './growth.ts';
import { measureLoad } from './load.ts';
import { measureNote } from './note.ts';
import { measurePage } from './page.ts';
import { measureReader } from './reader.ts';
import { measureStart } from './start.ts';
import { measureTwin } from './twin.ts';

const figures: Readonly<Record<string, () => Promise<void> | void>> = {
  reader: measureReader,
  start: measureStart,
  page: measurePage,
  note: measureNote,
  growth: measureGrowth,
  twin: measureTwin,
  diagnosis: measureDiagnosis,
};
/** Long ones, run only when they are named. */
const campaigns: Readonly<Record<string, () => Promise<void>>> = {
  fire: measureFire,
  load: measureLoad,
  fuzz: measureFuzz,
  'echo-process': serveEcho,
};
const all = { ...figures, ...campaigns };

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in all));
if (unknown.length > 0) {
  console.error(`soapwater: no such figure: ${unknown.join(', ')}. There are: ${Object.keys(all).join(', ')}`);
  process.exit(1);
}
for (const [name, measure] of Object.entries(all))
  if (asked.length === 0 ? name in figures : asked.includes(name)) await measure();
