/** "1 psi/min", "5 psi an hour": how fast the pressure falls. */
import { dimensionOf, type Unit } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { bellowsOf, tankOrCarried } from './changes.ts';
import { push } from './push.ts';
import type { Span } from './shapes.ts';
import { amountOf, said, use, type Clause, type Loc, type Walk } from './walk.ts';

const perTime =
  /^ ?(?:\/|per|an?|each|every) ?(min(?:ute)?|mins|hr|hour)\b|^ ?\/ ?(\d{1,3}) ?(min(?:ute)?s?|hrs?|hours?)\b/i;

type Rate = { unit: Unit; time: 'min' | 'h'; /** So many of them. */ many?: number; span: Span; to: number };

/** The rate a number is written as, in words or in a unit of its own; null when it is none. */
export const rateOf = (w: Walk, n: Amounting): Rate | null => {
  if (n.unit === null) return null;
  if (dimensionOf(n.unit) === 'rate') {
    const [unit, time] = n.unit.split('/') as [Unit, string];
    return { unit, time: time === 'h' ? 'h' : 'min', span: n.span, to: n.span[1] };
  }
  if (dimensionOf(n.unit) !== 'pressure' && n.unit !== 'lb') return null;
  const per = perTime.exec(w.text.slice(n.span[1], n.span[1] + 18));
  const to = n.span[1] + (per?.[0].length ?? 0);
  return (
    per && {
      unit: n.unit === 'lb' ? 'psi' : n.unit,
      time: /^h/i.test((per[1] ?? per[3])!) ? 'h' : 'min',
      ...(per[2] === undefined ? {} : { many: Number(per[2]) }),
      span: [n.span[1], to],
      to,
    }
  );
};

/** Reads the rate at `index`; the index after it, null when there is none. */
export const readRate = (w: Walk, c: Clause, n: Amounting, index: number, at: Loc | null): number | null => {
  const rate = rateOf(w, n);
  if (!rate) return null;
  const many = rate.many ?? 1;
  const seconds = many * (rate.time === 'h' ? 3600 : 60);
  push(
    w,
    {
      is: 'reading',
      what: { v: 'pressure fall', from: 'assumed', spans: [n.span] },
      amount: said(amountOf({ ...n, text: String(n.value) }, rate.unit, true), n),
      over: {
        v: { si: seconds, pm: 0, unit: rate.time, text: `${many} ${rate.time}` },
        from: 'said',
        spans: [rate.span],
      },
    },
    bellowsOf(at ?? tankOrCarried(w.subject)),
    n,
  );
  const end = c.items.findIndex((it) => it.span[0] >= rate.to);
  const after = end < 0 ? c.items.length : end;
  for (const it of c.items.slice(index + 1, after)) use(w, it);
  return after;
};
