/** Where it stands: suspects, gates, state of the coach, checks done. */
import { LitElement, css, html, nothing } from 'lit';
import { suspectsView } from '../blocks/suspects.ts';
import type { Board } from '../../server/chat/protocol.ts';
import { base, keys } from '../look/base.ts';
import { blocks } from '../look/blocks.ts';
import { drawings } from '../draw/look.ts';

export class SoapSide extends LitElement {
  static override properties = { board: { attribute: false }, show: {}, zone: {} };
  static override styles = [
    base,
    keys,
    blocks,
    drawings,
    css`
      :host {
        display: block;
      }
      .side {
        display: grid;
        gap: 18px;
        padding: 12px 14px 20px;
      }
      section {
        display: grid;
        gap: 8px;
      }
      h2 {
        font-size: 1.125rem;
        font-weight: 800;
      }
      .list {
        display: grid;
        gap: 5px;
      }
      .list li {
        display: grid;
        grid-template-columns: 1.25rem minmax(0, 1fr);
        gap: 6px;
        line-height: 1.3;
      }
      .box {
        width: 16px;
        height: 16px;
        margin-top: 3px;
        border: 2px solid var(--edge);
      }
      .box.full {
        background: var(--ink);
      }
      .box.unsure {
        border-style: dashed;
      }
    `,
  ];
  declare board: Board | null;
  declare show: 'circuit' | 'side' | 'all';
  declare zone: string | undefined;

  constructor() {
    super();
    this.board = null;
    this.show = 'side';
  }

  protected override render(): unknown {
    const b = this.board;
    if (b === null || this.show === 'circuit') return nothing;
    const open = b.gates.filter((g) => !g.answered);
    return html`<div class="side">
      <section>
        <h2>Suspects</h2>
        ${b.suspects.length === 0 ? html`<p class="soft">None yet: nothing noted points anywhere.</p>` : suspectsView(b.suspects, 6)}
      </section>
      ${
        open.length === 0
          ? nothing
          : html`<section>
              <h2>Before going on</h2>
              <ul class="list">
                ${open.map((g) => html`<li><span class="box" aria-hidden="true"></span><span>${g.words}</span></li>`)}
              </ul>
            </section>`
      }
      ${
        b.state.length === 0
          ? nothing
          : html`<section>
              <h2>State of the coach</h2>
              <ul class="list">
                ${b.state.map(
                  (s) =>
                    html`<li>
                      <span
                        class="box ${s.from === 'said' || s.from === 'carried' ? 'full' : 'unsure'}"
                        aria-hidden="true"
                      ></span>
                      <span>${s.words}${s.from === 'said' ? '' : html` <i class="soft">${s.from}</i>`}</span>
                    </li>`,
                )}
              </ul>
            </section>`
      }
      ${
        b.checksDone.length === 0
          ? nothing
          : html`<section>
              <h2>Checks done</h2>
              <ul class="list">
                ${b.checksDone.map(
                  (c) =>
                    html`<li>
                      <span class="box full" aria-hidden="true"></span><span>${c.words} <b>${c.outcome}</b></span>
                    </li>`,
                )}
              </ul>
            </section>`
      }
    </div>`;
  }
}
customElements.define('soap-side', SoapSide);
