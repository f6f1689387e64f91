/** Limits given in the session that the sheet was come from: each taken in by a tap, and whether the session goes on by it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Draft } from './sheet-draft.ts';

type Spec = {
  seq: number;
  by: string;
  words: string;
  changes: { path: string; name: string; text: string }[];
};
export type Specs = { coach: string; sheet: string; closed: boolean; specs: Spec[] };

const what = (s: Spec, draft: Draft): string =>
  s.changes.length === 0
    ? 'the sheet has no field for it'
    : s.changes.map((c) => `${c.name}: ${c.text}${draft[c.path] ? ` (now ${draft[c.path]})` : ''}`).join('; ');

export const specsView = (
  said: readonly Spec[],
  draft: Draft,
  take: (draft: Draft) => void,
): TemplateResult | typeof nothing =>
  said.length === 0
    ? nothing
    : html`<section>
        <h2>Limits given in the session</h2>
        <ul class="items">
          ${said.map((s) => {
            const there = s.changes.every((c) => draft[c.path] === c.text);
            const taken = { ...draft, ...Object.fromEntries(s.changes.map((c) => [c.path, c.text])) };
            return html`<li class="spec">
              <span><b>${s.words}</b>, note ${s.seq}, ${s.by}<br /><span class="soft">${what(s, draft)}</span></span>
              ${
                s.changes.length === 0
                  ? nothing
                  : html`<button type="button" class="key small" ?disabled=${there} @click=${() => take(taken)}>
                      ${there ? 'taken' : 'take into the sheet'}
                    </button>`
              }
            </li>`;
          })}
        </ul>
      </section>`;

/** After a save: whether the session shall go on by it. */
export const goOnView = (
  specs: Specs | null,
  hash: string | null,
  goOn: () => void,
): TemplateResult | typeof nothing =>
  specs === null || hash === null || specs.closed || specs.sheet === hash
    ? nothing
    : html`<section class="told">
        <p>The session you came from is judged by an earlier version of this sheet.</p>
        <div class="go">
          <button type="button" class="key small" @click=${goOn}>go on by this version</button>
        </div>
      </section>`;
