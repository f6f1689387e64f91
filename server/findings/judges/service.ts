/** Work done that the sheet asks for at intervals: when it is due next. */
import type { WorkFact } from '../../../intents/shapes.ts';
import { ImpossibleInput } from '../../core/quantity.ts';
import { type Judge, readings, sheetInput, sheetSource } from '../case.ts';
import type { Finding } from '../finding.ts';
import { dateWords, serviceDue, serves } from '../service-due.ts';
import { distanceText } from '../show.ts';

export const service: Judge = {
  subject: 'service',
  judge: (c) => {
    const works = c.fresh.filter((f): f is WorkFact => f.is === 'work' && f.done);
    const all = readings(c, 'odometer');
    const odometer = all.at(-1);
    const before = all.at(-2);
    // an odometer that fell is a slip of the finger, and would put what is due in the wrong place
    if (odometer && before && c.fresh.some((f) => f.id === odometer.id) && odometer.amount.v.si < before.amount.v.si)
      throw new ImpossibleInput(
        'odometer',
        odometer.amount.v.si,
        (write) => `it was ${write(before.amount.v.si)} before and cannot run backwards`,
      );
    if (works.length === 0) return [];
    return serviceDue(c, works.at(-1)!.at).flatMap(({ item, field, last, due }): Finding[] => {
      if (!last || !due || !works.some((w) => w.id === last.id && serves(item, w))) return [];
      const parts = [
        ...(due.date === null ? [] : [`on ${dateWords(due.date, c.standing.zone)}`]),
        ...(due.odometer === null ? [] : [`at ${distanceText(due.odometer, c.sheet.units.distance)}`]),
      ];
      return [
        {
          key: `service@${item.what}`,
          verdict: 'no limit',
          words: `${item.what}: done, next due ${parts.join(' or ')}${parts.length > 1 ? ', whichever comes first' : ''}`,
          because: [last.id],
          why: {
            formula: 'last done plus the interval, by date and by distance, whichever comes first',
            inputs: [
              { name: 'last done', text: dateWords(last.at, c.standing.zone), from: last.id },
              ...(item.every ? [sheetInput('every', item.every, field)] : []),
              ...(item.distance ? [sheetInput('or every', item.distance, field)] : []),
              ...(odometer && due.odometer !== null
                ? [
                    {
                      name: 'odometer',
                      text: distanceText(odometer.amount.v.si, c.sheet.units.distance),
                      from: odometer.id,
                    },
                  ]
                : []),
            ],
            source: sheetSource(field),
            notes: [],
          },
          ...(item.distance && due.odometer === null
            ? { wants: { field: 'odometer', question: 'What does the odometer read?' } }
            : {}),
        },
      ];
    });
  },
};
