/** The owner's report of a session: plain words, before and after, what is due, what must be signed. Prints as it is. */
import { LitElement, html, nothing } from 'lit';
import type { OwnerReport } from '../../server/report/shapes.ts';
import { drawings } from '../draw/look.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import { clock, date } from '../show.ts';
import { load } from './ask.ts';
import { paperLook } from './look.ts';
import { reportLook } from './report-look.ts';
import { comparedView, estimateView, itemsView } from './report-parts.ts';

export class SoapReport extends LitElement {
  static override properties = {
    session: {},
    report: { state: true },
    wrong: { state: true },
  };
  static override styles = [base, keys, drawings, paperLook, reportLook];
  declare session: string;
  declare report: OwnerReport | null;
  declare wrong: string;

  constructor() {
    super();
    this.session = '';
    this.report = null;
    this.wrong = '';
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('session')) void this.#load();
  }

  async #load(): Promise<void> {
    const asked = this.session;
    const answer = await load<OwnerReport>(`/paper/session/${asked}/report`);
    if (asked !== this.session) return;
    this.report = answer.ok ? answer.data : null;
    this.wrong = answer.ok ? '' : answer.words;
  }

  protected override render(): unknown {
    const { session, report } = this;
    const acts = html`<nav class="acts" aria-label="report">
      <a class="key small" href=${hashOf({ at: 'session', session })}>back to the sheet</a>
      <a class="key small" href=${hashOf({ at: 'transcript', session })}>transcript</a>
      <a class="key small" href=${hashOf({ at: 'paper', page: 'estimate', of: session, from: null })}>estimate</a>
      <button type="button" class="key small main" ?disabled=${report === null} @click=${() => print()}>print</button>
    </nav>`;
    if (report === null)
      return html`<main class="paper">
        ${acts}
        <h1>Report</h1>
        ${this.wrong === '' ? html`<p role="status">fetching…</p>` : html`<p class="wrong" role="alert">${this.wrong}</p>`}
      </main>`;
    return html`<main class="paper">${acts}${this.#page(report)}</main>`;
  }

  #page(r: OwnerReport): unknown {
    const on = (at: number): string => date(at, r.zone);
    return html` <header class="head">
        <div class="shop">
          <p>
            <b>${r.shop.name === '' ? 'Workshop' : r.shop.name}</b
            >${r.shop.lines === '' ? nothing : html`<br /><span class="lines">${r.shop.lines}</span>`}
          </p>
          <p>${on(r.opened)}${r.practice ? html`<br /><b>practice on a made-up fault</b>` : nothing}</p>
        </div>
        <h1>${r.coach}: air suspension, report</h1>
        ${r.complaint ? html`<p>Complaint: <span class="quote">“${r.complaint.words}”</span></p>` : html`<p class="soft">No complaint was written down.</p>`}
      </header>
      <section
        class="word ${r.word.is === 'not safe' || r.word.is === 'open' ? 'stop' : ''}"
        aria-label="how it stands"
      >
        <h2>${r.word.is === 'not safe' ? html`<span aria-hidden="true">▲ </span>` : nothing}${r.word.words}</h2>
        ${
          r.notSafe.length === 0
            ? nothing
            : html`<ul>
                ${r.notSafe.map((n) => html`<li><b>${n.words}</b>${n.more === '' ? '' : `, ${n.more}`} <span class="soft">(note ${n.seq})</span></li>`)}
              </ul>`
        }
        <p>${r.word.more} This paper does not clear it for the road.</p>
      </section>
      <div class="two">
        ${itemsView('What was found', r.cause ? [...r.found, { ...r.cause, words: `Most likely cause: ${r.cause.words}` }] : r.found, 'Nothing off was measured or seen.')}
        <div>
          ${itemsView('What was done', r.done, 'No work was written down.')}
          <br />
          ${itemsView('What was left, or declined', r.declined, 'Nothing was declined.')}
        </div>
      </div>
      ${
        r.compared.length === 0 && r.photos.length === 0
          ? nothing
          : html`<section>
              <h2>${r.compared.some((c) => c.after) ? 'Before and after' : 'As measured'}</h2>
              <div class="cards">${r.compared.map((c) => comparedView(c))}</div>
              ${
                r.photos.length === 0
                  ? nothing
                  : html`<div class="photos">
                      ${r.photos.map(
                        (p) =>
                          html`<figure class="card">
                            <img
                              src=${`/photos/${p.id}`}
                              width=${p.width}
                              height=${p.height}
                              alt=${`${p.when}: ${p.note}`}
                            />
                            <figcaption><b>${p.when}</b> ${p.note}</figcaption>
                          </figure>`,
                      )}
                    </div>`
              }
            </section>`
      }
      ${r.estimate ? estimateView(r.estimate) : nothing}
      <div class="two">
        ${itemsView(
          'Due next',
          r.due.map((d) => ({
            words: `${d.what}:`,
            more: d.words,
            at: 0,
            seq: 0,
            by: '',
          })),
          'The coach sheet lists no service.',
        )}
        ${itemsView('Cautions in force', r.cautions, 'No question of safety was left unanswered.')}
      </div>
      <section>
        ${r.closed ? html`<p>Signed off by <b>${r.closed.signed}</b>, ${on(r.closed.at)} ${clock(r.closed.at, r.zone)}${r.closed.words === '' ? '' : `: ${r.closed.words}`}</p>` : html`<p><b>Not signed off yet.</b></p>`}
        <div class="signs">
          <p>workshop, date</p>
          <p>owner, date</p>
        </div>
      </section>
      <footer class="foot">
        <p>
          This report tells what was measured, seen and done. It does not clear the coach for the road: that is the word
          of the one who signs for it, by the maker's manual and the local rules. Figures are held to:
          ${r.sheet.source}.
        </p>
        <p>
          Log mark over ${r.entries} entries of session ${r.session}, ${on(r.printed)} ${clock(r.printed, r.zone)}: the
          log on the bench gives the same mark as long as nothing in it was changed.
        </p>
        <p class="mark">${r.mark.match(/.{1,8}/g)?.join(' ')}</p>
      </footer>`;
  }
}
customElements.define('soap-report', SoapReport);
