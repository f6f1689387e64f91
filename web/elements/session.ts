/** One session: coach above, sheet between, next check and note line below; on a wide screen side by side. */
import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import type { Block } from '../../server/chat/reply.ts';
import { announcement } from '../announce.ts';
import { chipsFor } from '../chips.ts';
import { told } from '../events.ts';
import { exchangesOf, takenBack, type Exchange } from '../exchanges.ts';
import { LineController } from '../line-controller.ts';
import { base, keys } from '../look/base.ts';
import { sessionLook } from '../look/session.ts';
import { readerComes } from '../reader.ts';
import type { Pending } from '../outbox.ts';
import { missing, type SessionState } from '../session-state.ts';
import type { SocketController } from '../socket-controller.ts';
import { fetchRoom } from '../rooms.ts';
import { showing, timersOf, type Timer } from '../timers.ts';
import type { LineDid, SoapLine } from './line.ts';
import type { PadTap } from './pad.ts';
import './line.ts';
import './next.ts';
import './plan.ts';
import './sheet.ts';
import './timer.ts';

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
    inline: { state: true },
    hearPolite: { state: true },
    hearNow: { state: true },
    trouble: { state: true },
    low: { state: true },
  };
  static override styles = [base, keys, sessionLook];

  declare controller: SocketController;
  declare state: SessionState;
  declare pending: readonly Pending[];
  declare by: string;
  declare wide: boolean;
  /** On a phone: where it stands, in place of the sheet. */
  declare board: boolean;
  /** Questions asked by a tap, by where their answers stand. */
  declare inline: ReadonlyMap<string, readonly string[]>;
  declare hearPolite: string;
  declare hearNow: string;
  declare trouble: string;
  /** Little height is left: a keyboard is up. */
  declare low: boolean;
  readonly #field = createRef<SoapLine>();
  readonly #line = new LineController(this);
  #heard = 0;
  #exchanges: Exchange[] = [];
  #timers: Timer[] = [];

  constructor() {
    super();
    this.pending = [];
    this.by = '';
    this.wide = false;
    this.board = false;
    this.inline = new Map();
    this.hearPolite = '';
    this.hearNow = '';
    this.trouble = '';
    this.low = false;
    this.addEventListener('soap-write', (e) => {
      if (this.#closed) return;
      this.board = false;
      this.#line.write(told('write', e), !this.wide || !hasKeyboard());
    });
    this.addEventListener('soap-ask', (e) => this.#ask(e));
    this.addEventListener('soap-line', (e) => this.#did((e as CustomEvent<LineDid>).detail));
    this.addEventListener('soap-pad', (e) => {
      const { tap, text } = (e as CustomEvent<PadTap>).detail;
      this.#line.tap(tap, text);
    });
    this.addEventListener('soap-earlier', () => this.controller.earlier());
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
    void readerComes().then(() => (['menu', 'pad', 'side'] as const).forEach(fetchRoom));
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
        this.inline = new Map();
      }
      this.#line.follow(this.state.session);
      this.#timers = timersOf(this.state.entries, takenBack(this.state.entries).notes);
      this.#announce();
    }
    if (changed.has('state') || changed.has('pending')) this.#exchanges = exchangesOf(this.state.entries, this.pending);
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

  send(text: string, pictures: readonly string[]): void {
    if (this.#closed) return;
    this.controller.note(text, this.by, Date.now(), [...pictures]);
    this.trouble = '';
  }

  /** A note that has not left the page is simply taken off; else the last one is undone by a note. */
  undoSent(): void {
    const waiting = this.pending.findLast((p) => p.frame.is === 'note' && p.state === 'waiting');
    if (waiting) this.hearPolite = `taken back: ${this.controller.takeBack(waiting.key)}`;
    else this.send('undo', []);
  }

  /** To the line where a real keyboard is likely; on glass the pad is enough and the keyboard stays down. */
  toLine(): void {
    if (hasKeyboard()) void this.updateComplete.then(() => this.#field.value?.toLine());
  }

  #ask(event: Event): void {
    const { text, at } = told('ask', event);
    const id = this.controller.ask(text);
    if (id === null) this.trouble = 'Not connected: that can be answered when the connection is back.';
    else this.inline = new Map([...this.inline, [at, [...(this.inline.get(at) ?? []), id]]]);
  }

  #did(d: LineDid): void {
    switch (d.did) {
      case 'typed':
        return this.#line.type(d.text);
      case 'sent':
        return this.#line.add();
      case 'undo':
        return this.#line.undo();
      case 'chip':
        return this.#line.chip(d.chip);
      case 'mend':
        return this.#line.mend(d.key, d.index);
      case 'pad':
        this.#line.openPad(d.open);
        if (!d.open) void this.updateComplete.then(() => this.#field.value?.toLine());
        return;
      case 'photos':
        void this.#line.addPictures(d.files);
        return;
      case 'drop picture':
        return this.#line.dropPicture(d.key);
    }
  }

  /** A gate that was talked past: it takes the place of the next check until it is answered. */
  #openGate(inSight: boolean): Block | null {
    const open = (this.state.board?.gates ?? []).filter((g) => !g.answered).map((g) => g.what);
    if (inSight || open.length === 0) return null;
    for (const x of this.#exchanges.toReversed()) {
      if (x.is !== 'note' || x.voided) continue;
      const caution = x.reply?.blocks.find((b) => b.is === 'caution' && b.gate && open.includes(b.gate.what));
      if (caution) return caution;
    }
    return null;
  }

  #answers(): ReadonlyMap<string, readonly (readonly Block[])[]> {
    const of = (id: string): readonly Block[] => this.controller.answers.get(id) ?? [];
    return new Map([...this.inline].map(([at, ids]) => [at, ids.map(of)]));
  }

  protected override render(): unknown {
    const board = this.state.board;
    const composing = this.#line.pad || this.#line.text !== '' || this.low;
    const fold = !this.wide && (this.#line.pad || this.low);
    const gates = new Map((board?.gates ?? []).filter((g) => g.answered).map((g) => [g.what, true]));
    const newest = this.#exchanges.findLast((x) => x.is === 'note');
    // nothing goes on before a gate is answered: its keys stand in the sheet, and the next check steps aside
    const gateWaits =
      newest?.is === 'note' &&
      (newest.reply?.blocks.some((b) => b.is === 'caution' && b.gate !== undefined && !gates.has(b.gate.what)) ??
        false);
    const inLine = this.#line.inLine;
    // a guide goes step by step: its keys stand where the keys of checks stand
    const step = newest?.is === 'note' ? newest.reply?.blocks.find((b) => b.is === 'step') : undefined;
    const next = this.#openGate(gateWaits) ?? step ?? board?.next ?? null;
    const hasNote = this.#exchanges.some((x) => x.is === 'note');
    return html`
      <section class="plan" aria-label="coach">
        <soap-plan .latest=${board?.latest ?? []} ?compact=${fold}></soap-plan>
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
        .answers=${this.#answers()}
      ></soap-sheet>
      ${this.wide || this.board ? html`<soap-side class="right" .board=${board} .show=${this.wide ? 'side' : 'all'} .zone=${board?.reading.zone}></soap-side>` : nothing}
      <section class="foot" aria-label="next check and note line">
        ${
          this.trouble === ''
            ? nothing
            : html`<p class="trouble" role="alert">
                <span>${this.trouble}</span
                ><button type="button" class="link" @click=${() => (this.trouble = '')}>close</button>
              </p>`
        }
        <soap-timer .timers=${this.#timers} .zone=${board?.reading.zone}></soap-timer>
        ${
          (!this.wide && composing) || gateWaits
            ? nothing
            : html`<soap-next .block=${next} ?timing=${showing(this.#timers, Date.now()).length > 0}></soap-next>`
        }
        ${
          this.#closed
            ? html`<div class="closed">
                <p>This session is closed.</p>
                <button type="button" class="key" @click=${() => this.controller.reopen('', this.by)}>
                  open again
                </button>
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
              ></soap-line>`
        }
      </section>
      <div class="hear" role="status" aria-live="polite">${this.hearPolite}</div>
      <div class="hear" role="alert" aria-live="assertive">${this.hearNow}</div>
    `;
  }
}
customElements.define('soap-session', SoapSession);
