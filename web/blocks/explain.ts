/** The words of the trade in a reply, each with its plain meaning and its page. Fetched when somebody asks. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { termsIn, wordFor } from '../learn/book.ts';
import { hashOf } from '../route.ts';

/** All that a block says in words, whatever its kind. */
const said = (b: Block): string => {
  switch (b.is) {
    case 'findings':
      return [b.words, ...b.list.map((f) => f.words)].join('. ');
    case 'suspects':
      return b.list.map((s) => s.name).join('. ');
    case 'caution':
      return `${b.words} ${b.more}`;
    case 'teach':
      return [b.words, ...b.lines].join(' ');
    case 'check':
      return `${b.words} ${b.why}`;
    case 'took':
    case 'question':
    case 'step':
    case 'withdrawn':
    case 'picture':
      return b.words;
  }
};

export const explained = (list: readonly Block[]): TemplateResult => {
  const words = [...new Set(list.flatMap((b) => termsIn(said(b))))].flatMap((id) => wordFor(id) ?? []);
  return html`<div class="teach" role="note">
    ${words.length === 0 ? html`<p class="soft">No word in it that the glossary explains. <a href=${hashOf({ at: 'learn', page: { is: 'list' } })}>All there is to read</a></p>` : nothing}
    ${words.map(
      (t) =>
        html`<p>
          <a href=${hashOf({ at: 'learn', page: { is: 'word', id: t.id } })}><b>${t.term}</b></a
          >: ${t.plain} <span class="soft">${t.why}</span>
        </p>`,
    )}
  </div>`;
};
