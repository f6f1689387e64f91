/** One block of a reply, by its kind. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';
import { drawing } from '../draw/drawing.ts';
import { tell } from '../events.ts';
import { checkView } from './check.ts';
import type { BlockContext } from './context.ts';
import { findingsView } from './findings.ts';
import { keyRow } from './key-row.ts';
import { suspectsView } from './suspects.ts';
import { takenView } from './took.ts';
import { teachView } from './teach.ts';

export const blockView = (block: Block, c: BlockContext, from: () => EventTarget): TemplateResult | typeof nothing => {
  const explain = c.explain?.(block) ?? nothing;
  switch (block.is) {
    case 'took':
      return takenView(
        block.list,
        c.live ? (key) => tell(from(), 'write', { text: key.text, whole: true }) : null,
        explain,
      );
    case 'caution': {
      const answered = block.gate ? c.gates.get(block.gate.what) : undefined;
      return html`<section class="caution" aria-label="caution">
        <div class="caution-in">
          <p class="caution-words"><span aria-hidden="true">▲ </span>${block.words}</p>
          <div class="stop-rest">
            ${
              block.gate && answered !== undefined
                ? html`<p class="answered">answered: ${answered ? 'yes' : 'no'}, ${block.gate.what}</p>`
                : nothing
            }
            <p>${block.more} ${explain}</p>
            ${block.gate && answered === undefined && c.live ? keyRow(block.gate.keys, block.words) : nothing}
          </div>
        </div>
      </section>`;
    }
    case 'findings':
      return findingsView(block.list, c.asked, explain);
    case 'suspects':
      return c.brief
        ? html`<p class="brief">
            <b>suspects</b> ${block.list
              .slice(0, 2)
              .map((s) => `${s.name} ${s.rank}`)
              .join('; ')}
            ${explain}
          </p>`
        : html`<div class="suspect-block">
            <div class="head-row">
              <h2 class="small-head">Suspects</h2>
              ${explain}
            </div>
            ${suspectsView(block.list, 3)}
          </div>`;
    case 'check':
      return checkView(block, explain);
    case 'question':
      return html`<div class="question">
        <p class="question-words">${block.words} ${explain}</p>
        ${c.live ? keyRow(block.keys, block.words) : nothing}
      </div>`;
    case 'step':
      return html`<div class="step">
        <p class="step-of">step ${block.step + 1} of ${block.of} · ${block.title} ${explain}</p>
        <p class="step-words">${block.words}</p>
        ${block.expect === '' ? nothing : html`<p class="soft">expect: ${block.expect}</p>`}
        ${c.live && c.at === 'learn' ? keyRow(block.keys, block.title) : nothing}
      </div>`;
    case 'teach':
      return teachView(block, c, from, explain);
    case 'withdrawn':
      return html`<p class="withdrawn"><span aria-hidden="true">↶ </span>${block.words} ${explain}</p>`;
    case 'picture':
      return html`<figure class="picture">
        ${drawing(block.drawing, block.words)}
        <figcaption>${block.words} ${explain}</figcaption>
      </figure>`;
  }
};
