/** Every subject reached by notes, on the psi and inch coach and on the kPa and millimetre one. */
import { describe, expect, it } from 'vitest';
import { airObservables } from '../../server/twin/observables.ts';
import { Finding } from '../../server/findings/finding.ts';
import { bench, byKey, juniper, larkfield, sheetWith, type Bench } from './bench.ts';

const key = (b: Bench, k: string): Finding => byKey(b.found, k);
const keys = (b: Bench): string[] => b.found.map((f) => f.key);

describe('bellows by the tape', () => {
  it('psi and inches: panel shut, down 5/8 in half an hour', () => {
    const b = bench(juniper, [
      [0, 'condition not key on', 'condition panel shut', 'reading height @ left rear = 13 1/2 in'],
      [30, 'reading height @ left rear = 12 7/8 in'],
    ]);
    const sink = key(b, 'sink height shut@left rear');
    expect(sink.words).toMatch(
      /^left rear sinks with the panel shut: out of level now, on its stops after about 1 1\/2 hours/,
    );
    expect(sink.evidence).toEqual([{ see: 'left height shut', outcome: 'drops' }]);
    expect(sink.drawing?.is).toBe('chart');
    // The same reading is not a ride height: it must not speak against valve or link.
    expect(key(b, 'height@left rear').evidence).toBeUndefined();
  });
  it('kPa and millimetres: no panel, so its height valve was in circuit', () => {
    const b = bench(larkfield, [
      [0, 'condition not key on', 'reading height @ right rear = 355 mm'],
      [60, 'reading height @ right rear = 351 mm'],
    ]);
    expect(key(b, 'sink height auto@right rear').words).toMatch(/^right rear sinks: level for about 30 minutes more/);
    expect(key(b, 'sink height auto@right rear').why.notes.join()).toMatch(/L\/min of free air/);
  });
  it('holds only after long enough, and a night is another observation', () => {
    const short = bench(larkfield, [
      [0, 'condition not key on', 'reading height @ left rear = 355 mm'],
      [10, 'reading height @ left rear = 355 mm'],
    ]);
    expect(key(short, 'sink height auto@left rear').evidence).toBeUndefined();
    const night = bench(larkfield, [
      [0, 'condition not key on', 'reading height @ left rear = 355 mm'],
      [600, 'reading height @ left rear = 355 mm'],
    ]);
    expect(key(night, 'sink overnight@left rear')).toMatchObject({
      verdict: 'within',
      evidence: [{ see: 'left overnight', outcome: 'holds' }],
    });
  });
  it('takes a cold night out: 1 mm in 20 K of cooling is no leak', () => {
    const b = bench(larkfield, [
      [0, 'condition not key on', 'reading temperature @ ambient = 20 C', 'reading height @ left rear = 355 mm'],
      [600, 'reading temperature @ ambient = 4 C', 'reading height @ left rear = 338 mm'],
    ]);
    // 260 mm x 16/293 / 0.85 is 16.7 mm of sink by cooling alone.
    expect(key(b, 'sink overnight@left rear').verdict).toBe('within');
  });
  it('asks for the area that would turn the sink into air', () => {
    const sheet = sheetWith((s) => delete s.springs!.area);
    const b = bench(sheet, [
      [0, 'condition panel shut', 'reading height @ left rear = 13 1/2 in'],
      [30, 'reading height @ left rear = 12 7/8 in'],
    ]);
    expect(key(b, 'sink height shut@left rear').wants).toEqual(expect.objectContaining({ field: 'springs.area' }));
  });
  it('says that a bellows under load is watched by tape, not by its gauge', () => {
    const b = bench(juniper, [[0, 'reading pressure fall @ left bellows = 5 psi over 10 min']]);
    expect(key(b, 'pressure fall@left bellows').words).toMatch(/by tape/);
    expect(key(b, 'pressure fall@left bellows').evidence).toBeUndefined();
  });
});

