/** The next check: what to do, minutes with hands and minutes of waiting, and why this one. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { tell } from '../events.ts';
import { minutes } from '../show.ts';

export type Check = Extract<Block, { is: 'check' }>;

/** "1 min + 5 min wait": hands-on and waiting apart. */
export const effort = (c: Pick<Check, 'hands' | 'wait'>): string =>
  [c.hands > 0 ? minutes(c.hands) : '', c.wait > 0 ? `${minutes(c.wait)} wait` : '']
    .filter((p) => p !== '')
    .join(' + ');

export const checkView = (c: Check, explain: unknown = nothing): TemplateResult =>
  html`<div class="check">
    <p class="check-words"><b>Next${effort(c) === '' ? '' : `, ${effort(c)}`}:</b> ${c.words}</p>
    ${c.destroys ? html`<p class="destroys"><span aria-hidden="true">✕</span> ${c.destroys}</p>` : nothing}
    <div class="check-more">
      <details class="why">
        <summary>why<span class="hear"> this check</span></summary>
        <div class="why-in"><p>${c.why}</p></div>
      </details>
      ${
        c.guide
          ? html`<button
              type="button"
              class="link"
              @click=${(e: Event) => e.currentTarget && tell(e.currentTarget, 'write', { text: `how do i ${c.guide}`, whole: true })}
            >
              step by step
            </button>`
          : nothing
      }
      ${explain}
    </div>
  </div>`;
