/** The lines of an estimate while they are written: proposed from the suspects, or in the writer's own words. */
import { html, nothing, type TemplateResult } from 'lit';
import type { EstimateLine } from '../../server/session/estimate.ts';
import { newId } from '../ids.ts';
import { asDraft, type DraftLine } from './estimate-draft.ts';

export type Writing = {
  proposed: readonly EstimateLine[];
  draft: readonly DraftLine[];
  /** An earlier estimate stands and can be left as it was. */
  earlier: boolean;
  set: (draft: DraftLine[]) => void;
  keep: () => void;
  leave: () => void;
};

const value = (e: Event): string => (e.target as HTMLInputElement).value;

const partView = (
  p: DraftLine['parts'][number],
  n: number,
  change: (to: Partial<DraftLine['parts'][number]>) => void,
  drop: () => void,
): TemplateResult =>
  html`<div class="part">
    <label>part <input .value=${p.name} maxlength="120" @input=${(e: Event) => change({ name: value(e) })} /></label>
    <label
      >price
      <input
        inputmode="decimal"
        placeholder="not known"
        .value=${p.price}
        @input=${(e: Event) => change({ price: value(e) })}
    /></label>
    <button type="button" class="key small" aria-label=${`drop part ${n + 1}`} @click=${drop}>drop</button>
  </div>`;

const lineView = (
  l: DraftLine,
  i: number,
  change: (to: Partial<DraftLine>) => void,
  drop: () => void,
): TemplateResult => {
  const parts = (to: DraftLine['parts']): void => change({ parts: to });
  return html`<div class="line" role="group" aria-label=${`line ${i + 1}`}>
    <label
      >work, in words for the owner
      <input .value=${l.words} maxlength="300" @input=${(e: Event) => change({ words: value(e) })} />
    </label>
    <div class="cells">
      <label
        >hands-on, min <input inputmode="decimal" .value=${l.hands} @input=${(e: Event) => change({ hands: value(e) })}
      /></label>
      <label
        >waiting, min <input inputmode="decimal" .value=${l.wait} @input=${(e: Event) => change({ wait: value(e) })}
      /></label>
    </div>
    ${l.parts.map((p, n) =>
      partView(
        p,
        n,
        (to) => parts(l.parts.map((x, m) => (m === n ? { ...x, ...to } : x))),
        () => parts(l.parts.filter((_, m) => m !== n)),
      ),
    )}
    <div class="go">
      <button type="button" class="key small" @click=${() => parts([...l.parts, { name: '', price: '' }])}>
        add a part
      </button>
      <button type="button" class="key small" @click=${drop}>drop line ${i + 1}</button>
    </div>
  </div>`;
};

const proposals = (fresh: readonly EstimateLine[], add: (line: DraftLine) => void): TemplateResult =>
  html`<section>
    <h2>From the suspects</h2>
    <p class="soft">
      Minutes are estimates of ours, common practice, no source: change them. Prices are yours to fill in.
    </p>
    <div class="go">
      ${fresh.map((p) => html`<button type="button" class="key small" @click=${() => add(asDraft(p))}>${p.words}<br /><span class="soft">${p.why}</span></button>`)}
    </div>
  </section>`;

export const writingView = ({ proposed, draft, earlier, set, keep, leave }: Writing): TemplateResult => {
  const fresh = proposed.filter((p) => !draft.some((l) => l.id === p.id));
  const add = (line: DraftLine): void => set([...draft, line]);
  return html`${fresh.length === 0 ? nothing : proposals(fresh, add)}
    <section aria-label="lines">
      ${
        fresh.length === 0 && draft.length === 0
          ? html`<p>No suspect stands to propose a line from. Write the work in words for the owner, line by line.</p>`
          : nothing
      }
      ${draft.map((l, i) =>
        lineView(
          l,
          i,
          (to) => set(draft.map((x, n) => (n === i ? { ...x, ...to } : x))),
          () => set(draft.filter((_, n) => n !== i)),
        ),
      )}
      <div class="go">
        <button
          type="button"
          class="key small"
          @click=${() => add({ id: newId(), words: '', parts: [], hands: '', wait: '', why: '' })}
        >
          add a line
        </button>
      </div>
    </section>
    <div class="go">
      <button type="button" class="key main" ?disabled=${draft.length === 0} @click=${keep}>keep the estimate</button>
      ${earlier ? html`<button type="button" class="key" @click=${leave}>leave it as it was</button>` : nothing}
    </div>`;
};
