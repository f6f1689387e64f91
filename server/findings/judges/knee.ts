/** Where the tank's fall stops: the best clue there is. Needs four readings or more of one standing. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { kneeOf } from '../../core/fall-shape.ts';
import { type Case, type Judge, physics, sheetInput } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import { heightRange, heightValue } from '../corner-sheet.ts';
import type { Finding } from '../finding.ts';
import { clock, shown } from '../show.ts';
import { divisionOf, episodeOf, fitPoints, tankSide } from '../tank-episode.ts';
import { seesFall } from '../tank-state.ts';
import { settledBy, stoppedAt } from '../where-it-stops.ts';

/** Rear sides read low since the fall began. */
const sidesDown = (c: Case, since: number): 'up' | 'down' | null => {
  const rear = (['leftRear', 'rightRear'] as const).flatMap((which) => {
    const f = c.facts.findLast(
      (x): x is ReadingFact =>
        x.is === 'reading' &&
        x.what.v === 'height' &&
        x.where.v === (which === 'leftRear' ? 'left rear' : 'right rear') &&
        x.at >= since,
    );
    const low = heightRange(c, which)?.low?.si;
    return f && low !== undefined ? [heightValue(f) < low] : [];
  });
  if (rear.length === 0) return null;
  return rear.some(Boolean) ? 'down' : rear.length === 2 ? 'up' : null;
};

const judgeKnee = (c: Case, last: ReadingFact): Finding | null => {
  const episode = episodeOf(c, last);
  if (episode.points.length < 4) return null;
  const { p: atmosphere, input } = atmosphereOf(c);
  const readings = fitPoints(episode.points);
  const step = divisionOf(c, last);
  const unit = last.amount.v.unit;
  const empty = episode.points.slice(-2).every((p) => p.p <= step / 2) && episode.points[0]!.p > 4 * step;
  const knee = empty ? null : kneeOf(readings, atmosphere);
  if (!knee && !empty) return null;
  const at = knee?.at ?? 0;
  const { bellows, protection, ...stop } = stoppedAt(c, at, step);
  const atBellows = !empty && stop.atBellows;
  const atProtection = !empty && stop.atProtection;
  const heat = !empty && settledBy(c, episode.points[0]!.p, at, step, atmosphere);
  const sides = sidesDown(c, episode.points[0]!.at);
  const watched = seesFall(c, episode.state);
  const outcome = empty
    ? 'zero'
    : atBellows && atProtection
      ? null
      : atProtection
        ? 'protection'
        : atBellows && sides !== null
          ? `bellows pressure, side ${sides}`
          : null;
  const meaning = empty
    ? 'at nothing: the leak is on the tank side'
    : atBellows && atProtection
      ? 'where bellows pressure and the protection valve lie too close to tell apart'
      : atProtection
        ? "at the protection valve's setting: the leak is behind that valve"
        : atBellows
          ? `at bellows pressure${sides === 'up' ? ', the sides still up: an inlet seat' : sides === 'down' ? ', a side down: its bellows or exhaust seat' : ': look at the heights now'}`
          : heat
            ? 'and holds there: no more than hot air takes as it cools, and no place where a leak would stop'
            : 'and holds there';
  return {
    key: 'fall stops@tank',
    verdict: 'no limit',
    words: `the fall stops at ${shown(at, unit, step / 2).text}, ${meaning}`,
    amount: shown(at, unit, step / 2),
    because: episode.points.map((p) => p.fact.id),
    why: {
      formula:
        'two legs, a decay then a level stretch, fit the readings better than one decay (chi squared by 9 or more)',
      inputs: [
        ...episode.points.map((p) => ({
          name: `tank at ${clock(p.at, c.standing.zone)}`,
          text: shown(p.p, unit, p.fact.amount.v.pm).text,
          from: p.fact.id,
        })),
        ...(bellows ? [bellows.input] : []),
        ...(protection ? [sheetInput('protection valve', protection, 'supply.protection')] : []),
        input,
      ],
      source: physics(
        "a tank feeding a leaking bellows comes to rest at the bellows' pressure; its own leak goes on to nothing",
      ),
      notes: ['heat that settles flattens a fall too: wait 15 min after pumping before the first reading'],
    },
    ...(outcome && watched.see === 'tank fall auto' ? { evidence: [{ see: 'fall stops', outcome }] } : {}),
  };
};

export const knee: Judge = {
  subject: 'where the fall stops',
  judge: (c) => {
    const last = c.fresh.findLast(
      (f): f is ReadingFact => f.is === 'reading' && f.what.v === 'pressure' && tankSide(f.where.v),
    );
    const found = last ? judgeKnee(c, last) : null;
    return found ? [found] : [];
  },
};
