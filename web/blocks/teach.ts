/** An explanation; words that the glossary knows can be tapped and are explained in place. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { tell } from '../events.ts';
import type { BlockContext } from './context.ts';
import { whyView } from './why.ts';

/** Splits `text` at the first occurrence of each term, longest terms first. */
export const linkTerms = (text: string, terms: readonly string[]): { text: string; term: string | null }[] => {
  let parts: { text: string; term: string | null }[] = [{ text, term: null }];
  for (const term of terms.toSorted((a, b) => b.length - a.length)) {
    const words = term.replaceAll('-', ' ').toLowerCase();
    for (const [i, part] of parts.entries()) {
      if (part.term !== null) continue;
      const at = part.text.toLowerCase().indexOf(words);
      if (words === '' || at < 0) continue;
      parts = [
        ...parts.slice(0, i),
        { text: part.text.slice(0, at), term: null },
        { text: part.text.slice(at, at + words.length), term },
        { text: part.text.slice(at + words.length), term: null },
        ...parts.slice(i + 1),
      ];
      break;
    }
  }
  return parts.filter((p) => p.text !== '');
};

export const teachView = (
  block: Extract<Block, { is: 'teach' }>,
  c: BlockContext,
  from: () => EventTarget,
): TemplateResult => {
  const ask = (term: string): void => tell(from(), 'ask', { text: `what is ${term.replaceAll('-', ' ')}`, at: c.at });
  const linked = (text: string, terms: readonly string[]): unknown =>
    linkTerms(text, terms).map((p) =>
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
    ${block.why ? whyView(block.why, block.words) : nothing}
  </div>`;
};
