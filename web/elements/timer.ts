/** A running timer: how long is left, when it rings, what to read then. */
import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { keepAwake, ring } from '../bell.ts';
import { tell } from '../events.ts';
import { base, keys } from '../look/base.ts';
import { clock } from '../show.ts';
import { left, showing, type Timer } from '../timers.ts';

export class SoapTimer extends LitElement {
  static override properties = {
    timers: { attribute: false },
    zone: {},
    quiet: { type: Boolean },
    now: { state: true },
  };
  static override styles = [
    base,
    keys,
    css`
      :host {
        display: block;
      }
      .timer {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr) auto;
        align-items: center;
        gap: 4px 12px;
        border: var(--line) solid var(--edge);
        border-radius: var(--round);
        padding: 6px 10px;
        background: var(--card);
      }
      .timer {
        margin-top: 8px;
      }
      .timer.rung {
        border-width: var(--thick);
      }
      .left {
        font-size: 1.75rem;
        line-height: 1.1;
      }
      .what {
        line-height: 1.25;
        font-size: 0.9375rem;
      }
      .bar {
        grid-column: 1 / -1;
        display: block;
        width: 100%;
        height: 6px;
      }
      /* beside the pad every line counts: time and what to read, in one */
      :host([small]) .timer {
        padding: 2px 10px;
        margin-top: 6px;
      }
      :host([small]) .bar {
        display: none;
      }
      :host([small]) .left {
        font-size: 1.375rem;
      }
      .bar rect {
        fill: var(--ink);
      }
      .bar .all {
        fill: var(--fill);
      }
    `,
  ];
  declare timers: readonly Timer[];
  declare zone: string | undefined;
  /** Shown a second time on the page: the other one rings. */
  declare quiet: boolean;
  declare now: number;
  #beat: ReturnType<typeof setInterval> | undefined;
  #rung = new Set<string>();

  constructor() {
    super();
    this.timers = [];
    this.quiet = false;
    this.now = Date.now();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.#beat);
    this.#beat = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('timers')) this.now = Date.now();
    const shown = showing(this.timers, this.now);
    if (shown.length > 0 && this.#beat === undefined)
      this.#beat = setInterval(() => {
        this.now = Date.now();
      }, 1000);
    if (shown.length === 0) {
      clearInterval(this.#beat);
      this.#beat = undefined;
    }
    if (this.quiet) return;
    void keepAwake(shown.some((t) => t.until === null || t.until > this.now));
    for (const t of shown)
      if (t.until !== null && this.now >= t.until && !this.#rung.has(t.id)) {
        this.#rung.add(t.id);
        // one that rang while the page was away rings late or not at all
        if (this.now - t.until < 60_000) ring();
      }
  }

  protected override render(): unknown {
    return showing(this.timers, this.now).map((t) => this.#timer(t));
  }

  #timer(t: Timer): unknown {
    const remains = t.until === null ? this.now - t.from : t.until - this.now;
    const rung = t.until !== null && remains <= 0;
    const what = t.read.length > 0 ? t.read.join(', ') : 'the gauge';
    const part = t.until === null ? 0 : Math.min(1, (this.now - t.from) / (t.until - t.from));
    return html`<div class="timer ${rung ? 'rung' : ''}" role="timer" aria-label="timer">
      <span class="figure left">${left(t.until === null ? remains : Math.max(remains, rung ? remains : 0))}</span>
      <span class="what">
        ${
          rung
            ? html`<b role="alert">Read now: ${what}</b>`
            : t.until === null
              ? html`running since ${clock(t.from, this.zone)}`
              : html`at <b>${clock(t.until, this.zone)}</b> read ${what}`
        }
      </span>
      ${
        rung && t.read[0] !== undefined
          ? html`<button
              type="button"
              class="key small"
              @click=${() => tell(this, 'write', { text: t.read[0] ?? '', pad: true })}
            >
              read
            </button>`
          : html`<button
              type="button"
              class="key small"
              @click=${() => tell(this, 'write', { text: 'stop timer', whole: true })}
            >
              stop
            </button>`
      }
      ${
        t.until === null
          ? nothing
          : html`<svg class="bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
              <rect class="all" width="100" height="4" />
              <rect width=${part * 100} height="4" />
            </svg>`
      }
    </div>`;
  }
}
customElements.define('soap-timer', SoapTimer);
