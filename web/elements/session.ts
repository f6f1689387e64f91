/** One session: coach above, sheet between, next check and note line below; on a wide screen side by side. */
import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import { announcement } from '../announce.ts';
import { Asked } from '../asked.ts';
import { workView } from '../blocks/work.ts';
import { chipsFor } from '../chips.ts';
import { tell, told } from '../events.ts';
import { exchangesOf, takenBack, type Exchange } from '../exchanges.ts';
import { LineController } from '../line-controller.ts';
import { mayWrite, whyNot, type Role } from '../may.ts';
import { base, keys } from '../look/base.ts';
import { sessionLook } from '../look/session.ts';
import { workLook } from '../look/work.ts';
import { readerComes } from '../reader.ts';
import type { Pending } from '../outbox.ts';
import { missing, type SessionState } from '../session-state.ts';
import type { SocketController } from '../socket-controller.ts';
import { fetchRoom } from '../rooms.ts';
import { showing, timersOf, type Timer } from '../timers.ts';
import { whenIdle } from '../when-idle.ts';
import { whatNext, type WhatNext } from '../what-next.ts';
import type { LineDid, SoapLine } from './line.ts';
import type { PadTap } from './pad.ts';
import './line.ts';
import './next.ts';
import './plan.ts';
import './sheet.ts';

/** A mouse and, most likely, a keyboard; else glass. */
const hasKeyboard = (): boolean => matchMedia('(hover: hover) and (pointer: fine)').matches;

export class SoapSession extends LitElement {
  static override properties = {
    controller: { attribute: false },
    state: { attribute: false },
    pending: { attribute: false },
    by: {},
    wide: { type: Boolean, reflect: true },
    board: { type: Boolean, reflect: true },
    hearPolite: { state: true },
    hearNow: { state: true },
    trouble: { state: true },
    told: { state: true },
    low: { state: true },
  };
  static override styles = [base, keys, sessionLook, workLook];

  declare controller: SocketController;
  declare state: SessionState;
  declare pending: readonly Pending[];
  declare by: string;
  declare wide: boolean;
  /** On a phone: where it stands, in place of the sheet. */
  declare board: boolean;
  declare hearPolite: string;
  declare hearNow: string;
  declare trouble: string;
  /** What was made of a file. */
  declare told: string;
  /** Little height is left: a keyboard is up. */
  declare low: boolean;
  readonly #field = createRef<SoapLine>();
  readonly #line = new LineController(this);
  readonly #asked = new Asked();
  #heard = 0;
  #exchanges: Exchange[] = [];
  #timers: Timer[] = [];

