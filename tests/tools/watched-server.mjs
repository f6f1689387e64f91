// The server as it starts for everybody, watched: on SIGUSR2 it collects and prints `heap N` (MB still held); with
// PROFILE=FOLDER it leaves a processor profile there when it ends.
import { writeFileSync } from 'node:fs';
import { Session } from 'node:inspector';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
process.on('SIGUSR2', () => {
  collect();
  const { heapUsed, external } = process.memoryUsage();
  console.log(`heap ${((heapUsed + external) / 2 ** 20).toFixed(1)}`);
});

const folder = process.env.PROFILE;
if (folder) {
  const session = new Session();
  session.connect();
  session.post('Profiler.enable');
  session.post('Profiler.setSamplingInterval', { interval: 500 });
  // after the warm-up, so that it is the notes that are seen
  setTimeout(() => session.post('Profiler.start'), Number(process.env.PROFILE_AFTER ?? 3000));
  process.prependListener('SIGTERM', () =>
    session.post('Profiler.stop', (error, done) => {
      if (done) writeFileSync(join(folder, `server-${process.pid}.cpuprofile`), JSON.stringify(done.profile));
    }),
  );
}
await import(new URL('../../server/start.mjs', import.meta.url).href);
