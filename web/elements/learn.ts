/** Reading up outside any session: a word or a question is asked of the glossary and the guides, and answered in place. */
import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { blockView } from '../blocks/block.ts';
import { drawings } from '../draw/look.ts';
import { told } from '../events.ts';
import { base, keys } from '../look/base.ts';
import { blocks } from '../look/blocks.ts';
import { hashOf } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';

export class SoapLearn extends LitElement {
  static override properties = {
    controller: { attribute: false },
    term: {},
    tick: { attribute: false },
    asked: { state: true },
  };
  static override styles = [
    base,
    keys,
    blocks,
    drawings,
    css`
      :host {
        display: block;
        height: 100%;
        overflow-y: auto;
      }
      main {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 18px;
        max-width: 46rem;
        margin: 0 auto;
        padding: 16px 16px 48px;
      }
      h1 {
        font-size: 1.625rem;
        font-weight: 800;
      }
      a {
        color: inherit;
      }
      form {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 8px;
      }
      label {
        grid-column: 1 / -1;
        font-weight: 600;
      }
      input {
        min-height: 64px;
        border: var(--line) solid var(--edge);
        border-radius: var(--round);
        background: var(--card);
        padding: 6px 12px;
        font-size: 1.125rem;
      }
      article {
        display: grid;
        gap: 8px;
        border-top: var(--line) solid var(--edge);
        padding-top: 12px;
      }
      h2 {
        font-size: 1.1875rem;
        font-weight: 800;
      }
    `,
  ];
  declare controller: SocketController;
  declare term: string | null;
  declare tick: unknown;
  /** Newest first: what was asked and where its answer stands. */
  declare asked: readonly { text: string; id: string | null }[];

  constructor() {
    super();
    this.term = null;
    this.asked = [];
    this.addEventListener('soap-ask', (e) => this.#ask(told('ask', e).text));
    // a key that would write a note has no line to write into here: it asks
    this.addEventListener('soap-write', (e) => this.#ask(told('write', e).text));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('term') && this.term !== null) this.#ask(`what is ${this.term}`);
    // asked before the connection stood
    if (this.controller.link === 'live' && this.asked.some((a) => a.id === null))
      this.asked = this.asked.map((a) => (a.id === null ? { ...a, id: this.controller.ask(a.text) } : a));
  }

  #ask(text: string): void {
    if (text.trim() !== '')
      this.asked = [{ text: text.trim(), id: this.controller.ask(text.trim()) }, ...this.asked].slice(0, 30);
  }

  protected override render(): unknown {
    const context = {
      live: true,
      gates: new Map<string, boolean>(),
      at: 'learn',
      zone: undefined,
      brief: false,
      asked: [],
    };
    return html`<main>
      <a href=${hashOf({ at: 'start' })}>all sessions</a>
      <h1>Learn</h1>
      <form
        @submit=${(e: SubmitEvent) => {
          e.preventDefault();
          const field = this.renderRoot.querySelector('input');
          this.#ask(field?.value ?? '');
          if (field) field.value = '';
        }}
      >
        <label for="q">A word, or a question</label>
        <input id="q" autocomplete="off" placeholder="whats a height valve" />
        <button class="key main">ask</button>
      </form>
      ${
        this.asked.length === 0
          ? html`<div class="keys" role="group" aria-label="to begin with">
              ${[
                'what is a height valve',
                'what is cut-in',
                'how do i check cut in',
                'how do i find a leak',
                'why chock the wheels',
                'help',
              ].map((q) => html`<button type="button" class="key" @click=${() => this.#ask(q)}>${q}</button>`)}
            </div>`
          : nothing
      }
      <div aria-live="polite">
        ${this.asked.map((a) => {
          const answer = a.id === null ? undefined : this.controller.answers.get(a.id);
          return html`<article>
            <h2>${a.text}</h2>
            ${answer === undefined ? html`<p class="soft">${this.controller.link === 'live' ? 'asking…' : 'not connected: it is asked when the connection is back'}</p>` : answer.map((b) => blockView(b, context, () => this))}
          </article>`;
        })}
      </div>
    </main>`;
  }
}
customElements.define('soap-learn', SoapLearn);
