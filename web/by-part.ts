/** Suspects of one part together, under how sure it is of the part. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Suspect } from '../server/chat/reply.ts';

/** Faults of one part stand together, where the likeliest of them stands. */
export const byPart = (list: readonly Suspect[]): readonly Suspect[] =>
  list
    .map((s, i) => ({ s, at: s.of ? list.findIndex((o) => o.of?.part === s.of?.part) : i, i }))
    .toSorted((a, b) => a.at - b.at || a.i - b.i)
    .map(({ s }) => s);

export const heading = (s: Suspect, before: Suspect | undefined): TemplateResult | typeof nothing =>
  !s.of || s.of.part === before?.of?.part
    ? nothing
    : html`<p class="part"><span>${s.of.part}, in all</span> <b class="figure">${s.of.rank}</b></p>`;
