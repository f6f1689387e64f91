import type { Work } from '../shapes.ts';

/** Forms of the verbs that signs begin with: as the tables write them, and as others say them. Data only. */
const rows =
  'comes come coming came|goes go going went|blows blow blowing blew|runs run running ran|drops drop dropping dropped|falls fall falling fell|loses lose losing lost|leaks leak leaking leaked|sinks sink sinking sank|sits sit sitting sat|starts start starting started|stops stop stopping stopped|keeps keep keeping kept|pops pop popping popped|cuts cut cutting|kicks kick kicking kicked|shuts shut shutting|pumps pumping pumped|builds build building built|takes take taking took|makes make making made|does do doing did|reads read reading|bleeds bleed bleeding bled|airs airing aired|settles settle settling settled|drains drain draining drained|holds hold holding held|stays stay staying stayed|hits hit hitting|trips trip tripping tripped|quits quit quitting|hangs hang hanging hung|moves move moving moved|rubs rub rubbing rubbed|squats squat squatting squatted|creeps creep creeping crept|weeps weep weeping wept|spits spit spitting spat|levels level levelling leveling levelled leveled|dumps dump dumping dumped|fills fill filling filled|lets let letting|puffs puff puffing puffed';

export const verbForms: ReadonlyMap<string, readonly string[]> = new Map(
  rows.split('|').map((row) => {
    const [first = '', ...others] = row.split(' ');
    return [first, others] as const;
  }),
);

/** Work said in the present by someone who did it ("i change the relay"): the form the tables have. */
export const didForms: Readonly<Record<string, string>> = {
  change: 'changed',
  replace: 'replaced',
  swap: 'swapped',
  drain: 'drained',
  tighten: 'tightened',
  tight: 'tightened',
  soap: 'soaped',
  spray: 'sprayed',
  clean: 'cleaned',
  check: 'checked',
  adjust: 'adjusted',
  repair: 'repaired',
  fix: 'fixed',
  grease: 'greased',
  wash: 'washed',
  refit: 'refitted',
  screw: 'screwed',
  disconnect: 'disconnected',
  install: 'installed',
  remove: 'removed',
};

/** Verbs that take a small word after what they were done to ("took the line off"), and the work that makes. Data only. */
const apart = { off: 'removed', out: 'removed' } as const;
export const splitVerbs: Readonly<Record<string, Readonly<Record<string, Work>>>> = {
  took: { ...apart, loose: 'disconnected' },
  got: apart,
  taken: apart,
  pulled: apart,
  whipped: apart,
  yanked: apart,
  had: apart,
  backed: { out: 'removed' },
  popped: { off: 'disconnected', out: 'removed' },
  knocked: { off: 'disconnected' },
  bled: { off: 'drained', down: 'drained', out: 'drained' },
  cleaned: { out: 'cleaned' },
  blew: { out: 'cleaned' },
  put: { back: 'refitted' },
  bolted: { back: 'refitted', up: 'tightened' },
  hooked: { up: 'connected', back: 'connected' },
  nipped: { up: 'tightened' },
  tightened: { up: 'tightened' },
};
