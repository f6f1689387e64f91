/** What the job would cost: lines proposed or written, rate asked for where there is none, a word on each line. */
import { LitElement, html, nothing } from 'lit';
import type { CostedLine, Estimate } from '../../server/report/shapes.ts';
import type { EstimateLine } from '../../server/session/estimate.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';
import { load } from './ask.ts';
import { date } from '../show.ts';
import { paperLook } from './look.ts';
import { money } from './money.ts';
import { asDraft, draftWrong, lineOf, type DraftLine } from './estimate-draft.ts';
import { linesView } from './estimate-lines.ts';
import { estimateLook } from './estimate-look.ts';
import { writingView } from './estimate-writing.ts';

type Paper = {
  estimate: Estimate | null;
  proposed: EstimateLine[];
  rate: { rate: number | null; currency: string; from: string };
  closed: boolean;
  /** What an owner must see on the sheet he signs: whose it is, for which coach, of which day (ms since the epoch). */
  head: { shop: string; lines: string; coach: string; zone: string; at: number };
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
  static override styles = [base, keys, paperLook, estimateLook];
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
        ${paper === null ? html`<h1>Estimate</h1>` : this.#head(paper)} ${paper === null ? nothing : this.#rate(paper)}
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

  #head({ head, estimate }: Paper): unknown {
    return html`<div class="shop">
        <p>
          <b>${head.shop === '' ? 'Workshop' : head.shop}</b
          >${head.lines === '' ? nothing : html`<br /><span class="lines">${head.lines}</span>`}
        </p>
        <p>${date(estimate?.at ?? head.at, head.zone)}${estimate ? `, written by ${estimate.by}` : ''}</p>
      </div>
      <h1>${head.coach}: estimate</h1>`;
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

  #writing(paper: Paper, draft: DraftLine[]): unknown {
    return writingView({
      proposed: paper.proposed,
      draft,
      earlier: paper.estimate !== null,
      set: (to) => (this.draft = to),
      keep: () => this.#keep(),
      leave: () => (this.draft = null),
    });
  }

  #shown({ estimate }: Paper, mayWrite: boolean): unknown {
    if (estimate === null) return html`<p>${this.#sending ? 'keeping it…' : 'No estimate was written.'}</p>`;
    if (!mayWrite) return linesView(estimate, null);
    return linesView(estimate, {
      deciding: this.deciding,
      ask: (line, yes) => {
        this.deciding = { line, yes };
        void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLInputElement>('[name=name]')?.focus());
      },
      keep: (line, yes) => this.#decide(line, yes),
      leave: () => (this.deciding = null),
      change: () => (this.draft = estimate.lines.map(asDraft)),
    });
  }
}
customElements.define('soap-estimate', SoapEstimate);
