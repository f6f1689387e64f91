/** All guides, and which one answers a topic. */
import type { Guide } from './guide.ts';
import { airGuides } from './steps/air.ts';

export const guides: readonly Guide[] = [...airGuides];
const byId = new Map(guides.map((g) => [g.id, g]));

export const guide = (id: string): Guide | undefined => byId.get(id);

/** The guide for "how do I ..." about `topic` (a canonical part, measure, sign or work; a place's side does not matter). */
export const guideFor = (topic: string): Guide | undefined => {
  const plain = topic
    .toLowerCase()
    .replace(/^(?:left|right|both) /, '')
    .replace(/^(?:front|rear) /, '')
    .trim();
  if (plain === '') return undefined;
  return (
    byId.get(plain) ??
    guides.find((g) => g.topics[0] === plain) ??
    guides.find((g) => g.topics.includes(plain)) ??
    guides.find((g) => g.title.toLowerCase().includes(plain))
  );
};
