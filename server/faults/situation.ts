/**
 * Work done opens a new situation. A fault of a part that was worked on may have been there before and be gone since: the
 * hypothesis "was there, mended" keeps explaining what was seen before, and predicts a sound part after.
 */
import { takePlace } from '../../intents/place.ts';
import type { Part, Side } from '../../intents/shapes.ts';
import type { Standing } from '../session/standing.ts';
import type { Fault } from './fault.ts';
import { mending } from './signs/rule.ts';

export type Mend = {
  part: Part;
  side: Side | null;
  chance: number;
  clock: number;
  seq: number;
  words: string;
  /** Done before anything was said to be the wrong way round: a new valve may have brought that, and does not end it. */
  brings?: true;
};

export const mendsOf = (standing: Standing): Mend[] =>
  standing.facts.flatMap(({ fact, seq }, clock): Mend[] => {
    if (fact.is === 'condition' && fact.what.v === 'panel auto' && fact.holds)
      return [{ part: 'panel', side: null, chance: 0.97, clock, seq, words: 'panel set to AUTO' }];
    if (fact.is !== 'work' || !fact.done) return [];
    const place = takePlace(fact.where.v);
    // Pumping up mends a tyre and nothing else.
    const pumped = fact.what.v === 'pumped up' && place?.part === 'tyre';
    const chance = pumped ? mending.inflated : mending[fact.what.v];
    if (!place?.part || chance === undefined) return [];
    const side = place.side === 'left' || place.side === 'right' ? place.side : null;
    const reversed = standing.facts
      .slice(0, clock)
      .some((h) => h.fact.is === 'sign' && h.fact.there && h.fact.what.v === 'reversed');
    return [
      {
        part: place.part,
        side,
        chance,
        clock,
        seq,
        words: `${fact.where.v} ${fact.what.v}`,
        ...(reversed ? {} : { brings: true as const }),
      },
    ];
  });

const onlyByPanel = (fault: Fault): boolean => fault.kind === 'panel left shut' || fault.kind === 'panel left empty';

/** The last work that may have ended `fault`; null when none was done on it. */
export const mendOf = (fault: Fault, mends: readonly Mend[]): Mend | null =>
  mends.findLast((m) => {
    const onPart = fault.part === m.part || (fault.mends ?? []).includes(m.part);
    const onSide = m.side === null || fault.side === null || fault.side === m.side;
    const setting = m.words === 'panel set to AUTO';
    if (fault.kind === 'valve reversed' && m.brings) return false;
    return onPart && onSide && setting === onlyByPanel(fault);
  }) ?? null;
