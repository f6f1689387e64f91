/** Instruments that lie. Priors and minutes are estimates, common practice, no source. */
import { type FaultRow, often } from '../fault.ts';

const row = (id: string, name: string, priorWhy: string, symptom: string): FaultRow => ({
  id,
  name,
  part: 'gauge',
  mends: ['gauge line'],
  ailment: id,
  prior: often.occasional,
  priorWhy,
  confirm: 'second gauge',
  repair: 'replace the gauge; read the tank again before anything is concluded',
  hands: 25,
  wait: 5,
  parts: ['gauge'],
  cautions: ['dead', 'open under pressure'],
  usually: 'age, shaking, water in its line',
  damages: [],
  symptoms: [symptom],
});

export const gauges: readonly FaultRow[] = [
  row('gauge stuck', 'tank gauge is stuck', 'occasional: the needle hangs', 'needle does not move'),
  row('gauge high', 'tank gauge reads high', 'occasional: bent by over-pressure', 'reads more than there is'),
  row('gauge low', 'tank gauge reads low', 'occasional: worn movement', 'reads less than there is'),
];
