/** A limit given in a note, as the fields of the sheet it belongs into. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { SpecFact } from '../../intents/shapes.ts';
import { showAmount } from '../core/amount.ts';
import { fieldName } from '../sheet/fields.ts';
import type { Folded } from '../session/fold.ts';

export type SpecChange = { path: string; name: string; text: string };
export type SpecSaid = { seq: number; by: string; at: number; words: string; changes: SpecChange[] };

const corners = [
  ['left', 'front', 'leftFront'],
  ['right', 'front', 'rightFront'],
  ['left', 'rear', 'leftRear'],
  ['right', 'rear', 'rightRear'],
] as const;

/** As typed; with the unit it was taken in where it was typed without. */
const written = ({ text, unit }: SpecFact['low']): string => (/[a-zA-Z%"°]/.test(text) ? text : `${text} ${unit}`);

const change = (path: string, text: string): SpecChange => ({ path, name: fieldName(path), text });
const range = (path: string, spec: SpecFact): SpecChange[] => [
  change(`${path}.low`, written(spec.low)),
  change(`${path}.high`, written(spec.high)),
];

/** Middle and half width, in the unit it was given in, as fine as it takes to give the limits back. */
const middle = (spec: SpecFact): { nominal: string; tolerance: string } => {
  const unit = spec.low.unit;
  const fine = unit === 'in' ? (0.0254 / 64) * 0.5 : 0;
  return {
    nominal: showAmount((spec.low.si + spec.high.si) / 2, unit, fine),
    tolerance: showAmount((spec.high.si - spec.low.si) / 2, unit, fine, true),
  };
};

/** Fields of the sheet that hold this limit; empty where the sheet has none for it. */
export const specChanges = (spec: SpecFact): SpecChange[] => {
  const at = takePlace(spec.where.v) ?? {};
  const sides = at.side === 'left' || at.side === 'right' ? [at.side] : (['left', 'right'] as const);
  switch (spec.what.v) {
    case 'height': {
      const { nominal, tolerance } = middle(spec);
      return corners
        .filter(([side, end]) => sides.some((s) => s === side) && (at.end === undefined || at.end === end))
        .flatMap(([, , key]) => [
          change(`heights.${key}.nominal`, nominal),
          change(`heights.${key}.tolerance`, tolerance),
        ]);
    }
    case 'cut-in':
      return range('supply.cutIn', spec);
    case 'cut-out':
      return range('supply.cutOut', spec);
    case 'pressure':
      return at.part === 'bellows' ? sides.flatMap((side) => range(`springs.pressure.${side}`, spec)) : [];
    case 'toe':
      return range('alignment.toe', spec);
    case 'camber':
      return range('alignment.camber', spec);
    case 'current':
      return range('pump.current', spec);
    case 'delay':
      return range('valves.delay', spec);
    default:
      return [];
  }
};

/** Every limit given in the session and still in force; the newest of a field last. */
export const specsOf = (standing: Folded): SpecSaid[] =>
  standing.facts.flatMap(({ fact, seq, by }) =>
    fact.is === 'spec'
      ? [
          {
            seq,
            by,
            at: fact.at,
            words: `${fact.what.v} ${fact.where.v} ${written(fact.low)} to ${written(fact.high)}`.replaceAll(
              /\s+/g,
              ' ',
            ),
            changes: specChanges(fact),
          },
        ]
      : [],
  );
