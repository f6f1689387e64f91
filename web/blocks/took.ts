/** The read-back: what the note was taken for, with what was assumed or not read marked and mended by a tap. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Key, Taken } from '../../server/chat/reply.ts';
import { takenMark } from '../exchanges.ts';

/** Assumed or carried and nothing to choose from: the dashed line under it says enough. */
const plainly = (t: Taken): boolean => {
  const mark = takenMark(t);
  return (mark === 'assumed' || mark === 'carried on') && t.mends.length === 0;
};

export const takenView = (
  list: readonly Taken[],
  onMend: ((key: Key, index: number) => void) | null,
  explain: unknown = nothing,
): TemplateResult =>
  html`<ul class="took">
    ${list.map((t, i) => {
      // "not read: x" says it in its words
      const mark = t.kind === 'unread' ? '' : takenMark(t);
      return html`<li class="taken ${t.kind} ${t.from}">
        <span class="taken-words">${t.words}</span>
        ${
          mark === ''
            ? nothing
            : plainly(t)
              ? html`<span class="hear">(${mark})</span>`
              : html`<span class="taken-mark">${mark}</span>`
        }
        ${
          onMend === null
            ? nothing
            : t.mends.length === 0
              ? nothing
              : html`<span class="mends"
                  >${t.mends.map(
                    (m) =>
                      html`<button type="button" class="chip mend" @click=${() => onMend(m, i)}>${m.label}</button>`,
                  )}</span
                >`
        }
      </li>`;
    })}
    ${list.some(plainly) ? html`<li class="legend" aria-hidden="true">dashed: assumed or carried on</li>` : nothing}
    ${explain === nothing ? nothing : html`<li>${explain}</li>`}
  </ul>`;
