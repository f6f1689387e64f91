/** The read-back: what the note was taken for, with what was assumed or not read marked and mended by a tap. */
import { html, type TemplateResult } from 'lit';
import type { Key, Taken } from '../../server/chat/reply.ts';
import { takenMark } from '../exchanges.ts';

export const takenView = (list: readonly Taken[], onMend: ((key: Key, index: number) => void) | null): TemplateResult =>
  html`<ul class="took">
    ${list.map((t, i) => {
      const mark = takenMark(t);
      return html`<li class="taken ${t.kind} ${t.from}">
        <span class="taken-words">${t.words}</span>
        ${mark === '' ? '' : html`<span class="taken-mark">${mark}</span>`}
        ${
          onMend === null
            ? ''
            : t.mends.map(
                (m) => html`<button type="button" class="chip mend" @click=${() => onMend(m, i)}>${m.label}</button>`,
              )
        }
      </li>`;
    })}
  </ul>`;
