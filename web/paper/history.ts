/** A coach over all its visits: what is due, each figure's way with its limits, work and sessions. */
import { LitElement, html, nothing } from 'lit';
import type { CoachHistory } from '../../server/report/shapes.ts';
import { chart } from '../draw/chart.ts';
import { drawings } from '../draw/look.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import { date, day, verdictMark } from '../show.ts';
import { load } from './ask.ts';
import { historyLook } from './history-look.ts';
import { paperLook } from './look.ts';
import { plainSource } from './plain-source.ts';

/** Charts at once; the rest on demand. */
const firstCharts = 6;

export class SoapHistory extends LitElement {
  static override properties = {
    coach: {},
    history: { state: true },
    wrong: { state: true },
    all: { state: true },
  };
  static override styles = [base, keys, drawings, paperLook, historyLook];
  declare coach: string;
  declare history: CoachHistory | null;
  declare wrong: string;
  declare all: boolean;

  constructor() {
    super();
    this.coach = '';
    this.history = null;
    this.wrong = '';
    this.all = false;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('coach')) void this.#load();
  }

  async #load(): Promise<void> {
    const asked = this.coach;
    const answer = await load<CoachHistory>(`/paper/coach/${asked}/history`);
    if (asked !== this.coach) return;
    this.history = answer.ok ? answer.data : null;
    this.wrong = answer.ok ? '' : answer.words;
  }

  protected override render(): unknown {
    const h = this.history;
    const sheet = hashOf({ at: 'paper', page: 'sheet', of: this.coach, from: null });
    return html`<main class="paper">
      <nav class="acts" aria-label="history">
        <a class="key small" href="#/">all sessions</a>
        <a class="key small" href=${sheet}>coach sheet</a>
        <a class="key small" href=${`/coach/${this.coach}.ics`} download>calendar</a>
        <a class="key small" href=${`/paper/coach/${this.coach}/history`} download=${`${this.coach}-history.json`}
          >JSON</a
        >
        <button type="button" class="key small" @click=${() => print()}>print</button>
      </nav>
      <header class="head">
        <h1>${h?.name ?? this.coach}</h1>
        ${h ? html`<p>${h.sessions.length} ${h.sessions.length === 1 ? 'visit' : 'visits'}; practice does not count. Limits: ${h.sheet.source}</p>` : nothing}
      </header>
      ${this.wrong === '' ? nothing : html`<p class="wrong" role="alert">${this.wrong}</p>`}
      ${h === null ? html`<p role="status">${this.wrong === '' ? 'fetching…' : ''}</p>` : this.#page(h)}
    </main>`;
  }

  #page(h: CoachHistory): unknown {
    const at = (ms: number): string => date(ms, h.zone);
    const shown = this.all ? h.series : h.series.slice(0, firstCharts);
    return html` <section>
        <h2>Due next</h2>
        ${
          h.due.length === 0
            ? html`<p class="soft">The coach sheet lists no service.</p>`
            : html`<ul class="items">
                ${h.due.map(
                  (d) =>
                    html`<li class=${d.overdue ? 'late' : ''}>
                      <b>${d.what}</b>: ${d.words}
                      <span class="soft"
                        >${d.last ? `last ${at(d.last.at)}, ${d.last.words.toLowerCase()}` : ''}
                        (${plainSource(d.source)})</span
                      >
                    </li>`,
                )}
              </ul>`
        }
      </section>
      <section>
        <h2>Readings over the visits</h2>
        ${h.series.length === 0 ? html`<p class="soft">No reading yet.</p>` : nothing}
        <div class="charts">${shown.map((s) => this.#series(s, h.zone))}</div>
        ${
          shown.length < h.series.length
            ? html`<div class="go no-print">
                <button type="button" class="key small" @click=${() => (this.all = true)}>
                  ${h.series.length - shown.length} more
                </button>
              </div>`
            : nothing
        }
      </section>
      <div class="two">
        <section>
          <h2>What was done when</h2>
          ${
            h.work.length === 0
              ? html`<p class="soft">No work was written down.</p>`
              : html`<ul class="items">
                  ${h.work.map(
                    (w) =>
                      html`<li>
                        ${at(w.at)} <b>${w.words}</b>
                        <a class="link" href=${hashOf({ at: 'transcript', session: w.session })}>note ${w.seq}</a>
                        <span class="soft">${w.by}</span>
                      </li>`,
                  )}
                </ul>`
          }
        </section>
        <section>
          <h2>Visits</h2>
          ${
            h.sessions.length === 0
              ? html`<p class="soft">No visit yet.</p>`
              : html`<ul class="items visits">
                  ${h.sessions.map(
                    (s) =>
                      html`<li>
                        <a href=${hashOf({ at: 'session', session: s.session })}><b>${at(s.opened)}</b> ${s.words}</a>
                        <span class="soft"
                          >${s.closed ? `signed off by ${s.signed}` : 'open'}${s.off.length > 0 ? `; off at the end: ${s.off.slice(0, 3).join('; ')}` : ''}</span
                        >
                      </li>`,
                  )}
                </ul>`
          }
        </section>
      </div>`;
  }

  #series(s: CoachHistory['series'][number], zone: string): unknown {
    const first = s.points[0]?.at ?? 0;
    const last = s.points.at(-1)!;
    const says = `${s.title}: ${s.points.map((p) => `${p.text} on ${day(p.at, zone)}`).join(', ')}`;
    const limits = [
      ...(s.low === undefined ? [] : [{ si: s.low, label: 'low limit' }]),
      ...(s.high === undefined ? [] : [{ si: s.high, label: 'high limit' }]),
    ];
    const { mark, words } = verdictMark(last.verdict);
    return html`<figure class="card">
      <h3>${s.title}</h3>
      ${
        s.points.length > 1
          ? chart(
              {
                is: 'chart',
                unit: s.unit,
                points: s.points.map((p) => ({ t: (p.at - first) / 1000, si: p.si, pm: p.pm })),
                fit: [],
                limits,
              },
              says,
            )
          : nothing
      }
      <figcaption>
        last
        <b>${last.text}</b>
        ${words === '' ? '' : `${mark} ${words}, `}${date(last.at, zone)}${s.source === '' ? '' : html` <span class="soft">limit ${s.limit} (${plainSource(s.source)})</span>`}
        ${
          s.points.length > 1
            ? html`<details class="no-print">
                <summary>all ${s.points.length}</summary>
                <ul>
                  ${s.points.map(
                    (p) =>
                      html`<li>
                        ${date(p.at, zone)}: ${p.text} ${verdictMark(p.verdict).words}
                        <a class="link" href=${hashOf({ at: 'transcript', session: p.session })}>note ${p.seq}</a>
                      </li>`,
                  )}
                </ul>
              </details>`
            : nothing
        }
      </figcaption>
    </figure>`;
  }
}
customElements.define('soap-history', SoapHistory);
