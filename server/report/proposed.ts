/** Lines to begin an estimate with: from the suspects as they stand. Minutes are the catalogue's, estimates of ours. */
import { faultOf } from '../faults/catalogue.ts';
import type { EstimateLine } from '../session/estimate.ts';
import type { Folded } from '../session/fold.ts';
import { plainPlace } from './plain-parts.ts';

/** Least chance that makes a suspect worth a line, and lines at most. */
const least = 0.1;
const most = 4;

const takesAs = (a: EstimateLine, b: EstimateLine): boolean =>
  a.parts.length > 0 &&
  sideOf(a) === sideOf(b) &&
  JSON.stringify(a.parts.map((p) => p.name)) === JSON.stringify(b.parts.map((p) => p.name));
const sideOf = (line: EstimateLine): string => /^(?:left|right)(?=: )/.exec(line.words)?.[0] ?? '';

export const proposedLines = (standing: Folded): EstimateLine[] =>
  standing.suspects
    .filter((s) => s.p >= least)
    .flatMap((s): EstimateLine[] => {
      const fault = faultOf(s.fault);
      if (!fault || fault.innocent) return [];
      const side = fault.side === null ? '' : `${fault.side}: `;
      return [
        {
          id: fault.key.replaceAll(/[^a-z0-9]+/g, '-').slice(0, 40),
          words: `${side}${fault.repair}`,
          parts: fault.parts.map((name) => ({ name: name === fault.part ? plainPlace(fault.where) : name })),
          hands: fault.hands,
          wait: fault.wait,
          why: `${s.name}: ${s.rank}`,
        },
      ];
    })
    // two faults of one place that take the same parts are mended by one repair: one line, for the reason of both
    .reduce<EstimateLine[]>((lines, line) => {
      const same = lines.find((l) => l.words === line.words || takesAs(l, line));
      if (!same) return [...lines, line];
      same.why = `${same.why}; ${line.why}`;
      return lines;
    }, [])
    .slice(0, most);
