/** A coach sheet made and edited: checked as it is typed, saved as a new version; sessions keep the one they have. */
import { LitElement, html, nothing } from 'lit';
import type { Cell } from '../../server/sheet/fields.ts';
import { withUnit } from '../../server/sheet/field-text.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';
import { load, save, type FieldWrong } from './ask.ts';
import { paperLook } from './look.ts';
import type { CellsHow } from './sheet-cells.ts';
import { draftOf, sheetOf, unitsOf, type Draft } from './sheet-draft.ts';
import { groupsView } from './sheet-groups.ts';
import { sheetLook } from './sheet-look.ts';
import { freshSheet, withRow, withoutRow, worthTelling } from './sheet-rows.ts';
import { savingView } from './sheet-saving.ts';
import { goOnView, specsView, type Specs } from './sheet-specs.ts';
import { dropUnsaved, keepUnsaved, unsaved } from './sheet-unsaved.ts';
import { versionsView, type Kept, type Version } from './sheet-versions.ts';

const pause = 350;

export class SoapSheetEditor extends LitElement {
  static override properties = {
    controller: { attribute: false },
    coach: {},
    session: {},
    by: {},
    tick: { attribute: false },
    held: { state: true },
    draft: { state: true },
    server: { state: true },
    unchecked: { state: true },
    told: { state: true },
    trouble: { state: true },
    specs: { state: true },
    tried: { state: true },
  };
  static override styles = [base, keys, paperLook, sheetLook];
  declare controller: SocketController;
  /** '' for a new coach. */
  declare coach: string;
  declare session: string | null;
  declare by: string;
  declare tick: unknown;
  declare held: Kept | null;
  declare draft: Draft | null;
  /** What the bench says of the whole sheet. */
  declare server: readonly FieldWrong[];
  declare unchecked: boolean;
  declare told: string;
  declare trouble: string;
  declare specs: Specs | null;
  /** Missing fields are named once a save was tried, not while the first is typed. */
  declare tried: boolean;
  /** Groups in which something was wrong: mended, they stay open under the hands. */
  readonly #opened = new Set<string>();
  #checking: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.coach = '';
    this.session = null;
    this.by = '';
    this.held = null;
    this.draft = null;
    this.server = [];
    this.unchecked = false;
    this.told = '';
    this.trouble = '';
    this.specs = null;
    this.tried = false;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('coach') || changed.has('session')) void this.#load();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('beforeprint', this.#unfold);
    addEventListener('afterprint', this.#fold);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('beforeprint', this.#unfold);
    removeEventListener('afterprint', this.#fold);
    clearTimeout(this.#checking);
  }

  #folded: HTMLDetailsElement[] = [];
  /** Paper gets every figure, whichever groups stand open on the screen. */
  readonly #unfold = (): void => {
    this.#folded = [...this.renderRoot.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
    for (const d of this.#folded) d.open = true;
  };
  readonly #fold = (): void => {
    for (const d of this.#folded) d.open = false;
  };

  async #load(): Promise<void> {
    const { coach, session } = this;
    this.draft = null;
    this.held = null;
    if (coach !== '') {
      const answer = await load<Kept>(`/paper/coach/${coach}/sheet`);
      if (coach !== this.coach) return;
      if (!answer.ok) {
        this.trouble = answer.words;
        return;
      }
      this.held = answer.data;
    }
    const before = this.held === null ? freshSheet : draftOf(this.held.sheet);
    const typed = unsaved(coach, this.held?.hash ?? '');
    this.draft = typed ?? before;
    if (typed) this.told = 'What you typed and did not save stands here again.';
    if (session !== null) {
      const answer = await load<Specs>(`/paper/session/${session}/specs`);
      this.specs = answer.ok && answer.data.coach === coach ? answer.data : null;
    }
    this.#check();
  }

  #typed(draft: Draft): void {
    this.draft = draft;
    this.told = '';
    keepUnsaved(this.coach, this.held?.hash ?? '', draft);
    clearTimeout(this.#checking);
    this.#checking = setTimeout(() => this.#check(), pause);
  }

  /** Asks the bench about the whole of it; what can be told of a field alone is told at once, without asking. */
  #check(): void {
    const draft = this.draft;
    if (draft === null) return;
    void save<{ fields: FieldWrong[] }>('/paper/sheet/check', sheetOf(draft), 'POST').then((answer) => {
      if (draft !== this.draft) return;
      this.unchecked = !answer.ok;
      if (answer.ok) this.server = answer.data.fields;
    });
  }

  async #save(): Promise<void> {
    if (this.draft === null) return;
    this.tried = true;
    const words = this.renderRoot.querySelector<HTMLInputElement>('#why')?.value ?? '';
    const answer = await save<{ hash: string; versions: Version[] }>('/paper/sheet', {
      sheet: sheetOf(this.draft),
      base: this.held?.hash ?? '',
      by: this.by,
      words,
    });
    if (!answer.ok) {
      this.server = answer.fields.length > 0 ? answer.fields : this.server;
      this.trouble = answer.words;
      await this.updateComplete;
      this.renderRoot.querySelector<HTMLElement>('[aria-invalid=true]')?.focus();
      return;
    }
    dropUnsaved(this.coach);
    this.trouble = '';
    const id = this.draft['id'] ?? '';
    this.held = { hash: answer.data.hash, sheet: sheetOf(this.draft), versions: answer.data.versions };
    this.told = 'Saved as a new version. Sessions before keep the version they were judged by.';
    this.controller.greet();
    if (this.coach === '') location.hash = hashOf({ at: 'paper', page: 'sheet', of: id, from: null });
  }

  get #wrong(): ReadonlyMap<string, string> {
    return worthTelling(this.draft ?? {}, this.server, this.tried);
  }

  /** The session it was come from goes on by the version that is held. */
  #goOn(): void {
    const { specs, session, held } = this;
    if (specs === null || session === null || held === null) return;
    this.controller.hand({ is: 'resheet', session, by: this.by, sheet: held.hash });
    this.specs = { ...specs, sheet: held.hash };
    this.told = 'Notes from now on are judged by this version; what was judged before stays as it was.';
  }

  #dropChanges(): void {
    dropUnsaved(this.coach);
    this.tried = false;
    this.trouble = '';
    this.draft = this.held === null ? freshSheet : draftOf(this.held.sheet);
    this.told = 'As it was saved last.';
    this.#check();
  }

  protected override render(): unknown {
    const { draft, held } = this;
    const role = this.controller.welcome?.role;
    const locked = role !== undefined && role !== 'works';
    const changed =
      draft !== null &&
      JSON.stringify(sheetOf(draft)) !== JSON.stringify(sheetOf(held === null ? freshSheet : draftOf(held.sheet)));
    return html`<main class="paper">
      <nav class="acts" aria-label="coach sheet">
        ${this.session === null ? html`<a class="key small" href="#/">all sessions</a>` : html`<a class="key small" href=${hashOf({ at: 'session', session: this.session })}>back to the sheet</a>`}
        ${this.coach === '' ? nothing : html`<a class="key small" href=${hashOf({ at: 'paper', page: 'history', of: this.coach, from: null })}>history</a>`}
      </nav>
      <header class="head">
        <h1>${this.coach === '' ? 'New coach' : `Coach sheet: ${draft?.['coach'] ?? this.coach}`}</h1>
        <p>
          The figures this coach is held to, from its own manual. What is not known stays empty: it is asked for when it
          is needed, never guessed.
        </p>
      </header>
      ${this.trouble === '' ? nothing : html`<p class="wrong" role="alert">${this.trouble}</p>`}
      ${this.told === '' ? nothing : html`<p class="told" role="status">${this.told}</p>`}
      ${locked ? html`<p class="told">This device may look, not change: that takes a device that works.</p>` : nothing}
      ${draft === null ? html`<p role="status">${this.trouble === '' ? 'fetching…' : ''}</p>` : html`${this.#editing(draft, locked, changed)}`}
    </main>`;
  }

  #editing(draft: Draft, locked: boolean, changed: boolean): unknown {
    const wrong = this.#wrong;
    const typed = (to: Draft): void => this.#typed(to);
    return html`${goOnView(this.specs, this.held?.hash ?? null, () => this.#goOn())}
    ${locked ? nothing : specsView(this.specs?.specs ?? [], draft, typed)}
    ${groupsView(this.#cells(draft, wrong, locked), this.#opened, this.coach === '', typed)}
    ${
      locked
        ? nothing
        : savingView({
            wrong: wrong.size,
            unchecked: this.unchecked,
            changed,
            save: () => void this.#save(),
            drop: () => this.#dropChanges(),
          })
    }
    ${this.held === null ? nothing : versionsView(this.coach, this.held)}`;
  }

  #cells(draft: Draft, wrong: ReadonlyMap<string, string>, locked: boolean): CellsHow {
    return {
      draft,
      wrong,
      locked,
      fixed: this.held === null ? null : 'id',
      set: (path, text) => this.#typed({ ...draft, [path]: text }),
      leave: (path: string, cell: Cell) => {
        const text = this.draft?.[path] ?? '';
        const whole = withUnit(text, cell, unitsOf(this.draft ?? {}));
        if (whole !== text) this.#typed({ ...this.draft, [path]: whole });
      },
      drop: (field, row) => this.#typed(withoutRow(this.draft ?? {}, field, row)),
      add: (field) => this.#typed(withRow(this.draft ?? {}, field)),
    };
  }
}
customElements.define('soap-sheet-editor', SoapSheetEditor);
