// The server as it starts for everybody, watched: on SIGUSR2 it prints `heap N`, MB that were still held after its
// latest own collections (nothing is collected by force while notes run: that is a pause of its own, and leaves the
// engine with limits so tight that it collects every second from then on); with PROFILE=FOLDER it leaves a processor
// profile there when it ends.
import { writeFileSync } from 'node:fs';
import { Session } from 'node:inspector';
import { join } from 'node:path';
import { constants, PerformanceObserver } from 'node:perf_hooks';

/** ms that a collection counts as one of the latest. */
const latest = 20_000;
let held = [];
const now = () => {
  const { heapUsed, external } = process.memoryUsage();
  return { at: performance.now(), mb: (heapUsed + external) / 2 ** 20 };
};
new PerformanceObserver((list) => {
  if (list.getEntries().some((e) => e.detail.kind === constants.NODE_PERFORMANCE_GC_MAJOR)) held.push(now());
}).observe({ entryTypes: ['gc'] });
process.on('SIGUSR2', () => {
  const since = performance.now() - latest;
  held = held.filter((h) => h.at > since);
  const least = Math.min(...(held.length > 0 ? held : [now()]).map((h) => h.mb));
  console.log(`heap ${least.toFixed(1)}`);
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
