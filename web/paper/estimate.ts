/** What the job would cost: lines proposed or written, rate asked for where there is none, a word on each line. */
import { LitElement, css, html, nothing } from 'lit';
import type { CostedLine, Estimate } from '../../server/report/shapes.ts';
import type { EstimateLine } from '../../server/session/estimate.ts';
import { newId } from '../ids.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';
import { load } from './ask.ts';
import { paperLook } from './look.ts';
import { money } from './money.ts';
import { asDraft, draftWrong, lineOf, type DraftLine } from './estimate-draft.ts';

type Paper = {
  estimate: Estimate | null;
  proposed: EstimateLine[];
  rate: { rate: number | null; currency: string; from: string };
  closed: boolean;
};

export class SoapEstimate extends LitElement {
  static override properties = {
    controller: { attribute: false },
    session: {},
    by: {},
    tick: { attribute: false },
    paper: { state: true },
    draft: { state: true },
    wrong: { state: true },
    deciding: { state: true },
  };
  static override styles = [
    base,
    keys,
    paperLook,
    css`
      .line {
        border-top: var(--line) solid var(--edge);
        padding: 12px 0;
        display: grid;
        gap: 8px;
        break-inside: avoid;
      }
      .cells {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 9rem), 1fr));
        gap: 8px;
      }
      .part {
        display: grid;
        grid-template-columns: minmax(0, 2fr) minmax(0, 1fr) auto;
        gap: 8px;
        align-items: end;
      }
      .sums {
        display: grid;
        grid-template-columns: auto auto;
        gap: 2px 18px;
        width: fit-content;
        font-variant-numeric: tabular-nums;
      }
      .sums dd {
        text-align: right;
      }
    `,
  ];
  declare controller: SocketController;
  declare session: string;
  declare by: string;
  declare tick: unknown;
  declare paper: Paper | null;
  /** Lines being written; null: the estimate is shown as it stands. */
  declare draft: DraftLine[] | null;
  declare wrong: string;
  /** Line being answered, and who speaks. */
  declare deciding: { line: string; yes: boolean } | null;
  #sending = false;

