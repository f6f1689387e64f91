/** The page: where it is by its hash, who types, which theme; owns the socket through its controller. */
import { LitElement, html, nothing } from 'lit';
import { keep } from '../keep.ts';
import { mayWrite } from '../may.ts';
import { told } from '../events.ts';
import { base, keys } from '../look/base.ts';
import { pageLook } from '../look/page.ts';
import { paperView } from '../paper/paper.ts';
import { routeOf, type Route } from '../route.ts';
import { SocketController } from '../socket-controller.ts';
import './session.ts';
import { hush, speak } from '../aloud.ts';
import { Rooms, type Room } from '../rooms.ts';
import { dress, theme } from '../theme.ts';

const socketUrl = (): string => `${location.protocol === 'https:' ? 'wss' : 'ws'}://${location.host}/socket`;

export class SoapPage extends LitElement {
  static override properties = {
    route: { state: true },
    by: { state: true },
    wide: { state: true },
    board: { state: true },
    menu: { state: true },
  };
  static override styles = [base, keys, pageLook];

  declare route: Route;
  declare by: string;
  declare wide: boolean;
  declare board: boolean;
  declare menu: boolean;
  readonly #controller: SocketController;
  readonly #rooms = new Rooms(this);
  readonly #wideMedia = matchMedia('(min-width: 1100px)');

  constructor() {
    super();
    this.#controller = new SocketController(this, socketUrl());
    this.route = routeOf(location.hash);
    this.by = keep.get('by') ?? '';
    dress(theme());
    this.wide = this.#wideMedia.matches;
    this.board = false;
    this.menu = false;
    this.addEventListener('soap-said', (e) => {
      if (keep.get('aloud') === 'yes') speak((e as CustomEvent<string>).detail);
    });
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
    hush();
    if (this.route.at === 'session' || this.route.at === 'transcript')
      void this.#controller.follow(this.route.session, this.route.at === 'transcript');
    else {
      this.#controller.leave();
      this.#controller.list();
    }
  };

  #sized = (): void => {
    this.wide = this.#wideMedia.matches;
  };

  protected override render(): unknown {
    const route = this.route;
    if (route.at === 'learn')
      return this.#room(
        'learn',
        () =>
          html`<soap-learn
            .controller=${this.#controller}
            .page=${route.page}
            .by=${this.#who}
            .tick=${{}}
          ></soap-learn>`,
      );
    if (route.at === 'start')
      return this.#room(
        'start',
        () => html`<soap-start .controller=${this.#controller} .by=${this.by} .tick=${{}}></soap-start>`,
      );
    if (route.at === 'paper') return this.#room(route.page, () => paperView(route, this.#controller, this.#who));
    return this.#session(route.session);
  }

  /** A part that is fetched when it is wanted; words in its place until it is here. */
  #room(room: Room, view: () => unknown): unknown {
    switch (this.#rooms.look(room)) {
      case 'here':
        return view();
      case 'coming':
        return nothing;
      case 'failed':
        return html`<main class="gone" role="alert">
          <p>This part of the page is not in this browser yet. It comes with the connection.</p>
          <button type="button" class="key" @click=${this.#rooms.again}>try again</button>
          <a href="#/">all sessions</a>
        </main>`;
    }
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
      ${
        this.menu
          ? this.#room(
              'menu',
              () =>
                html`<soap-menu
                  .controller=${c}
                  .session=${session}
                  .coach=${c.welcome?.coaches.find((x) => x.coach === coach || x.id === coach)?.id ?? ''}
                  .by=${this.by}
                  .who=${this.#who}
                  .writes=${mayWrite(c.welcome?.role ?? 'works', state?.board?.practice ?? false)}
                  ?closed=${state?.board?.closed ?? false}
                  ?transcript=${this.route.at === 'transcript'}
                  @soap-shut=${() => (this.menu = false)}
                ></soap-menu>`,
            )
          : nothing
      }
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
                ? this.#room(
                    'transcript',
                    () =>
                      html`<soap-transcript
                        .controller=${c}
                        .state=${state}
                        ?fetching=${c.fetching}
                        .coach=${name}
                        .by=${this.#who}
                      ></soap-transcript>`,
                  )
                : html`<soap-session
                    .controller=${c}
                    .state=${state}
                    .pending=${c.pending}
                    .by=${this.#who}
                    ?wide=${this.wide}
                    .board=${this.board}
                    @soap-board=${(e: Event) => (this.board = told('board', e))}
                  ></soap-session>`
        }
      </main>
    </div>`;
  }
}
customElements.define('soap-page', SoapPage);
