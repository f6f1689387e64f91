/** Wire for a current over a length, drop over a wire, what the circuit's own copper should lose, battery from its volts. */
import { roomTemperature } from '../../core/air.ts';
import { chargeBand, restedTables } from '../../core/battery.ts';
import { positive, si } from '../../core/quantity.ts';
import { dropOf, gaugeName, smallestWireFor, wireResistance } from '../../core/wire.ts';
import { type Input, latest, middle, physics } from '../case.ts';
import { judge } from '../judge.ts';
import { shown, typed } from '../show.ts';
import { asWorked } from './suppose.ts';
import { type Question, amountInput, said, type Workout, type Worked } from './question.ts';

/** Critical circuits on 12 V: 3 % (marine and trade practice; from memory). */
const share = 0.03;
const nominal = 12;

const gaugeIn = (words: string): number | null => {
  const m = /\b(\d{1,2})(\/0)? ?(?:awg|gauge|ga)\b|\bawg ?(\d{1,2})(\/0)?|\b([1-4])\/0\b/.exec(words);
  if (!m) return null;
  const n = Number(m[1] ?? m[3] ?? m[5]);
  return m[2] || m[4] || m[5] ? 1 - n : n;
};

const volts = (v: number): string => shown(v, 'V', 0.005).text;

const currentOf = (q: Question): { a: number; input: Input } | null => {
  const [a] = said(q, 'current');
  if (a) return { a: middle(a), input: amountInput('current', a) };
  const read = latest(q.c, 'current', (p) => /^(?:motor|pump|)$/.test(p));
  if (read) return { a: middle(read.amount.v), input: { name: 'current', text: typed(read.amount.v), from: read.id } };
  const top = q.c.sheet.pump?.current?.high;
  return top
    ? { a: top.si, input: { name: 'current', text: top.text, from: 'sheet: pump.current, the highest' } }
    : null;
};

const allowance = (q: Question): { v: number; input: Input } => {
  const [v] = said(q, 'voltage');
  const percent = said(q, 'ratio')[0];
  if (v) return { v: v.si, input: amountInput('may lose', v) };
  if (percent) return { v: percent.si * nominal, input: amountInput('may lose, of 12 V', percent) };
  const drop = q.c.sheet.electrics?.drop;
  if (drop) return { v: drop.si, input: { name: 'may lose', text: drop.text, from: 'sheet: electrics.drop' } };
  return {
    v: share * nominal,
    input: { name: 'may lose', text: '3 % of 12 V', from: 'assumed: practice for critical circuits' },
  };
};

const wireFor = (q: Question): Worked | null => {
  const [length] = said(q, 'length');
  const current = currentOf(q);
  if (!length)
    return {
      words: 'how long is the run, one way?',
      lines: [],
      wants: { field: 'wire length', question: 'How long is the run from battery to motor, one way?' },
    };
  if (!current)
    return {
      words: 'how many amps will it carry?',
      lines: [],
      wants: { field: 'pump.current', question: 'What current should the pump draw, lowest and highest?' },
    };
  const allowed = allowance(q);
  const trip = 2 * positive('wire length', length.si);
  const n = smallestWireFor(si(current.a), si(trip), si(allowed.v), roomTemperature);
  const loses = (awg: number): string =>
    `AWG ${gaugeName(awg)}: ${volts(dropOf(si(current.a), wireResistance(awg, si(trip), roomTemperature)))}`;
  const near = n === null ? [] : [n + (n >= 1 ? 2 : 1), n, n - (n > 0 ? 2 : 1)].filter((k) => k >= -3 && k <= 24);
  return {
    words:
      n === null
        ? 'no single wire up to 4/0 serves: shorten the run'
        : `AWG ${gaugeName(n)} or thicker: ${loses(n).split(': ')[1]} lost at ${shown(current.a, 'A', 0.5).text}, ${shown(allowed.v, 'V', 0.005).text} allowed`,
    lines: [
      ...near.map(loses),
      'assumed: the length is one way, so the circuit is twice that; copper at 20 C',
      'the fuse protects the wire: its ampacity by the local code or the wire maker still has to be kept',
    ],
    why: {
      formula: 'smallest copper with I rho L / A at or under what may be lost',
      inputs: [current.input, amountInput('length, one way', length), allowed.input],
      source: physics('resistance of annealed copper, 1.724e-8 ohm m at 20 C; AWG by ASTM B258'),
      notes: [],
    },
  };
};

