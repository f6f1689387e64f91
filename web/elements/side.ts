/** Where it stands: circuit and readings, suspects, gates, state of the coach, checks done. */
import { LitElement, html, nothing } from 'lit';
import { suspectsView } from '../blocks/suspects.ts';
import { byPart, heading } from '../by-part.ts';
import type { Board } from '../../server/chat/protocol.ts';
import { circuit } from '../draw/circuit.ts';
import { drawing } from '../draw/drawing.ts';
import { drawings } from '../draw/look.ts';
import { tell } from '../events.ts';
import { base, keys } from '../look/base.ts';
import { sideLook } from '../look/side.ts';
import { blocks } from '../look/blocks.ts';
import { readingStrips, seriesCharts } from '../series.ts';
import { clock, figureOf, verdictMark } from '../show.ts';

/** What the marks in the circuit mean, of those that stand in it. */
const circuitSays = ({ lit, joined }: Board['circuit']): string =>
  [
    lit.length === 0 ? '' : 'thick, dark corner: suspect',
    joined.length === 0 ? '' : 'hatched: joined now, one pressure',
  ]
    .filter((w) => w !== '')
    .join(' · ');

export class SoapSide extends LitElement {
  static override properties = { board: { attribute: false }, show: {}, zone: {} };
  static override styles = [base, keys, blocks, drawings, sideLook];
  declare board: Board | null;
  declare show: 'circuit' | 'side' | 'all' | 'under';
  declare zone: string | undefined;

  constructor() {
    super();
    this.board = null;
    this.show = 'side';
  }

  protected override render(): unknown {
    const b = this.board;
    if (b === null) return nothing;
    switch (this.show) {
      case 'under':
        return this.#underLine(b.under);
      case 'circuit':
        return html`<div class="side left">${this.#circuit(b)} ${this.#readings(b)}</div>`;
      case 'side':
        return html`<div class="side">${this.#standing(b)}</div>`;
      case 'all':
        return html`<div class="side">${this.#standing(b)} ${this.#circuit(b)} ${this.#readings(b)}</div>`;
    }
  }

  #circuit(b: Board): unknown {
    const texts = new Map<string, string>();
    for (const l of b.latest) {
      if (l.what !== 'pressure') continue;
      const f = figureOf(l.si, l.unit, l.pm);
      texts.set(l.where.replace(/^(left|right) rear /, '$1 '), `${f.figure} ${f.unit}`);
    }
    const drawn = [
      'electrics',
      'relay',
      'fuse',
      'battery',
      'pressure switch',
      'ground',
      'feed cable',
      'breaker',
      'key switch',
      'solenoid',
    ];
    const electric = b.circuit.lit.filter((l) => drawn.includes(l.part));
    return html`<section aria-label="air circuit">
      <h2>Air</h2>
      ${circuit(
        {
          lit: b.circuit.lit,
          joined: b.circuit.joined,
          panel: b.circuit.panel,
          texts,
          tap: (place) => tell(this, 'write', { text: place, pad: true }),
        },
        'air circuit: a tap writes the part',
      )}
      ${electric.length === 0 ? nothing : html`<p class="also">suspect beside the air: ${electric.map((l) => l.part).join(', ')}</p>`}
      ${circuitSays(b.circuit) === '' ? nothing : html`<p class="also soft">${circuitSays(b.circuit)}</p>`}
    </section>`;
  }

  #readings(b: Board): unknown {
    const charts = seriesCharts(b).slice(0, 4);
    const strips = readingStrips(b).slice(0, 12);
    return html`${
      charts.length === 0
        ? nothing
        : html`<section>
            <h2>Over time</h2>
            ${charts.map(
              (c) =>
                html`<div class="reading">
                  <p>${c.title}</p>
                  ${drawing(c.drawing, `${c.title} over time`)}
                </div>`,
            )}
          </section>`
    }
    ${
      strips.length === 0
        ? nothing
        : html`<section>
            <h2>Latest readings</h2>
            ${strips.map((s) => {
              const { mark, words } = verdictMark(s.verdict);
              return html`<div class="reading">
                <p>
                  <span>${s.title}</span>
                  <b class="figure"
                    >${mark === '' || s.verdict === 'within' ? nothing : html`<span aria-hidden="true">${mark} </span><span class="hear">${words} </span>`}${s.text}</b
                  >
                </p>
                ${s.drawing === null ? nothing : drawing(s.drawing, `${s.title} ${s.text} ${words}`)}
              </div>`;
            })}
          </section>`
    }`;
  }

  /** On a phone: one line above the sheet, the whole of it a tap away. */
  #underLine({ held, short }: Board['under']): unknown {
    return html`<button type="button" class="under-line" @click=${() => tell(this, 'board', true)}>
      <span aria-hidden="true">${held ? '■' : '▲'}</span> Under the coach: <b>${short}</b>
    </button>`;
  }

  #under({ words, list }: Board['under']): unknown {
    return html`<section class="under">
      <h2>Under the coach</h2>
      <p><b>${words}</b></p>
      <ul class="list">
        ${list.map(
          (l) =>
            html`<li>
              <span class="box ${{ yes: 'full', no: 'no', unknown: '' }[l.is]}" aria-hidden="true"></span>
              <span
                >${l.words}${l.at === undefined ? nothing : html` <i class="soft">${l.by} ${clock(l.at, this.zone)}</i>`}</span
              >
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #standing(b: Board): unknown {
    const open = b.gates.filter((g) => !g.answered);
    return html`${this.#under(b.under)}
      <section>
        <h2>Suspects</h2>
        ${b.suspects.length === 0 ? html`<p class="soft">None yet: nothing noted points anywhere.</p>` : suspectsView(byPart(b.suspects.slice(0, 6)), 6, heading)}
      </section>
      ${
        open.length === 0
          ? nothing
          : html`<section>
              <h2>Before going on</h2>
              <ul class="list">
                ${open.map((g) => html`<li><span class="box" aria-hidden="true"></span><b>${g.words}</b></li>`)}
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
                      <span
                        >${s.words}${s.from === 'said' || s.from === 'unknown' || s.words.includes(s.from) ? nothing : html` <i class="soft">${s.from}</i>`}</span
                      >
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
      }`;
  }
}
customElements.define('soap-side', SoapSide);
