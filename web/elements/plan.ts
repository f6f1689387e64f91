/** The coach from above as five keys: four corners and the tank, with their latest figures. A tap writes the place. */
import { LitElement, css, html, nothing, svg } from 'lit';
import type { Board } from '../../server/chat/protocol.ts';
import { tell } from '../events.ts';
import { base } from '../look/base.ts';
import { figureOf, verdictMark } from '../show.ts';

type Latest = Board['latest'][number];
const corners = ['left front', 'right front', 'left rear', 'right rear'] as const;
type Corner = (typeof corners)[number];
const short: Record<Corner, string> = {
  'left front': 'LF',
  'right front': 'RF',
  'left rear': 'LR',
  'right rear': 'RR',
};

/** What a corner shows: its height first, how far it is off where only that is known, the bellows' pressure beside it. */
export const cornerReadings = (
  latest: readonly Latest[],
  corner: Corner,
): { main: Latest | null; beside: Latest | null } => {
  const at = (what: string, where: string): Latest | undefined =>
    latest.find((l) => l.what === what && l.where === where);
  const side = corner.split(' ')[0] ?? '';
  const main = at('height', corner) ?? at('height off', corner) ?? null;
  const beside = corner.endsWith('rear')
    ? (at('pressure', `${side} bellows`) ?? at('pressure', `${corner} bellows`) ?? at('pressure', corner) ?? null)
    : null;
  return main === null ? { main: beside, beside: null } : { main, beside };
};

