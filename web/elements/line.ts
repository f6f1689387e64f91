/** The note line: the one way in. Undo, what is typed, add; under it what it will be taken for, chips, and the pad. */
import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import { takenView } from '../blocks/took.ts';
import type { Chip } from '../chips.ts';
import type { Key } from '../../server/chat/reply.ts';
import { base, keys } from '../look/base.ts';
import { blocks } from '../look/blocks.ts';
import type { ReadBack } from '../read-back.ts';
import './pad.ts';

/** As the protocol has it: a longer note is not cut, it is sent back to be split. */
export const mostText = 4000;

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
  static override styles = [
    base,
    keys,
    blocks,
    css`
      :host {
        display: grid;
        gap: 8px;
        padding-bottom: max(8px, env(safe-area-inset-bottom));
      }
      .line {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr) auto;
        gap: 8px;
        padding: 8px 8px 0;
        align-items: stretch;
      }
      .line .key {
        min-width: 64px;
      }
      .field {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        border: var(--line) solid var(--edge);
        border-radius: var(--round);
        background: var(--card);
        min-height: 64px;
      }
      .field:focus-within {
        outline: 3px solid var(--focus);
        outline-offset: 1px;
      }
      textarea {
        border: 0;
        outline: 0;
        resize: none;
        background: none;
        min-width: 0;
        width: 100%;
        font-family: var(--typed);
        font-size: 1.125rem;
        line-height: 1.3;
        padding: 6px 4px 6px 10px;
        align-self: center;
        field-sizing: content;
        min-height: 1.3em;
        max-height: 8.2em;
      }
      textarea:focus-visible {
        outline: 0;
      }
      textarea::placeholder {
        color: var(--soft);
        opacity: 1;
      }
      .toggle {
        border: 0;
        border-left: var(--thin) solid var(--rule);
        background: none;
        min-width: 46px;
        padding: 0 4px;
        font-weight: var(--weight);
        font-size: 0.9375rem;
        cursor: pointer;
      }
      @media (forced-colors: none) {
        .toggle[aria-pressed='true'] {
          background: var(--ink);
          color: var(--paper);
        }
      }
      .under {
        padding: 0 10px;
        min-height: 0;
        max-height: 7.5rem;
        overflow-y: auto;
      }
      .under .took {
        font-size: 1rem;
      }
      .under .lead {
        font-size: 0.875rem;
        color: var(--soft);
      }
      .chips {
        display: flex;
        gap: 6px;
        overflow-x: auto;
        padding: 2px 8px;
        scrollbar-width: none;
      }
      .picture-chip {
        border-style: dashed;
      }
      .long {
        font-weight: var(--weight);
      }
      .file {
        display: contents;
      }
      .file input {
        position: absolute;
        width: 1px;
        height: 1px;
        opacity: 0;
      }
      .file:focus-within .chip {
        outline: 3px solid var(--focus);
        outline-offset: 2px;
      }
      label.chip {
        display: inline-flex;
        align-items: center;
      }
    `,
  ];

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
            ? html`<p class="long">${over} characters too long: split it into two notes. Nothing of it is lost.</p>`
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
    return html`<div
      class="chips"
      role="group"
      aria-label="words to add"
      @mousedown=${(e: Event) => e.preventDefault()}
    >
      ${this.chips.map(
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