describe('standing overnight', () => {
  it('tells the hours it stayed level, and leaves the evidence to the height as found', () => {
    const b = bench(juniper, [
      [
        0,
        'condition parked',
        'reading standing time @ coach = 12 h',
        'reading height @ left rear = 12 in',
        'reading height @ right rear = 13 5/8 in',
      ],
    ]);
    expect(key(b, 'stood@left rear').words).toMatch(/^left rear level for about 1 1\/2 hours/);
    expect(key(b, 'stood@left rear').evidence).toBeUndefined();
    expect(key(b, 'height@left rear').evidence).toEqual([{ see: 'left as found', outcome: 'low' }]);
    expect(key(b, 'height@right rear').evidence).toEqual([{ see: 'right as found', outcome: 'level' }]);
  });
});

describe('where the fall stops', () => {
  const night = (last: string[]): Bench =>
    bench(
      sheetWith((s) => delete s.supply!.protection, 'larkfield-11'),
      [
        [0, 'condition not key on', 'reading pressure @ tank = 720 kPa'],
        [60, 'reading pressure @ tank = 600 kPa'],
        [60, 'reading pressure @ tank = 480 kPa'],
        [60, 'reading pressure @ tank = 400 kPa'],
        [120, 'reading pressure @ tank = 400 kPa'],
        [60, 'reading pressure @ tank = 400 kPa', ...last],
      ],
    );
  it('at bellows pressure, told apart by the sides', () => {
    expect(key(night([]), 'fall stops@tank').evidence).toBeUndefined();
    const down = night(['reading height @ left rear = 300 mm', 'reading height @ right rear = 355 mm']);
    expect(key(down, 'fall stops@tank').evidence).toEqual([
      { see: 'fall stops', outcome: 'bellows pressure, side down' },
    ]);
    const up = night(['reading height @ left rear = 355 mm', 'reading height @ right rear = 355 mm']);
    expect(key(up, 'fall stops@tank').evidence).toEqual([{ see: 'fall stops', outcome: 'bellows pressure, side up' }]);
  });
  it('the rate is that of the falling part alone', () => {
    const fall = key(night([]), 'tank fall auto@tank');
    expect(fall.amount!.si / (1000 / 60)).toBeCloseTo(2, 0);
    expect(fall.words).toMatch(/until it stopped$/);
  });
});

describe('air spring and load', () => {
  it('unlike bellows with a twist point to a front corner', () => {
    const b = bench(juniper, [
      [
        0,
        'reading height @ left rear = 14 in',
        'reading height @ right rear = 13 1/2 in',
        'reading height @ left front = 14 3/4 in',
        'reading height @ right front = 15 3/8 in',
      ],
      [5, 'reading pressure @ left bellows = 66 psi', 'reading pressure @ right bellows = 55 psi'],
    ]);
    expect(key(b, 'side to side@bellows').words).toMatch(/weak left front corner/);
    expect(key(b, 'side to side@bellows').evidence).toEqual([{ see: 'bellows pressures', outcome: 'right light' }]);
    expect(key(b, 'pressure@left bellows')).toMatchObject({
      verdict: 'high',
      limit: { source: { words: 'sheet: springs.pressure.left' } },
    });
  });
  it('kPa: the load it carries is told', () => {
    const b = bench(larkfield, [
      [0, 'reading pressure @ left bellows = 400 kPa', 'reading pressure @ right bellows = 390 kPa'],
    ]);
    expect(key(b, 'side to side@bellows').verdict).toBe('within');
    expect(key(b, 'pressure@left bellows').why.notes.join()).toMatch(/carries about 20\d\d kg/);
  });
  it('low at full pressure is not low at low pressure', () => {
    const at = (psi: number): string =>
      key(
        bench(juniper, [[0, 'reading height @ left rear = 13 in', `reading pressure @ left bellows = ${psi} psi`]]),
        'pressure@left bellows',
      ).why.notes.join();
    expect(at(57)).toMatch(/low at full pressure/);
    expect(at(20)).toMatch(/low at low pressure/);
  });
});

