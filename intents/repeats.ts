/** "same as before", "ditto right", "other side too": what was said, said again elsewhere. */
import { makePlace, takePlace, type PlaceParts } from './place.ts';
import { tidy } from './merge-places.ts';
import { type PlaceItem, type Settled } from './settled.ts';
import type { Context, Fact } from './shapes.ts';

const again =
  /\b(?:ditto|likewise|same (?:on|for|at|with|thing on|thing|again on|again|story on|story|deal|over) (?:on )?(?:the )?|same here|same as before|same as last|same|(?:the )?other side (?:is |does |was )?(?:too|also|as well|the same|same|identical|does it too|just the same)|(?:so|as) (?:is|does|was) (?:the )?(?:other|left|right)(?: side)?)\b/;
const compare =
  /\bsame (?:side(?! (?:too|as well))|one|valve|bag|corner|fitting|complaint|fault|trouble|issue|symptom|spot|place|wrench|time|moment|age|make|size|type|sort|batch|brand|problem|job|bus|coach|as (?:the )?(?:other|left|right)|gauge|day|height|on (?:both|second|the second)|both|reading on|as (?:ever|always|usual|normal))\b/;

const flip = (place: string): string => place.replace(/^(left|right)\b/, (s) => (s === 'left' ? 'right' : 'left'));

/** Where the words of a fact begin. */
const begins = (f: Fact): number =>
  Math.min(
    ...[f.where, ...('what' in f ? [f.what] : []), ...(f.is === 'reading' ? [f.amount] : [])].flatMap((s) =>
      s.spans.map((x) => x[0]),
    ),
  );

export const repeats = (
  low: string,
  at: readonly number[],
  items: readonly Settled[],
  facts: Fact[],
  context: Context,
  text: string,
): void => {
  const m = again.exec(low);
  if (!m || compare.test(low)) return;
  const from = m.index;
  const here = facts.filter((f) => f.is !== 'condition' && f.is !== 'spec');
  // what was said before the word, and only to the end of its sentence
  const said = here.filter((f) => begins(f) < at[from]!);
  const last = (said.length > 0 ? said : here).at(-1);
  const stop = items.find((i) => i.k === 'sep' && i.hard && i.span[0] >= at[from]!)?.span[0] ?? text.length;
  const before = context.recent.findLast((n) => n.facts.some((f) => f.is !== 'condition'));
  const leads = from === 0 && before !== undefined && here.every((f) => f.is === 'sign');
  const sources: Fact[] =
    last && !leads
      ? (said.length > 0 ? said : here).filter((f) => f.where.v === last.where.v)
      : (before?.facts ?? []).filter((f) => f.is !== 'condition' && f.is !== 'spec');
  if (sources.length === 0) return;
  const places = items.filter((i): i is PlaceItem => i.k === 'place' && i.p.part !== 'coach' && !i.other);
  const other = /other side|other one/.test(low);
  const behind = places.find((i) => i.span[0] >= at[from]! && i.span[0] < stop);
  // "nearside the same": the place stands before it
  const led = places.findLast(
    (i) =>
      i.span[1] <= at[from]! &&
      /^[\s,]*(?:(?:is|are|was|does|the|just|about|also|reads|its)\s+)*$/i.test(text.slice(i.span[1], at[from])),
  );
  // "rr same tank held": the place before it, where nothing leads on to the one after
  const after =
    led && behind && /^same$/.test(m[0]) && !/\b(?:on|for|at|with|over)\b/.test(text.slice(at[from], behind.span[0]))
      ? undefined
      : behind;
  const lead = led && last && !sources.some((f) => f.where.spans.some((s) => s[0] === led.span[0])) ? led : undefined;
  const place = after ?? lead ?? (last || other ? undefined : places.at(-1));
  const target = (v: string): string | null => {
    if (place) {
      const p: PlaceParts = {
        ...takePlace(v),
        ...Object.fromEntries(Object.entries(place.p).filter(([, x]) => x !== undefined)),
      };
      return makePlace(tidy(p));
    }
    if (other) return flip(v);
    return last ? null : v;
  };
  // what was said again with it is part of it: "same on right side, no bubbles"
  if (leads)
    for (const f of here)
      if (f.where.v === '' && sources.some((s) => s.is === f.is && 'what' in s && 'what' in f && s.what.v === f.what.v))
        facts.splice(facts.indexOf(f), 1);
  for (const source of sources) {
    const v = target(source.where.v);
    if (v === null) continue;
    const twin = facts.some(
      (f) => f.where.v === v && f.is === source.is && 'what' in f && 'what' in source && f.what.v === source.what.v,
    );
    if (twin || facts.length >= 200) continue;
    facts.push({
      ...source,
      id: `${context.note}.${facts.length}`,
      at: context.at,
      when: undefined,
      where: { v, from: place ? 'said' : 'carried', spans: place ? [place.span] : [] },
      what: { ...source.what, from: 'carried', spans: [] },
    } as Fact);
  }
  for (const f of facts) if (f.when === undefined) delete f.when;
};
