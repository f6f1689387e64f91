/** The session read back: what stands at the end first, then every note as typed, taken and answered. Prints as it is. */
import { LitElement, html, nothing } from 'lit';
import { blockView } from '../blocks/block.ts';
import { tablesView } from '../blocks/tables.ts';
import { workView } from '../blocks/work.ts';
import { drawings } from '../draw/look.ts';
import type { Entry } from '../../server/session/entry.ts';
import { exchangesOf, type Exchange, type NoteExchange } from '../exchanges.ts';
import { base, keys } from '../look/base.ts';
import { blocks } from '../look/blocks.ts';
import { tables } from '../look/tables.ts';
import { workLook } from '../look/work.ts';
import { hashOf } from '../route.ts';
import { missing, type SessionState } from '../session-state.ts';
import { clock, date, day } from '../show.ts';
import type { SocketController } from '../socket-controller.ts';
import { ledTo, type Onward } from '../led-to.ts';
import { tablesOf, type Tables } from '../transcript.ts';
import { whenIdle } from '../when-idle.ts';

type Reading = { of: readonly Entry[]; t: Tables; on: ReturnType<typeof ledTo>; list: Exchange[] };

/** Exchanges drawn in one go. */
const stretch = 300;

export class SoapTranscript extends LitElement {
  static override properties = {
    controller: { attribute: false },
    state: { attribute: false },
    fetching: { type: Boolean },
    coach: {},
    by: {},
    remarking: { state: true },
    drawn: { state: true },
  };
  static override styles = [base, keys, blocks, drawings, tables, workLook];

  declare controller: SocketController;
  declare state: SessionState;
  /** Earlier entries are on their way. */
  declare fetching: boolean;
  declare coach: string;
  declare by: string;
  /** The entry a remark is being written about. */
  declare remarking: number | null;
  /** Exchanges drawn so far of a long session: the page answers between one stretch and the next. */
  declare drawn: number;
  #held: Reading | null = null;

  constructor() {
    super();
    this.fetching = false;
    this.coach = '';
    this.by = '';
    this.remarking = null;
    this.drawn = stretch;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('beforeprint', this.#whole);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('beforeprint', this.#whole);
  }

  /** Paper gets all of it, whatever is drawn on the screen so far. */
  #whole = (): void => {
    this.drawn = Infinity;
    this.performUpdate();
  };

  protected override willUpdate(changed: Map<string, unknown>): void {
    const before = changed.get('state') as SessionState | undefined;
    if (before !== undefined && before.session !== this.state.session) this.drawn = stretch;
  }

  protected override updated(): void {
    if (!this.fetching && this.drawn < this.state.entries.length)
      whenIdle(() => {
        this.drawn += stretch;
      });
  }

