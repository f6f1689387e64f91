/** Finds hazards in a note and the mood they stand in. */
import type { Hazard } from './shapes.ts';
import { flatten } from './smooth.ts';
import { hazardPatterns, moods } from './words/hazards.ts';

const window = 90;
/** How many hazards of one kind a note can hold: enough to be seen. */
const most = 12;

export const findHazards = (text: string): Hazard[] => {
  const { low, at } = flatten(text.length > 4000 ? text.slice(0, 4000) : text);
  const out: Hazard[] = [];
  for (const [hazard, pattern] of hazardPatterns) {
    const m = pattern.exec(low);
    if (!m || out.length >= most) continue;
    const from = m.index;
    const to = from + m[0].length;
    // the sentence around it says the mood
    const start = Math.max(low.lastIndexOf('.', from - 1) + 1, low.lastIndexOf(';', from - 1) + 1, from - window, 0);
    const stop = low.slice(to).search(/[.;\n]/);
    const end = Math.min(stop < 0 ? low.length : to + stop, to + window);
    const around = low.slice(start, end + 1);
    const mode =
      moods.find(([, mood]) => mood.test(around))?.[0] ??
      (/\w+ing\b/.test(m[0]) ? 'doing' : /\w+ed\b/.test(m[0]) ? 'done' : 'intended');
    const standing = hazard === 'over-pressure' ? (mode === 'asked' ? 'asked' : 'doing') : mode;
    if (out.some((h) => h.hazard === hazard)) continue;
    out.push({ hazard, mode: standing, spans: [[at[from]!, at[to]!]] });
  }
  // one danger, one name: the sharper pattern stands
  const has = (name: Hazard['hazard']): boolean => out.some((h) => h.hazard === name);
  return out.filter((h) => {
    if (h.hazard === 'under unsupported' && (has('jack only') || has('link pulled under'))) return false;
    if (h.hazard === 'jack only' && has('soft ground')) return /\bonly\b|just/.test(low);
    if (h.hazard === 'drive disabled' && has('cords driven')) return false;
    if (h.hazard === 'weld near line' && has('heat on line')) return false;
    return true;
  });
};
