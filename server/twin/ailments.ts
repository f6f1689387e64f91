/**
 * What can be wrong with the simulated coach. The fault catalogue names one of these for every fault whose evidence
 * comes from the twin. Sided rows stand twice ("left ...", "right ...").
 */
const sided = [
  'inlet seat leak',
  'exhaust seat leak',
  'valve to panel leak',
  'delivery line leak',
  'bellows leak',
  'inlet check bad',
  'valve stuck',
  'valve feed plugged',
  'valve reversed',
  'link slipped low',
  'link slipped high',
  'link off',
  'delivery line clogged',
  'front corner weak',
  'load heavy',
  'shock dead',
] as const;
const single = [
  'tank leak',
  'discharge check leak',
  'supply line leak',
  'supply line clogged',
  'protection valve stuck',
  'panel leaks through',
  'panel left shut',
  'panel left empty',
  'pump worn',
  'intake clogged',
  'unloader stuck',
  'unloader leak',
  'pump seized',
  'motor open',
  'fuse blown',
  'relay dead',
  'relay welded',
  'switch burnt',
  'switch welded',
  'switch low',
  'switch high',
  'switch narrow',
  'volts low',
  'feed resistance',
  'ground resistance',
  'tank water',
  'relief weak',
  'thermal cut-out',
  'gauge stuck',
  'gauge high',
  'gauge low',
  'floor not level',
  'cold night',
  'just pumped',
] as const;

export type Ailment = (typeof single)[number] | `${'left' | 'right'} ${(typeof sided)[number]}`;
export const ailments: readonly Ailment[] = [
  ...single,
  ...sided.flatMap((name): Ailment[] => [`left ${name}`, `right ${name}`]),
];
