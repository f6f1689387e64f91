import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { downloads } from '../../server/downloads.ts';
import { coachHistory } from '../../server/report/history.ts';
import { publishedSchemas } from '../../server/report/session-json.ts';
import { benchDesk, demo, juniper, leakStory, reportOf, tell, visit } from './told.ts';

const validator = (name: string) => {
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  const check = ajv.compile(publishedSchemas[name]!());
  return (value: unknown): string[] =>
    check(JSON.parse(JSON.stringify(value))) ? [] : (check.errors ?? []).map((e) => `${e.instancePath} ${e.message}`);
};
const download = async (bench: ReturnType<typeof benchDesk>, session: string, ending: string): Promise<string> => {
  const { entries, standing } = await visit(bench, session);
  return downloads.find((d) => d.ending === ending)!.make({ desk: bench.desk, session, entries, zone: standing.zone });
};
const told = async () => {
  const bench = benchDesk();
  await tell(bench, 'export-1', [...leakStory, 'undo', 'spec rear 13 1/2 +- 1/4']);
  const line = { id: 'a', words: 'bellows', parts: [{ name: 'bellows', price: 1 }], hands: 5, wait: 0 };
  const [estimate] = await bench.desk.estimate('export-1', 'MK', { lines: [line], rate: 90, currency: 'USD' });
  await bench.desk.decide('export-1', 'MK', { about: estimate!.seq, line: 'a', yes: true, name: 'A. Rowe', words: '' });
  await bench.desk.remark('export-1', 2, 'which panel position?', 'QA');
  await bench.desk.close('export-1', 'M. Keller', 'mended');
  return bench;
};

describe('JSON exports against their published schemas (JSON Schema 2020-12, ajv)', () => {
  it('a session with every kind of entry fits, and carries id, versions, mark and sheets', async () => {
    const out = JSON.parse(await download(await told(), 'export-1', 'json')) as Record<string, unknown>;
    expect(validator('session-1')(out)).toEqual([]);
    expect(out).toMatchObject({ $schema: '/schema/session-1.json', v: 1, engine: 'test', session: 'export-1' });
    expect(Object.keys(out['sheets'] as object)).toEqual([juniper.hash]);
  });

  it('a session with a field of another shape does not fit', async () => {
    const out = JSON.parse(await download(await told(), 'export-1', 'json')) as { entries: { seq: unknown }[] };
    out.entries[1]!.seq = 'two';
    expect(validator('session-1')(out).join()).toContain('/entries/1');
  });

  it('report, history and both demo sheets fit; a sheet with a field it does not know does not', async () => {
    const bench = await told();
    expect(validator('report-1')(await reportOf(bench, 'export-1'))).toEqual([]);
    expect(validator('history-1')(coachHistory([await visit(bench, 'export-1')], juniper, bench.clock.at))).toEqual([]);
    for (const name of ['juniper-38', 'larkfield-11']) expect(validator('sheet-1')(JSON.parse(demo(name)))).toEqual([]);
    expect(validator('sheet-1')({ ...(JSON.parse(demo('juniper-38')) as object), colour: 'blue' })).not.toEqual([]);
  });
});

describe('CSV (RFC 4180)', () => {
  it('reads back with as many cells in each row as in the head, and no cell a spreadsheet would run', async () => {
    const bench = benchDesk();
    await tell(bench, 'csv-one', ['=1+1 "tank", 95 psi', 'tank 90\nLR 13 3/4', '-2 psi, @home']);
    const rows = parse(await download(bench, 'csv-one', 'csv'), {
      relax_column_count: false,
      record_delimiter: '\r\n',
    });
    expect(rows.length).toBeGreaterThan(3);
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^(?:[=@\t\r]|[+-](?!\d+(?:\.\d+)?$))/);
    expect(rows.flat()).toContain('tank 90\nLR 13 3/4');
  });
});
