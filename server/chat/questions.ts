/** Questions the reply puts: what was ambiguous, held back, aimed at nothing, missing from the sheet. One at a time is kept open. */
import { makePlace, takePlace } from '../../intents/place.ts';
import { plain } from '../../intents/plain.ts';
import type { ReadingFact } from '../../intents/shapes.ts';
import { airSide } from '../../intents/words/parts.ts';
import { isOneOfTwo } from '../faults/said.ts';
import type { Finding } from '../findings/finding.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Resolved } from './amends.ts';
import type { Block } from './reply.ts';

type Question = Extract<Block, { is: 'question' }>;

const heldWords = (fact: ReadingFact, sheet: Sheet): string => {
  const what = `${fact.where.v} ${fact.what.v} ${fact.amount.v.text}`.trim();
  const relief = sheet.supply?.relief;
  if (fact.what.v === 'pressure' && fact.where.v === 'tank' && relief)
    return `${what}? The relief opens at ${relief.text} (sheet: supply.relief), so I have not counted it. What does the gauge say?`;
  return `${what}? That is outside anything I can believe, so I have not counted it. What does it read?`;
};

const heldQuestions = (aimed: Resolved, sheet: Sheet): Question[] =>
  aimed.read.facts.flatMap((fact): Question[] =>
    fact.held && fact.is === 'reading'
      ? [
          {
            is: 'question',
            id: `held-${fact.what.v}`,
            words: heldWords(fact, sheet),
            keys: [{ label: 'take it back', text: 'scratch that' }],
            open: { id: `held-${fact.what.v}`, what: fact.what.v, where: fact.where.v, unit: fact.amount.v.unit },
          },
        ]
      : [],
  );

/** Work that is done to one of two. */
const ofOne: ReadonlySet<string> = new Set(['replaced', 'repaired', 'rebuilt', 'removed', 'disconnected', 'adjusted']);

/** A part that stands on both sides, and which one was not said: nothing can be told from it until it is. */
const sideQuestions = (aimed: Resolved): Question[] => {
  const fact = aimed.read.facts.find((f) => {
    const place = takePlace(f.where.v);
    if (!place || place.side !== undefined || f.word === 'hunch') return false;
    return f.is === 'sign'
      ? isOneOfTwo(f, place)
      : f.is === 'work' && f.done && ofOne.has(f.what.v) && airSide.has(place.part ?? '');
  });
  const place = fact ? takePlace(fact.where.v) : null;
  if (!fact || !place) return [];
  const [left, right] = (['left', 'right'] as const).map((side) =>
    plain({ ...fact, where: { ...fact.where, v: makePlace({ ...place, side }) } }),
  ) as [string, string];
  return [
    {
      is: 'question',
      id: 'which side',
      words: `The ${place.part}: left or right?`,
      keys: [
        { label: 'left', text: left },
        { label: 'right', text: right },
      ],
      open: { id: 'which side', left, right },
    },
  ];
};

/** What a reading needs to be judged and the sheet lacks: asked for once, and it can be typed. */
const tapsFor = (field: string, sheet: Sheet): Question['keys'] => {
  if (field === 'panel position' && sheet.panel)
    return (['auto', 'shut'] as const).map((p) => ({ label: `${sheet.panel![p]} (${p})`, text: `panel ${p}` }));
  if (field === 'side') return ['left', 'right'].map((side) => ({ label: side, text: `that was the ${side} rear` }));
  if (field === 'standing time') return [8, 10, 12, 14].map((h) => ({ label: `${h} h`, text: `stood ${h} h` }));
  return [];
};
const wantQuestions = (found: readonly Finding[], standing: Folded, sheet: Sheet): Question[] => {
  const seen = new Set<string>();
  const out: Question[] = [];
  for (const finding of found) {
    const wants = finding.wants;
    if (!wants || seen.has(wants.field) || alreadyAsked(standing, `wants-${wants.field}`)) continue;
    seen.add(wants.field);
    out.push({ is: 'question', id: `wants-${wants.field}`, words: wants.question, keys: tapsFor(wants.field, sheet) });
  }
  return out.slice(0, 1);
};

/** A question of that id was put in this session. */
export const alreadyAsked = (standing: Folded, id: string): boolean =>
  [...standing.tape.replies.values()].some((r) => r.blocks.some((b) => b.is === 'question' && b.id === id));

export const questionBlocks = (aimed: Resolved, standing: Folded, found: readonly Finding[], sheet: Sheet): Block[] => {
  const out: Question[] = [];
  for (const ambiguity of aimed.read.ambiguous)
    out.push({ is: 'question', id: 'ambiguous', words: ambiguity.question, keys: ambiguity.candidates });
  out.push(...heldQuestions(aimed, sheet));
  for (const { question } of aimed.open) out.push({ is: 'question', id: 'which', words: question, keys: [] });
  out.push(...sideQuestions(aimed));
  if (out.length > 0) return out;
  return wantQuestions(found, standing, sheet);
};
