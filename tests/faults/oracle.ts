/**
 * A small belief network, summed out by brute force over all states: slow and plain, so that it can be held against
 * published results and the engine then against it.
 */
export type Node = {
  readonly name: string;
  readonly parents: readonly string[];
  /** P(this is true | parents true or false), by "TF" in the order of the parents; '' for none. */
  readonly given: Readonly<Record<string, number>>;
};
export type Known = Readonly<Record<string, boolean>>;

export const chance = (net: readonly Node[], known: Known): number => {
  const state: Record<string, boolean> = {};
  const go = (i: number): number => {
    const node = net[i];
    if (!node) return 1;
    const p = node.given[node.parents.map((x) => (state[x] ? 'T' : 'F')).join('')];
    if (p === undefined) throw new RangeError(`no row for ${node.name}`);
    let sum = 0;
    for (const value of [true, false]) {
      if (known[node.name] !== undefined && known[node.name] !== value) continue;
      state[node.name] = value;
      sum += (value ? p : 1 - p) * go(i + 1);
    }
    return sum;
  };
  return go(0);
};

export const given = (net: readonly Node[], ask: Known, known: Known): number =>
  chance(net, { ...known, ...ask }) / chance(net, known);

const root = (name: string, p: number): Node => ({ name, parents: [], given: { '': p } });

/** Lauritzen and Spiegelhalter 1988, J. R. Statist. Soc. B 50(2): "Asia". */
export const asia: readonly Node[] = [
  root('asia', 0.01),
  root('smoke', 0.5),
  { name: 'tub', parents: ['asia'], given: { T: 0.05, F: 0.01 } },
  { name: 'lung', parents: ['smoke'], given: { T: 0.1, F: 0.01 } },
  { name: 'bronc', parents: ['smoke'], given: { T: 0.6, F: 0.3 } },
  { name: 'either', parents: ['tub', 'lung'], given: { TT: 1, TF: 1, FT: 1, FF: 0 } },
  { name: 'xray', parents: ['either'], given: { T: 0.98, F: 0.05 } },
  { name: 'dysp', parents: ['bronc', 'either'], given: { TT: 0.9, TF: 0.8, FT: 0.7, FF: 0.1 } },
];

/** Russell and Norvig, Artificial Intelligence: A Modern Approach, figure "burglar alarm". */
export const alarm: readonly Node[] = [
  root('burglary', 0.001),
  root('earthquake', 0.002),
  { name: 'alarm', parents: ['burglary', 'earthquake'], given: { TT: 0.95, TF: 0.94, FT: 0.29, FF: 0.001 } },
  { name: 'john', parents: ['alarm'], given: { T: 0.9, F: 0.05 } },
  { name: 'mary', parents: ['alarm'], given: { T: 0.7, F: 0.01 } },
];
