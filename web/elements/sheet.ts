/** The ruled job sheet: exchanges oldest first, the newest open at the foot. */
import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Block } from '../../server/chat/reply.ts';
import type { Exchange } from '../exchanges.ts';
import { complaints } from '../complaints.ts';
import { keyRow } from '../blocks/key-row.ts';
import { workView } from '../blocks/work.ts';
import { base, keys } from '../look/base.ts';
import { sheetLook } from '../look/sheet.ts';
import { workLook } from '../look/work.ts';
import { day } from '../show.ts';
import { whenIdle } from '../when-idle.ts';
import './exchange.ts';

/** Exchanges drawn before anything else is, so that the newest stand at once. */
const atOnce = 30;
/** How many stand in the page soon after, and come with each "earlier": find and print still work on them. */
const page = 200;

/** Pixels of a finding that make it readable: its words, not its drawing. */
const lineOf = (said: HTMLElement): number => Math.min(said.offsetHeight, 130);
const complaintKeys = complaints.map((text) => ({ label: text, text }));

export class SoapSheet extends LitElement {
  static override properties = {
    list: { attribute: false },
    loading: { type: Boolean },
    stale: { type: Boolean },
    brief: { type: Boolean },
    zone: {},
    gates: { attribute: false },
    answers: { attribute: false },
    missing: { attribute: false },
    fetching: { type: Boolean },
    reading: { type: Boolean },
    shown: { state: true },
  };
  static override styles = [base, keys, sheetLook, workLook];

  declare list: readonly Exchange[];
  declare loading: boolean;
  declare stale: boolean;
  declare brief: boolean;
  declare zone: string | undefined;
  declare gates: ReadonlyMap<string, boolean>;
  /** Answers to taps, by exchange. */
  declare answers: ReadonlyMap<string, readonly (readonly Block[])[]>;
  /** Entries that have not been asked for yet, before the first one here. */
  declare missing: number;
  declare fetching: boolean;
  /** Nothing can be added: keys that would are not offered. */
  declare reading: boolean;
  declare shown: number;
  #lastKey = '';
  #lastTop = '';
  /** Pixels from the top edge of what is seen to the foot, before the update. */
  #below = 0;
  /** Where the sheet was last put by itself: while it stands there it follows, once moved by hand it stays. */
  #put = -1;
  /** Since the newest came, nobody has scrolled or tapped here. */
  #settling = false;
  #watched: LitElement | null = null;
  readonly #resize = new ResizeObserver((of) => {
    if (!this.#settling && of.every((x) => x.target !== this)) return;
    if (this.#settling || Math.abs(this.scrollTop - this.#put) < 3) void this.#toNewest();
  });

  constructor() {
    super();
    this.list = [];
    this.loading = false;
    this.stale = false;
    this.brief = false;
    this.gates = new Map();
    this.answers = new Map();
    this.missing = 0;
    this.fetching = false;
    this.reading = false;
    this.shown = atOnce;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#resize.observe(this);
    for (const hand of ['pointerdown', 'keydown', 'wheel'])
      this.addEventListener(hand, this.#byHand, { passive: true });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#resize.disconnect();
    this.#watched = null;
  }

  /** Key of the first exchange drawn. */
  get #top(): string {
    return this.list.at(Math.max(0, this.list.length - this.shown))?.key ?? '';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // another session begins small again
    if (this.list.length === 0) this.shown = atOnce;
    this.#below = changed.has('list') || changed.has('shown') ? this.scrollHeight - this.scrollTop : 0;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.list.length > this.shown && this.shown < page)
      whenIdle(() => {
        this.shown = Math.max(this.shown, page);
      });
    const top = this.#top;
    if (this.#lastTop !== '' && top !== this.#lastTop && this.#below > 0) {
      // more came in above what is read: what is in view stays where it is
      const follows = Math.abs(this.scrollTop - this.#put) < 3;
      this.scrollTop = this.scrollHeight - this.#below;
      if (follows) this.#put = this.scrollTop;
    }
    this.#lastTop = top;
    if (!changed.has('list') || this.list.length === 0) return;
    const last = this.list.at(-1);
    const sign = last ? `${last.key} ${last.is === 'note' && last.reply !== null ? 'answered' : ''}` : '';
    if (sign === this.#lastKey) return;
    this.#lastKey = sign;
    this.#settling = true;
    void this.#toNewest();
  }

  #earlier(): void {
    const drawn = Math.min(this.shown, this.list.length);
    if (this.list.length - drawn < page)
      this.dispatchEvent(new CustomEvent('soap-earlier', { bubbles: true, composed: true }));
    this.shown = drawn + page;
  }

  /** Where a tall exchange is best read from: its head, unless what it found or asks would be out of sight from there. */
  #headOf(last: LitElement): number {
    const head = last.getBoundingClientRect().top - this.getBoundingClientRect().top + this.scrollTop;
    if (last.renderRoot.querySelector('.caution') !== null) return head;
    const said = last.renderRoot.querySelector<HTMLElement>('.question, .finding');
    if (said === null) return head;
    const below = said.getBoundingClientRect().top - last.getBoundingClientRect().top;
    return below + lineOf(said) < this.clientHeight ? head : head + below - this.clientHeight / 3;
  }

