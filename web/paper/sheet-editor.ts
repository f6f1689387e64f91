/** A coach sheet made and edited: checked as it is typed, saved as a new version; sessions keep the one they have. */
import { LitElement, html, nothing } from 'lit';
import type { Cell, Field } from '../../server/sheet/fields.ts';
import { sheetFields, sheetGroups } from '../../server/sheet/fields.ts';
import { withUnit } from '../../server/sheet/field-text.ts';
import { keep } from '../keep.ts';
import { base, keys } from '../look/base.ts';
import { hashOf } from '../route.ts';
import { clock, date } from '../show.ts';
import type { SocketController } from '../socket-controller.ts';
import { load, save, type FieldWrong } from './ask.ts';
import { paperLook } from './look.ts';
import { fieldView, type CellsHow } from './sheet-cells.ts';
import { draftOf, given, rowsOf, sheetOf, unitsOf, wrongNow, type Draft } from './sheet-draft.ts';
import { sheetLook } from './sheet-look.ts';

type Version = { hash: string; at: number; by: string; words: string };
type Kept = { hash: string; sheet: unknown; versions: Version[] };
type Specs = {
  coach: string;
  sheet: string;
  closed: boolean;
  specs: { seq: number; by: string; words: string; changes: { path: string; name: string; text: string }[] }[];
};