  constructor() {
    super();
    this.pending = [];
    this.by = '';
    this.wide = false;
    this.board = false;
    this.hearPolite = '';
    this.hearNow = '';
    this.trouble = '';
    this.told = '';
    this.low = false;
    this.addEventListener('soap-write', (e) => {
      if (this.#closed || !this.#mayWrite) return;
      if (this.board) tell(this, 'board', false);
      this.#line.write(told('write', e), !this.wide || !hasKeyboard());
    });
    this.addEventListener('soap-ask', (e) => this.#ask(e));
    this.addEventListener('soap-line', (e) => this.#line.did((e as CustomEvent<LineDid>).detail));
    this.addEventListener('soap-pad', (e) => {
      const { tap, text } = (e as CustomEvent<PadTap>).detail;
      this.#line.tap(tap, text);
    });
    this.addEventListener('dragover', (e) => {
      if (e.dataTransfer?.types.includes('Files')) e.preventDefault();
    });
    this.addEventListener('drop', (e) => {
      e.preventDefault();
      if (!this.#closed && this.#mayWrite) void this.#line.addFiles([...(e.dataTransfer?.files ?? [])]);
    });
    this.addEventListener('soap-earlier', () => this.controller.earlier());
    this.addEventListener('soap-no-more', () => this.controller.stopFetching());
    this.addEventListener('soap-refused', (e) => {
      const { key, what } = (e as CustomEvent<{ key: string; what: 'again' | 'drop' }>).detail;
      const text = this.controller.takeBack(key);
      if (what === 'again') this.#line.append(text);
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.visualViewport?.addEventListener('resize', this.#sized);
    this.#sized();
    // behind the first tap on them, and not before the sheet stands
    whenIdle(() => void readerComes().then(() => (['menu', 'pad', 'side', 'timer'] as const).forEach(fetchRoom)));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.visualViewport?.removeEventListener('resize', this.#sized);
  }

  #sized = (): void => {
    this.low = (window.visualViewport?.height ?? innerHeight) < 520;
  };

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.wide || this.board) fetchRoom('side');
    if (changed.has('state')) {
      if (changed.get('state')?.session !== this.state.session) {
        this.#heard = 0;
        this.#asked.forget();
      }
      this.#line.follow(this.state.session);
      this.#timers = timersOf(this.state.entries, takenBack(this.state.entries).notes);
      this.#announce();
    }
    if (changed.has('state') || changed.has('pending')) this.#exchanges = exchangesOf(this.state.entries, this.pending);
    if (this.#timers.length > 0) fetchRoom('timer');
    this.#line.read(this.state.board, this.state.entries);
  }

  /** Reads out what came in since; what was there when the session was opened is not news. */
  #announce(): void {
    const last = this.state.entries.at(-1)?.seq ?? 0;
    const news = this.#heard === 0 || this.state.loading ? null : announcement(this.state.entries, this.#heard);
    this.#heard = last;
    if (news === null) return;
    if (news.now !== '') this.hearNow = news.now;
    this.hearPolite = news.polite;
    const detail = [news.now, news.polite].filter((w) => w !== '').join('. ');
    this.dispatchEvent(new CustomEvent('soap-said', { detail, bubbles: true, composed: true }));
  }

  get #closed(): boolean {
    return this.state.board?.closed ?? false;
  }

  get #role(): Role {
    return this.controller.welcome?.role ?? 'works';
  }

  get zone(): string | undefined {
    return this.state.board?.reading.zone;
  }

  /** As far as is known: a device that learns writes in practice only. */
  get #mayWrite(): boolean {
    return this.state.board === null || mayWrite(this.#role, this.state.board.practice);
  }

  send(text: string, pictures: readonly string[]): void {
    if (this.#closed || !this.#mayWrite) return;
    this.controller.note(text, this.by, Date.now(), [...pictures]);
    this.trouble = '';
    this.told = '';
  }

  /** A note that has not left the page is simply taken off; else the last one is undone by a note. */
  undoSent(): void {
    const waiting = this.pending.findLast((p) => p.frame.is === 'note' && p.state === 'waiting');
    if (waiting) this.hearPolite = `taken back: ${this.controller.takeBack(waiting.key)}`;
    else this.send('undo', []);
  }

  backToLine(): void {
    void this.updateComplete.then(() => this.#field.value?.toLine());
  }

  /** To the line where a real keyboard is likely; on glass the pad is enough and the keyboard stays down. */
  toLine(): void {
    if (hasKeyboard()) this.backToLine();
  }

  #ask(event: Event): void {
    const { text, at } = told('ask', event);
    const id = this.controller.ask(text);
    if (id === null) this.trouble = 'Not connected: that can be answered when the connection is back.';
    else this.#asked.add(at, id);
    this.requestUpdate();
  }

  /** Timer, next check, note line. */
  #foot(what: WhatNext, timing: boolean): unknown {
    const board = this.state.board;
    const composing = this.#line.text !== '' || this.low;
    const hidden =
      !this.#mayWrite || what.gateWaits || this.#line.pad || (!this.wide && (composing || this.board || what.asks));
    return html`
      <section class="foot" aria-label="next check and note line">
        ${
          this.trouble === ''
            ? nothing
            : html`<p class="trouble" role="alert">
                <span>${this.trouble}</span
                ><button type="button" class="link" @click=${() => (this.trouble = '')}>close</button>
              </p>`
        }
        ${this.#line.works.list.map(workView)}
        ${this.told === '' ? nothing : html`<p class="told" role="status">${this.told}</p>`}
        ${
          this.#timers.length === 0
            ? nothing
            : html`<soap-timer
                ?small=${this.#line.pad && !this.wide}
                .timers=${this.#timers}
                .zone=${board?.reading.zone}
              ></soap-timer>`
        }
        ${hidden ? nothing : html`<soap-next .block=${what.block} ?timing=${timing}></soap-next>`} ${this.#writing()}
      </section>
    `;
  }

  /** The note line, or one clear line why there is none. */
  #writing(): unknown {
    const board = this.state.board;
    const inLine = this.#line.inLine;
    const hasNote = this.#exchanges.some((x) => x.is === 'note');
    return !this.#mayWrite
      ? html`<p class="closed">${whyNot(this.#role)}</p>`
      : this.#closed
        ? html`<div class="closed">
            <p>This session is closed.</p>
            <button type="button" class="key" @click=${() => this.controller.reopen('', this.by)}>open again</button>
          </div>`
        : html`<soap-line
            ${ref(this.#field)}
            .text=${this.#line.text}
            .canUndo=${inLine || hasNote}
            .undoWords=${inLine ? 'undo the last tap' : 'undo the last note'}
            ?pad=${this.#line.pad}
            ?roomy=${this.wide}
            .back=${this.#line.back}
            .chips=${chipsFor(this.#line.text, board)}
            .pictures=${this.#line.pictures}
            .pressure=${board?.reading.pressureUnit ?? 'psi'}
            .length=${board?.reading.lengthUnit ?? 'in'}
          ></soap-line>`;
  }

  protected override render(): unknown {
    const board = this.state.board;
    const what = whatNext(this.#exchanges, board);
    const { block: next, gates } = what;
    const timing = showing(this.#timers, Date.now()).length > 0;
    // a stop needs all the height there is for its words and its keys
    const stopped = what.stops || next?.is === 'caution';
    const crowded = timing || stopped || (next !== null && 'keys' in next && next.keys.length > 3);
    const fold = !this.wide && (this.#line.pad || this.low || this.board || crowded);
    return html`
      <section class="plan" aria-label="coach">
        <soap-plan .latest=${board?.latest ?? []} ?compact=${fold}></soap-plan>
        ${this.wide || stopped || this.#line.pad || this.low ? nothing : html`<soap-side class="under" .board=${board} .show=${'under'}></soap-side>`}
        ${this.wide ? html`<soap-side part="left" .board=${board} .show=${'circuit'} .zone=${board?.reading.zone}></soap-side>` : nothing}
      </section>
      <soap-sheet
        aria-label="job sheet"
        role="region"
        tabindex="0"
        ?hidden=${this.board && !this.wide}
        .list=${this.#exchanges}
        ?loading=${this.state.loading}
        ?stale=${this.state.stale}
        .missing=${missing(this.state)}
        ?fetching=${this.controller.fetching}
        ?brief=${this.wide}
        .zone=${board?.reading.zone}
        .gates=${gates}
        ?reading=${!this.#mayWrite || this.#closed}
        .answers=${this.#asked.views(this.controller.answers)}
      ></soap-sheet>
      ${this.wide || this.board ? html`<soap-side class="right" .board=${board} .show=${this.wide ? 'side' : 'all'} .zone=${board?.reading.zone}></soap-side>` : nothing}
      ${this.#foot(what, timing)}
      <div class="hear" role="status" aria-live="polite">${this.hearPolite}</div>
      <div class="hear" role="alert" aria-live="assertive">${this.hearNow}</div>
    `;
  }
}
customElements.define('soap-session', SoapSession);
