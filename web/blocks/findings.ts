/** Findings: the words big, then amount, limit and whose limit it is. */
import { html, nothing, type TemplateResult } from 'lit';
import { rangeText } from '../../server/core/range-text.ts';
import type { Finding } from '../../server/findings/finding.ts';
import { drawing } from '../draw/drawing.ts';
import { tell } from '../events.ts';
import { sheetSource } from '../sheet-source.ts';
import { verdictMark } from '../show.ts';
import { whyView } from './why.ts';

export const limitWords = (f: Finding): string => {
  if (!f.limit) return '';
  const { low, high, source } = f.limit;
  const range = rangeText(low?.text ?? null, high?.text ?? null);
  return range === '' ? sheetSource(source.words) : `limit ${range} (${sheetSource(source.words)})`;
};

/** `explain`: of all of them, beside the "why" of the last. */
export const findingsView = (
  list: readonly Finding[],
  asked: readonly string[],
  explain: unknown = nothing,
): TemplateResult =>
  html`${list.map((f, i) => {
    const { mark, words } = verdictMark(f.verdict);
    const limit = limitWords(f);
    return html`<article class="finding ${f.verdict.replace(' ', '-')}">
      <p class="finding-words">
        ${mark === '' ? nothing : html`<span class="mark" aria-hidden="true">${mark}</span><span class="hear">${words}: </span>`}${f.words}
      </p>
      <p class="finding-more">
        ${f.amount && !f.words.includes(f.amount.text) ? html`<b class="figure">${f.amount.text}</b> ` : nothing}${limit}
      </p>
      ${f.drawing ? drawing(f.drawing, `${f.words}${limit === '' ? '' : `, ${limit}`}`) : nothing}
      ${
        f.wants && !asked.includes(f.wants.question)
          ? html`<p class="wants">
              <button
                type="button"
                class="link"
                @click=${(e: Event) => e.target && tell(e.target, 'write', { text: 'spec ' })}
              >
                ${f.wants.question}
              </button>
            </p>`
          : nothing
      }
      <div class="whys">${whyView(f.why, f.words)} ${i === list.length - 1 ? explain : nothing}</div>
    </article>`;
  })}`;
