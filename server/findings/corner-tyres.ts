/** The tyres a corner stands on: whether its height can be held against the sheet, and by how much they move it. */
import { takePlace } from '../../intents/place.ts';
import type { Fact, Place, ReadingFact } from '../../intents/shapes.ts';
import type { Corner } from '../core/heights.ts';
import { si } from '../core/quantity.ts';
import { tyreReach, tyreRise } from '../core/tyre-height.ts';
import { type Case, type Input, inputOf, middle, readings, sheetInput, spread, verdictOf } from './case.ts';
import { typed } from './show.ts';
import { tyreWanted } from './tyre-wanted.ts';

/** A tyre read longer ago than this, or this much later, says nothing of a height. Common practice, no source. */
const sameDay = 12 * 3_600_000;

export const isTyre = (place: Place): boolean => takePlace(place)?.part === 'tyre';

/** Whether tyres at `place` carry `corner`; a place that names no end or side is all of them. */
export const carries = (place: Place, corner: Corner): boolean => {
  const p = takePlace(place);
  return (
    p?.part === 'tyre' &&
    (p.side === undefined || p.side === 'both' || corner.startsWith(p.side)) &&
    (p.end === undefined || corner.endsWith(p.end === 'front' ? 'Front' : 'Rear'))
  );
};

const isFilling = (f: Fact): boolean =>
  f.is === 'work' && f.done && isTyre(f.where.v) && /^(?:inflated|vented|set|adjusted|replaced)$/.test(f.what.v);

/** The newest reading of each of the corner's tyres that holds for a height taken at `at`. */
const tyresOf = (c: Case, corner: Corner, at: number): ReadingFact[] => {
  const newest = new Map<string, ReadingFact>();
  for (const f of readings(c, 'pressure', (place) => carries(place, corner))) {
    if (Math.abs(f.at - at) > sameDay) continue;
    const filled = c.facts.some(
      (w) =>
        isFilling(w) &&
        carries(w.where.v, corner) &&
        w.id.split('.')[0] !== f.id.split('.')[0] &&
        w.at >= Math.min(f.at, at) &&
        w.at <= Math.max(f.at, at),
    );
    if (filled) continue;
    const wheel = takePlace(f.where.v)?.wheel ?? '';
    // A reading of the whole corner takes the place of what was read wheel by wheel before it.
    if (wheel === '') newest.clear();
    else newest.delete('');
    newest.set(wheel, f);
  }
  return [...newest.values()];
};

/**
 * A loaded tyre is pressed in by no more than this share of its diameter (common practice, no source): the most that a
 * pressure can move a corner, where nobody measured it. Diameter, m, of a tyre that the sheet does not give: a large one.
 */
const deepest = 0.1;
const largeTyre = 1.1;

export type CornerTyres = {
  /** The most the tyres can have moved the corner, m, either way. */
  readonly most: number;
  /** How much higher than at the sheet's pressure the corner stands, m, with its half width; null: not known. */
  readonly rise: { readonly si: number; readonly pm: number } | null;
  /** "left rear tyre to 89 psi". */
  readonly set: readonly string[];
  readonly notes: readonly string[];
  readonly inputs: readonly Input[];
  readonly because: readonly string[];
  readonly wants: boolean;
};

/** null where every tyre that was read is within its limit, or none was. */
export const cornerTyres = (c: Case, corner: Corner, at: number): CornerTyres | null => {
  const end = corner.endsWith('Front') ? 'front' : 'rear';
  const held = tyresOf(c, corner, at).flatMap((fact) => {
    const wanted = tyreWanted(c, fact, end);
    const want = wanted.range?.nominal ?? wanted.range?.low ?? wanted.range?.high;
    if (!want) return [];
    const verdict = verdictOf(middle(fact.amount.v), spread(fact.amount.v), wanted.range);
    return [{ fact, wanted, want, verdict }];
  });
  const off = held.filter((h) => h.verdict === 'low' || h.verdict === 'high');
  if (off.length === 0) return null;
  const per = c.sheet.tyres?.rise;
  const far = off.filter((h) => Math.abs(middle(h.fact.amount.v) / h.want.si - 1) > tyreReach);
  const floor = /\b(?:floor|ground)\b/i.test(c.sheet.heights?.measured ?? 'floor');
  const reason = !floor
    ? `the sheet does not measure from the floor (${c.sheet.heights?.measured}): what the tyres do to it is not known`
    : !per
      ? 'how far the tyres move this height is not known (sheet: tyres.rise)'
      : far.length > 0
        ? 'the pressure is more than a quarter off: too far for a correction'
        : null;
  // The wheels of a side carry it together: the frame stands on the middle of them.
  const each =
    reason === null && per
      ? held.map((h) =>
          tyreRise(
            { height: si(per.height.si), pressure: si(per.pressure.si) },
            si(h.want.si),
            si(middle(h.fact.amount.v)),
          ),
        )
      : null;
  const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  const diameter = c.sheet.tyres?.diameter?.si ?? largeTyre;
  return {
    // Deflection inversely as pressure: d (wanted / now - 1).
    most: floor
      ? deepest *
        diameter *
        mean(held.map((h) => Math.abs(h.want.si / Math.max(middle(h.fact.amount.v), 0.1 * h.want.si) - 1)))
      : 0,
    rise: each && {
      si: mean(each.map((r) => r.rise)),
      // What the gauge could not read comes on top of what the straight line leaves out.
      pm:
        mean(each.map((r) => r.pm)) +
        mean(held.map((h) => (spread(h.fact.amount.v) * per!.height.si) / per!.pressure.si)),
    },
    set: off.map((h) => `${h.fact.where.v} to ${h.want.text}`),
    notes: [
      ...off.map((h) => `${h.fact.where.v} ${typed(h.fact.amount.v)}, should be ${h.want.text}`),
      ...new Set(held.flatMap((h) => h.wanted.notes)),
      ...(reason === null ? [] : [reason]),
    ],
    inputs: [
      ...held.flatMap((h) => [
        inputOf(h.fact.where.v, h.fact),
        { name: `${h.fact.where.v} wanted`, text: h.want.text, from: h.wanted.range!.source.words },
      ]),
      ...(each && per
        ? [
            sheetInput('rise of the corner', per.height, 'tyres.rise.height'),
            sheetInput('for this much more in the tyre', per.pressure, 'tyres.rise.pressure'),
          ]
        : []),
    ],
    because: held.flatMap((h) => [h.fact.id, ...(h.wanted.range?.because ?? []), ...h.wanted.because]),
    wants: floor && !per,
  };
};
