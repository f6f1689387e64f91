/** One session: coach above, sheet between, next check and note line below; on a wide screen side by side. */
import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import type { Block } from '../../server/chat/reply.ts';
import { chipsFor, type Chip } from '../chips.ts';
import { told } from '../events.ts';
import { exchangesOf, headline, takenBack, type Exchange } from '../exchanges.ts';
import { keep } from '../keep.ts';
import { base, keys } from '../look/base.ts';
import * as line from '../note-line.ts';
import type { Pending } from '../outbox.ts';
import { takePicture } from '../photos.ts';
import type { ReadBack } from '../read-back.ts';
import { reader, readerComes } from '../reader.ts';
import type { SessionState } from '../session-state.ts';
import type { SocketController } from '../socket-controller.ts';
import type { LineDid, SoapLine } from './line.ts';
import { mostText } from './line.ts';
import type { PadTap } from './pad.ts';
import './line.ts';
import './next.ts';
import './plan.ts';
import './sheet.ts';
import './side.ts';
import './timer.ts';
import { showing, timersOf, type Timer } from '../timers.ts';

export class SoapSession extends LitElement {
  static override properties = {
    controller: { attribute: false },
    state: { attribute: false },
    pending: { attribute: false },
    by: {},
    wide: { type: Boolean, reflect: true },
    board: { type: Boolean, reflect: true },
    line: { state: true },
    pad: { state: true },
    pictures: { state: true },
    inline: { state: true },
    hearPolite: { state: true },
    hearNow: { state: true },
    trouble: { state: true },
    low: { state: true },
  };
  static override styles = [
    base,
    keys,
    css`
      :host {
        display: grid;
        grid-template: 'plan' auto 'sheet' minmax(0, 1fr) 'foot' auto / minmax(0, 1fr);
        min-height: 0;
        height: 100%;
      }
      .plan {
        grid-area: plan;
        border-bottom: var(--line) solid var(--edge);
      }
      soap-sheet {
        grid-area: sheet;
        min-height: 0;
      }
      .foot {
        grid-area: foot;
        border-top: var(--line) solid var(--edge);
        background: var(--paper);
        min-width: 0;
      }
      .right {
        grid-area: sheet;
        overflow-y: auto;
        background: var(--paper);
        z-index: 1;
      }
      .trouble {
        display: flex;
        justify-content: space-between;
        gap: 12px;
        margin: 8px 8px 0;
        padding: 8px 10px;
        border: 3px double var(--ink);
        font-weight: var(--weight);
      }
      .foot soap-timer {
        display: block;
        padding: 0 8px;
      }
      .closed {
        display: grid;
        gap: 8px;
        padding: 10px;
      }
      :host([wide]) {
        grid-template:
          'left sheet side' minmax(0, 1fr)
          'left foot side' auto / minmax(18rem, 23rem) minmax(0, 1fr) minmax(17rem, 23rem);
      }
      :host([wide]) .plan {
        grid-area: left;
        border-bottom: 0;
        border-right: var(--line) solid var(--edge);
        overflow-y: auto;
        padding: 8px;
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        align-content: start;
        gap: 12px;
      }
      :host([wide]) soap-plan {
        padding: 0;
      }
      :host([wide]) .right {
        grid-area: side;
        border-left: var(--line) solid var(--edge);
      }
      :host([wide]) .foot soap-line,
      :host([wide]) .foot soap-next {
        max-width: 52rem;
      }
    `,
  ];

  declare controller: SocketController;
  declare state: SessionState;
  declare pending: readonly Pending[];
  declare by: string;
  declare wide: boolean;
  /** On a phone: where it stands, in place of the sheet. */
  declare board: boolean;
  declare line: line.LineState;
  declare pad: boolean;
  declare pictures: readonly string[];
  declare inline: ReadonlyMap<string, readonly string[]>;
  declare hearPolite: string;
  declare hearNow: string;
  declare trouble: string;
  /** Little height is left: a keyboard is up. */
  declare low: boolean;
  readonly #line = createRef<SoapLine>();
  #heard = 0;
  #back: ReadBack | null = null;
  #exchanges: Exchange[] = [];
  #timers: Timer[] = [];
  #answers: ReadonlyMap<string, readonly (readonly Block[])[]> = new Map();

