/** "3/8 low": said against where it should be, without the height itself. */
import { takePlace } from '../../../intents/place.ts';
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Case, type Judge, inputOf, middle, practice, sheetInput, sheetSource, unitOf } from '../case.ts';
import { cornerOf, tapeHalf } from '../corner-sheet.ts';
import type { Finding } from '../finding.ts';
import { shown } from '../show.ts';
import { isAsFound } from '../as-found.ts';
import { remedy, size } from '../height-remedy.ts';

/** "3/8 low": said against where it should be, without the height itself. */
const saidOff = (c: Case, fact: ReadingFact): Finding => {
  // A side without its end is the rear one: there the air is. An end without a side goes by its left corner's tolerance.
  const parts = takePlace(fact.where.v);
  const which =
    cornerOf(fact.where.v) ??
    (parts?.side && parts.side !== 'both'
      ? cornerOf(`${parts.side} rear`)
      : parts?.end
        ? cornerOf(`left ${parts.end}`)
        : null);
  const unit = unitOf(fact);
  const off = middle(fact.amount.v);
  const half = tapeHalf(c, fact);
  const tolerance = which ? c.sheet.heights?.[which]?.tolerance : undefined;
  const verdict: Finding['verdict'] = !tolerance
    ? 'no limit'
    : Math.abs(off) <= tolerance.si * 1.0001
      ? 'within'
      : off < 0
        ? 'low'
        : 'high';
  const place = fact.where.v || 'coach';
  const side = which?.startsWith('left') ? 'left' : 'right';
  return {
    key: `height@${place}`,
    verdict,
    words: `${size(off, unit, half)} ${off < 0 ? 'low' : 'high'} ${place}${verdict === 'within' ? ', within tolerance' : ''}`,
    amount: shown(off, unit, half, { difference: true }),
    ...(tolerance
      ? {
          limit: {
            high: shown(tolerance.si, unit, tolerance.pm, { difference: true }),
            source: sheetSource(`heights.${which}.tolerance`),
          },
        }
      : {}),
    because: [fact.id],
    why: {
      formula: 'offset as said, against the tolerance',
      inputs: [
        inputOf('height off', fact),
        ...(tolerance ? [sheetInput('tolerance', tolerance, `heights.${which}.tolerance`)] : []),
      ],
      source: tolerance ? sheetSource(`heights.${which}.tolerance`) : practice(),
      notes: ['assumed: said at ride height, on a level floor', ...(which ? remedy(c, which, off, unit, half) : [])],
    },
    ...(!which ? { wants: { field: 'where', question: 'Which corner is it?' } } : {}),
    ...(which && !tolerance
      ? {
          wants: {
            field: `heights.${which}`,
            question: `What should the ${place} height be, and with what tolerance?`,
          },
        }
      : {}),
    ...(which?.endsWith('Rear') &&
    parts?.side !== undefined &&
    isAsFound(c, fact) &&
    (verdict === 'low' || verdict === 'within')
      ? { evidence: [{ see: `${side} as found`, outcome: verdict === 'low' ? 'low' : 'level' }] }
      : {}),
    ...(which && (parts?.side === 'left' || parts?.side === 'right') && verdict !== 'no limit' && !isAsFound(c, fact)
      ? { evidence: [{ see: `${side} ${which.endsWith('Rear') ? 'rear' : 'front'} height`, outcome: verdict }] }
      : {}),
  };
};

export const heightOff: Judge = {
  subject: 'height off',
  judge: (c) => c.fresh.flatMap((f) => (f.is === 'reading' && f.what.v === 'height off' ? [saidOff(c, f)] : [])),
};
