/** A number pad for gloves: digits, the fractions of an inch picked off a piece of tape, the coach's units. */
import { LitElement, css, html, nothing, svg } from 'lit';
import { base, keys } from '../look/base.ts';

export type PadTap = { tap: 'digit' | 'fraction' | 'word' | 'rub'; text: string };

const eighths = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const spoken = ['0, no fraction', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

export class SoapPad extends LitElement {
  static override properties = { pressure: {}, length: {}, fraction: {} };
  static override styles = [
    base,
    keys,
    css`
      :host {
        display: grid;
        gap: 6px;
        padding: 0 8px 8px;
      }
      .tape {
        position: relative;
        display: grid;
        grid-template-columns: repeat(8, minmax(0, 1fr));
        height: 60px;
        border: var(--line) solid var(--edge);
        border-radius: var(--round);
        background: var(--card);
      }
      .tape svg {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        pointer-events: none;
      }
      .tape path {
        stroke: var(--ink);
        stroke-width: 2;
        vector-effect: non-scaling-stroke;
      }
      .tape button {
        min-width: 0;
        border: 0;
        background: none;
        padding: 26px 0 0;
        font-variant-numeric: tabular-nums;
        font-weight: 600;
        font-size: 0.9375rem;
        cursor: pointer;
        touch-action: manipulation;
      }
      @media (forced-colors: none) {
        .tape button[aria-pressed='true'] {
          background: var(--ink);
          color: var(--paper);
        }
      }
      .digits {
        display: grid;
        grid-template-columns: repeat(3, minmax(0, 1fr));
        gap: 6px;
      }
      .digits .key {
        min-height: 56px;
        font-size: 1.5rem;
        font-variant-numeric: tabular-nums;
      }
      .units .key {
        font-size: 1.0625rem;
      }
      @media (min-height: 700px) {
        .digits .key {
          min-height: 64px;
        }
      }
      /* beside a wide sheet two rows are enough, and the sheet stays in sight */
      @media (min-width: 1100px) {
        .digits:not(.units) {
          grid-template-columns: repeat(6, minmax(0, 1fr));
        }
      }
    `,
  ];
  declare pressure: string;
  declare length: string;
  /** The fraction that stands at the end of the line. */
  declare fraction: string;

  constructor() {
    super();
    this.pressure = 'psi';
    this.length = 'in';
    this.fraction = '';
  }

  #tap(tap: PadTap['tap'], text: string): void {
    this.dispatchEvent(new CustomEvent<PadTap>('soap-pad', { detail: { tap, text }, bubbles: true, composed: true }));
  }

  #digit(d: string, label = d): unknown {
    return html`<button type="button" class="key" aria-label=${label} @click=${() => this.#tap('digit', d)}>
      ${d}
    </button>`;
  }

  protected override render(): unknown {
    return html`
      ${
        this.length === 'in'
          ? html`<div class="tape" role="group" aria-label="eighths of an inch">
              ${eighths.map(
                (f, i) =>
                  html`<button
                    type="button"
                    aria-label=${spoken[i] ?? f}
                    aria-pressed=${f !== '' && f === this.fraction ? 'true' : 'false'}
                    @click=${() => this.#tap('fraction', f)}
                  >
                    ${f === '' ? '0' : f}
                  </button>`,
              )}
              <svg viewBox="0 0 80 60" preserveAspectRatio="none" aria-hidden="true">
                ${[22, 10, 15, 10, 18, 10, 15, 10].map((h, i) => svg`<path d="M${i * 10 + 5} 0v${h}" />`)}
              </svg>
            </div>`
          : nothing
      }
      <div class="digits" role="group" aria-label="number pad">
        ${['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((d) => this.#digit(d))} ${this.#digit('.', 'point')}
        ${this.#digit('0')}
        <button type="button" class="key" aria-label="rub out" @click=${() => this.#tap('rub', '')}>
          <svg viewBox="0 0 32 24" width="32" height="24" aria-hidden="true">
            <path d="M10 3h19v18H10L2 12z" fill="none" stroke="currentColor" stroke-width="2.5" />
            <path d="M15 8l8 8m0-8l-8 8" stroke="currentColor" stroke-width="2.5" />
          </svg>
        </button>
      </div>
      <div class="digits units" role="group" aria-label="units">
        ${[this.pressure, this.length, 'V'].map(
          (u) => html`<button type="button" class="key" @click=${() => this.#tap('word', u)}>${u}</button>`,
        )}
      </div>
    `;
  }
}
customElements.define('soap-pad', SoapPad);
