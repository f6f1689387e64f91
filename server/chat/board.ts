/** What stands now, for the page: computed from the folded session, never stored. Pure. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { showAmount } from '../core/amount.ts';
import { dimensionOf } from '../core/units.ts';
import type { Finding } from '../findings/finding.ts';
import type { Folded } from '../session/fold.ts';
import type { CoachState } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { joinedNow } from './circuit-now.ts';
import { readingOf } from './context.ts';
import type { Board } from './protocol.ts';
import { underOf } from './under.ts';

const keyOf = (fact: ReadingFact): string => `${fact.what.v}@${fact.where.v}`;

const shown = (fact: ReadingFact): string => {
  const { unit, text, si, pm } = fact.amount.v;
  // as typed when it carries its unit, else with the unit it was taken in
  return /[a-zA-Z%"'°#]/.test(text)
    ? text
    : showAmount(si, unit, pm, fact.what.v.includes('fall') || fact.what.v === 'height off');
};

const yesNo = (value: boolean | null, yes: string, no: string): string | null =>
  value === null ? null : value ? yes : no;

const stateLines = (state: CoachState, now: number): Board['state'] => {
  const lines: Board['state'] = [];
  const add = (what: string, words: string | null): void => {
    lines.push({
      what,
      words: words === null ? `${what}: not known` : `${what} ${words}`,
      from: words === null ? 'unknown' : 'said',
    });
  };
  add('key', yesNo(state.key, 'on', 'off'));
  add('pump', yesNo(state.pump, 'running', 'at rest'));
  add('panel', state.panel?.toUpperCase() ?? null);
  const arm = (['left', 'right'] as const).flatMap((side) => (state.arm[side] ? [`${side} ${state.arm[side]}`] : []));
  if (arm.length > 0) add('valve arms', arm.join(', '));
  if (state.outletClosed !== null) add('tank outlet', yesNo(state.outletClosed, 'closed', 'open'));
  if (state.pumpedAt !== null) {
    const minutes = Math.max(0, Math.round((now - state.pumpedAt) / 60_000));
    add('since pumped', minutes > 24 * 60 ? null : `${minutes} min`);
  }
  if (state.mode)
    add('coach is', state.mode === 'dead' ? 'DEAD: vented, no power, on stands' : 'LIVE: air in, chocked');
  return lines;
};

/** Points of one line of the charts: the newest so many. */
const most = 200;

/**
 * What stands beside the limit: the reading, or what the finding made of it where the limit is of another kind (a toe in
 * inches against degrees, a pump-up to 90 psi against minutes). `fits`: whether the limit can be drawn beside it.
 */
const besideLimit = (fact: ReadingFact, finding: Finding | undefined) => {
  const amount = fact.amount.v;
  const read = { si: amount.si, pm: amount.pm, unit: amount.unit, text: shown(fact) };
  const limit = finding?.limit?.low ?? finding?.limit?.high;
  if (!limit || dimensionOf(limit.unit) === dimensionOf(amount.unit)) return { ...read, fits: true };
  const made = finding?.because.includes(fact.id) ? finding.amount : undefined;
  if (!made || dimensionOf(made.unit) !== dimensionOf(limit.unit)) return { ...read, fits: false };
  return {
    si: made.si,
    pm: made.pm,
    unit: made.unit,
    text: fact.what.v === 'pump-up' ? made.text : read.text,
    fits: true,
  };
};

/** `now`: ms since the epoch, for minutes since pumped. */
export const boardOf = (standing: Folded, sheet: Sheet, now: number): Board => {
  const latest = new Map<string, Board['latest'][number]>();
  const series = new Map<string, Board['series'][number]>();
  const inKind = new Set<string>();
  for (const { fact, seq } of standing.facts) {
    if (fact.is !== 'reading') continue;
    const key = keyOf(fact);
    const amount = fact.amount.v;
    const finding = standing.findings.get(key);
    const { fits, ...beside } = besideLimit(fact, finding);
    const limit = fits ? finding?.limit : undefined;
    if (dimensionOf(beside.unit) === dimensionOf(amount.unit)) inKind.add(key);
    else inKind.delete(key);
    latest.set(key, {
      key,
      where: fact.where.v,
      what: fact.what.v,
      ...beside,
      at: fact.at,
      seq,
      ...(finding?.because.includes(fact.id) ? { verdict: finding.verdict } : {}),
      ...(limit?.low ? { low: limit.low.si, lowText: limit.low.text } : {}),
      ...(limit?.high ? { high: limit.high.si, highText: limit.high.text } : {}),
    });
    const line = series.get(key) ?? { key, unit: amount.unit, points: [] };
    line.points.push({ at: fact.at, si: amount.si, pm: amount.pm });
    series.set(key, line);
  }
  const lit = standing.suspects.flatMap((s) => (s.where === undefined ? [] : [{ part: s.where, p: s.p }]));
  const asked = standing.next;
  return {
    session: standing.session,
    seq: standing.seq,
    coach: sheet.coach,
    practice: standing.practice !== null,
    closed: standing.closed,
    latest: [...latest.values()],
    series: [...series.values()]
      // a line over time stands beside its limits only in their own kind
      .filter((s) => s.points.length > 1 && inKind.has(s.key))
      .map((s) => ({ ...s, points: s.points.slice(-most) })),
    state: stateLines(standing.state, now),
    under: underOf(standing.state),
    gates: [
      ...standing.pending.map((g) => ({ what: g.what as string, words: g.words, answered: false })),
      ...[...standing.gates]
        .filter(([what]) => gateNames.has(what))
        .map(([what, holds]) => ({ what, words: holds ? what : `not ${what}`, answered: holds })),
    ],
    suspects: [...standing.suspects],
    checksDone: standing.checksDone.map((c) => ({ ...c })),
    next: asked,
    open: standing.open,
    circuit: { lit, joined: [...joinedNow(standing.state)], panel: sheet.panel !== null && sheet.panel !== undefined },
    reading: readingOf(sheet, standing.zone),
  };
};

const gateNames: ReadonlySet<string> = new Set([
  'on stands',
  'wheels chocked',
  'pump power cut',
  'tank drained',
  'bellows vented',
  'head vented',
  'air vented',
  'people clear',
  'eyes covered',
  'floor level',
  'cribbed',
  'over pit',
]);
