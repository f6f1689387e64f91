/** The note line: the one way in. Undo, what is typed, add; under it what it will be taken for, chips, and the pad. */
import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import { takenView } from '../blocks/took.ts';
import type { Chip } from '../chips.ts';
import type { Key } from '../../server/chat/reply.ts';
import { base, keys } from '../look/base.ts';
import { lineLook } from '../look/line.ts';
import { blocks } from '../look/blocks.ts';
import { mostText } from '../line-controller.ts';
import type { ReadBack } from '../read-back.ts';
import { fetchRoom } from '../rooms.ts';

export type LineDid =
  | { did: 'typed'; text: string }
  | { did: 'sent' }
  | { did: 'undo' }
  | { did: 'chip'; chip: Chip }
  | { did: 'mend'; key: Key; index: number }
  | { did: 'pad'; open: boolean }
  | { did: 'photos'; files: File[] }
  | { did: 'drop picture'; key: string };

export class SoapLine extends LitElement {
  static override properties = {
    text: {},
    canUndo: { attribute: false },
    undoWords: { attribute: false },
    closed: { type: Boolean },
    pad: { type: Boolean },
    back: { attribute: false },
    chips: { attribute: false },
    pictures: { attribute: false },
    pressure: {},
    length: {},
    roomy: { type: Boolean },
  };
  static override styles = [base, keys, blocks, lineLook];

  declare text: string;
  declare canUndo: boolean;
  declare undoWords: string;
  declare closed: boolean;
  declare pad: boolean;
  declare back: ReadBack | null;
  declare chips: readonly Chip[];
  declare pictures: readonly string[];
  declare pressure: string;
  declare length: string;
  /** A wide screen: the chips cost nothing. */
  declare roomy: boolean;
  readonly #field = createRef<HTMLTextAreaElement>();

  constructor() {
    super();
    this.text = '';
    this.canUndo = false;
    this.undoWords = 'undo the last note';
    this.closed = false;
    this.pad = false;
    this.back = null;
    this.chips = [];
    this.pictures = [];
    this.pressure = 'psi';
    this.length = 'in';
    this.roomy = false;
  }

  /** Puts the caret at the end of the line. */
  toLine(): void {
    const field = this.#field.value;
    field?.focus();
    field?.setSelectionRange(field.value.length, field.value.length);
  }

  protected override willUpdate(): void {
    if (this.pad) fetchRoom('pad');
  }

  protected override updated(changed: PropertyValues<this>): void {
    const field = this.#field.value;
    if (changed.has('text') && field && field.value !== this.text) field.value = this.text;
    if (field && !CSS.supports('field-sizing', 'content')) {
      field.rows = Math.min(6, Math.max(1, field.value.split('\n').length, Math.ceil(field.value.length / 18)));
    }
  }

  #did(detail: LineDid): void {
    this.dispatchEvent(new CustomEvent<LineDid>('soap-line', { detail, bubbles: true, composed: true }));
  }

  #key = (e: KeyboardEvent): void => {
    if (e.key === 'Enter' && !e.shiftKey && !e.isComposing) {
      e.preventDefault();
      this.#did({ did: 'sent' });
    }
    if (e.key === 'Escape' && this.pad) this.#did({ did: 'pad', open: false });
  };

  protected override render(): unknown {
    const over = this.text.length - mostText;
    const nothingToSend = this.text.trim() === '' && this.pictures.length === 0;
    return html`
      <form class="line" @submit=${(e: Event) => e.preventDefault()}>
        <button
          type="button"
          class="key"
          ?disabled=${!this.canUndo}
          aria-label=${this.undoWords}
          @click=${() => this.#did({ did: 'undo' })}
        >
          undo
        </button>
        <div class="field">
          <textarea
            ${ref(this.#field)}
            rows="1"
            aria-label="note"
            aria-describedby="read"
            placeholder=${this.closed ? 'closed' : 'note'}
            inputmode=${this.pad ? 'none' : 'text'}
            enterkeyhint="send"
            autocomplete="off"
            autocapitalize="off"
            autocorrect="off"
            spellcheck="false"
            ?disabled=${this.closed}
            .value=${this.text}
            @input=${(e: InputEvent) => this.#did({ did: 'typed', text: (e.target as HTMLTextAreaElement).value })}
            @keydown=${this.#key}
          ></textarea>
          <button
            type="button"
            class="toggle"
            aria-label=${this.pad ? 'abc, close the number pad' : '123, number pad'}
            aria-pressed=${this.pad ? 'true' : 'false'}
            ?disabled=${this.closed}
            @click=${() => this.#did({ did: 'pad', open: !this.pad })}
          >
            ${this.pad ? 'abc' : '123'}
          </button>
        </div>
        <button
          type="button"
          class="key main"
          ?disabled=${this.closed || nothingToSend || over > 0}
          @click=${() => this.#did({ did: 'sent' })}
        >
          add
        </button>
      </form>
      <div class="under" id="read" ?hidden=${over <= 0 && (this.back === null || this.back.taken.length === 0)}>
        ${
          over > 0
            ? html`<p class="long">
                ${over} characters too long (a note holds ${mostText}): split it. Nothing of it is lost.
              </p>`
            : this.back
              ? takenView(this.back.taken, (key, index) => this.#did({ did: 'mend', key, index }))
              : nothing
        }
      </div>
      ${this.#chipRow()}
      ${this.pad ? html`<soap-pad .pressure=${this.pressure} .length=${this.length} .fraction=${/(\d+\/\d+)$/.exec(this.text)?.[1] ?? ''}></soap-pad>` : nothing}
    `;
  }

  #chipRow(): unknown {
    const show = this.pad || this.roomy || this.text !== '' || this.pictures.length > 0;
    if (!show || this.closed) return nothing;
    // the pad has the units itself; on a phone it takes the room of what has nothing to add
    const chips = this.pad
      ? this.chips.filter((c) => ![this.pressure, this.length, 'V'].includes(c.label))
      : this.chips;
    if (this.pad && !this.roomy && chips.length === 0 && this.pictures.length === 0) return nothing;
    return html`<div
      class="chips"
      role="group"
      aria-label="words to add"
      @mousedown=${(e: Event) => e.preventDefault()}
    >
      ${chips.map(
        (chip) =>
          html`<button type="button" class="chip" @click=${() => this.#did({ did: 'chip', chip })}>
            ${chip.label}
          </button>`,
      )}
      ${this.pictures.map(
        (key, i) =>
          html`<button type="button" class="chip picture-chip" @click=${() => this.#did({ did: 'drop picture', key })}>
            picture ${i + 1} ✕<span class="hear"> take off</span>
          </button>`,
      )}
      <span class="file">
        <label class="chip" for="photo">photo</label>
        <input id="photo" type="file" accept="image/*" capture="environment" multiple @change=${this.#files} />
      </span>
      <span class="file">
        <label class="chip" for="logger">logger file</label>
        <input id="logger" type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" @change=${this.#files} />
      </span>
    </div>`;
  }

  #files = (e: Event): void => {
    const input = e.target as HTMLInputElement;
    const files = [...(input.files ?? [])];
    input.value = '';
    if (files.length > 0) this.#did({ did: 'photos', files });
  };
}
customElements.define('soap-line', SoapLine);
