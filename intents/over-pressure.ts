/** A pump that runs on above its cut-out, seen from the readings. */
import type { Context, Reading } from './shapes.ts';

/** Gauge pressure from which a pump that does not stop is a danger. Common practice, no source: cut-out is 120 psi or so. */
const tooHigh = 125 * 6894.757293168361;

/** "wont shut off" with the tank well up, in this note or the last ones: the pump has run past its cut-out. */
export const overPressure = (out: Reading, context: Context): void => {
  if (out.hazards.some((h) => h.hazard === 'over-pressure')) return;
  const runsOn = out.facts.filter(
    (f) =>
      f.is === 'sign' &&
      f.there &&
      (f.what.v === 'runs on' ||
        (['stuck', 'stays closed', 'welded'].includes(f.what.v) && /^(?:pressure switch|relay)$/.test(f.where.v))),
  );
  const running = out.facts.filter((f) => f.is === 'condition' && f.holds && f.what.v === 'pump running');
  const tanks = (facts: Reading['facts']): number[] =>
    facts.flatMap((f) =>
      f.is === 'reading' && f.what.v === 'pressure' && ['tank', 'gauge', 'test port', ''].includes(f.where.v) && !f.held
        ? [f.amount.v.si]
        : [],
    );
  // in this note however high it went; before it, what was read last
  const now = tanks(out.facts);
  const own = now.length > 0;
  const si = own ? Math.max(...now) : (tanks(context.recent.flatMap((n) => n.facts)).at(-1) ?? 0);
  const by =
    si >= tooHigh && runsOn.length > 0 ? runsOn : si >= tooHigh * 1.04 && own && running.length > 0 ? running : [];
  if (by.length > 0)
    out.hazards.push({
      hazard: 'over-pressure',
      mode: 'doing',
      spans: by.flatMap((f) => ('what' in f ? f.what.spans : [])),
    });
};
