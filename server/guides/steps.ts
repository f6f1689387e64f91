/** Guides one step at a time: which guide answers a question, and the blocks of one step. */
import { hazards } from '../../intents/names.ts';
import type { Open } from '../../intents/shapes.ts';
import type { Block } from '../chat/reply.ts';
import { dimensionOf } from '../core/units.ts';
import type { Sheet } from '../sheet/schema.ts';
import { type Caution, cautionFor, gateCaution } from './cautions.ts';
import { fill } from './fill.ts';
import { gateHolds, openGates } from './gates.ts';
import { termsIn } from './glossary.ts';
import type { Guide, Step } from './guide.ts';
import { guides } from './guides.ts';
import { joinedIn } from './joined.ts';

export type { Guide, Step } from './guide.ts';
export { guides } from './guides.ts';

type Stop = Extract<Block, { is: 'caution' }>;
type Teach = Extract<Block, { is: 'teach' }>;

const byId = new Map(guides.map((g) => [g.id, g]));
const byTopic = new Map(guides.flatMap((g) => [g.id, ...g.topics].map((topic) => [topic, g] as const)));

export const guideById = (id: string): Guide | undefined => byId.get(id);

const plainOf = (text: string): string =>
  text
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^a-z0-9-]+/g, ' ')
    .trim();

/** Words at which a phrase begins and ends in `text`, plural or not; null when it does not occur. */
const occurs = (text: string, phrase: string): boolean => new RegExp(`(?:^| )${phrase}(?:e?s)?(?: |$)`).test(text);

/**
 * The guide for `topic`: a guide's id, a canonical part, measure or check id (sides do not matter), or the words of a
 * question. Of words, the guide whose topics occur with most words wins; undefined when none occurs.
 */
export const guideFor = (topic: string): Guide | undefined => {
  const plain = plainOf(topic);
  const bare = plain.replace(/^(?:(?:left|right|both|front|rear|forward|aft) )+/, '');
  const exact = byTopic.get(plain) ?? byTopic.get(bare);
  if (exact || bare === '') return exact;
  const scores = new Map<Guide, number>();
  for (const [phrase, guide] of byTopic)
    if (occurs(plain, phrase)) scores.set(guide, (scores.get(guide) ?? 0) + phrase.split(' ').length ** 2);
  return [...scores].toSorted((a, b) => b[1] - a[1])[0]?.[0];
};

const stopOf = (caution: Caution, gates: ReadonlyMap<string, boolean>): Stop => ({
  is: 'caution',
  id: caution.id,
  words: caution.words,
  more: caution.more,
  ...(caution.gate && !gateHolds(caution.gate, gates)
    ? {
        gate: {
          what: caution.gate.what,
          keys: caution.gate.keys.map((k) => ({ ...k })),
          open: { id: `gate-${caution.gate.what}`, yes: caution.gate.yes, no: caution.gate.no },
        },
      }
    : {}),
});

const unitFor = (step: Step, sheet: Sheet): Open['unit'] => {
  const units = Object.values(sheet.units);
  switch (step.reads?.what) {
    case 'pressure':
    case 'cut-in':
    case 'cut-out':
      return units.find((u) => dimensionOf(u) === 'pressure');
    case 'height':
      return sheet.units.length;
    case 'voltage':
      return 'V';
    case 'current':
      return 'A';
    default:
      return undefined;
  }
};

const openFor = (guide: Guide, at: number, step: Step, sheet: Sheet): Open | undefined => {
  if (!step.reads) return undefined;
  const unit = unitFor(step, sheet);
  return { id: `${guide.id}-${at}`, what: step.reads.what, where: step.reads.where, ...(unit ? { unit } : {}) };
};

export const guideKeys = [
  { label: 'next', text: 'next step' },
  { label: 'back', text: 'back' },
  { label: 'stop', text: 'stop guide' },
] as const;

/** The state a step needs: its own, else the guide's. */
export const stateOf = (guide: Guide, step: Step) => (step.gate === undefined ? guide.gate : step.gate);

