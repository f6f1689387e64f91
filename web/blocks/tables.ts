/** The tables of a transcript: found, read, done, cautioned, corrected; each line leads back to its note. */
import { html, nothing, type TemplateResult } from 'lit';
import { figureOf, verdictMark } from '../show.ts';
import type { Onward } from '../led-to.ts';
import type { Tables } from '../transcript.ts';
import { sheetSource } from '../sheet-source.ts';
import { limitWords } from './findings.ts';

/** How a moment is written, and the way back to a note. */
export type How = {
  time: (at: number) => string;
  to: (seq: number) => unknown;
  /** What a finding led to. */
  on: (seq: number, key: string) => readonly Onward[];
};

const plainList = (
  how: How,
  title: string,
  list: { at: number; seq: number; words: string; more: string; gone: boolean }[],
): TemplateResult | typeof nothing => {
  if (list.length === 0) return nothing;
  return html`<section>
    <h2>${title}</h2>
    <ul class="plain-list">
      ${list.map(
        (i) =>
          html`<li class=${i.gone ? 'gone' : ''}>
            <span class="at">${how.time(i.at)}</span
            ><span><b>${i.words}</b> ${i.more === '' ? nothing : html`<span class="soft">${i.more}</span>`}</span
            >${how.to(i.seq)}
          </li>`,
      )}
    </ul>
  </section>`;
};

export const tablesView = (t: Tables, how: How): TemplateResult => {
  return html`
    ${
      t.findings.length === 0
        ? nothing
        : html`<section>
            <h2>Found</h2>
            <div class="scroll" tabindex="0" role="region" aria-label="findings">
              <table>
                <thead>
                  <tr>
                    <th scope="col">at</th>
                    <th scope="col">finding</th>
                    <th scope="col">limit and source</th>
                    <th scope="col">note</th>
                    <th scope="col">led to</th>
                  </tr>
                </thead>
                <tbody>
                  ${t.findings.map((r) => {
                    const { mark, words } = verdictMark(r.it.verdict);
                    return html`<tr class=${r.gone ? 'gone' : ''}>
                      <td>${how.time(r.at)}</td>
                      <td>
                        <span aria-hidden="true">${mark} </span><b>${r.it.words}</b
                        ><span class="hear"> ${words}</span>${r.gone ? ' (taken back)' : ''}
                      </td>
                      <td>${limitWords(r.it) || sheetSource(r.it.why.source.words)}</td>
                      <td>${how.to(r.seq)}</td>
                      <td>
                        ${how.on(r.seq, r.it.key).map((o) => html`<span title=${o.words}>${how.to(o.seq)}</span> `)}
                      </td>
                    </tr>`;
                  })}
                </tbody>
              </table>
            </div>
          </section>`
    }
    ${
      t.readings.length === 0
        ? nothing
        : html`<section>
            <h2>Readings</h2>
            <div class="scroll" tabindex="0" role="region" aria-label="readings">
              <table>
                <thead>
                  <tr>
                    <th scope="col">at</th>
                    <th scope="col">place</th>
                    <th scope="col">what</th>
                    <th scope="col" class="num">reading</th>
                    <th scope="col">against the limit</th>
                    <th scope="col">by</th>
                    <th scope="col">note</th>
                  </tr>
                </thead>
                <tbody>
                  ${t.readings.map((r) => {
                    const a = r.it.fact.amount.v;
                    const f = figureOf(a.si, a.unit, a.pm);
                    return html`<tr class=${r.gone ? 'gone' : ''}>
                      <td>${how.time(r.at)}</td>
                      <td>
                        ${r.it.fact.where.v}${r.it.fact.where.from === 'assumed' ? html` <i class="soft">assumed</i>` : nothing}
                      </td>
                      <td>${r.it.fact.what.v}</td>
                      <td class="num"><b>${f.figure}</b> ${f.unit}</td>
                      <td>${r.gone ? 'taken back' : r.it.finding ? verdictMark(r.it.finding.verdict).words : ''}</td>
                      <td>${r.by}</td>
                      <td>${how.to(r.seq)}</td>
                    </tr>`;
                  })}
                </tbody>
              </table>
            </div>
          </section>`
    }
    ${plainList(
      how,
      'Work',
      t.work.map((r) => ({
        at: r.at,
        gone: r.gone,
        seq: r.seq,
        words: `${r.it.done ? '' : 'not done: '}${r.it.words}`,
        more: r.by,
      })),
    )}
    ${plainList(
      how,
      'Cautions',
      t.cautions.map((c) => ({
        at: c.at,
        gone: false,
        seq: c.seq,
        words: c.words,
        more: c.answer
          ? `answered ${c.answer.words}, ${how.time(c.answer.at)}, ${c.answer.by}`
          : c.gated
            ? 'not answered'
            : '',
      })),
    )}
    ${plainList(
      how,
      'Corrections',
      t.corrections.map((r) => ({
        at: r.at,
        gone: r.gone,
        seq: r.seq,
        words: r.it.words,
        more: r.it.of === '' ? '' : `of “${r.it.of}”`,
      })),
    )}
  `;
};
