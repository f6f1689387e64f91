/** What to do next, with its outcome keys: the foot of the sheet, always in reach. */
import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { effort, type Check } from '../blocks/check.ts';
import { keyRow } from '../blocks/key-row.ts';
import { tell } from '../events.ts';
import { Explaining } from '../explaining.ts';
import { base, keys } from '../look/base.ts';
import { blocks } from '../look/blocks.ts';
import { minutes } from '../show.ts';

export class SoapNext extends LitElement {
  static override properties = { block: { attribute: false }, timing: { type: Boolean }, why: { state: true } };
  static override styles = [
    base,
    keys,
    blocks,
    css`
      :host {
        display: block;
        padding: 8px 8px 0;
      }
      .next {
        display: grid;
        gap: 8px;
      }
      .next p {
        line-height: 1.3;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 14px;
      }
      .acts {
        display: flex;
        align-items: baseline;
        gap: 14px;
        margin-left: auto;
      }
      .head + p {
        margin-top: -6px;
      }
      .why-in {
        margin: 0;
        max-height: min(28vh, 14rem);
        overflow-y: auto;
      }
    `,
  ];
  declare block: Block | null;
  /** A timer runs already. */
  declare timing: boolean;
  declare why: boolean;
  readonly #explaining = new Explaining(this);

  constructor() {
    super();
    this.block = null;
    this.timing = false;
    this.why = false;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('block');
    const id = (b: Block | null | undefined): string => (b && 'id' in b ? b.id : '');
    if (changed.has('block') && id(before) !== id(this.block)) this.why = false;
  }

  protected override render(): unknown {
    const b = this.block;
    if (b === null) return nothing;
    switch (b.is) {
      case 'check':
        return this.#check(b);
      case 'question':
        return html`<section class="next" aria-label="question">
          <p><b>${b.words}</b> ${this.#explaining.link(b)}</p>
          ${this.#explained(b)} ${keyRow(b.keys, b.words)}
        </section>`;
      case 'step':
        return html`<section class="next" aria-label="guide">
          <p><b>Step ${b.step + 1} of ${b.of}:</b> ${b.words} ${this.#explaining.link(b)}</p>
          ${this.#explained(b)} ${keyRow(b.keys, b.title)}
        </section>`;
      case 'caution':
        return html`<section class="next" aria-label="caution">
          <p>
            <b><span aria-hidden="true">▲ </span>${b.words}</b> ${this.#explaining.link(b)}
          </p>
          ${this.#explained(b)} ${b.gate ? keyRow(b.gate.keys, b.words) : nothing}
        </section>`;
      case 'took':
      case 'findings':
      case 'suspects':
      case 'teach':
      case 'withdrawn':
      case 'picture':
        return nothing;
    }
  }

  /** In a frame that scrolls: the keys under it stay in sight. */
  #explained(b: Block): unknown {
    const text = this.#explaining.under(b);
    return text === nothing
      ? nothing
      : html`<div class="why-in" tabindex="0" role="region" aria-label="explained">${text}</div>`;
  }

  #check(c: Check): unknown {
    return html`<section class="next" aria-label="next check">
      <div class="head">
        <b>Next${effort(c) === '' ? '' : `, ${effort(c)}`}</b>
        <span class="acts">
          <button
            type="button"
            class="link"
            aria-expanded=${this.why ? 'true' : 'false'}
            @click=${() => (this.why = !this.why)}
          >
            why<span class="hear"> this check</span>
          </button>
          ${
            c.guide
              ? html`<button
                  type="button"
                  class="link"
                  @click=${() => tell(this, 'write', { text: `how do i ${c.guide}`, whole: true })}
                >
                  steps
                </button>`
              : nothing
          }
          ${
            c.wait > 0 && !this.timing
              ? html`<button
                  type="button"
                  class="link"
                  @click=${() => tell(this, 'write', { text: `start timer ${minutes(c.wait)}`, whole: true })}
                >
                  timer<span class="hear"> of ${minutes(c.wait)}</span>
                </button>`
              : nothing
          }
          ${
            /^(?:repair |close$)/.test(c.id)
              ? nothing
              : html`<button
                  type="button"
                  class="link"
                  @click=${() => tell(this, 'write', { text: 'cant check that', whole: true })}
                >
                  can't<span class="hear"> check that here</span>
                </button>`
          }
          ${this.#explaining.link(c)}</span
        >
      </div>
      <p class="words">${c.words}</p>
      ${c.destroys ? html`<p class="destroys"><span aria-hidden="true">✕ </span>${c.destroys}</p>` : nothing}
      ${this.why ? html`<div class="why-in"><p>${c.why}</p></div>` : nothing} ${this.#explained(c)}
      ${keyRow(c.keys, 'outcome')}
    </section>`;
  }
}
customElements.define('soap-next', SoapNext);
