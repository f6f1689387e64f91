/** One exchange of the job sheet: what was typed and what came back; folded to a few lines until it is opened. */
import { LitElement, html, nothing, type PropertyValues } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { blockView } from '../blocks/block.ts';
import { stopsView } from '../blocks/stops.ts';
import { drawings } from '../draw/look.ts';
import { Explaining } from '../explaining.ts';
import { headline, type Exchange, type NoteExchange } from '../exchanges.ts';
import { base, keys } from '../look/base.ts';
import { exchangeLook } from '../look/exchange.ts';
import { blocks } from '../look/blocks.ts';
import { clock } from '../show.ts';

/** An answer with nothing in it would leave the writer wondering whether the note was seen at all. */
const unheard = (x: NoteExchange): unknown =>
  x.reply?.blocks.length === 0
    ? html`<p class="soft">Kept as written: no reading, sign, work or question was found in it.</p>`
    : nothing;

export class SoapExchange extends LitElement {
  static override properties = {
    x: { attribute: false },
    newest: { type: Boolean },
    open: { type: Boolean, reflect: true },
    brief: { type: Boolean },
    reading: { type: Boolean },
    zone: {},
    gates: { attribute: false },
    answers: { attribute: false },
    stops: { state: true },
  };
  static override styles = [base, keys, blocks, drawings, exchangeLook];

  declare x: Exchange;
  declare newest: boolean;
  declare open: boolean;
  declare brief: boolean;
  /** Nothing can be added here: no keys that would. */
  declare reading: boolean;
  declare zone: string | undefined;
  declare gates: ReadonlyMap<string, boolean>;
  /** Answers to taps in this exchange. */
  declare answers: readonly (readonly Block[])[];
  /** All stops of the reply stand in full, not its first alone. */
  declare stops: boolean;
  readonly #explaining = new Explaining(this);

  constructor() {
    super();
    this.stops = false;
    this.newest = false;
    this.open = false;
    this.brief = false;
    this.reading = false;
    this.gates = new Map();
    this.answers = [];
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // the newest stands open; an older one folds when the next comes, unless it was opened by hand
    if (changed.has('newest')) this.open = this.newest;
  }

  protected override render(): unknown {
    const x = this.x;
    return x.is === 'mark'
      ? html`<div class="row">
          ${this.#margin(x.at, x.by === 'soapwater' ? '' : x.by, null)}
          <div class="body">
            <p class="mark-row">${x.words}</p>
            ${this.#remarks()}
          </div>
        </div>`
      : this.open
        ? this.#full(x)
        : this.#folded(x);
  }

  #margin(at: number, by: string, state: NoteExchange['state'] | null): unknown {
    return html`<div class="margin">
      <time datetime=${new Date(at).toISOString()}>${clock(at, this.zone)}</time>
      <span>${by}</span>
      ${state === null ? nothing : html`<span class="state ${state}">${state}</span>`}
    </div>`;
  }

  #folded(x: NoteExchange): unknown {
    const said = headline(x.reply);
    return html`<button type="button" class="plain fold" aria-expanded="false" @click=${() => (this.open = true)}>
      <div class="row ${x.state === 'kept' ? '' : 'provisional'} ${x.voided ? 'voided' : ''}">
        ${this.#margin(x.at, x.by, x.state)}
        <div>
          <p class="text">${x.text}</p>
          ${x.voided ? html`<p class="soft">taken back</p>` : said === null ? unheard(x) : html`<p class="said"><span aria-hidden="true">→ </span>${said}</p>`}
        </div>
      </div>
    </button>`;
  }

  #full(x: NoteExchange): unknown {
    const context = {
      live: this.newest && !x.voided && !this.reading,
      gates: this.gates,
      at: x.key,
      zone: this.zone,
      brief: this.brief,
      asked: (x.reply?.blocks ?? []).filter((b) => b.is === 'question').map((b) => b.words),
      explain: this.#explaining.link,
    };
    const from = (): EventTarget => this;
    const cautions = x.reply?.blocks.filter((b) => b.is === 'caution') ?? [];
    const view = (b: Block): unknown => html`${blockView(b, context, from)}${this.#explaining.under(b)}`;
    const others = x.reply?.blocks.filter((b) => b.is !== 'caution') ?? [];
    return html`${stopsView(cautions, this.brief, this.stops, view, () => void this.#showStops())}
      <div class="row ${x.state === 'kept' ? '' : 'provisional'} ${x.voided ? 'voided' : ''}">
        ${this.#margin(x.at, x.by, x.state)}
        <div class="body">
          <p class="text">${x.text}</p>
          ${x.voided ? html`<p class="soft">taken back by a later note</p>` : nothing} ${this.#photos(x)}
          ${this.#refusal(x)} ${x.voided ? nothing : unheard(x)}
          ${others.map((b) => (b.is === 'check' && this.newest ? nothing : view(b)))}
          ${this.answers.map((a) => html`<div class="inline-answer">${a.map((b) => blockView(b, { ...context, live: !this.reading }, from))}</div>`)}
          ${this.#remarks()}
          ${
            this.newest
              ? nothing
              : html`<p class="acts">
                  <button type="button" class="link" @click=${() => (this.open = false)}>fold</button>
                </p>`
          }
        </div>
      </div>`;
  }

  /** Opened, the next stop comes up to where the first stood. */
  async #showStops(): Promise<void> {
    this.stops = !this.stops;
    await this.updateComplete;
    this.renderRoot.querySelector('.more-stops')?.scrollIntoView({ block: this.stops ? 'start' : 'nearest' });
  }

  #photos(x: NoteExchange): unknown {
    const photos = x.note?.photos ?? [];
    const waiting = x.pending?.pictures?.length ?? 0;
    if (photos.length === 0 && waiting === 0) return nothing;
    return html`<div class="photos">
      ${photos.map(
        (p) =>
          html`<a href=${`/photos/${p.id}`} target="_blank" rel="noopener">
            <img
              src=${`/photos/${p.id}`}
              width=${p.width}
              height=${p.height}
              loading="lazy"
              alt=${p.words === '' ? 'picture with this note' : p.words}
            />
          </a>`,
      )}
      ${waiting === 0 ? nothing : html`<p class="soft">${waiting} picture${waiting === 1 ? '' : 's'} waiting</p>`}
    </div>`;
  }

  #refusal(x: NoteExchange): unknown {
    if (x.state !== 'refused' || x.pending === null) return nothing;
    const key = x.pending.key;
    const say = (what: 'again' | 'drop') => (): void => {
      this.dispatchEvent(new CustomEvent('soap-refused', { detail: { key, what }, bubbles: true, composed: true }));
    };
    return html`<div class="refusal" role="alert">
      <p><b>Not taken:</b> ${x.words}</p>
      <div class="two">
        <button type="button" class="key small" @click=${say('again')}>back into the line</button>
        <button type="button" class="key small" @click=${say('drop')}>throw away</button>
      </div>
    </div>`;
  }

  #remarks(): unknown {
    return this.x.remarks.map((r) => html`<p class="remark">${r.text} <span class="soft">(${r.by})</span></p>`);
  }
}
customElements.define('soap-exchange', SoapExchange);