export class SoapPlan extends LitElement {
  static override properties = { latest: { attribute: false }, compact: { type: Boolean, reflect: true } };
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: 8px;
        container-type: inline-size;
      }
      .plan {
        position: relative;
        display: grid;
        grid-template:
          'lf tank rf' minmax(64px, auto) 'lr tank rr' minmax(64px, auto) / minmax(0, 1fr) minmax(0, 0.62fr)
          minmax(0, 1fr);
        gap: 8px 12px;
      }
      .key {
        position: relative;
        display: grid;
        align-content: center;
        gap: 0;
        min-width: 0;
        min-height: 64px;
        padding: 4px 7px;
        text-align: left;
        border: var(--line) solid var(--edge);
        border-radius: var(--round);
        background: var(--card);
        cursor: pointer;
        touch-action: manipulation;
        -webkit-tap-highlight-color: transparent;
        line-height: 1.15;
      }
      .key:active {
        background: var(--ink);
        color: var(--paper);
      }
      .key.low {
        border-bottom-width: 8px;
      }
      .key.high {
        border-top-width: 8px;
      }
      .key.low::after,
      .key.high::after {
        content: '';
        position: absolute;
        inset: 3px;
        border: 1px solid var(--edge);
        pointer-events: none;
      }
      .place {
        font-size: 0.875rem;
        color: var(--soft);
        white-space: nowrap;
      }
      .key:active .place,
      .key:active .unit {
        color: inherit;
      }
      .place b {
        color: var(--ink);
      }
      .figure {
        font-size: 1.5rem;
        line-height: 1.1;
        white-space: nowrap;
      }
      .unit {
        font-size: 0.875rem;
        font-weight: 500;
        color: var(--soft);
        letter-spacing: 0;
      }
      .none {
        color: var(--soft);
        font-weight: 400;
        font-size: 1.125rem;
      }
      .beside {
        font-size: 0.875rem;
        font-variant-numeric: tabular-nums;
        white-space: nowrap;
        overflow: hidden;
        text-overflow: ellipsis;
      }
      .lf {
        grid-area: lf;
      }
      .rf {
        grid-area: rf;
      }
      .lr {
        grid-area: lr;
      }
      .rr {
        grid-area: rr;
      }
      .tank {
        grid-area: tank;
        text-align: center;
        overflow: hidden;
        justify-items: center;
      }
      .tank > * {
        position: relative;
      }
      .tank .level {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
      }
      .level .water {
        fill: var(--fill);
      }
      .level .cut {
        stroke: var(--edge);
        stroke-width: 2;
        vector-effect: non-scaling-stroke;
      }
      .key:active .level {
        display: none;
      }
      /* wheels at the outer edge of each key: one in front, two of the tandem behind */
      .wheel {
        position: absolute;
        top: 50%;
        width: 5px;
        height: 22px;
        translate: 0 -50%;
        background: var(--edge);
        border-radius: 2px;
      }
      .wheel.twin {
        height: 18px;
      }
      .wheel.twin.first {
        top: 30%;
      }
      .wheel.twin.second {
        top: 70%;
      }
      .l .wheel {
        left: -6px;
      }
      .r .wheel {
        right: -6px;
      }
      :host([compact]) {
        padding: 4px 8px;
      }
      :host([compact]) .plan {
        grid-template-areas: 'lf rf tank lr rr';
        grid-template-columns: repeat(5, minmax(0, 1fr));
        grid-template-rows: 44px;
        gap: 4px;
      }
      :host([compact]) .key {
        min-height: 44px;
        padding: 1px 3px;
        justify-items: center;
        text-align: center;
      }
      :host([compact]) .key.low {
        border-bottom-width: 5px;
      }
      :host([compact]) .key.high {
        border-top-width: 5px;
      }
      :host([compact]) .place {
        font-size: 0.8125rem;
        line-height: 1;
      }
      :host([compact]) .figure {
        font-size: 1rem;
      }
      :host([compact]) .key::after,
      :host([compact]) :is(.unit, .beside, .wheel, .level) {
        display: none;
      }
      @container (max-width: 20rem) {
        .figure {
          font-size: 1.3125rem;
        }
        .low-words {
          display: none;
        }
      }
      @container (min-width: 30rem) {
        .figure {
          font-size: 1.75rem;
        }
        .place {
          font-size: 1rem;
        }
        .key {
          min-height: 76px;
          padding-inline: 12px;
        }
      }
    `,
  ];

  declare latest: Board['latest'];
  declare compact: boolean;

  constructor() {
    super();
    this.latest = [];
    this.compact = false;
  }

  protected override render(): unknown {
    return html`<div class="plan" role="group" aria-label="coach from above, front at the top">
      ${corners.map((c) => this.#corner(c))} ${this.#tank()}
    </div>`;
  }

  #write(text: string): void {
    tell(this, 'write', { text, pad: true });
  }

  #corner(corner: Corner): unknown {
    const { main, beside } = cornerReadings(this.latest, corner);
    const { mark, words } = verdictMark(main?.verdict);
    const f = main ? figureOf(main.si, main.unit, main.pm) : null;
    const b = beside ? figureOf(beside.si, beside.unit, beside.pm) : null;
    const side = corner.startsWith('left') ? 'l' : 'r';
    const area = short[corner].toLowerCase();
    const off = main?.verdict === 'low' || main?.verdict === 'high' ? main.verdict : '';
    return html`<button type="button" class="key ${side} ${area} ${off}" @click=${() => this.#write(corner)}>
      ${
        corner.endsWith('front')
          ? html`<span class="wheel" aria-hidden="true"></span>`
          : html`<span class="wheel twin first" aria-hidden="true"></span
              ><span class="wheel twin second" aria-hidden="true"></span>`
      }
      <span class="place"
        >${this.compact ? html`<span aria-hidden="true">${short[corner]}</span><span class="hear">${corner}</span>` : corner}
        ${mark === '' || main?.verdict === 'within' ? nothing : html`<b><span aria-hidden="true">${mark}</span> ${this.compact ? nothing : html`<span class="low-words" aria-hidden="true">${words}</span>`}</b>`}
        ${words === '' ? nothing : html`<span class="hear">${words}</span>`}</span
      >
      ${
        f === null
          ? html`<span class="none"><span aria-hidden="true">–</span><span class="hear">no reading yet</span></span>`
          : html`<span class="figure">${f.figure} <span class="unit">${f.unit}</span></span>`
      }
      ${b === null ? nothing : html`<span class="beside">${b.figure} ${b.unit}</span>`}
    </button>`;
  }

  #tank(): unknown {
    const t = this.latest.find((l) => l.what === 'pressure' && l.where === 'tank') ?? null;
    const f = t ? figureOf(t.si, t.unit, t.pm) : null;
    const { mark, words } = verdictMark(t?.verdict);
    // full scale of the drawn tank: a fifth above the upper limit, else a common gauge's 1 MPa (about 150 psi)
    const top = t?.high ? t.high * 1.2 : 1.03e6;
    const y = t ? 100 - Math.min(100, Math.max(0, (t.si / top) * 100)) : 100;
    return html`<button type="button" class="key tank ${t?.verdict ?? ''}" @click=${() => this.#write('tank')}>
      <svg class="level" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        ${t ? svg`<rect class="water" x="0" y=${y} width="100" height=${100 - y} />` : nothing}
        ${t ? [t.low, t.high].map((v) => (v === undefined ? nothing : svg`<path class="cut" d="M0 ${100 - (v / top) * 100}h16m68 0h16" />`)) : nothing}
      </svg>
      <span class="place"
        >tank
        ${mark === '' || t?.verdict === 'within' ? nothing : html`<b><span aria-hidden="true">${mark}</span><span class="hear">${words}</span></b>`}</span
      >
      ${
        f === null
          ? html`<span class="none"><span aria-hidden="true">–</span><span class="hear">no reading yet</span></span>`
          : html`<span class="figure">${f.figure}</span><span class="unit">${f.unit}</span>`
      }
    </button>`;
  }
}
customElements.define('soap-plan', SoapPlan);