describe('pump cycles', () => {
  it('duty, the leak of the off time, and the pump that cannot be that strong', () => {
    const b = bench(juniper, [
      [0, 'condition panel auto', 'reading on time @ pump = 20 s', 'reading off time @ pump = 3 min'],
    ]);
    expect(key(b, 'duty@pump').words).toBe(
      'pump runs 10 % of the time (20 s on, 3 min off); so short a run fills more than this pump can: water in the tank, or a time is wrong',
    );
    expect(key(b, 'duty@pump').evidence).toEqual([{ see: 'pump cycles auto', outcome: 'yes' }]);
    expect(key(b, 'duty@pump').why.notes.join()).toMatch(/shows a leak of 0\.45 cfm/);
  });
  it('a run in every so many minutes is a cycle, and says the leak it feeds', () => {
    const psi = bench(juniper, [[0, 'reading on time @ pump = 2 min over 10 min']]);
    // 5.3 gal x 27 psi / 97.0 kPa in 8 min: 4.8 L/min
    expect(key(psi, 'duty@pump').words).toBe(
      'pump runs 20 % of the time (2 min in every 10 min): it feeds a leak of 0.17 cfm of free air (4.8 L/min)',
    );
    const kPa = bench(larkfield, [[0, 'reading run time @ pump = 2 min over 10 min']]);
    // 25.2 L x 190 kPa / 100.2 kPa in 8 min: 6.0 L/min
    expect(key(kPa, 'duty@pump').words).toMatch(/feeds a leak of 6\.0 L\/min of free air \(0\.21 cfm\)$/);
  });
  it('litres a minute, without a duty on the sheet: a benchmark named as one', () => {
    const b = bench(larkfield, [[0, 'reading on time @ pump = 2 min', 'reading off time @ pump = 4 min']]);
    expect(key(b, 'duty@pump')).toMatchObject({ verdict: 'high', limit: { source: { kind: 'practice' } } });
    expect(key(b, 'duty@pump').why.notes.join()).toMatch(/L\/min/);
  });
  it('a run past the limit asks for its rest', () => {
    expect(key(bench(juniper, [[0, 'reading run time @ pump = 25 min']]), 'run time@pump').words).toMatch(
      /over its limit of 20 min: let it cool 15 min/,
    );
  });
  it('pump-up from the delivery curve where the sheet has no time', () => {
    const b = bench(larkfield, [[0, 'reading pump-up @ tank = 800 kPa from 0 kPa over 20 min']]);
    expect(key(b, 'pump-up@tank')).toMatchObject({ verdict: 'high', evidence: [{ see: 'pump-up', outcome: 'slow' }] });
    expect(key(b, 'pump-up@tank').why.formula).toMatch(/integral/);
  });
});

describe('what the bellows took', () => {
  it('a pump-up that the bellows may have shared is not called slow, one with the panel shut is', () => {
    const open = bench(larkfield, [[0, 'reading pump-up @ tank = 800 kPa from 0 kPa over 9 min']]);
    expect(key(open, 'pump-up@tank').verdict).toBe('cannot tell');
    expect(key(open, 'pump-up@tank').evidence).toBeUndefined();
    const shut = bench(larkfield, [
      [0, 'condition tank outlet closed', 'reading pump-up @ tank = 800 kPa from 0 kPa over 9 min'],
    ]);
    expect(key(shut, 'pump-up@tank').evidence).toEqual([{ see: 'pump-up shut', outcome: 'slow' }]);
  });
});

describe('as found', () => {
  it('only the first look counts: later readings of the same standing are a fall', () => {
    const first = bench(juniper, [[0, 'condition parked', 'condition panel auto', 'reading pressure @ tank = 58 psi']]);
    expect(key(first, 'pressure@tank').evidence).toEqual([{ see: 'tank as found', outcome: 'at bellows pressure' }]);
    const later = bench(juniper, [
      [0, 'condition parked', 'condition panel auto', 'reading pressure @ tank = 100 psi'],
      [30, 'reading pressure @ gauge = 58 psi'],
    ]);
    expect(key(later, 'pressure@tank').evidence).toBeUndefined();
    expect(key(later, 'tank fall auto@tank').evidence).toEqual([{ see: 'tank fall auto', outcome: 'fast' }]);
  });
});

