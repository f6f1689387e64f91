/** "why": formula, each input with where it came from, source. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Why } from '../../server/findings/finding.ts';
import { sheetSource } from '../sheet-source.ts';

/** The kind of source before its words, where the words do not begin with it themselves. */
const sourceSaid = ({ kind, words }: Why['source']): string => {
  const said = kind === 'practice' ? 'common practice' : kind;
  return words.startsWith(said) ? sheetSource(words) : `${said}: ${sheetSource(words)}`;
};

export const whyView = (why: Why, of: string): TemplateResult =>
  html`<details class="why">
    <summary>why<span class="hear"> ${of}</span></summary>
    <div class="why-in">
      <p class="formula">${why.formula}</p>
      ${
        why.inputs.length === 0
          ? nothing
          : html`<dl class="inputs">
              ${why.inputs.map(
                (i) =>
                  html`<div>
                    <dt>${i.name}</dt>
                    <dd><b class="figure">${i.text}</b> <span class="soft">${sheetSource(i.from)}</span></dd>
                  </div>`,
              )}
            </dl>`
      }
      ${why.notes.map((n) => html`<p>${n}</p>`)}
      <p class="soft">${sourceSaid(why.source)}</p>
    </div>
  </details>`;
