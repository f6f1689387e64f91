/** What the compiling script needs of the twin, for the bundler. */
import { loadSheet } from '../../server/sheet/load.ts';
import type { Sheet } from '../../server/sheet/schema.ts';

export { codeHash } from '../../server/twin/code-hash.ts';
export { causesFor, countCause, spreadCounts } from '../../server/twin/compile.ts';

export const sheetsFrom = (read: (path: string) => string): readonly Sheet[] =>
  ['juniper-38', 'larkfield-11'].map((id) => loadSheet(read(`fixtures/sheets/${id}.json`), id).sheet);
