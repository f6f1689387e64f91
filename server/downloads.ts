/** What of a session can be taken away as a file: one row each. `GET /session/ID.ENDING`. */
import type { Role } from './auth/roles.ts';
import type { Desk } from './desk.ts';
import type { Entry } from './session/entry.ts';
import { markOf } from './log/mark.ts';
import { sessionCsv } from './report/csv.ts';
import type { SessionExport } from './report/session-json.ts';

export type Download = {
  ending: string;
  type: string;
  /** Name of the file after the session's. */
  suffix: string;
  roles: readonly Role[];
  make: (from: { desk: Desk; session: string; entries: readonly Entry[]; zone: string }) => string | Promise<string>;
};

const everyone: readonly Role[] = ['works', 'reviews', 'learns'];

export const downloads: readonly Download[] = [
  {
    ending: 'json',
    type: 'application/json',
    suffix: '.json',
    roles: everyone,
    make: async ({ desk, session, zone, entries }) => {
      const { coach } = await desk.standing(session);
      const sheets: Record<string, unknown> = {};
      for (const e of entries)
        if (e.is === 'opened' || e.is === 'sheet') {
          const text = await desk.sheetText(e.sheet);
          if (text !== null) sheets[e.sheet] = JSON.parse(text);
        }
      const out: SessionExport = {
        $schema: '/schema/session-1.json',
        v: 1,
        engine: desk.engine,
        session,
        coach,
        zone,
        mark: markOf(entries),
        sheets,
        entries: [...entries],
      };
      return JSON.stringify(out, null, 1);
    },
  },
  {
    ending: 'csv',
    type: 'text/csv',
    suffix: '.csv',
    roles: everyone,
    make: ({ entries, zone }) => sessionCsv(entries, zone),
  },
  {
    ending: 'pack',
    type: 'application/json',
    suffix: '.soapwater.json',
    roles: ['works', 'reviews'],
    make: ({ desk, session }) => desk.pack(session),
  },
];
