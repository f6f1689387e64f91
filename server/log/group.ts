/**
 * One commit for all that is asked within one turn of the event loop: under many pages the disk is synced once for all
 * of them. Each is answered only after that sync; when the commit fails, none of them was written.
 */

/** Most that wait for one commit, so that the first of them does not wait long. */
const most = 32;

type Job = { work: () => unknown; keep: (value: never) => void; refuse: (error: unknown) => void };
type Done = { job: Job; value: unknown } | { job: Job; error: unknown };

export type Group = {
  /** Runs `work` within the next commit. What it raises undoes its own writes only. */
  run: <T>(work: () => T) => Promise<T>;
  /** Commits what waits. */
  flush: () => void;
};

/** `transact` runs its work as one transaction; `within` is whether one is under way. */
export const makeGroup = (transact: (work: () => Done[]) => Done[], within: () => boolean): Group => {
  let waiting: Job[] = [];
  const attempt = (job: Job): Done => {
    try {
      return { job, value: job.work() };
    } catch (error) {
      // the database has given up the whole transaction: a full disk, mostly
      if (!within()) throw error;
      return { job, error };
    }
  };
  const flush = (): void => {
    const jobs = waiting;
    waiting = [];
    if (jobs.length === 0) return;
    try {
      for (const done of transact(() => jobs.map(attempt)))
        if ('error' in done) done.job.refuse(done.error);
        else done.job.keep(done.value as never);
    } catch (error) {
      for (const job of jobs) job.refuse(error);
    }
  };
  return {
    run: <T>(work: () => T) =>
      new Promise<T>((keep, refuse) => {
        if (waiting.length === 0) setImmediate(flush);
        waiting.push({ work, keep, refuse });
        if (waiting.length >= most) flush();
      }),
    flush,
  };
};
