/** The page: where it is by its hash, who types, which theme; owns the socket through its controller. */
import { LitElement, css, html, nothing } from 'lit';
import { keep } from '../keep.ts';
import { base, keys } from '../look/base.ts';
import { hashOf, routeOf, type Route } from '../route.ts';
import { SocketController } from '../socket-controller.ts';
import './session.ts';
import './start.ts';
import './transcript.ts';
import { canSpeak, hush, speak } from '../aloud.ts';

const socketUrl = (): string => `${location.protocol === 'https:' ? 'wss' : 'ws'}://${location.host}/socket`;
const themes = ['auto', 'light', 'dark', 'sun'] as const;
type Theme = (typeof themes)[number];
const themeWords: Record<Theme, string> = { auto: 'as the device', light: 'day', dark: 'dark', sun: 'full sun' };

export class SoapPage extends LitElement {
  static override properties = {
    route: { state: true },
    by: { state: true },
    theme: { state: true },
    wide: { state: true },
    board: { state: true },
    menu: { state: true },
    closing: { state: true },
    aloud: { state: true },
  };
  static override styles = [
    base,
    keys,
    css`
      :host {
        display: block;
        height: 100%;
      }
      .shell {
        display: flex;
        flex-direction: column;
        height: 100dvh;
        position: relative;
      }
      main {
        flex: 1;
        min-height: 0;
      }
      .bar {
        display: flex;
        align-items: stretch;
        min-height: 44px;
        border-bottom: var(--line) solid var(--edge);
        font-size: 0.9375rem;
      }
      .bar button {
        flex: none;
        min-width: 56px;
        border: 0;
        background: none;
        font-weight: var(--weight);
        padding: 0 12px;
        cursor: pointer;
      }
      @media (forced-colors: none) {
        .bar button[aria-pressed='true'],
        .bar button[aria-expanded='true'] {
          background: var(--ink);
          color: var(--paper);
        }
      }
      .title {
        flex: 1;
        min-width: 0;
        display: flex;
        align-items: center;
        gap: 8px;
        padding: 0 4px;
      }
      .title h1 {
        font-size: 1rem;
        font-weight: var(--weight);
        white-space: nowrap;
        overflow: hidden;
        text-overflow: ellipsis;
      }
      .link-state {
        flex: none;
        color: var(--soft);
      }
      .link-state.away {
        color: var(--ink);
        border: 2px dashed currentColor;
        padding: 0 6px;
        font-weight: var(--weight);
      }
      .menu {
        position: absolute;
        inset: 46px 0 auto;
        z-index: 5;
        max-height: calc(100dvh - 46px);
        overflow-y: auto;
        display: grid;
        gap: 10px;
        padding: 12px;
        border-bottom: var(--line) solid var(--edge);
        background: var(--paper);
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 10rem), 1fr));
      }
      .menu a {
        display: grid;
        place-items: center;
        text-decoration: none;
        color: inherit;
      }
      .sign {
        grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      }
      .sign label,
      .sign textarea {
        grid-column: 1 / -1;
      }
      textarea,
      .who input {
        width: 100%;
        border: var(--line) solid var(--edge);
        border-radius: var(--round);
        background: var(--card);
        padding: 8px 10px;
        min-height: 48px;
      }
      .who {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr);
        align-items: center;
        gap: 8px;
      }
      @media print {
        .bar,
        .menu {
          display: none;
        }
        :host,
        .shell {
          display: block;
          height: auto;
        }
      }
      .gone {
        padding: 32px 20px;
        display: grid;
        gap: 16px;
        justify-items: start;
      }
    `,
  ];

  declare route: Route;
  declare by: string;
  declare theme: Theme;
  declare wide: boolean;
  declare board: boolean;
  declare menu: boolean;
  /** The sign-off is being written. */
  declare closing: boolean;
  declare aloud: boolean;
  readonly #controller: SocketController;
  readonly #wideMedia = matchMedia('(min-width: 1100px)');

  constructor() {
    super();
    this.#controller = new SocketController(this, socketUrl());
    this.route = routeOf(location.hash);
    this.by = keep.get('by') ?? '';
    const theme = themes.find((t) => t === keep.get('theme')) ?? 'auto';
    this.theme = theme;
    this.wide = this.#wideMedia.matches;
    this.board = false;
    this.menu = false;
    this.closing = false;
    this.aloud = keep.get('aloud') === 'yes';
    this.addEventListener('soap-said', (e) => {
      if (this.aloud) speak((e as CustomEvent<string>).detail);
    });
    this.#dress();
    this.addEventListener('soap-by', (e) => {
      this.by = (e as CustomEvent<string>).detail;
      keep.set('by', this.by);
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.#moved);
    this.#wideMedia.addEventListener('change', this.#sized);
    this.#moved();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.#moved);
    this.#wideMedia.removeEventListener('change', this.#sized);
  }

  #moved = (): void => {
    this.route = routeOf(location.hash);
    this.menu = false;
    this.board = false;
    this.closing = false;
    hush();
    if (this.route.at === 'session' || this.route.at === 'transcript') void this.#controller.follow(this.route.session);
    else {
      this.#controller.leave();
      this.#controller.list();
    }
  };

  #sized = (): void => {
    this.wide = this.#wideMedia.matches;
  };