  constructor() {
    super();
    this.session = '';
    this.by = '';
    this.paper = null;
    this.draft = null;
    this.wrong = '';
    this.deciding = null;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('session')) void this.#load();
    const waiting = this.controller.outbox.list.filter(
      (p) => p.frame.session === this.session && (p.frame.is === 'estimate' || p.frame.is === 'decide'),
    );
    const refused = waiting.find((p) => p.state === 'refused');
    if (refused) {
      this.wrong = refused.words ?? 'It was not taken.';
      this.controller.takeBack(refused.key);
    }
    // what was handed over is kept by now: look at it again
    if (this.#sending && waiting.length === 0) {
      this.#sending = false;
      void this.#load();
    }
  }

  async #load(): Promise<void> {
    const asked = this.session;
    const answer = await load<Paper>(`/paper/session/${asked}/estimate`);
    if (asked !== this.session) return;
    if (answer.ok) {
      this.paper = answer.data;
      if (answer.data.estimate === null && this.draft === null && !answer.data.closed) this.draft = [];
    } else this.wrong = answer.words;
  }

  #add(line: DraftLine): void {
    this.draft = [...(this.draft ?? []), line];
  }

  #change(i: number, change: Partial<DraftLine>): void {
    this.draft = (this.draft ?? []).map((l, n) => (n === i ? { ...l, ...change } : l));
  }

  #keep(): void {
    const draft = this.draft ?? [];
    const wrong = draftWrong(draft);
    if (wrong !== null) {
      this.wrong = wrong;
      return;
    }
    const { rate, currency } = this.paper?.rate ?? { rate: null, currency: '' };
    this.wrong = '';
    this.#sending = true;
    this.draft = null;
    this.controller.hand({
      is: 'estimate',
      session: this.session,
      by: this.by,
      lines: draft.map(lineOf),
      ...(rate === null ? {} : { rate }),
      ...(currency === '' ? {} : { currency }),
    });
  }

  #decide(line: CostedLine, yes: boolean): void {
    const form = this.renderRoot.querySelector<HTMLFormElement>('form.word');
    const field = (name: string): string => form?.querySelector<HTMLInputElement>(`[name=${name}]`)?.value.trim() ?? '';
    const name = field('name').slice(0, 60);
    if (name === '') {
      this.wrong = 'Who says so? The name of the owner, or of who speaks for the owner.';
      form?.querySelector<HTMLInputElement>('[name=name]')?.focus();
      return;
    }
    this.wrong = '';
    this.deciding = null;
    this.#sending = true;
    this.controller.hand({
      is: 'decide',
      session: this.session,
      by: this.by,
      about: this.paper?.estimate?.seq ?? 0,
      line: line.id,
      yes,
      name,
      words: field('words').slice(0, 500),
    });
  }

  protected override render(): unknown {
    const { session, paper } = this;
    const mayWrite = this.controller.welcome?.role !== 'reviews' && paper !== null && !paper.closed;
    return html`<main class="paper">
      <nav class="acts" aria-label="estimate">
        <a class="key small" href=${hashOf({ at: 'session', session })}>back to the sheet</a>
        <a class="key small" href=${hashOf({ at: 'paper', page: 'report', of: session, from: null })}>report</a>
        <button type="button" class="key small" @click=${() => print()}>print</button>
      </nav>
      <header class="head">
        <h1>Estimate</h1>
        ${paper === null ? nothing : this.#rate(paper)}
      </header>
      ${this.wrong === '' ? nothing : html`<p class="wrong" role="alert">${this.wrong}</p>`}
      ${
        paper === null
          ? html`<p role="status">${this.wrong === '' ? 'fetching…' : ''}</p>`
          : this.draft !== null && mayWrite
            ? this.#writing(paper, this.draft)
            : this.#shown(paper, mayWrite)
      }
    </main>`;
  }

  #rate({ rate, estimate }: Paper): unknown {
    const shop = hashOf({ at: 'paper', page: 'shop', of: '', from: this.session });
    if (rate.rate === null)
      return html`<p class="wrong">
        What does the shop charge an hour? No rate is set, so labour cannot be worked out.
        <a class="link" href=${shop}>set the labour rate</a>
      </p>`;
    const other = estimate !== null && estimate.rate !== rate.rate && this.draft === null;
    return html`<p>
      Labour ${money(rate.rate, rate.currency)} an hour, from ${rate.from}.
      <a class="link no-print" href=${shop}>change</a>
      ${other ? html`<br /><b>This estimate was written at ${estimate.rate === null ? 'no rate' : money(estimate.rate, estimate.currency)}: write it anew to take the present rate.</b>` : nothing}
    </p>`;
  }

  #shown({ estimate }: Paper, mayWrite: boolean): unknown {
    if (estimate === null) return html`<p>${this.#sending ? 'keeping it…' : 'No estimate was written.'}</p>`;
    return html`<section aria-label="lines">
        ${estimate.lines.map(
          (l) =>
            html`<div class="line">
              <h2>${l.words}</h2>
              ${l.why ? html`<p class="soft">${l.why}</p>` : nothing}
              <dl class="sums">
                <dt>hands-on ${l.hands} min</dt>
                <dd>${money(l.labour, estimate.currency)}</dd>
                ${
                  l.wait > 0
                    ? html`<dt>waiting ${l.wait} min, not charged</dt>
                        <dd></dd>`
                    : nothing
                }
                ${l.parts.map(
                  (p) =>
                    html`<dt>${p.name}</dt>
                      <dd>${money(p.price ?? null, estimate.currency)}</dd>`,
                )}
                <dt><b>together</b></dt>
                <dd><b>${money(l.total, estimate.currency)}</b></dd>
              </dl>
              ${l.decided ? html`<p><b>${l.decided.yes ? '✓ approved' : '✗ declined'}</b> by ${l.decided.name}${l.decided.words === '' ? '' : `: ${l.decided.words}`}</p>` : html`<p>not answered yet</p>`}
              ${mayWrite ? this.#word(l) : nothing}
            </div>`,
        )}
      </section>
      <dl class="sums">
        <dt><b>all lines</b></dt>
        <dd><b>${money(estimate.total, estimate.currency)}</b></dd>
        <dt><b>approved</b></dt>
        <dd><b>${money(estimate.approved, estimate.currency)}</b></dd>
      </dl>
      ${estimate.missing.length > 0 ? html`<p class="told">To be asked before it adds up: ${estimate.missing.join('; ')}.</p>` : nothing}
      ${
        mayWrite
          ? html`<div class="go no-print">
              <button type="button" class="key" @click=${() => (this.draft = estimate.lines.map(asDraft))}>
                change the lines
              </button>
            </div>`
          : nothing
      }`;
  }

  #word(l: CostedLine): unknown {
    if (this.deciding?.line === l.id) {
      const { yes } = this.deciding;
      return html`<form
        class="word no-print"
        @submit=${(e: SubmitEvent) => {
          e.preventDefault();
          this.#decide(l, yes);
        }}
      >
        <div class="cells">
          <label>who says so <input name="name" maxlength="60" autocomplete="off" /></label>
          <label>in what words (may stay empty) <input name="words" maxlength="500" autocomplete="off" /></label>
        </div>
        <div class="go">
          <button class="key small main">${yes ? 'approved' : 'declined'}: keep it</button>
          <button type="button" class="key small" @click=${() => (this.deciding = null)}>leave it</button>
        </div>
      </form>`;
    }
    const ask = (yes: boolean): void => {
      this.deciding = { line: l.id, yes };
      void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLInputElement>('[name=name]')?.focus());
    };
    return html`<div class="go no-print">
      <button type="button" class="key small" @click=${() => ask(true)}>
        approve<span class="hear"> ${l.words}</span>
      </button>
      <button type="button" class="key small" @click=${() => ask(false)}>
        decline<span class="hear"> ${l.words}</span>
      </button>
    </div>`;
  }

  #writing(paper: Paper, draft: DraftLine[]): unknown {
    const fresh = paper.proposed.filter((p) => !draft.some((l) => l.id === p.id));
    return html` ${
        fresh.length === 0
          ? nothing
          : html`<section>
              <h2>From the suspects</h2>
              <p class="soft">
                Minutes are estimates of ours, common practice, no source: change them. Prices are yours to fill in.
              </p>
              <div class="go">
                ${fresh.map((p) => html`<button type="button" class="key small" @click=${() => this.#add(asDraft(p))}>${p.words}<br /><span class="soft">${p.why}</span></button>`)}
              </div>
            </section>`
      }
      <section aria-label="lines">
        ${
          fresh.length === 0 && draft.length === 0
            ? html`<p>
                No suspect stands to propose a line from. Write the work in words for the owner, line by line.
              </p>`
            : nothing
        }
        ${draft.map((l, i) => this.#draftLine(l, i))}
        <div class="go">
          <button
            type="button"
            class="key small"
            @click=${() => this.#add({ id: newId(), words: '', parts: [], hands: '', wait: '', why: '' })}
          >
            add a line
          </button>
        </div>
      </section>
      <div class="go">
        <button type="button" class="key main" ?disabled=${draft.length === 0} @click=${() => this.#keep()}>
          keep the estimate
        </button>
        ${paper.estimate ? html`<button type="button" class="key" @click=${() => (this.draft = null)}>leave it as it was</button>` : nothing}
      </div>`;
  }

  #draftLine(l: DraftLine, i: number): unknown {
    const value = (e: Event): string => (e.target as HTMLInputElement).value;
    return html`<div class="line" role="group" aria-label=${`line ${i + 1}`}>
      <label
        >work, in words for the owner
        <input .value=${l.words} maxlength="300" @input=${(e: Event) => this.#change(i, { words: value(e) })} />
      </label>
      <div class="cells">
        <label
          >hands-on, min
          <input inputmode="decimal" .value=${l.hands} @input=${(e: Event) => this.#change(i, { hands: value(e) })}
        /></label>
        <label
          >waiting, min
          <input inputmode="decimal" .value=${l.wait} @input=${(e: Event) => this.#change(i, { wait: value(e) })}
        /></label>
      </div>
      ${l.parts.map((p, n) => {
        const part = (change: Partial<DraftLine['parts'][number]>): void =>
          this.#change(i, { parts: l.parts.map((x, m) => (m === n ? { ...x, ...change } : x)) });
        return html`<div class="part">
          <label
            >part <input .value=${p.name} maxlength="120" @input=${(e: Event) => part({ name: value(e) })}
          /></label>
          <label
            >price
            <input
              inputmode="decimal"
              placeholder="not known"
              .value=${p.price}
              @input=${(e: Event) => part({ price: value(e) })}
          /></label>
          <button
            type="button"
            class="key small"
            aria-label=${`drop part ${n + 1}`}
            @click=${() => this.#change(i, { parts: l.parts.filter((_, m) => m !== n) })}
          >
            drop
          </button>
        </div>`;
      })}
      <div class="go">
        <button
          type="button"
          class="key small"
          @click=${() => this.#change(i, { parts: [...l.parts, { name: '', price: '' }] })}
        >
          add a part
        </button>
        <button
          type="button"
          class="key small"
          @click=${() => (this.draft = (this.draft ?? []).filter((_, n) => n !== i))}
        >
          drop line ${i + 1}
        </button>
      </div>
    </div>`;
  }
}
customElements.define('soap-estimate', SoapEstimate);