const dropOver = (q: Question, awg: number | null): Worked | null => {
  const current = currentOf(q);
  if (!current) return null;
  const [length] = said(q, 'length');
  const { feed, ground, drop } = q.c.sheet.electrics ?? {};
  const legs =
    awg !== null && length
      ? [
          {
            name: `${length.text} and back of AWG ${gaugeName(awg)}`,
            awg,
            length: 2 * positive('wire length', length.si),
            from: 'said in the question',
          },
        ]
      : [
          ...(feed ? [{ name: 'feed', awg: feed.awg, length: feed.length.si, from: 'sheet: electrics.feed' }] : []),
          ...(ground
            ? [{ name: 'ground', awg: ground.awg, length: ground.length.si, from: 'sheet: electrics.ground' }]
            : []),
        ];
  if (legs.length === 0)
    return {
      words: 'the sheet has no wire sizes',
      lines: [],
      wants: { field: 'electrics.feed', question: 'What gauge is the feed cable and how long?' },
    };
  const lost = legs.map((l) => dropOf(si(current.a), wireResistance(l.awg, si(l.length), roomTemperature)));
  const total = lost.reduce((a, b) => a + b, 0);
  const hot = legs.reduce((sum, l) => sum + dropOf(si(current.a), wireResistance(l.awg, si(l.length), si(333.15))), 0);
  return {
    words: `${volts(total)} lost in good copper at ${shown(current.a, 'A', 0.5).text}${drop ? `, ${drop.text} allowed (sheet: electrics.drop)` : ''}`,
    lines: [
      ...(legs.length > 1 ? legs.map((l, i) => `${l.name}: ${volts(lost[i]!)}`) : []),
      `hot, at 60 C: ${volts(hot)}`,
      'joints, switch, relay and fuse come on top: about 0.1 V each is good (common practice, no source)',
    ],
    why: {
      formula: 'I rho L / A (1 + 0.00393 (T - 20 C))',
      inputs: [
        current.input,
        ...legs.map((l) => ({ name: l.name, text: `AWG ${gaugeName(l.awg)}, ${l.length.toFixed(1)} m`, from: l.from })),
      ],
      source: physics('resistance of annealed copper; AWG by ASTM B258'),
      notes: [],
    },
    drawing: { is: 'legs', legs: legs.map((l, i) => ({ name: l.name, text: volts(lost[i]!), guilty: false })) },
  };
};

const batteryAt = (q: Question): Worked | null => {
  const [v] = said(q, 'voltage');
  if (!v || v.si < 6 || v.si > 16) return null;
  const kind = q.c.sheet.electrics?.battery?.kind ?? 'flooded';
  const band = chargeBand(si(v.si), kind, v.pm);
  const percent = (s: number): number => Math.round((s * 100) / 5) * 5;
  return {
    words:
      v.si > 12.9
        ? `${v.text} at the battery: on charge or just off it`
        : `${v.text} rested: between ${percent(band.low)} and ${percent(band.high)} % charged`,
    lines: restedTables.map((t) => `${t.name}: ${t.rows.map(([s, at]) => `${at} V ${s * 100} %`).join(', ')}`),
    why: {
      formula: 'rested volts read off every table, lowest to highest',
      inputs: [
        amountInput('volts', v),
        { name: 'kind', text: kind, from: q.c.sheet.electrics?.battery ? 'sheet: electrics.battery' : 'assumed' },
      ],
      source: { kind: 'rule', words: 'published tables of rested volts, which disagree' },
      notes: ['rested about 6 h after charging'],
    },
  };
};

/** The legs as last read. */
const guilty = (q: Question): Worked =>
  asWorked(judge(q.c.facts, q.c.standing, q.c.sheet).filter((f) => f.key === 'legs@circuit')) ?? {
    words: 'not known yet: read the volts at both ends of each leg, pump running, at the same moment',
    lines: [
      '"12.5 at battery, 12.4 at relay, 10.4 at motor, 22 amps, pump running"',
      '"drop on ground 0.3 v, 22 amps"',
    ],
  };

export const wires: Workout = {
  subject: 'electrics',
  work: (q) => {
    if (/\bleg\b/.test(q.words) && /\b(?:which|bad|guilty|worst)\b/.test(q.words)) return guilty(q);
    const awg = gaugeIn(q.words);
    const wire = /\bwire|cable\b|\bawg\b/.test(q.words) || awg !== null;
    const loses = /\b(?:drop|lose|loss|lost)\b/.test(q.words);
    if (loses && awg === null && said(q, 'length').length === 0 && (wire || /copper|feed|ground/.test(q.words)))
      return dropOver(q, null);
    if (wire && awg === null) return wireFor(q);
    if (awg !== null && said(q, 'length').length > 0) return dropOver(q, awg);
    if (/drop|lose/.test(q.words) && (said(q, 'current').length > 0 || /volt/.test(q.words))) return dropOver(q, null);
    if (
      said(q, 'voltage').length > 0 &&
      (q.ask.ask === 'meaning' || q.ask.ask === 'what is' || /batt|charge/.test(q.words)) &&
      !/motor|drop/.test(q.words)
    )
      return batteryAt(q);
    return null;
  },
};
