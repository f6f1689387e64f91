/** The menu of a session: where else to go, how it looks and sounds, signing off. */
import { LitElement, css, html, nothing } from 'lit';
import { canSpeak, hush } from '../aloud.ts';
import { keep } from '../keep.ts';
import { atBench } from '../may.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';
import { nextTheme, theme, themeWords, type Theme } from '../theme.ts';

export class SoapMenu extends LitElement {
  static override properties = {
    controller: { attribute: false },
    session: {},
    coach: {},
    by: {},
    who: {},
    closed: { type: Boolean },
    writes: { type: Boolean },
    transcript: { type: Boolean },
    closing: { state: true },
    aloud: { state: true },
    light: { state: true },
  };
  static override styles = [
    base,
    keys,
    css`
      .menu {
        position: absolute;
        inset: 44px 0 auto;
        z-index: 5;
        max-height: calc(100dvh - 44px);
        overflow-y: auto;
        display: grid;
        gap: 10px;
        padding: 12px;
        border-bottom: var(--line) solid var(--edge);
        background: var(--paper);
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 10rem), 1fr));
      }
      @media (max-width: 699px) {
        /* all of the sheet behind it, or a line of it is cut through the middle */
        .menu {
          inset: 44px 0 0;
          align-content: start;
        }
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
      .sign input,
      .sign textarea {
        grid-column: 1 / -1;
      }
      textarea,
      .sign input,
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
    `,
  ];
  declare controller: SocketController;
  declare session: string;
  /** Its short name; '' until it is known. */
  declare coach: string;
  declare by: string;
  /** Initials as they are sent: never empty. */
  declare who: string;
  declare closed: boolean;
  /** This device may write in this session. */
  declare writes: boolean;
  declare transcript: boolean;
  /** The sign-off is being written. */
  declare closing: boolean;
  declare aloud: boolean;
  declare light: Theme;

  constructor() {
    super();
    this.session = '';
    this.coach = '';
    this.by = '';
    this.who = '';
    this.closed = false;
    this.writes = true;
    this.transcript = false;
    this.closing = false;
    this.aloud = keep.get('aloud') === 'yes';
    this.light = theme();
  }

  #shut(): void {
    this.dispatchEvent(new CustomEvent('soap-shut', { bubbles: true, composed: true }));
  }

  protected override render(): unknown {
    const session = this.session;
    if (this.closing)
      return html`<form
        class="menu sign"
        aria-label="sign off"
        @submit=${(e: SubmitEvent) => {
          e.preventDefault();
          const words = this.renderRoot.querySelector<HTMLTextAreaElement>('#signed')?.value.trim() ?? '';
          const name = this.renderRoot.querySelector<HTMLInputElement>('#name')?.value.trim() ?? '';
          this.controller.close(name === '' ? this.who : name.slice(0, 60), words.slice(0, 4000));
          this.#shut();
        }}
      >
        <label for="name">Close and sign as</label>
        <input id="name" maxlength="60" autocomplete="name" .value=${this.who} />
        <label for="signed">What it is left as:</label>
        <textarea id="signed" rows="2"></textarea>
        <button class="key main">close and sign</button>
        <button type="button" class="key" @click=${() => (this.closing = false)}>not yet</button>
      </form>`;
    return html`<nav class="menu" aria-label="menu">
      <a class="key" href="#/">all sessions</a>
      <a class="key" href="#/learn">learn</a>
      ${
        this.transcript
          ? html`<a class="key" href=${hashOf({ at: 'session', session })}>job sheet</a>`
          : html`<a class="key" href=${hashOf({ at: 'transcript', session })}>transcript</a>`
      }
      <a class="key" href=${hashOf({ at: 'paper', page: 'report', of: session, from: null })}>report</a>
      <a class="key" href=${hashOf({ at: 'paper', page: 'estimate', of: session, from: null })}>estimate</a>
      ${
        this.coach === ''
          ? nothing
          : html`<a class="key" href=${hashOf({ at: 'paper', page: 'sheet', of: this.coach, from: session })}
                >coach sheet</a
              ><a class="key" href=${hashOf({ at: 'paper', page: 'history', of: this.coach, from: null })}>history</a>`
      }
      <button type="button" class="key" @click=${() => (this.light = nextTheme())}>
        light: ${themeWords[this.light]}
      </button>
      ${atBench() ? html`<a class="key" href="/bench">devices</a>` : nothing}
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
        !this.writes
          ? nothing
          : this.closed
            ? html`<button
                type="button"
                class="key"
                @click=${() => {
                  this.controller.reopen('', this.who);
                  this.#shut();
                }}
              >
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
            this.dispatchEvent(
              new CustomEvent('soap-by', {
                detail: (e.target as HTMLInputElement).value,
                bubbles: true,
                composed: true,
              }),
            );
          }}
        />
      </div>
    </nav>`;
  }
}
customElements.define('soap-menu', SoapMenu);