/** What a new sheet begins with: the units of the tape and the gauge most shops have; every one can be changed. */
const fresh: Draft = {
  'units.pressure': 'psi',
  'units.length': 'in',
  'units.temperature': 'F',
  'units.volume': 'gal',
  'units.distance': 'mi',
  'units.mass': 'lb',
  'units.torque': 'lbf ft',
};
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

  get #keptName(): string {
    return `sheet.${this.coach || '+'}`;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('coach') || changed.has('session')) void this.#load();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#checking);
  }

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
    const before = this.held === null ? fresh : draftOf(this.held.sheet);
    const typed = this.#recall();
    this.draft = typed ?? before;
    if (typed) this.told = 'What you typed and did not save stands here again.';
    if (session !== null) {
      const answer = await load<Specs>(`/paper/session/${session}/specs`);
      this.specs = answer.ok && answer.data.coach === coach ? answer.data : null;
    }
    this.#check();
  }

  /** What was typed on this version and never saved. */
  #recall(): Draft | null {
    try {
      const kept = JSON.parse(keep.get(this.#keptName) ?? 'null') as { base: string; draft: Draft } | null;
      return kept && kept.base === (this.held?.hash ?? '') ? kept.draft : null;
    } catch {
      return null;
    }
  }

  #typed(draft: Draft): void {
    this.draft = draft;
    this.told = '';
    keep.set(this.#keptName, JSON.stringify({ base: this.held?.hash ?? '', draft }));
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
    keep.drop(this.#keptName);
    this.trouble = '';
    const id = this.draft['id'] ?? '';
    this.held = { hash: answer.data.hash, sheet: sheetOf(this.draft), versions: answer.data.versions };
    this.told = 'Saved as a new version. Sessions before keep the version they were judged by.';
    this.controller.greet();
    if (this.coach === '') location.hash = hashOf({ at: 'paper', page: 'sheet', of: id, from: null });
  }

  /** Fields whose trouble is worth telling now. */
  get #wrong(): ReadonlyMap<string, string> {
    const draft = this.draft ?? {};
    const out = new Map<string, string>();
    for (const f of this.server) {
      const begun = sheetFields.some(
        (x) => (f.field === x.path || f.field.startsWith(`${x.path}.`)) && given(draft, [x]) > 0,
      );
      if (f.words !== 'is missing' || this.tried || begun) out.set(f.field, f.words);
    }
    for (const f of wrongNow(draft)) out.set(f.field, f.words);
    return out;
  }

  #drop(field: Field, row: number): void {
    const draft: Record<string, string> = {};
    for (const [path, text] of Object.entries(this.draft ?? {})) {
      if (!path.startsWith(`${field.path}.`)) {
        draft[path] = text;
        continue;
      }
      const [n, ...rest] = path.slice(field.path.length + 1).split('.');
      const at = Number(n);
      if (at !== row) draft[[field.path, at > row ? at - 1 : at, ...rest].join('.')] = text;
    }
    this.#typed(draft);
  }

  #add(field: Field): void {
    const draft = this.draft ?? {};
    const row = rowsOf(draft, field);
    const first = field.is === 'rows' ? `${field.path}.${row}.${field.parts[0]!.key}` : `${field.path}.${row}`;
    this.#typed({ ...draft, [first]: '' });
  }

  protected override render(): unknown {
    const { draft, held } = this;
    const role = this.controller.welcome?.role;
    const locked = role !== undefined && role !== 'works';
    const changed =
      draft !== null &&
      JSON.stringify(sheetOf(draft)) !== JSON.stringify(sheetOf(held === null ? fresh : draftOf(held.sheet)));
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
      ${draft === null ? html`<p role="status">${this.trouble === '' ? 'fetching…' : ''}</p>` : html`${this.#asked()}${this.#specs(draft, locked)}${this.#form(draft, locked)}${locked ? nothing : this.#saving(changed)}${this.#versions()}`}
    </main>`;
  }

  /** After a save: whether the session it was come from shall go on by it. */
  #asked(): unknown {
    const s = this.specs;
    if (s === null || this.held === null || s.closed || s.sheet === this.held.hash) return nothing;
    return html`<section class="told">
      <p>The session you came from is judged by an earlier version of this sheet.</p>
      <div class="go">
        <button
          type="button"
          class="key small"
          @click=${() => {
            this.controller.hand({ is: 'resheet', session: this.session!, by: this.by, sheet: this.held!.hash });
            this.specs = { ...s, sheet: this.held!.hash };
            this.told = 'Notes from now on are judged by this version; what was judged before stays as it was.';
          }}
        >
          go on by this version
        </button>
      </div>
    </section>`;
  }

  #specs(draft: Draft, locked: boolean): unknown {
    const said = this.specs?.specs ?? [];
    if (said.length === 0 || locked) return nothing;
    return html`<section>
      <h2>Limits given in the session</h2>
      <ul class="items">
        ${said.map((s) => {
          const there = s.changes.every((c) => draft[c.path] === c.text);
          return html`<li class="spec">
            <span
              ><b>${s.words}</b>, note ${s.seq}, ${s.by}<br /><span class="soft"
                >${s.changes.length === 0 ? 'the sheet has no field for it' : s.changes.map((c) => `${c.name}: ${c.text}${draft[c.path] ? ` (now ${draft[c.path]})` : ''}`).join('; ')}</span
              ></span
            >
            ${
              s.changes.length === 0
                ? nothing
                : html`<button
                    type="button"
                    class="key small"
                    ?disabled=${there}
                    @click=${() => this.#typed({ ...draft, ...Object.fromEntries(s.changes.map((c) => [c.path, c.text])) })}
                  >
                    ${there ? 'taken' : 'take into the sheet'}
                  </button>`
            }
          </li>`;
        })}
      </ul>
    </section>`;
  }

  #form(draft: Draft, locked: boolean): unknown {
    const wrong = this.#wrong;
    const how: CellsHow = {
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
      drop: (field, row) => this.#drop(field, row),
      add: (field) => this.#add(field),
    };
    return html`<form @submit=${(e: SubmitEvent) => e.preventDefault()}>
      ${sheetGroups.map((g, i) => {
        const bad = [...wrong.keys()].filter((path) =>
          g.fields.some((f) => path === f.path || path.startsWith(`${f.path}.`)),
        );
        const panel = g.fields.some((f) => f.path.startsWith('panel.'));
        const none = panel && draft['panel'] === 'none';
        if (bad.length > 0) this.#opened.add(g.name);
        return html`<details
          class="group"
          ?open=${i === 0 || i === 2 || this.#opened.has(g.name) || (i === 1 && this.coach === '')}
        >
          <summary>
            ${g.name}
            <span class="soft"
              >${none ? 'has none' : `${given(draft, g.fields)} of ${g.fields.length} given`}${bad.length > 0 ? html`, <b>${bad.length} to mend</b>` : nothing}</span
            >
          </summary>
          ${g.help === undefined ? nothing : html`<p class="soft">${g.help}</p>`}
          ${
            panel
              ? html`<button
                  type="button"
                  class="key small"
                  aria-pressed=${none ? 'true' : 'false'}
                  ?disabled=${locked}
                  @click=${() => {
                    const { panel: _panel, ...rest } = draft;
                    this.#typed(none ? rest : { ...rest, panel: 'none' });
                  }}
                >
                  this coach has no panel${none ? ' ✓' : ''}
                </button>`
              : nothing
          }
          ${none ? nothing : html`<div class="fields">${g.fields.map((f) => fieldView(f, how))}</div>`}
        </details>`;
      })}
    </form>`;
  }

  #saving(changed: boolean): unknown {
    const wrong = this.#wrong.size;
    return html`<div class="save ${changed ? 'changed' : ''} no-print">
      <p role="status">
        ${
          wrong > 0
            ? html`<b>${wrong} ${wrong === 1 ? 'field' : 'fields'} to mend.</b>`
            : this.unchecked
              ? 'Not checked as a whole: the bench cannot be reached. It stands here until it can.'
              : changed
                ? 'Changed and not saved.'
                : 'As it was saved.'
        }
      </p>
      <label for="why">why it is changed (may stay empty)</label>
      <input id="why" maxlength="200" autocomplete="off" />
      <div class="go">
        <button type="button" class="key main" ?disabled=${!changed} @click=${() => void this.#save()}>
          save as a new version
        </button>
        <button
          type="button"
          class="key"
          ?disabled=${!changed}
          @click=${() => {
            keep.drop(this.#keptName);
            this.tried = false;
            this.trouble = '';
            this.draft = this.held === null ? fresh : draftOf(this.held.sheet);
            this.told = 'As it was saved last.';
            this.#check();
          }}
        >
          drop the changes
        </button>
      </div>
    </div>`;
  }

  #versions(): unknown {
    if (this.held === null) return nothing;
    return html`<section>
      <h2>Versions</h2>
      <ul class="items versions">
        ${
          this.held.versions.length === 0
            ? html`<li>${this.held.hash.slice(0, 12)}, as it came</li>`
            : this.held.versions.toReversed().map(
                (v) =>
                  html`<li>
                    <b>${v.hash.slice(0, 12)}</b> ${v.at === 0 ? '' : `${date(v.at)} ${clock(v.at)}`} ${v.by}
                    <span class="soft">${v.words}</span>
                    <a
                      class="link"
                      href=${`/paper/sheet/${v.hash}`}
                      download=${`${this.coach}-${v.hash.slice(0, 12)}.json`}
                      >JSON</a
                    >
                  </li>`,
              )
        }
      </ul>
    </section>`;
  }
}
customElements.define('soap-sheet-editor', SoapSheetEditor);
