/** The fuzz in full: `npm run measure -- fuzz`; COUNT and SEED set its size and its start. */
import { fuzzFrames, fuzzNotes, fuzzSheets, type Fuzzed } from '../fire/fuzz.ts';
import { line, ms } from './clock.ts';

export const measureFuzz = async (): Promise<void> => {
  const count = Number(process.env['COUNT'] ?? 100_000);
  const seed = Number(process.env['SEED'] ?? 1);
  const tell =
    (what: string) =>
    (done: number): void =>
      console.log(`  ${done} ${what}`);
  const say = (what: string, done: Fuzzed): void => {
    line(
      `${done.count} ${what}`,
      `${done.faults.length} faults, longest ${ms(done.worst)}`,
      `heap ${done.memory[0].toFixed(0)} MB at a quarter, ${done.memory[1].toFixed(0)} MB at the end`,
      'no fault, 50 ms, flat',
    );
    console.log(`  longest: ${JSON.stringify(done.which).slice(0, 160)}`);
    for (const fault of done.faults) console.log(`  fault: ${fault}`);
    if (done.faults.length > 0) process.exitCode = 1;
  };
  say('odd notes', await fuzzNotes({ count, seed, tell: tell('notes') }));
  say('odd sheets', await fuzzSheets({ count: Math.ceil(count / 10), seed, tell: tell('sheets') }));
  say('odd frames', await fuzzFrames({ count, seed, tell: tell('frames') }));
};
