/** What to do next, with its outcome keys: the foot of the sheet, always in reach. */
import { LitElement, css, html, nothing } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { checkView, effort } from '../blocks/check.ts';
import { keyRow } from '../blocks/key-row.ts';
import { tell } from '../events.ts';
import { base, keys } from '../look/base.ts';
import { blocks } from '../look/blocks.ts';

export class SoapNext extends LitElement {
  static override properties = { block: { attribute: false } };
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
        gap: 6px;
      }
      .timer {
        justify-self: start;
      }
      .why-in {
        max-height: 30vh;
        overflow-y: auto;
      }
    `,
  ];
  declare block: Block | null;

  constructor() {
    super();
    this.block = null;
  }

  protected override render(): unknown {
    const b = this.block;
    if (b === null) return nothing;
    switch (b.is) {
      case 'check':
        return html`<section class="next" aria-label="next check">
          ${checkView(b, 'next')} ${keyRow(this.#withTimer(b), effort(b))}
        </section>`;
      case 'question':
        return html`<section class="next" aria-label="question">
          <p class="check-words"><b>${b.words}</b></p>
          ${keyRow(b.keys, b.words)}
        </section>`;
      case 'step':
        return html`<section class="next" aria-label="guide">
          <p class="check-words"><b>Step ${b.step} of ${b.of}:</b> ${b.words}</p>
          ${keyRow(b.keys, b.title)}
        </section>`;
      case 'caution':
        return html`<section class="next" aria-label="caution">
          <p class="check-words">
            <b><span aria-hidden="true">▲ </span>${b.words}</b>
          </p>
          ${b.gate ? keyRow(b.gate.keys, b.words) : nothing}
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

  #withTimer(b: Extract<Block, { is: 'check' }>): readonly { label: string; text: string }[] {
    return b.keys;
  }

  protected say(text: string): void {
    tell(this, 'write', { text, whole: true });
  }
}
customElements.define('soap-next', SoapNext);
