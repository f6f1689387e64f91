/** A session told to a desk of its own, as it would be typed; what papers are made of in tests. */
import { readFileSync } from 'node:fs';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { markOf } from '../../server/log/mark.ts';
import { ownerReport } from '../../server/report/owner.ts';
import { dueOfCoach } from '../../server/report/due.ts';
import type { OwnerReport, Shop } from '../../server/report/shapes.ts';
import type { Entry } from '../../server/session/entry.ts';
import type { Folded } from '../../server/session/fold.ts';
import { loadSheet } from '../../server/sheet/load.ts';

export const demo = (name: string): string =>
  readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8');
export const sheets = new Map(['juniper-38', 'larkfield-11'].map((n) => [n, loadSheet(demo(n), n)]));
export const juniper = sheets.get('juniper-38')!;

export const noon = Date.UTC(2026, 9, 6, 18, 0);
export const day = 86_400_000;

export const benchDesk = (clock: { at: number } = { at: noon }) => {
  const log = memoryLog();
  return { log, desk: makeDesk({ log, sheets, engine: 'test', now: () => clock.at, seed: () => 1 }), clock };
};

/** Types `notes`, seven minutes apart from `start` on, into a session of the demo coach. */
export const tell = async (
  { desk, clock }: ReturnType<typeof benchDesk>,
  session: string,
  notes: readonly string[],
  start = clock.at,
): Promise<void> => {
  clock.at = start;
  await desk.open({ session, coach: 'juniper-38', by: 'MK' });
  for (const [i, text] of notes.entries()) {
    clock.at += 7 * 60_000;
    await desk.note(session, { id: `${session}-${i + 1}`, text, at: clock.at, seen: 10_000, by: 'MK' });
  }
};

export const visit = async (
  { desk }: ReturnType<typeof benchDesk>,
  session: string,
): Promise<{ entries: readonly Entry[]; standing: Folded }> => ({
  entries: await desk.read(session, 0, 100_000),
  standing: await desk.standing(session),
});

export const reportOf = async (
  bench: ReturnType<typeof benchDesk>,
  session: string,
  shop: Shop = { v: 1 },
): Promise<OwnerReport> => {
  const { entries, standing } = await visit(bench, session);
  const now = bench.clock.at;
  return ownerReport({
    entries,
    standing,
    sheet: juniper.sheet,
    shop,
    due: dueOfCoach([standing], juniper.sheet, now),
    mark: markOf(entries),
    now,
  });
};

/** A leak found and mended, as a bench would write it. */
export const leakStory = [
  'sags overnight, fine when driving',
  'tank 54, LR 11 1/2 RR 13 3/4 LF 15 1/4 RF 15 1/4, parked 10 hours, key off, panel road, jacks up, floor level',
  'going under to look',
  'on stands, wheels chocked',
  'soaped the left crimp, bubbles',
  'replaced left bellows',
  'did not replace right bellows',
  'tank 116, LR 13 3/4 RR 13 3/4 LF 15 1/4 RF 15 1/4',
  'drained tank',
] as const;
