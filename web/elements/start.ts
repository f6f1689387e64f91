/** The first page: who types, which coach, which session to go on with. */
import { LitElement, html, nothing } from 'lit';
import { atBench, whyNot } from '../may.ts';
import { base, keys } from '../look/base.ts';
import { startLook } from '../look/start.ts';
import { clock, day } from '../show.ts';
import type { SocketController } from '../socket-controller.ts';
import { hashOf } from '../route.ts';

export class SoapStart extends LitElement {
  static override properties = {
    controller: { attribute: false },
    by: {},
    tick: { attribute: false },
    coach: { state: true },
    words: { state: true },
    missing: { state: true },
  };
  static override styles = [base, keys, startLook];

  declare controller: SocketController;
  declare by: string;
  declare tick: unknown;
  declare coach: string;
  declare words: string;
  declare missing: string;
  #typing: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.by = '';
    this.coach = '';
    this.words = '';
    this.missing = '';
  }

  #who(by: string): void {
    this.dispatchEvent(new CustomEvent('soap-by', { detail: by, bubbles: true, composed: true }));
  }

  #open(practice?: number): void {
    const coaches = this.controller.welcome?.coaches ?? [];
    const coach = this.coach || (coaches.length === 1 ? (coaches[0]?.id ?? '') : '');
    if (this.by.trim() === '') {
      this.missing = 'Your initials first: each note says who typed it.';
      this.renderRoot.querySelector<HTMLInputElement>('#by')?.focus();
      return;
    }
    if (coach === '') {
      this.missing = 'Pick the coach first.';
      this.renderRoot.querySelector<HTMLButtonElement>('.coach')?.focus();
      return;
    }
    const session = this.controller.open(coach, this.by.trim(), practice);
    location.hash = hashOf({ at: 'session', session });
  }

  /** Of the coach that was picked. */
  #papers(coach: string): unknown {
    return html`<p class="papers">
      <a href=${hashOf({ at: 'paper', page: 'history', of: coach, from: null })}>history and what is due</a>
      <a href=${hashOf({ at: 'paper', page: 'sheet', of: coach, from: null })}>coach sheet</a>
    </p>`;
  }

  /** Files that could not be used: nothing of them is lost, and none of them is held to. */
  #refused(): unknown {
    const list = this.controller.welcome?.refusedSheets ?? [];
    return list.length === 0
      ? nothing
      : html`<section class="refused" aria-labelledby="refused">
          <h2 id="refused">Files that cannot be used</h2>
          <ul>
            ${list.map((r) => html`<li><b>${r.file}</b>: ${r.words}</li>`)}
          </ul>
          <p>
            They stand in the data folder as they were. Mend what is named and start the bench again, or save the sheet
            here.
          </p>
        </section>`;
  }

  /** Who, which coach, and off; for a device that only reviews there is nothing to begin. */
  #new(): unknown {
    const { welcome } = this.controller;
    const role = welcome?.role ?? 'works';
    const why = whyNot(role);
    if (role === 'reviews') return html`<p class="role">${why}</p>`;
    return html`${why === '' ? nothing : html`<p class="role">${why}</p>`}
      <section aria-labelledby="new">
        <h2 id="new">New session</h2>
        <div class="who">
          <label for="by">Your initials</label>
          <input
            id="by"
            .value=${this.by}
            maxlength="20"
            autocomplete="off"
            autocapitalize="characters"
            spellcheck="false"
            @input=${(e: InputEvent) => this.#who((e.target as HTMLInputElement).value)}
          />
        </div>
        <div class="coaches" role="group" aria-label="coach">
          ${
            welcome === null
              ? html`<p class="soft">The list of coaches comes with the connection.</p>`
              : welcome.coaches.map(
                  (c) =>
                    html`<button
                      type="button"
                      class="coach"
                      aria-pressed=${this.coach === c.id ? 'true' : 'false'}
                      @click=${() => {
                        this.coach = c.id;
                        this.missing = '';
                      }}
                    >
                      <b>${c.coach}</b
                      ><span class="soft">${c.units}${c.panel ? ', levelling panel' : ', no panel'}</span>
                    </button>`,
                )
          }
        </div>
        ${this.coach === '' ? nothing : this.#papers(this.coach)}
        ${this.missing === '' ? nothing : html`<p class="missing" role="alert">${this.missing}</p>`}
        <div class="go">
          ${
            role === 'works'
              ? html`<button type="button" class="key main" @click=${() => this.#open()}>start</button>`
              : nothing
          }
          <button type="button" class="key ${role === 'works' ? '' : 'main'}" @click=${() => this.#open(1)}>
            practice on a made-up fault
          </button>
        </div>
      </section>`;
  }

  protected override render(): unknown {
    const { welcome, sessions, link } = this.controller;
    return html`<main>
      <header>
        <h1>soapwater</h1>
        <nav aria-label="more">
          <a href="#/learn">learn</a>
          ${welcome?.role === 'works' ? html`<a href="#/sheet">new coach</a> <a href="#/shop">shop</a>` : nothing}
          ${atBench() ? html`<a href="/bench">devices</a>` : nothing}
        </nav>
        <p class="soft">
          air suspension bench ·
          ${link === 'live' ? 'connected' : link === 'connecting' ? 'connecting' : 'not connected'}
        </p>
      </header>
      ${this.#refused()} ${this.#new()}
      <section aria-labelledby="go-on">
        <h2 id="go-on">Go on with</h2>
        <div>
          <label class="hear" for="find">Find in notes and findings</label>
          <input
            id="find"
            type="search"
            placeholder="find: words, coach, initials"
            .value=${this.words}
            @input=${(e: InputEvent) => {
              this.words = (e.target as HTMLInputElement).value;
              clearTimeout(this.#typing);
              this.#typing = setTimeout(() => this.controller.list(this.words.trim().slice(0, 200)), 180);
            }}
          />
        </div>
        ${
          sessions === null
            ? html`<p class="soft">${link === 'live' ? 'fetching…' : 'The list comes with the connection.'}</p>`
            : sessions.length === 0
              ? html`<p class="soft">
                  ${this.words === '' ? 'No session yet.' : `Nothing found for “${this.words}”.`}
                </p>`
              : html`<ul class="sessions">
                  ${sessions.map(
                    (s) =>
                      html`<li>
                        <a href=${hashOf({ at: 'session', session: s.session })}>
                          <b>${welcome?.coaches.find((c) => c.id === s.coach)?.coach ?? s.coach}</b>
                          <span class="soft">${day(s.last)} ${clock(s.last)}</span>
                          <span class="words">${s.words === '' ? 'no notes yet' : s.words}</span>
                          <span>
                            ${s.closed ? html`<span class="tag">closed</span>` : nothing}
                            ${s.practice ? html`<span class="tag">practice</span>` : nothing}
                          </span>
                        </a>
                      </li>`,
                  )}
                </ul>`
        }
        ${
          this.controller.olderThere && sessions !== null
            ? html`<button type="button" class="key small" @click=${() => this.controller.olderSessions()}>
                older sessions
              </button>`
            : nothing
        }
      </section>
    </main>`;
  }
}
customElements.define('soap-start', SoapStart);
