/** A number pad for gloves: digits, the fractions of an inch picked off a piece of tape, the coach's units. */
import { LitElement, css, html, nothing, svg } from 'lit';
import { base, keys } from '../look/base.ts';

export type PadTap = { tap: 'digit' | 'fraction' | 'word' | 'rub'; text: string };

const eighths = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const spoken = ['0, no fraction', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

const rows = [
  ['1', '2', '3'],
  ['4', '5', '6'],
  ['7', '8', '9'],
] as const;

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
        min-height: 60px;
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
        .tape button[aria-pressed='true'],
        .tape button[aria-pressed='true']:hover {
          background: var(--ink);
          color: var(--paper);
        }
      }
      .digits {
        display: grid;
        grid-template-columns: repeat(4, minmax(0, 1fr));
        gap: 6px;
      }
      .digits .key {
        min-height: 56px;
        font-size: 1.5rem;
        font-variant-numeric: tabular-nums;
      }
      .digits .unit {
        font-size: 1.0625rem;
      }
      .digits .rub {
        grid-column: span 2;
      }
      /* on glass each eighth is as large as a digit: a glove covers two of eight in a row */
      @media (max-width: 699px) {
        .tape {
          grid-template-columns: repeat(4, minmax(0, 1fr));
          gap: 6px;
          border: 0;
          background: none;
        }
        .tape svg {
          display: none;
        }
        .tape button {
          min-height: 56px;
          padding: 0;
          border: var(--line) solid var(--edge);
          border-radius: var(--round);
          background: var(--card);
          font-size: 1.25rem;
        }
      }
      @media (min-height: 700px) {
        .digits .key,
        .tape button {
          min-height: 64px;
        }
      }
      @media (min-width: 700px) and (min-height: 700px) {
        .tape button {
          min-height: 0;
        }
      }
      /* beside a wide sheet two rows are enough, and the sheet stays in sight */
      @media (min-width: 1100px) {
        .digits {
          grid-template-columns: repeat(8, minmax(0, 1fr));
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

  #unit(u: string): unknown {
    return html`<button type="button" class="key unit" @click=${() => this.#tap('word', u)}>${u}</button>`;
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
        ${rows.map((row, i) => html`${row.map((d) => this.#digit(d))} ${this.#unit([this.pressure, this.length, 'V'][i] ?? '')}`)}
        ${this.#digit('.', 'point')} ${this.#digit('0')}
        <button type="button" class="key rub" aria-label="rub out" @click=${() => this.#tap('rub', '')}>
          <svg viewBox="0 0 32 24" width="32" height="24" aria-hidden="true">
            <path d="M10 3h19v18H10L2 12z" fill="none" stroke="currentColor" stroke-width="2.5" />
            <path d="M15 8l8 8m0-8l-8 8" stroke="currentColor" stroke-width="2.5" />
          </svg>
        </button>
      </div>
    `;
  }
}
customElements.define('soap-pad', SoapPad);