  constructor() {
    super();
    this.pending = [];
    this.by = '';
    this.wide = false;
    this.board = false;
    this.line = line.emptyLine;
    this.pad = false;
    this.pictures = [];
    this.inline = new Map();
    this.hearPolite = '';
    this.hearNow = '';
    this.trouble = '';
    this.low = false;
    this.addEventListener('soap-write', (e) => this.#write(e));
    this.addEventListener('soap-ask', (e) => this.#ask(e));
    this.addEventListener('soap-line', (e) => void this.#did((e as CustomEvent<LineDid>).detail));
    this.addEventListener('soap-pad', (e) => this.#padTap((e as CustomEvent<PadTap>).detail));
    this.addEventListener('soap-refused', (e) =>
      this.#refused((e as CustomEvent<{ key: string; what: 'again' | 'drop' }>).detail),
    );
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.visualViewport?.addEventListener('resize', this.#sized);
    this.#sized();
    void readerComes().then(() => {
      this.line = { ...this.line };
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.visualViewport?.removeEventListener('resize', this.#sized);
  }

  #sized = (): void => {
    this.low = (window.visualViewport?.height ?? innerHeight) < 520;
  };

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('state') && changed.get('state')?.session !== this.state.session) {
      this.#heard = this.state.entries.at(-1)?.seq ?? 0;
      const draft = keep.get(`draft.${this.state.session}`);
      this.line = draft === null ? line.emptyLine : line.replaceText(line.emptyLine, draft);
      this.inline = new Map();
      this.pictures = [];
    }
    if (changed.has('state') || changed.has('pending')) this.#exchanges = exchangesOf(this.state.entries, this.pending);
    if (changed.has('state')) this.#timers = timersOf(this.state.entries, takenBack(this.state.entries).notes);
    if (changed.has('line')) {
      const name = `draft.${this.state.session}`;
      if (this.line.text === '') keep.drop(name);
      else keep.set(name, this.line.text.slice(0, 20_000));
    }
    if (changed.has('line') || changed.has('state'))
      this.#back =
        this.line.text.trim() === '' || this.line.text.length > mostText
          ? null
          : (reader()?.readBack(
              this.line.text,
              reader()!.contextFor(this.state.board, this.state.entries, Date.now()),
            ) ?? null);
    this.#answers = new Map(
      [...this.inline].map(([at, ids]) => [
        at,
        ids.flatMap((id) => this.controller.answers.get(id) ?? nothingYet).map((b) => [b]),
      ]),
    );
    if (changed.has('state')) this.#announce();
  }

  /** Reads out what came in since: cautions at once, the rest when the reader pauses. */
  #announce(): void {
    const last = this.state.entries.at(-1)?.seq ?? 0;
    if (this.state.loading || this.#heard === 0) {
      this.#heard = last;
      return;
    }
    if (last <= this.#heard) return;
    const replies = this.state.entries.filter((e) => e.is === 'reply').filter((e) => e.seq > this.#heard);
    this.#heard = last;
    const latest = replies.at(-1);
    if (!latest) return;
    const cautions = latest.blocks.filter((b) => b.is === 'caution').map((b) => `${b.words} ${b.more}`);
    if (cautions.length > 0) this.hearNow = cautions.join(' ');
    const check = latest.blocks.find((b) => b.is === 'check');
    this.hearPolite = [cautions.length > 0 ? null : headline(latest), check ? `Next: ${check.words}` : null]
      .filter((w) => w !== null)
      .join('. ');
    this.dispatchEvent(
      new CustomEvent('soap-said', {
        detail: [...cautions, this.hearPolite].join('. '),
        bubbles: true,
        composed: true,
      }),
    );
  }

  get #closed(): boolean {
    return this.state.board?.closed ?? false;
  }

  #send(text: string, pictures: readonly string[] = []): void {
    this.controller.note(text, this.by, Date.now(), [...pictures]);
    this.trouble = '';
  }

  #write(event: Event): void {
    const { text, whole, pad, instead } = told('write', event);
    if (this.#closed) return;
    this.board = false;
    if (whole === true && this.line.text.trim() === '') {
      this.#send(text);
      return;
    }
    if (instead === true) this.line = line.replaceText(this.line, text);
    else this.line = pad === true ? line.tapPlace(this.line, text) : line.tapWords(this.line, text);
    if (pad === true) {
      if (!matchMedia('(hover: hover) and (pointer: fine)').matches || !this.wide) this.pad = true;
    }
    void this.#toLine();
  }

  /** To the line where a real keyboard is likely; on glass the pad is enough and the keyboard stays down. */
  async #toLine(): Promise<void> {
    await this.updateComplete;
    if (matchMedia('(hover: hover) and (pointer: fine)').matches) this.#line.value?.toLine();
  }

  #ask(event: Event): void {
    const { text, at } = told('ask', event);
    const id = this.controller.ask(text);
    if (id === null) this.trouble = 'Not connected: that can be answered when the connection is back.';
    else this.inline = new Map([...this.inline, [at, [...(this.inline.get(at) ?? []), id]]]);
  }

  async #did(d: LineDid): Promise<void> {
    switch (d.did) {
      case 'typed':
        this.line = line.typed(this.line, d.text);
        return;
      case 'sent':
        this.#add();
        return;
      case 'undo':
        this.#undo();
        return;
      case 'chip':
        this.#chip(d.chip);
        return;
      case 'mend':
        if (this.#back)
          this.line = line.replaceText(
            this.line,
            reader()?.mended(this.line.text, this.#back, d.index, d.key) ?? this.line.text,
          );
        return;
      case 'pad':
        this.pad = d.open;
        if (!d.open) {
          await this.updateComplete;
          this.#line.value?.toLine();
        }
        return;
      case 'photos':
        for (const file of d.files) {
          const took = await takePicture(file);
          if ('words' in took) this.trouble = took.words;
          else this.pictures = [...this.pictures, took.key];
        }
        return;
      case 'drop picture':
        this.pictures = this.pictures.filter((k) => k !== d.key);
        return;
    }
  }

  #add(): void {
    const text = this.line.text.trim();
    if ((text === '' && this.pictures.length === 0) || text.length > mostText || this.#closed) return;
    this.#send(text === '' ? 'picture' : text, this.pictures);
    this.line = line.emptyLine;
    this.pictures = [];
    this.pad = false;
  }

  #chip(chip: Chip): void {
    if (chip.whole && this.line.text.trim() === '') this.#send(chip.text);
    else this.line = line.tapWords(this.line, chip.text);
    void this.#toLine();
  }

  #padTap({ tap, text }: PadTap): void {
    switch (tap) {
      case 'digit':
        this.line = line.tapDigit(this.line, text);
        return;
      case 'fraction':
        this.line = line.tapFraction(this.line, text);
        return;
      case 'word':
        this.line = line.tapWords(this.line, text);
        return;
      case 'rub':
        this.line = line.rubOut(this.line);
        return;
    }
  }

