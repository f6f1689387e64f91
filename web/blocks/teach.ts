/** An explanation; words that the glossary knows can be tapped and are explained in place. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { tell } from '../events.ts';
import { hashOf } from '../route.ts';
import type { BlockContext } from './context.ts';
import { sheetSource } from '../sheet-source.ts';
import { linkTerms } from './terms.ts';
import { whyView } from './why.ts';

export const teachView = (
  block: Extract<Block, { is: 'teach' }>,
  c: BlockContext,
  from: () => EventTarget,
  explain: unknown = nothing,
): TemplateResult => {
  const ask = (term: string): void => tell(from(), 'ask', { text: `what is ${term.replaceAll('-', ' ')}`, at: c.at });
  const linked = (text: string, terms: readonly string[]): unknown =>
    linkTerms(sheetSource(text), terms).map((p) =>
      p.term === null
        ? p.text
        : html`<button type="button" class="link term" @click=${() => ask(p.term ?? '')}>${p.text}</button>`,
    );
  const all = [block.words, ...block.lines].join('\n').toLowerCase();
  const others = block.terms.filter((t) => !all.includes(t.replaceAll('-', ' ').toLowerCase()));
  return html`<div class="teach">
    <p class="teach-words">${linked(block.words, block.terms)}</p>
    ${block.lines.map((l) => html`<p>${linked(l, block.terms)}</p>`)}
    ${
      others.length === 0
        ? nothing
        : html`<p class="soft">
            see also
            ${others.map((t) => html` <button type="button" class="link term" @click=${() => ask(t)}>${t.replaceAll('-', ' ')}</button>`)}
          </p>`
    }
    ${
      c.at === 'learn' || block.terms.length === 0
        ? nothing
        : html`<p class="soft">
            read on:
            ${block.terms.slice(0, 3).map((t, i) => html`${i > 0 ? ' · ' : ''}<a href=${hashOf({ at: 'learn', page: { is: 'word', id: t } })}>${t.replaceAll('-', ' ')}</a>`)}
          </p>`
    }
    ${block.why ? whyView(block.why, block.words) : nothing} ${explain}
  </div>`;
};
