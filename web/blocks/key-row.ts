/** A row of keys, at most three wide on a phone. A key carries a whole note. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Key } from '../../server/chat/reply.ts';
import { tell } from '../events.ts';

export const keyRow = (list: readonly Key[], label: string): TemplateResult | typeof nothing =>
  list.length === 0
    ? nothing
    : html`<div class="keys n${list.length}" role="group" aria-label=${label}>
        ${list.map(
          (k) =>
            html`<button
              type="button"
              class="key"
              @click=${(e: Event) => e.currentTarget && tell(e.currentTarget, 'write', { text: k.text, whole: true })}
            >
              ${k.label}
            </button>`,
        )}
      </div>`;