  #dress(): void {
    const root = document.documentElement;
    if (this.theme === 'auto') delete root.dataset['theme'];
    else root.dataset['theme'] = this.theme;
  }

  #nextTheme(): void {
    this.theme = themes[(themes.indexOf(this.theme) + 1) % themes.length] ?? 'auto';
    keep.set('theme', this.theme);
    this.#dress();
  }

  protected override render(): unknown {
    const route = this.route;
    if (route.at === 'start' || route.at === 'learn')
      return html`<soap-start .controller=${this.#controller} .by=${this.by} .tick=${{}}></soap-start>`;
    return this.#session(route.session);
  }

  #linkWords(): { words: string; away: boolean } {
    const c = this.#controller;
    const waiting = c.pending.filter((p) => p.state !== 'refused').length;
    if (c.link === 'live') return { words: waiting === 0 ? '' : `sending ${waiting}`, away: false };
    return { words: waiting === 0 ? 'not connected' : `not connected, ${waiting} waiting`, away: true };
  }

  /** Initials as the protocol wants them: never empty. */
  get #who(): string {
    return this.by.trim() === '' ? 'bench' : this.by.trim().slice(0, 20);
  }

  #menu(session: string, closed: boolean): unknown {
    if (this.closing)
      return html`<form
        class="menu sign"
        aria-label="sign off"
        @submit=${(e: SubmitEvent) => {
          e.preventDefault();
          const words = this.renderRoot.querySelector<HTMLTextAreaElement>('#signed')?.value.trim() ?? '';
          this.#controller.close(this.#who, words.slice(0, 4000));
          this.closing = false;
          this.menu = false;
        }}
      >
        <label for="signed">Close and sign as ${this.#who}. What it is left as:</label>
        <textarea id="signed" rows="2"></textarea>
        <button class="key main">close and sign</button>
        <button type="button" class="key" @click=${() => (this.closing = false)}>not yet</button>
      </form>`;
    return html`<nav class="menu" aria-label="menu">
      <a class="key" href="#/">all sessions</a>
      ${
        this.route.at === 'transcript'
          ? html`<a class="key" href=${hashOf({ at: 'session', session })}>job sheet</a>`
          : html`<a class="key" href=${hashOf({ at: 'transcript', session })}>transcript</a>`
      }
      <button type="button" class="key" @click=${() => this.#nextTheme()}>light: ${themeWords[this.theme]}</button>
      ${
        canSpeak()
          ? html`<button
              type="button"
              class="key"
              aria-pressed=${this.aloud ? 'true' : 'false'}
              @click=${() => {
                this.aloud = !this.aloud;
                keep.set('aloud', this.aloud ? 'yes' : 'no');
                if (!this.aloud) hush();
              }}
            >
              read aloud: ${this.aloud ? 'on' : 'off'}
            </button>`
          : nothing
      }
      ${
        closed
          ? html`<button type="button" class="key" @click=${() => this.#controller.reopen('', this.#who)}>
              open again
            </button>`
          : html`<button type="button" class="key" @click=${() => (this.closing = true)}>close session</button>`
      }
      <div class="who">
        <label for="by">initials</label>
        <input
          id="by"
          .value=${this.by}
          maxlength="20"
          autocomplete="off"
          spellcheck="false"
          @input=${(e: InputEvent) => {
            this.by = (e.target as HTMLInputElement).value;
            keep.set('by', this.by);
          }}
        />
      </div>
    </nav>`;
  }

  #session(session: string): unknown {
    const c = this.#controller;
    const state = c.state;
    const coach = state?.board?.coach ?? state?.entries.find((e) => e.is === 'opened')?.coach;
    const name = c.welcome?.coaches.find((x) => x.id === coach)?.coach ?? coach ?? 'session';
    const link = this.#linkWords();
    return html`<div
      class="shell"
      @keydown=${(e: KeyboardEvent) => {
        if (e.key === 'Escape') this.menu = false;
      }}
    >
      <header class="bar">
        <button type="button" aria-expanded=${this.menu ? 'true' : 'false'} @click=${() => (this.menu = !this.menu)}>
          menu
        </button>
        <div class="title">
          <h1>${name}</h1>
          <span class="link-state ${link.away ? 'away' : ''}" role="status">${link.words}</span>
        </div>
        ${
          this.wide || this.route.at === 'transcript'
            ? nothing
            : html`<button
                type="button"
                aria-pressed=${this.board ? 'true' : 'false'}
                @click=${() => (this.board = !this.board)}
              >
                ${this.board ? 'sheet' : 'board'}
              </button>`
        }
      </header>
      ${this.menu ? this.#menu(session, state?.board?.closed ?? false) : nothing}
      <main>
        ${
          state === null
            ? nothing
            : c.refused?.why === 'no such session' && state.entries.length === 0
              ? html`<main class="gone">
                  <p>${c.refused.words}</p>
                  <a href="#/">all sessions</a>
                </main>`
              : this.route.at === 'transcript'
                ? html`<soap-transcript
                    .controller=${c}
                    .state=${state}
                    .coach=${name}
                    .by=${this.#who}
                  ></soap-transcript>`
                : html`<soap-session
                    .controller=${c}
                    .state=${state}
                    .pending=${c.pending}
                    .by=${this.#who}
                    ?wide=${this.wide}
                    .board=${this.board}
                  ></soap-session>`
        }
      </main>
    </div>`;
  }
}
customElements.define('soap-page', SoapPage);
