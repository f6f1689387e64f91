/** Service items over several visits of an invented coach. */
import { describe, expect, it } from 'vitest';
import { type DoneEntry, paceOver, serviceHistory } from '../../server/core/service-history.ts';

const day = 86_400_000;
const start = Date.UTC(2026, 0, 1);
const on = (days: number): number => start + days * day;
const km = (n: number): number => n * 1000;

const drain = { what: 'drain the tank', days: 30 };
const filter = { what: 'intake filter', days: 182, distance: km(8000) };
const heights = { what: 'rear heights by tape', distance: km(16_000) };
const row = (
  items: Parameters<typeof serviceHistory>[0],
  done: DoneEntry[],
  days: number,
  odo: [number, number][] = [],
) =>
  serviceHistory(
    items,
    done,
    odo.map(([at, odometer]) => ({ at: on(at), odometer: km(odometer) })),
    on(days),
  );

describe('what is due over all visits', () => {
  it('counts from the newest visit that did it, in whatever order they come', () => {
    const done = [
      { what: drain.what, at: on(40) },
      { what: drain.what, at: on(0) },
    ];
    const [only] = row([drain], done, 50).rows;
    expect(only).toMatchObject({ state: 'due', by: 'date', when: on(70), lacks: [] });
    expect(row([drain], done.toReversed(), 50)).toEqual(row([drain], done, 50));
    expect(row([drain], done, 70).rows[0]!.state).toBe('due');
    expect(row([drain], done, 71).rows[0]!.state).toBe('overdue');
  });

  it('takes date or distance, whichever comes first, by the pace of the coach', () => {
    const done = [{ what: filter.what, at: on(0), odometer: km(100_000) }];
    // 100 km a day: 8,000 km run out after 80 days, before the 182
    expect(row([filter], done, 50, [[50, 105_000]]).rows[0]).toMatchObject({
      state: 'due',
      by: 'distance',
      when: on(80),
      lacks: [],
    });
    // 20 km a day: the date comes first
    expect(row([filter], done, 50, [[50, 101_000]]).rows[0]).toMatchObject({ by: 'date', when: on(182) });
  });

  it('is overdue by distance alone while the date is far', () => {
    const done = [{ what: filter.what, at: on(0), odometer: km(100_000) }];
    const { rows, pace } = row([filter], done, 50, [[50, 110_000]]);
    expect(pace).toBeCloseTo(km(200), 6);
    expect(rows[0]).toMatchObject({ state: 'overdue', by: 'distance', when: on(40) });
    expect(rows[0]!.due!.left).toBe(km(-2000));
  });

  it('is overdue by date alone while distance is left', () => {
    const done = [{ what: filter.what, at: on(0), odometer: km(100_000) }];
    expect(row([filter], done, 200, [[200, 100_100]]).rows[0]).toMatchObject({ state: 'overdue', by: 'date' });
  });

  it('names each thing that is missing', () => {
    expect(row([drain], [], 10).rows[0]).toMatchObject({ state: 'cannot tell', lacks: ['last done'], due: null });
    expect(row([{ what: 'x' }], [], 10).rows[0]!.lacks).toEqual(['interval']);
    expect(row([heights], [{ what: heights.what, at: on(0) }], 10).rows[0]).toMatchObject({
      state: 'cannot tell',
      lacks: ['odometer then', 'odometer now'],
    });
    // the reading of the visit itself is the newest one: distance is left, when it runs out nobody knows
    expect(row([heights], [{ what: heights.what, at: on(0), odometer: km(5) }], 10).rows[0]).toMatchObject({
      state: 'due',
      by: 'distance',
      when: null,
      lacks: ['pace'],
    });
  });

  it('names an entry that cannot be and goes on with the others', () => {
    const { rows } = row(
      [drain, filter],
      [
        { what: drain.what, at: on(20) },
        { what: filter.what, at: on(5) },
      ],
      10,
    );
    expect(rows.find((r) => r.what === drain.what)!.wrong).toMatch(/date last done.*cannot lie in the future/);
    expect(rows.find((r) => r.what === filter.what)!.state).toBe('due');
    const back = row([heights], [{ what: heights.what, at: on(0), odometer: km(900) }], 10, [[9, 100]]);
    expect(back.rows[0]!.wrong).toMatch(/odometer.*cannot run backwards/);
    expect(back.pace).toBeNull();
  });

  it('puts what is overdue first, then the soonest, then what cannot be told', () => {
    const { rows } = row(
      [heights, filter, drain],
      [
        { what: drain.what, at: on(0) },
        { what: filter.what, at: on(0) },
      ],
      40,
    );
    expect(rows.map((r) => r.what)).toEqual([drain.what, filter.what, heights.what]);
  });

  it('keeps work that no item of the sheet asks for', () => {
    const other = { what: 'dryer cartridge', at: on(1) };
    expect(row([drain], [other], 10).unknown).toEqual([other]);
  });
});

describe('the pace of a coach', () => {
  it('needs two readings a day apart and an odometer that runs on', () => {
    expect(paceOver([{ at: on(0), odometer: 0 }], on(9))).toBeNull();
    expect(
      paceOver(
        [
          { at: on(0), odometer: 0 },
          { at: on(0.5), odometer: 9 },
        ],
        on(9),
      ),
    ).toBeNull();
    expect(
      paceOver(
        [
          { at: on(0), odometer: 9 },
          { at: on(2), odometer: 3 },
        ],
        on(9),
      ),
    ).toBeNull();
    expect(
      paceOver(
        [
          { at: on(4), odometer: 8 },
          { at: on(0), odometer: 0 },
        ],
        on(9),
      ),
    ).toBe(2);
  });
});
