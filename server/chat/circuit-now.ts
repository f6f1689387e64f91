/** The air circuit as it stands: parts under suspicion, and the volumes joined in the coach's present state. Pure. */
import { type Joining, joinedIn } from '../guides/joined.ts';
import type { CircuitNow } from '../guides/steps.ts';
import type { CoachState, Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';

const joining = (state: CoachState): Joining => {
  if (state.outletClosed) return 'outlet closed';
  if (state.panel !== null && state.panel !== 'auto') return state.panel;
  const [left, right] = [state.arm.left === 'fill', state.arm.right === 'fill'];
  return left && right ? 'arms fill' : left ? 'left arm fill' : right ? 'right arm fill' : 'neutral';
};

export const joinedNow = (state: CoachState): readonly string[] => joinedIn[joining(state)];

/** A suspect is lit from "1 in 20" on. */
const least = 0.05;

export const circuitNow = (standing: Standing, sheet: Sheet): CircuitNow => ({
  lit: [...new Set<string>(standing.suspects.flatMap((s) => (s.where !== undefined && s.p >= least ? [s.where] : [])))],
  joined: joinedNow(standing.state),
  panel: sheet.panel !== undefined && sheet.panel !== null,
});
