/** An estimate as it stands: each line with its sums and the owner's word on it, then what it comes to. */
import { html, nothing, type TemplateResult } from 'lit';
import type { CostedLine, Estimate } from '../../server/report/shapes.ts';
import { money } from './money.ts';

/** How a word on a line is taken; null where nobody here may. */
export type Wording = {
  /** The line that is being answered. */
  deciding: { line: string; yes: boolean } | null;
  ask: (line: string, yes: boolean) => void;
  keep: (line: CostedLine, yes: boolean) => void;
  leave: () => void;
  change: () => void;
};

const sums = (l: CostedLine, currency: string): TemplateResult =>
  html`<dl class="sums">
    <dt>hands-on ${l.hands} min</dt>
    <dd>${money(l.labour, currency)}</dd>
    ${
      l.wait > 0
        ? html`<dt>waiting ${l.wait} min, not charged</dt>
            <dd></dd>`
        : nothing
    }
    ${l.parts.map(
      (p) =>
        html`<dt>${p.name}</dt>
          <dd>${money(p.price ?? null, currency)}</dd>`,
    )}
    <dt><b>together</b></dt>
    <dd><b>${money(l.total, currency)}</b></dd>
  </dl>`;

const decided = ({ decided: d }: CostedLine): TemplateResult =>
  d
    ? html`<p><b>${d.yes ? '✓ approved' : '✗ declined'}</b> by ${d.name}${d.words === '' ? '' : `: ${d.words}`}</p>`
    : html`<p>not answered yet</p>`;

const wordForm = (l: CostedLine, yes: boolean, w: Wording): TemplateResult =>
  html`<form
    class="word no-print"
    @submit=${(e: SubmitEvent) => {
      e.preventDefault();
      w.keep(l, yes);
    }}
  >
    <div class="cells">
      <label>who says so <input name="name" maxlength="60" autocomplete="off" /></label>
      <label>in what words (may stay empty) <input name="words" maxlength="500" autocomplete="off" /></label>
    </div>
    <div class="go">
      <button class="key small main">${yes ? 'approved' : 'declined'}: keep it</button>
      <button type="button" class="key small" @click=${w.leave}>leave it</button>
    </div>
  </form>`;

const wordView = (l: CostedLine, w: Wording): TemplateResult =>
  w.deciding?.line === l.id
    ? wordForm(l, w.deciding.yes, w)
    : html`<div class="go no-print">
        <button type="button" class="key small" @click=${() => w.ask(l.id, true)}>
          approve<span class="hear"> ${l.words}</span>
        </button>
        <button type="button" class="key small" @click=${() => w.ask(l.id, false)}>
          decline<span class="hear"> ${l.words}</span>
        </button>
      </div>`;

export const linesView = (estimate: Estimate, wording: Wording | null): TemplateResult =>
  html`<section aria-label="lines">
      ${estimate.lines.map(
        (l) =>
          html`<div class="line">
            <h2>${l.words}</h2>
            ${l.why ? html`<p class="soft">${l.why}</p>` : nothing} ${sums(l, estimate.currency)} ${decided(l)}
            ${wording === null ? nothing : wordView(l, wording)}
          </div>`,
      )}
    </section>
    <dl class="sums">
      <dt><b>all lines</b></dt>
      <dd><b>${money(estimate.total, estimate.currency)}</b></dd>
      <dt><b>approved</b></dt>
      <dd><b>${money(estimate.approved, estimate.currency)}</b></dd>
    </dl>
    ${estimate.missing.length > 0 ? html`<p class="told">To be asked before it adds up: ${estimate.missing.join('; ')}.</p>` : nothing}
    ${
      wording === null
        ? nothing
        : html`<div class="go no-print">
            <button type="button" class="key" @click=${wording.change}>change the lines</button>
          </div>`
    }`;
