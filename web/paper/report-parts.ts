/** Parts of the owner's report: a list with its heading, a figure before and after, the estimate with the answers. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Compared, Estimate, Item } from '../../server/report/shapes.ts';
import { drawing } from '../draw/drawing.ts';
import { verdictMark } from '../show.ts';
import { money } from './money.ts';
import { plainSource } from './plain-source.ts';

export const itemsView = (title: string, items: readonly Item[], empty: string): TemplateResult => {
  return html`<section>
    <h2>${title}</h2>
    ${
      items.length === 0
        ? html`<p class="soft">${empty}</p>`
        : html`<ul class="items">
            ${items.map(
              (i) =>
                html`<li>
                  <b>${i.words}</b>${i.more === '' ? nothing : html` <span class="soft">${plainSource(i.more)}</span>`}
                </li>`,
            )}
          </ul>`
    }
  </section>`;
};

export const comparedView = (c: Compared): TemplateResult => {
  const side = (name: string, p: NonNullable<Compared['before']>): unknown => {
    const { mark, words } = verdictMark(p.verdict);
    return html`<div>
      <dt>${name}</dt>
      <dd>${p.text}</dd>
      <dd class="soft">${mark} ${words}</dd>
    </div>`;
  };
  const says = `${c.title}: ${[c.before ? `before ${c.before.text}` : '', c.after ? `after ${c.after.text}` : ''].filter(Boolean).join(', ')}, limit ${c.limit}`;
  return html`<div class="card">
    <h3>${c.title}</h3>
    <dl>
      ${c.before ? side(c.after ? 'before' : 'found', c.before) : nothing} ${c.after ? side('after', c.after) : nothing}
    </dl>
    ${c.drawing ? drawing(c.drawing, says) : nothing}
    <p class="soft">limit ${c.limit} (${plainSource(c.source)})</p>
  </div>`;
};

export const estimateView = (e: Estimate): TemplateResult => {
  const word = (d: Estimate['lines'][number]['decided']): string =>
    d === null ? 'not answered' : `${d.yes ? 'approved' : 'declined'}, ${d.name}`;
  return html`<section>
    <h2>Estimate</h2>
    <div class="scroll" tabindex="0" role="region" aria-label="estimate">
      <table>
        <thead>
          <tr>
            <th scope="col">work</th>
            <th scope="col">answer</th>
            <th scope="col" class="num">labour</th>
            <th scope="col" class="num">parts</th>
            <th scope="col" class="num">together</th>
          </tr>
        </thead>
        <tbody>
          ${e.lines.map(
            (l) =>
              html`<tr>
                <td>
                  ${l.words}${l.parts.length > 0 ? html` <span class="soft">${l.parts.map((p) => p.name).join(', ')}</span>` : nothing}
                </td>
                <td>${word(l.decided)}</td>
                <td class="num">${money(l.labour, '')}</td>
                <td class="num">${money(l.material, '')}</td>
                <td class="num"><b>${money(l.total, e.currency)}</b></td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    <p>
      <b>Approved: ${money(e.approved, e.currency)}</b> of
      ${money(e.total, e.currency)}${e.missing.length > 0 ? `; to be asked: ${e.missing.join(', ')}` : ''}
    </p>
  </section>`;
};
