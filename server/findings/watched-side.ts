/** Which standing of a side was watched by the tape: the observable it speaks to, and what had to be assumed. */
import type { CoachState } from '../session/standing.ts';
import type { Case } from './case.ts';

export type WatchedSide = {
  readonly see: string | null;
  readonly where: string;
  readonly notes: readonly string[];
  readonly ask?: { readonly field: string; readonly question: string };
};

/** Watched this long it is a night, not half an hour. */
export const nightSeconds = 6 * 3600;

export const watchedSide = (c: Case, side: 'left' | 'right', state: CoachState, span: number): WatchedSide => {
  const notes = state.key === null ? ['assumed: key off'] : [];
  const night = span >= nightSeconds;
  const auto = night ? `${side} overnight` : `${side} height auto`;
  if (state.panel === 'shut')
    return { see: night ? null : `${side} height shut`, where: ' with the panel shut', notes };
  if (state.panel === 'auto') return { see: auto, where: '', notes };
  if (state.panel === null && !c.sheet.panel)
    return {
      see: auto,
      where: '',
      notes: [
        ...notes,
        c.sheet.panel === null
          ? 'no panel on this coach: its height valve was in circuit'
          : 'assumed: no panel, its height valve was in circuit',
      ],
    };
  if (state.panel === null)
    return {
      see: null,
      where: '',
      notes: [...notes, 'panel position not said: not held against any fault'],
      ask: {
        field: 'panel position',
        question: `Was the panel in ${c.sheet.panel!.auto} (automatic) or ${c.sheet.panel!.shut} (shut) while it stood?`,
      },
    };
  return { see: null, where: ` with the panel in ${state.panel}`, notes };
};