describe('switch', () => {
  const words = (cutIn: number, cutOut: number): string =>
    key(
      bench(juniper, [
        [0, `reading cut-in @ pressure switch = ${cutIn} psi`, `reading cut-out @ pressure switch = ${cutOut} psi`],
      ]),
      'difference@pressure switch',
    ).words;
  it('says which way the nut goes, and when it cannot help', () => {
    expect(words(88, 115)).toBe('cut-in to cut-out 27 psi apart');
    expect(words(78, 105)).toMatch(
      /turn the nut in until both points stand about 10 psi higher: that brings both right$/,
    );
    expect(words(88, 98)).toMatch(/cycles short; too close: .* renew the switch$/);
    expect(words(90, 85)).toMatch(/one of the two readings is wrong/);
  });
});

describe('alignment', () => {
  it('shims for toe and camber together, with sizes and remainder (inches)', () => {
    const b = bench(juniper, [
      [0, 'reading toe @ left rear forward wheel = -1/8 in', 'reading camber @ left rear forward wheel = 0.0 deg'],
    ]);
    const shims = key(b, 'shims@left rear forward wheel');
    expect(shims.verdict).toBe('within');
    expect(shims.words).toMatch(/add .*front top.*rear top.*rear bottom/);
    expect(shims.why.notes[0]).toMatch(/remains .* toe .* camber/);
    expect(shims.drawing).toMatchObject({ is: 'bracket', where: 'left rear forward wheel' });
  });
  it('the other way round in millimetres', () => {
    const b = bench(larkfield, [
      [0, 'reading toe @ left rear aft wheel = 3 mm', 'reading camber @ left rear aft wheel = 1.2 deg'],
    ]);
    expect(key(b, 'shims@left rear aft wheel').words).toMatch(/add .*front bottom/);
  });
  it('a pair has total and thrust', () => {
    const b = bench(juniper, [
      [0, 'reading toe @ left rear forward wheel = 0.00 deg', 'reading toe @ right rear forward wheel = 0.30 deg'],
    ]);
    expect(key(b, 'thrust@rear forward')).toMatchObject({
      verdict: 'high',
      words: expect.stringMatching(/total toe 0\.3\d* deg in, thrust 0\.15\d* deg to the left/),
    });
  });
  it('a length without a diameter asks for it', () => {
    const sheet = sheetWith((s) => delete s.tyres!.diameter);
    const b = bench(sheet, [[0, 'reading toe @ left rear aft wheel = -1/8 in']]);
    expect(key(b, 'toe@left rear aft wheel').wants?.field).toBe('tyres.diameter');
    const over = bench(sheet, [[0, 'reading toe @ left rear aft wheel = -1/8 in across 24 in']]);
    expect(key(over, 'toe@left rear aft wheel').words).toMatch(/0\.30 deg out/);
  });
});

describe('electrics', () => {
  it('names the guilty leg from drops and from points along the feed', () => {
    const drops = bench(juniper, [
      [
        0,
        'reading voltage drop @ ground = 0.9 V',
        'reading voltage drop @ feed cable = 0.4 V',
        'reading current @ motor = 22 A',
      ],
    ]);
    expect(key(drops, 'legs@circuit').words).toMatch(/^ground loses 0\.9 V/);
    const points = bench(larkfield, [
      [
        0,
        'condition pump running',
        'reading voltage @ battery = 12.5 V',
        'reading voltage @ relay = 12.4 V',
        'reading voltage @ motor = 10.4 V',
        'reading current @ motor = 22 A',
      ],
    ]);
    expect(key(points, 'legs@circuit').words).toMatch(/^relay to motor loses 2\.0 V/);
    expect(key(points, 'legs@circuit').drawing).toMatchObject({ is: 'legs' });
    expect(key(points, 'legs@circuit').evidence).toEqual([{ see: 'motor legs', outcome: 'feed' }]);
    expect(key(drops, 'legs@circuit').evidence).toEqual([{ see: 'motor legs', outcome: 'ground' }]);
  });
  it('a rested battery is a band, one under load is held against what the motor needs', () => {
    expect(key(bench(juniper, [[0, 'reading voltage @ battery = 12.1 V']]), 'charge@battery').words).toBe(
      'battery 12.1 V at rest: between 10 and 45 % charged, low',
    );
    expect(
      key(bench(juniper, [[0, 'condition pump running', 'reading voltage @ battery = 10.9 V']]), 'voltage@battery')
        .evidence,
    ).toEqual([{ see: 'battery volts', outcome: 'low' }]);
  });
  it('hydrometer by temperature', () => {
    const b = bench(juniper, [
      [0, 'reading temperature @ battery = 40 F', 'reading specific gravity @ battery = 1.250 SG'],
    ]);
    // 1.250 at 40 F is 1.234 at 80 F by the battery maker's table.
    expect(key(b, 'gravity@battery').words).toMatch(/1\.234 at 80 F/);
  });
});

