/** A word, a check step by step, and the list of both, as pages to read through. */
import { html, nothing, type TemplateResult } from 'lit';
import { linkTerms } from '../blocks/terms.ts';
import { hashOf } from '../route.ts';
import { minutes } from '../show.ts';
import { cautionOf, checks, gatesOf, plain, termsIn, usedIn, wordFor, words, type Guide, type Term } from './book.ts';

const toWord = (id: string): string => hashOf({ at: 'learn', page: { is: 'word', id } });
const toCheck = (id: string): string => hashOf({ at: 'learn', page: { is: 'check', id } });

/** Text whose words of the trade lead to their own pages; `not`: the word that is explained right there. */
const linked = (text: string, not = ''): unknown => {
  const clean = plain(text);
  return linkTerms(
    clean,
    termsIn(clean).filter((t) => t !== not),
  ).map((p) => (p.term === null ? p.text : html`<a href=${toWord(p.term)}>${p.text}</a>`));
};

const around = <T>(list: readonly T[], at: T): [T | undefined, T | undefined] => {
  const i = list.indexOf(at);
  return [list[i - 1], list[i + 1]];
};

const turn = (before: { href: string; words: string } | null, after: { href: string; words: string } | null): unknown =>
  html`<nav class="turn" aria-label="page by page">
    ${before ? html`<a class="key" href=${before.href}><span aria-hidden="true">← </span>${before.words}</a>` : html`<span></span>`}
    ${after ? html`<a class="key" href=${after.href}>${after.words}<span aria-hidden="true"> →</span></a>` : nothing}
  </nav>`;

export const wordView = (t: Term): TemplateResult => {
  const [before, after] = around(words, t);
  const see = t.see.flatMap((id) => wordFor(id) ?? []);
  const used = usedIn(t);
  return html`<article>
    <h1>${t.term}</h1>
    ${t.also.length === 0 ? nothing : html`<p class="soft">also: ${t.also.join(', ')}</p>`}
    <p class="lead">${linked(t.plain, t.id)}</p>
    <p>${linked(t.why, t.id)}</p>
    ${
      see.length === 0
        ? nothing
        : html`<h2>See also</h2>
            <ul class="links">
              ${see.map((o) => html`<li><a href=${toWord(o.id)}>${o.term}</a> <span class="soft">${o.plain}</span></li>`)}
            </ul>`
    }
    ${
      used.length === 0
        ? nothing
        : html`<h2>Checks that use it</h2>
            <ul class="links">
              ${used.map((g) => html`<li><a href=${toCheck(g.id)}>${g.title}</a></li>`)}
            </ul>`
    }
    ${turn(before ? { href: toWord(before.id), words: before.term } : null, after ? { href: toWord(after.id), words: after.term } : null)}
  </article>`;
};

const time = (g: Guide): string =>
  `${minutes(g.minutes.hands)} of hands${g.minutes.wait > 0 ? `, ${minutes(g.minutes.wait)} of waiting` : ''} (estimated)`;

const gated = (g: Guide): unknown =>
  g.gate === null
    ? nothing
    : html`<section class="caution" aria-label="before the first step">
        <div class="caution-in">
          <p class="caution-words">
            <span aria-hidden="true">▲ </span
            >${g.gate === 'dead' ? 'With the coach DEAD: nothing is opened before all of this is so.' : 'With the coach LIVE, air in: before the first step.'}
          </p>
          <ul>
            ${gatesOf(g).map((q) => html`<li><b>${q.question}</b> ${q.more}</li>`)}
          </ul>
          <p>The maker's manual and local rules come first.</p>
        </div>
      </section>`;

export const checkPage = (g: Guide): TemplateResult => {
  const [before, after] = around(checks, g);
  return html`<article>
    <h1>${g.title}</h1>
    <p class="lead">${linked(g.what)}</p>
    <p class="soft">${time(g)}</p>
    ${gated(g)} ${g.tools.length === 0 ? nothing : html`<p><b>At hand:</b> ${g.tools.map(plain).join(', ')}.</p>`}
    <ol class="steps">
      ${g.steps.map((s) => {
        const caution = cautionOf(s);
        return html`<li>
          ${caution ? html`<p class="warn"><span aria-hidden="true">▲ </span><b>${caution.words}</b></p>` : nothing}
          <p>${linked(s.words)}</p>
          ${s.expect === '' ? nothing : html`<p class="soft"><b>Type back:</b> ${plain(s.expect)}</p>`}
          ${
            s.outcomes.length === 0
              ? nothing
              : html`<dl>
                  ${s.outcomes.map(
                    (o) =>
                      html`<dt>${plain(o.when)}</dt>
                        <dd>${plain(o.means)}</dd>`,
                  )}
                </dl>`
          }
        </li>`;
      })}
    </ol>
    ${
      g.after.length === 0
        ? nothing
        : html`<h2>When it is through</h2>
            <ul>
              ${g.after.map((a) => html`<li>${linked(a)}</li>`)}
            </ul>`
    }
    <p class="soft">
      Common practice, no source. At a coach, “how do i ${g.topics[0] ?? g.id}” goes through it step by step with that
      coach's own figures.
    </p>
    ${turn(before ? { href: toCheck(before.id), words: before.title } : null, after ? { href: toCheck(after.id), words: after.title } : null)}
  </article>`;
};

export const listView = (found: { words: readonly Term[]; checks: readonly Guide[] }): TemplateResult =>
  html`<section aria-labelledby="checks">
      <h2 id="checks">Checks, step by step</h2>
      ${found.checks.length === 0 ? html`<p class="soft">None of that name.</p>` : nothing}
      <ul class="links wide">
        ${found.checks.map(
          (g) =>
            html`<li>
              <a href=${toCheck(g.id)}>${g.title}</a>
              <span class="soft"
                >${minutes(g.minutes.hands + g.minutes.wait)}${g.gate === 'dead' ? ' · coach DEAD' : g.gate === 'live' ? ' · coach LIVE' : ''}</span
              >
            </li>`,
        )}
      </ul>
    </section>
    <section aria-labelledby="words">
      <h2 id="words">Words</h2>
      ${found.words.length === 0 ? html`<p class="soft">None of that name.</p>` : nothing}
      <dl class="words">
        ${found.words.map(
          (t) =>
            html`<div>
              <dt><a href=${toWord(t.id)}>${t.term}</a></dt>
              <dd>${t.plain}</dd>
            </div>`,
        )}
      </dl>
    </section>`;
