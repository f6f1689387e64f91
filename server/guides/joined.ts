/**
 * Which volumes stand on one pressure in each state of the circuit: what the tank gauge sees (common practice, no source;
 * the mechanism is how the valves are built). One table for the board and for the pictures of the guides.
 */
export type Joining =
  | 'neutral'
  | 'shut'
  | 'fill'
  | 'empty'
  | 'outlet closed'
  | 'left arm fill'
  | 'right arm fill'
  | 'arms fill'
  | 'pumping';

const sides = ['left', 'right'] as const;
const valves = sides.map((s) => `${s} height valve`);
const branch = (side: 'left' | 'right'): string[] => [
  `${side} height valve`,
  `${side} valve to panel line`,
  `${side} panel`,
  `${side} bellows line`,
  `${side} bellows`,
];
const supply = ['tank', 'supply line'];

export const joinedIn: Readonly<Record<Joining, readonly string[]>> = {
  // up to the inlet seats; the bellows are not seen
  neutral: [...supply, ...valves],
  // bellows alone behind the panel
  shut: [...supply, ...valves, 'left valve to panel line', 'right valve to panel line'],
  // usually round the inlet check
  fill: [...supply, ...branch('left'), ...branch('right')],
  empty: [...supply, ...valves],
  'outlet closed': ['tank', 'check valve'],
  'left arm fill': [...supply, ...branch('left')],
  'right arm fill': [...supply, ...branch('right')],
  'arms fill': [...supply, ...branch('left'), ...branch('right')],
  pumping: ['pump', 'discharge line', 'check valve', ...supply],
};