  /** First what stands in the line, then a note that has not left the page, then the last note that was kept. */
  #undo(): void {
    const back = line.takeBackTap(this.line);
    if (back !== null) {
      this.line = back;
      return;
    }
    const waiting = this.pending.findLast((p) => p.frame.is === 'note' && p.state === 'waiting');
    if (waiting) {
      const text = this.controller.takeBack(waiting.key);
      this.hearPolite = `taken back: ${text}`;
      return;
    }
    this.#send('undo');
  }

  #refused({ key, what }: { key: string; what: 'again' | 'drop' }): void {
    const text = this.controller.takeBack(key);
    if (what === 'again') this.line = line.tapWords(this.line, text);
  }

  protected override render(): unknown {
    const board = this.state.board;
    const composing = this.pad || this.line.text !== '' || this.low;
    const fold = !this.wide && (this.pad || this.low);
    const gates = new Map((board?.gates ?? []).filter((g) => g.answered).map((g) => [g.what, true]));
    const newest = this.#exchanges.findLast((x) => x.is === 'note');
    // nothing goes on before a gate is answered: its keys stand in the sheet, and the next check steps aside
    const gateWaits =
      newest?.is === 'note' &&
      (newest.reply?.blocks.some((b) => b.is === 'caution' && b.gate !== undefined && !gates.has(b.gate.what)) ??
        false);
    const inLine = this.line.back.length > 0 || this.line.text !== '';
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
        ?brief=${this.wide}
        .zone=${board?.reading.zone}
        .gates=${gates}
        .answers=${this.#answers}
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
            : html`<soap-next
                .block=${board?.next ?? null}
                ?timing=${showing(this.#timers, Date.now()).length > 0}
              ></soap-next>`
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
                ${ref(this.#line)}
                .text=${this.line.text}
                .canUndo=${inLine || hasNote}
                .undoWords=${inLine ? 'undo the last tap' : 'undo the last note'}
                ?pad=${this.pad}
                ?roomy=${this.wide}
                .back=${this.#back}
                .chips=${chipsFor(this.line.text, board)}
                .pictures=${this.pictures}
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
const nothingYet: readonly Block[] = [];
customElements.define('soap-session', SoapSession);