  /** Puts the foot of the sheet in view; where the newest exchange is taller than that, its head. */
  async #toNewest(): Promise<void> {
    const last = this.renderRoot.querySelector('soap-exchange:last-of-type');
    if (!(last instanceof LitElement)) return;
    await last.updateComplete;
    await new Promise((done) => requestAnimationFrame(done));
    this.scrollTop = last.clientHeight > this.clientHeight ? this.#headOf(last) : this.scrollHeight;
    this.#put = this.scrollTop;
    this.#watch(last);
  }

  /**
   * An exchange gets its true height only once it is in view and its drawings are fetched: until somebody lays a hand on
   * the sheet, the newest is put in its place again.
   */
  #watch(last: LitElement): void {
    if (last === this.#watched) return;
    if (this.#watched) this.#resize.unobserve(this.#watched);
    this.#watched = last;
    this.#resize.observe(last);
  }

  readonly #byHand = (): void => {
    this.#settling = false;
  };

  /** What stands before the first note drawn: the key that brings it, or how it comes and the key that stops it. */
  #before(from: number): unknown {
    if (from === 0 && this.fetching)
      return workView({
        words: `fetching earlier notes, ${this.missing} entries before these…`,
        part: null,
        stop: () => this.dispatchEvent(new CustomEvent('soap-no-more', { bubbles: true, composed: true })),
      });
    return html`<div class="earlier">
      <button type="button" class="key small" @click=${() => this.#earlier()}>earlier notes</button>
    </div>`;
  }

  protected override render(): unknown {
    const from = Math.max(0, this.list.length - this.shown);
    const list = this.list.slice(from);
    const lastNote = list.findLast((x) => x.is === 'note')?.key;
    const today = day(Date.now(), this.zone);
    // a session of today needs no date on it
    let before = list.every((x) => day(x.at, this.zone) === today) ? today : '';
    return html`
      ${from > 0 || this.missing > 0 ? this.#before(from) : nothing}
      ${this.loading && list.length === 0 ? html`<p class="note" role="status">fetching the session…</p>` : nothing}
      ${repeat(
        list,
        (x) => x.key,
        (x) => {
          const d = day(x.at, this.zone);
          const head = d === before ? nothing : html`<h2 class="day">${d}</h2>`;
          before = d;
          return html`${head}<soap-exchange
              .x=${x}
              ?newest=${x.key === lastNote}
              ?brief=${this.brief}
              ?reading=${this.reading}
              .zone=${this.zone}
              .gates=${this.gates}
              .answers=${this.answers.get(x.key) ?? none}
            ></soap-exchange>`;
        },
      )}
      ${
        !this.loading && !list.some((x) => x.is === 'note')
          ? html`<div class="empty">
              <h2>What is it doing?</h2>
              <p>
                Type it the way you would say it: “left rear low, sags overnight”. Or tap what fits, or a corner and put
                in a reading.
              </p>
              ${this.reading ? nothing : keyRow(complaintKeys, 'what it is doing')}
            </div>`
          : nothing
      }
    `;
  }
}
const none: readonly (readonly Block[])[] = [];
customElements.define('soap-sheet', SoapSheet);