describe('moisture, temperature, tyres', () => {
  it('water against what the air brought', () => {
    const much = bench(juniper, [
      [0, 'reading on time @ pump = 20 s', 'reading off time @ pump = 30 min'],
      [
        1,
        'reading temperature @ ambient = 80 F',
        'reading humidity @ ambient = 70 %',
        'reading water drained @ tank = 1 qt',
      ],
    ]);
    expect(key(much, 'water drained@tank')).toMatchObject({
      verdict: 'high',
      evidence: [{ see: 'tank water', outcome: 'much' }],
    });
    const little = bench(larkfield, [[0, 'reading water drained @ tank = 50 ml']]);
    expect(key(little, 'water drained@tank')).toMatchObject({ verdict: 'within', wants: { field: 'humidity' } });
  });
  it('freezing tonight', () => {
    expect(key(bench(larkfield, [[0, 'reading temperature @ ambient = -4 C']]), 'freezing@tank').verdict).toBe('low');
    expect(keys(bench(larkfield, [[0, 'reading temperature @ ambient = 14 C']]))).not.toContain('freezing@tank');
  });
  it('a colder tank is no leak', () => {
    const b = bench(juniper, [
      [0, 'reading temperature @ ambient = 70 F', 'reading pressure @ tank = 110 psi'],
      [600, 'reading temperature @ ambient = 30 F', 'reading pressure @ tank = 101 psi'],
    ]);
    expect(key(b, 'temperature only@tank').words).toMatch(/101 psi is no leak$/);
  });
  it('tyres at another temperature, in both units', () => {
    const psi = bench(juniper, [
      [0, 'reading temperature @ ambient = 40 F', 'reading pressure @ right front tyre = 95 psi'],
    ]);
    expect(key(psi, 'pressure@right front tyre').words).toBe('right front tyre 95 psi, high: should be 89 psi');
    const kPa = bench(larkfield, [[0, 'reading pressure @ left rear tyre = 580 kPa']]);
    expect(key(kPa, 'pressure@left rear tyre').verdict).toBe('low');
  });
});

describe('the battery of a pump that will not run', () => {
  it('speaks to the diagnosis at rest as well', () => {
    const b = bench(juniper, [[0, 'sign wont run @ pump', 'reading voltage @ battery = 12.1 V']]);
    expect(key(b, 'charge@battery').evidence).toEqual([{ see: 'battery volts', outcome: 'low' }]);
    expect(key(bench(juniper, [[0, 'reading voltage @ battery = 12.1 V']]), 'charge@battery').evidence).toBeUndefined();
  });
});

describe('sides that are weighed unlike', () => {
  it('are alike when they read as far apart as the sheet has them', () => {
    const sheet = sheetWith((s) => (s.springs!.pressure!.right = { low: '62 psi', high: '72 psi' }));
    const b = bench(sheet, [
      [0, 'reading pressure @ left bellows = 57 psi', 'reading pressure @ right bellows = 67 psi'],
    ]);
    expect(key(b, 'side to side@bellows').evidence).toEqual([{ see: 'bellows pressures', outcome: 'alike' }]);
  });
});