  get #zone(): string | undefined {
    const opened = this.state.entries.find((e) => e.is === 'opened');
    return this.state.board?.reading.zone ?? (opened?.is === 'opened' ? opened.zone : undefined);
  }

  /** One who learns writes in practice only. */
  get #silent(): boolean {
    const opened = this.state.entries[0];
    return this.controller.welcome?.role === 'learns' && !(opened?.is === 'opened' && opened.practice);
  }

  #time(at: number): string {
    return clock(at, this.#zone);
  }

  /** Back to the note it came from. */
  #to(seq: number): unknown {
    return html`<button
      type="button"
      class="link ref"
      @click=${() => {
        const row = this.renderRoot.querySelector<HTMLElement>(`#n${seq}`);
        row?.scrollIntoView({ block: 'start' });
        row?.focus();
      }}
    >
      <span class="hear">note </span>${seq}
    </button>`;
  }

  /** Of the same entries the same: a long one is not read anew with each stretch that is drawn. */
  #read(of: readonly Entry[]): Reading {
    if (this.#held?.of !== of) this.#held = { of, t: tablesOf(of), on: ledTo(of), list: exchangesOf(of, []) };
    return this.#held;
  }

  #acts(): unknown {
    const { session } = this.state;
    return html`<nav class="acts" aria-label="transcript">
      <a class="key small" href=${hashOf({ at: 'session', session })}>back to the sheet</a>
      <button type="button" class="key small" @click=${() => print()}>print</button>
      <a class="key small" href=${hashOf({ at: 'paper', page: 'report', of: session, from: null })}>report</a>
      <a class="key small" href=${`/session/${session}.csv`} download>CSV</a>
      <a class="key small" href=${`/session/${session}.json`} download>JSON</a>
    </nav>`;
  }

  protected override render(): unknown {
    const { entries, session } = this.state;
    const first = entries[0];
    const last = entries.at(-1);
    const zone = this.#zone;
    if (this.fetching)
      return html`<div class="paper">
        ${this.#acts()}
        <h1>${this.coach}</h1>
        ${workView({
          words: `fetching the transcript: ${entries.length} of ${last?.seq ?? 0} entries…`,
          part: entries.length / (last?.seq ?? 1),
          stop: () => this.controller.stopFetching(),
        })}
      </div>`;
    const { t, on, list } = this.#read(entries);
    const typed = [...new Set(list.filter((x) => x.is === 'note').map((x) => x.by))];
    const complaint = list.find((x) => x.is === 'note');
    return html`<div class="paper">
      ${this.#acts()}
      <header class="head">
        <h1>${this.coach}</h1>
        <p>
          ${first ? date(first.kept, zone) : ''}${last && first && day(first.kept, zone) !== day(last.kept, zone) ? ` to ${date(last.kept, zone)}` : ''}
          · typed by ${typed.join(', ') || 'nobody yet'} · ${entries.length} entries · session ${session}
        </p>
        ${complaint?.is === 'note' ? html`<p class="quote">“${complaint.text}”</p>` : nothing}
        ${
          missing(this.state) > 0
            ? html`<p class="no-print">
                The first ${missing(this.state)} entries are not here.
                <button type="button" class="key small" @click=${() => this.controller.whole()}>fetch the rest</button>
              </p>`
            : nothing
        }
      </header>
      ${tablesView(t, {
        time: (at) => this.#time(at),
        to: (seq) => this.#to(seq),
        on: (seq, key) =>
          (on.get(seq) ?? []).filter(
            (o, i, all) => (o.key === undefined || o.key === key) && all.findIndex((x) => x.seq === o.seq) === i,
          ),
      })}
      <section>
        <h2>As it went</h2>
        ${list.slice(0, this.drawn).map((x) =>
          x.is === 'note'
            ? this.#note(x, t, on.get(x.note?.seq ?? 0) ?? [])
            : html`<div class="row mark">
                <div class="when">${this.#time(x.at)}<br />${x.by}</div>
                <p>${x.words}</p>
              </div>`,
        )}
      </section>
    </div>`;
  }

  #note(x: NoteExchange, t: Tables, on: readonly Onward[]): unknown {
    const seq = x.note?.seq ?? 0;
    const context = {
      live: false,
      gates: new Map<string, boolean>(),
      at: x.key,
      zone: this.#zone,
      brief: true,
      asked: [],
      explain: null,
    };
    const corrected = t.corrections.find((c) => !c.gone && c.it.of.split('; ').includes(x.text) && c.seq > seq);
    return html`<article class="row" id=${`n${seq}`} tabindex="-1" aria-label=${`note ${seq}`}>
      <div class="when">${this.#time(x.at)}<br />${x.by}<br /><span class="soft">${seq}</span></div>
      <div class="said">
        <p class="text ${x.voided ? 'gone' : ''}">${x.text}</p>
        ${corrected || x.voided ? html`<p class="soft">corrected later${corrected ? html`, note ${this.#to(corrected.seq)}` : nothing}</p>` : nothing}
        ${(x.note?.photos ?? []).map((p) => html`<img src=${`/photos/${p.id}`} width=${p.width} height=${p.height} loading="lazy" alt=${p.words === '' ? 'picture' : p.words} />`)}
        ${x.reply?.blocks.map((b) => blockView(b, context, () => this))}
        ${
          on.length === 0
            ? nothing
            : html`<p class="onward">
                <b>led to</b> ${on.map((o, i) => html`${i > 0 ? '; ' : ''}${o.words}, note ${this.#to(o.seq)}`)}
              </p>`
        }
        ${x.remarks.map((r) => html`<p class="remark"><b>${r.by}</b> ${r.text}</p>`)}
        ${
          this.#silent
            ? nothing
            : this.remarking === seq
              ? html`<form
                  class="remark-form"
                  @submit=${(e: SubmitEvent) => {
                    e.preventDefault();
                    const field = this.renderRoot.querySelector<HTMLTextAreaElement>('.remark-form textarea');
                    const text = field?.value.trim() ?? '';
                    if (text !== '') this.controller.remark(seq, text.slice(0, 4000), this.by);
                    this.remarking = null;
                  }}
                >
                  <textarea rows="2" aria-label="remark"></textarea>
                  <button class="key small main">keep remark</button>
                  <button type="button" class="key small" @click=${() => (this.remarking = null)}>leave it</button>
                </form>`
              : html`<button type="button" class="link add-remark" @click=${() => (this.remarking = seq)}>
                  remark<span class="hear"> on note ${seq}</span>
                </button>`
        }
      </div>
    </article>`;
  }
}
customElements.define('soap-transcript', SoapTranscript);
