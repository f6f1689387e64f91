/** Whether what was found still stands: a finding falls with any fact it rests on. */
import type { FactId } from '../../intents/shapes.ts';
import type { Standing } from './standing.ts';

/** For many findings of one moment: the facts in force are looked up once. */
export const stillRests = ({ facts }: Pick<Standing, 'facts'>): ((f: { because: readonly FactId[] }) => boolean) => {
  const inForce = new Set(facts.map((h) => h.fact.id));
  return (f) => f.because.every((id) => inForce.has(id));
};