describe('ranges and service', () => {
  it('delay, torque, settling', () => {
    expect(
      key(bench(juniper, [[0, 'reading delay @ left height valve = 20 s']]), 'delay@left height valve').verdict,
    ).toBe('high');
    expect(key(bench(juniper, [[0, 'reading torque @ bellows = 30 lbf ft']]), 'torque@bellows').verdict).toBe('high');
    expect(key(bench(juniper, [[0, 'reading settling time = 5 min']]), 'settling time@coach').words).toMatch(
      /wait 10 minutes more/,
    );
  });
  it('what was done is due again, by date and distance', () => {
    const b = bench(juniper, [[0, 'reading odometer = 84200 mi', 'work replaced @ intake filter']]);
    expect(key(b, 'service@intake filter').words).toBe(
      'intake filter: done, next due on 6 Apr 2027 or at 89200 mi, whichever comes first',
    );
  });
  it('two gauges that differ take the earlier readings back', () => {
    const b = bench(juniper, [
      [0, 'reading pressure @ tank = 95 psi'],
      [2, 'reading pressure @ test port = 106 psi'],
    ]);
    expect(key(b, 'gauges@tank').evidence).toEqual([{ see: 'second gauge', outcome: 'coach gauge low' }]);
  });
});

describe('all findings', () => {
  const benches: Bench[] = [
    bench(juniper, [
      [
        0,
        'condition panel auto',
        'reading pressure @ tank = 112 psi',
        'reading height @ left rear = 13 in',
        'reading cut-in @ pressure switch = 80 psi',
        'reading pump-up @ tank = 90 psi from 0 psi over 11 min',
        'reading voltage @ motor = 10.4 V',
        'reading current @ motor = 30 A',
      ],
      [40, 'reading pressure @ tank = 100 psi', 'reading height @ left rear = 12 1/2 in'],
    ]),
    bench(larkfield, [
      [
        0,
        'reading pressure @ tank = 720 kPa',
        'reading toe @ left rear aft wheel = 3 mm',
        'reading camber @ left rear aft wheel = 1.2 deg',
        'reading on time @ pump = 2 min',
        'reading off time @ pump = 4 min',
        'reading pressure @ left bellows = 300 kPa',
        'reading pressure @ right bellows = 400 kPa',
      ],
    ]),
  ];
  it('fit the stored shape, rest on facts, say where every input comes from, and end without a full stop', () => {
    const wrong = (f: Finding): string[] => [
      ...(Finding.safeParse(f).success ? [] : ['shape']),
      ...(f.because.length > 0 ? [] : ['rests on nothing']),
      ...(/\.$|NaN|undefined|Infinity/.test(f.words) ? [f.words] : []),
      ...f.why.inputs.filter((x) => x.text === '' || x.from === '').map((x) => `input ${x.name}`),
      ...(f.limit === undefined || f.limit.source.words.length > 3 ? [] : ['limit without a source']),
    ];
    expect(benches.flatMap((b) => b.found).flatMap((f) => wrong(f).map((w) => `${f.key}: ${w}`))).toEqual([]);
  });
  it('give evidence only in the words of the observables', () => {
    const known = new Map(airObservables.map((o) => [o.see, o.outcomes]));
    const said = benches.flatMap((b) => b.found.flatMap((f) => f.evidence ?? []));
    expect(said.length).toBeGreaterThanOrEqual(3);
    expect(said.filter((e) => !known.get(e.see)?.includes(e.outcome))).toEqual([]);
  });
  it('an impossible input is said with its name, and the rest is still judged', () => {
    const b = bench(juniper, [[0, 'reading voltage @ battery = 48 V', 'reading pressure @ tank = 95 psi']]);
    expect(key(b, 'impossible@battery').words).toMatch(/battery volts 48 V cannot be/);
    expect(key(b, 'pressure@tank').verdict).toBe('within');
  });
  it('say nothing where no fact touches them', () => {
    expect(
      bench(juniper, [
        [0, 'reading pressure @ tank = 95 psi'],
        [1, 'condition key on'],
      ]).found,
    ).toEqual([]);
  });
});