/** The step before `at` that makes the coach DEAD. */
const makesDead = (guide: Guide, at: number): number =>
  Math.max(
    0,
    guide.steps.findLastIndex((s, i) => i < at && s.caution === 'dead'),
  );

/** A question that is answered is not put again; a danger is named at its step all the same. */
const stillSaid = (caution: Caution, gates: ReadonlyMap<string, boolean>): boolean =>
  (hazards as readonly string[]).includes(caution.id) || caution.gate === undefined || !gateHolds(caution.gate, gates);

/** What the circuit of this coach shows beside a step: its suspects, and what is joined where the step does not say. */
export type CircuitNow = {
  readonly lit: readonly string[];
  readonly joined: readonly string[];
  readonly panel: boolean;
};

/**
 * Step `at` (from 0) of `guide`, its cautions first. `gates`: answers so far, so that none is asked twice. A step that
 * needs the coach DEAD is held back until all of DEAD is answered: the step that makes it so is shown in its place, with
 * the first open question.
 */
export const stepBlock = (
  guide: Guide,
  at: number,
  sheet: Sheet,
  gates: ReadonlyMap<string, boolean> = new Map(),
  now: CircuitNow | null = null,
): Block[] => {
  const wanted = Math.min(Math.max(0, at), guide.steps.length - 1);
  const mode = stateOf(guide, guide.steps[wanted]!);
  const asks = mode === null ? [] : openGates(mode, gates);
  const index = mode === 'dead' && asks.length > 0 ? makesDead(guide, wanted) : wanted;
  const step = guide.steps[index]!;
  const stops: Stop[] = [];
  if (asks[0]) stops.push(stopOf(gateCaution(asks[0]), gates));
  const own = step.caution === undefined || index !== wanted ? undefined : cautionFor(step.caution);
  // the same answer is not asked for twice in one reply
  if (own && own.gate?.what !== asks[0]?.what && stillSaid(own, gates)) stops.push(stopOf(own, gates));
  const open = openFor(guide, index, step, sheet);
  return [
    ...stops,
    {
      is: 'step',
      guide: guide.id,
      step: index,
      of: guide.steps.length,
      title: guide.title,
      words: fill(step.words, sheet),
      expect: fill(step.expect, sheet),
      keys: guideKeys.map((k) => ({ ...k })),
      ...(open ? { open } : {}),
    },
    ...pictureOf(step, fill(step.words, sheet), now),
    outcomesOf(step, sheet),
  ];
};

type Drawing = Extract<Block, { is: 'picture' }>['drawing'];
const pictureOf = ({ drawing, bench, joins }: Step, words: string, now: CircuitNow | null): Block[] => {
  const drawn: Drawing | undefined =
    drawing ??
    (joins && {
      is: 'circuit',
      lit: [...(now?.lit ?? [])],
      joined: [...(joins === 'now' ? (now?.joined ?? joinedIn.neutral) : joinedIn[joins])],
      ...(now ? { panel: now.panel } : {}),
    }) ??
    (bench && {
      is: 'valve',
      ...bench,
      watch: bench.airOn === 'inlet' ? ['bellows port', 'exhaust port', 'cover'] : ['inlet port', 'exhaust port'],
    });
  return drawn ? [{ is: 'picture', words, drawing: drawn }] : [];
};

const outcomesOf = (step: Step, sheet: Sheet): Teach => {
  const lines = step.outcomes.map((o) => fill(`${o.when}: ${o.means}`, sheet));
  return { is: 'teach', words: 'What it tells', lines, terms: termsIn([step.words, ...lines].join(' ')) };
};

/** What stands when a guide is left; the session's fold knows it by its first words. */
export const guideEnded = (guide: Guide): Teach => {
  const words = `Guide ended: ${guide.title}.`;
  return { is: 'teach', words, lines: [...guide.after], terms: termsIn([words, ...guide.after].join(' ')) };
};
