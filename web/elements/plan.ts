/** The coach from above as five keys: four corners and the tank, with their latest figures. A tap writes the place. */
import { LitElement, html, nothing, svg } from 'lit';
import type { Board } from '../../server/chat/protocol.ts';
import { tell } from '../events.ts';
import { base } from '../look/base.ts';
import { planLook } from '../look/plan.ts';
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
  static override styles = [base, planLook];

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
