/** The teaching text of one block, with the words of the trade in it and where to read on. Fetched when somebody asks. */
import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Block } from '../../server/chat/reply.ts';
import { teachingOf } from '../learn/teaching.ts';
import { hashOf } from '../route.ts';

/** Under a tall block it would open out of sight; it is laid out in the frame after it was made. */
const intoSight = (text?: Element): void => {
  if (text) requestAnimationFrame(() => text.scrollIntoView({ block: 'nearest' }));
};

export const explained = (block: Block): TemplateResult => {
  const { lines, words, check } = teachingOf(block);
  return html`<div class="teach explained" role="note" ${ref(intoSight)}>
    ${lines.map((l) => html`<p>${l}</p>`)}
    ${
      lines.length === 0 && words.length === 0
        ? html`<p class="soft">
            No word in it that the glossary explains.
            <a href=${hashOf({ at: 'learn', page: { is: 'list' } })}>All there is to read</a>
          </p>`
        : nothing
    }
    ${words.map(
      (t) =>
        html`<p>
          <a href=${hashOf({ at: 'learn', page: { is: 'word', id: t.id } })}><b>${t.term}</b></a
          >: ${t.plain} <span class="soft">${t.why}</span>
        </p>`,
    )}
    ${
      check === null
        ? nothing
        : html`<p>
            Step by step:
            <a href=${hashOf({ at: 'learn', page: { is: 'check', id: check.id } })}>${check.title}</a>
          </p>`
    }
  </div>`;
};
