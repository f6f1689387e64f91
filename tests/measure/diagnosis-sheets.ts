/** The demo coaches that the figures of the diagnosis are drawn on. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Sheet } from '../../server/sheet/schema.ts';

export const sheetsOf = (root: string): Sheet[] =>
  ['juniper-38', 'larkfield-11'].map((id) =>
    Sheet.parse(JSON.parse(readFileSync(join(root, `fixtures/sheets/${id}.json`), 'utf8'))),
  );
