/** The shop's own settings: its name for the paper, its rate for estimates. */
import { LitElement, html, nothing } from 'lit';
import type { Shop } from '../../server/report/shapes.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';
import { load, save } from './ask.ts';
import { amountOf } from './estimate-draft.ts';
import { paperLook } from './look.ts';

export class SoapShop extends LitElement {
  static override properties = {
    controller: { attribute: false },
    session: {},
    shop: { state: true },
    wrong: { state: true },
    kept: { state: true },
  };
  static override styles = [base, keys, paperLook];
  declare controller: SocketController;
  /** Where the estimate is that asked for the rate. */
  declare session: string | null;
  declare shop: Shop | null;
  declare wrong: string;
  declare kept: boolean;

  constructor() {
    super();
    this.session = null;
    this.shop = null;
    this.wrong = '';
    this.kept = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void load<Shop>('/paper/shop').then((answer) => {
      if (answer.ok) this.shop = answer.data;
      else this.wrong = answer.words;
    });
  }

  async #keep(): Promise<void> {
    const field = (name: string): string =>
      this.renderRoot.querySelector<HTMLInputElement | HTMLTextAreaElement>(`#${name}`)?.value.trim() ?? '';
    const labour = field('labour');
    this.kept = false;
    if (labour !== '' && Number.isNaN(amountOf(labour))) {
      this.wrong = `Labour an hour: “${labour}” is not a number.`;
      return;
    }
    const shop: Shop = {
      v: 1,
      ...(field('name') === '' ? {} : { name: field('name') }),
      ...(field('lines') === '' ? {} : { lines: field('lines') }),
      ...(labour === '' ? {} : { labour: amountOf(labour) }),
      ...(field('currency') === '' ? {} : { currency: field('currency') }),
    };
    const answer = await save<Shop>('/paper/shop', shop);
    this.wrong = answer.ok ? '' : answer.words;
    this.kept = answer.ok;
    if (answer.ok) this.shop = answer.data;
  }

  protected override render(): unknown {
    const { shop } = this;
    const may = this.controller.welcome?.role === 'works';
    return html`<main class="paper">
      <nav class="acts" aria-label="shop">
        <a class="key small" href="#/">all sessions</a>
        ${this.session === null ? nothing : html`<a class="key small" href=${hashOf({ at: 'paper', page: 'estimate', of: this.session, from: null })}>back to the estimate</a>`}
      </nav>
      <header class="head">
        <h1>The shop</h1>
        <p>Stands on reports and estimates. What is left empty is asked for when it is needed.</p>
      </header>
      ${this.wrong === '' ? nothing : html`<p class="wrong" role="alert">${this.wrong}</p>`}
      ${
        shop === null
          ? html`<p role="status">${this.wrong === '' ? 'fetching…' : ''}</p>`
          : html`<form
              class="two"
              @submit=${(e: SubmitEvent) => {
                e.preventDefault();
                void this.#keep();
              }}
            >
              <label
                >name of the shop <input id="name" maxlength="120" .value=${shop.name ?? ''} ?disabled=${!may}
              /></label>
              <label
                >address, telephone
                <textarea id="lines" rows="3" maxlength="400" .value=${shop.lines ?? ''} ?disabled=${!may}></textarea>
              </label>
              <label
                >labour an hour
                <input
                  id="labour"
                  inputmode="decimal"
                  .value=${shop.labour === undefined ? '' : String(shop.labour)}
                  ?disabled=${!may}
              /></label>
              <label
                >currency, as it is written
                <input id="currency" maxlength="12" placeholder="USD" .value=${shop.currency ?? ''} ?disabled=${!may}
              /></label>
              <div class="go">
                ${may ? html`<button class="key main">keep</button>` : html`<p class="told">This device may look, not change: that takes a device that works.</p>`}
                ${this.kept ? html`<p class="told" role="status">Kept. Estimates written before keep their rate.</p>` : nothing}
              </div>
            </form>`
      }
    </main>`;
  }
}
customElements.define('soap-shop', SoapShop);
