/** Which fall of the tank was watched: what the gauge was joined to, and what had to be assumed. */
import type { CoachState } from '../session/standing.ts';
import type { Case } from './case.ts';

export type Watched = {
  /** Observable of the twin's table, null where the state does not say which. */
  readonly see: string | null;
  readonly key: string;
  /** Words that go before "loses": "with the panel shut ". */
  readonly where: string;
  /** The height valves can draw on the tank. */
  readonly feeds: boolean;
  readonly notes: readonly string[];
  readonly ask?: string;
};

export const seesFall = (c: Case, state: CoachState): Watched => {
  const notes: string[] = [];
  if (state.key === null) notes.push('assumed: key off, compressor not running');
  else if (state.key && state.pump === null) notes.push('assumed: compressor did not run between the readings');
  const pinned = state.arm.left === 'neutral' && state.arm.right === 'neutral';
  if (state.outletClosed === true)
    return {
      see: 'tank fall outlet closed',
      key: 'tank fall outlet closed',
      where: 'with its outlet closed ',
      feeds: false,
      notes,
    };
  if (state.panel === 'shut' || (state.panel === null && c.sheet.panel === null && pinned))
    return {
      see: 'tank fall shut',
      key: 'tank fall shut',
      where: pinned && state.panel !== 'shut' ? 'with the arms pinned ' : 'with the panel shut ',
      feeds: false,
      notes,
    };
  if (state.panel === 'auto') return { see: 'tank fall auto', key: 'tank fall auto', where: '', feeds: true, notes };
  if (state.panel === null && !c.sheet.panel) {
    notes.push(
      c.sheet.panel === null
        ? 'no panel on this coach: the height valves were in circuit'
        : 'assumed: no panel, the height valves were in circuit',
    );
    return { see: 'tank fall auto', key: 'tank fall auto', where: '', feeds: true, notes };
  }
  if (state.panel === null) {
    const { auto, shut } = c.sheet.panel!;
    notes.push('panel position not said: assumed automatic for how long it stays level, not held against any fault');
    return {
      see: null,
      key: 'tank fall',
      where: '',
      feeds: true,
      notes,
      ask: `Was the panel in ${auto} (automatic) or ${shut} (shut) while the tank was watched?`,
    };
  }
  notes.push(`panel in ${state.panel}: tank and bellows joined or vented, so the fall is not the tank's alone`);
  return { see: null, key: 'tank fall', where: `with the panel in ${state.panel} `, feeds: false, notes };
};
