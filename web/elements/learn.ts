/** Reading up outside any session: words and checks as pages, a question answered in place, and practice from there. */
import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { blockView } from '../blocks/block.ts';
import { drawings } from '../draw/look.ts';
import { told } from '../events.ts';
import { checkFor, find, wordFor } from '../learn/book.ts';
import { checkPage, listView, wordView } from '../learn/views.ts';
import { blocks } from '../look/blocks.ts';
import { base, keys } from '../look/base.ts';
import { learnLook } from '../look/learn.ts';
import { hashOf, type LearnPage } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';

export class SoapLearn extends LitElement {
  static override properties = {
    controller: { attribute: false },
    page: { attribute: false },
    by: {},
    tick: { attribute: false },
    asked: { state: true },
    sought: { state: true },
  };
  static override styles = [base, keys, blocks, drawings, learnLook];
  declare controller: SocketController;
  declare page: LearnPage;
  /** Initials for a practice that is begun here. */
  declare by: string;
  declare tick: unknown;
  /** Newest first: what was asked and where its answer stands. */
  declare asked: readonly { text: string; id: string | null }[];
  /** What stands in the field: the lists show what fits it. */
  declare sought: string;

  constructor() {
    super();
    this.page = { is: 'list' };
    this.by = 'bench';
    this.asked = [];
    this.sought = '';
    this.addEventListener('soap-ask', (e) => this.#ask(told('ask', e).text));
    // a key that would write a note has no line to write into here: it asks
    this.addEventListener('soap-write', (e) => this.#ask(told('write', e).text));
  }

  protected override willUpdate(): void {
    // asked before the connection stood
    if (this.controller.link === 'live' && this.asked.some((a) => a.id === null))
      this.asked = this.asked.map((a) => (a.id === null ? { ...a, id: this.controller.ask(a.text) } : a));
  }

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('page');
    if (before !== undefined && JSON.stringify(before) !== JSON.stringify(this.page)) this.scrollTop = 0;
  }

  #ask(text: string): void {
    if (text.trim() !== '')
      this.asked = [{ text: text.trim(), id: this.controller.ask(text.trim()) }, ...this.asked].slice(0, 30);
  }

  protected override render(): unknown {
    return html`<main>
      <nav class="crumbs" aria-label="where">
        <a href=${hashOf({ at: 'start' })}>all sessions</a>
        ${this.page.is === 'list' ? nothing : html`<a href=${hashOf({ at: 'learn', page: { is: 'list' } })}>all there is to read</a>`}
      </nav>
      ${this.#page()} ${this.#practice()}
    </main>`;
  }

  #page(): unknown {
    const page = this.page;
    switch (page.is) {
      case 'list':
        return this.#list();
      case 'word': {
        const word = wordFor(page.id);
        return word ? wordView(word) : this.#unknown(page.id);
      }
      case 'check': {
        const check = checkFor(page.id);
        return check ? checkPage(check) : this.#unknown(page.id);
      }
    }
  }

  #unknown(name: string): unknown {
    return html`<h1>Learn</h1>
      <p>There is no page about “${name}”. A question of any form may find it:</p>
      ${this.#form()} ${this.#answers()}`;
  }

  #list(): unknown {
    return html`<h1>Learn</h1>
      ${this.#form()} ${this.#answers()} ${listView(find(this.sought))}`;
  }

  #form(): unknown {
    return html`<form
      @submit=${(e: SubmitEvent) => {
        e.preventDefault();
        this.#ask(this.sought);
        this.sought = '';
      }}
    >
      <label for="q">Find a word or a check, or ask a question</label>
      <input
        id="q"
        autocomplete="off"
        maxlength="400"
        placeholder="whats a height valve"
        .value=${this.sought}
        @input=${(e: InputEvent) => (this.sought = (e.target as HTMLInputElement).value)}
      />
      <button class="key main">ask</button>
    </form>`;
  }

  #answers(): unknown {
    const context = {
      live: true,
      gates: new Map<string, boolean>(),
      at: 'learn',
      zone: undefined,
      brief: false,
      asked: [],
      explain: null,
    };
    const waiting =
      this.controller.link === 'live' ? 'asking…' : 'not connected: it is asked when the connection is back';
    return html`<div aria-live="polite">
      ${this.asked.map((a) => {
        const answer = a.id === null ? undefined : this.controller.answers.get(a.id);
        return html`<article class="answer">
          <h2>${a.text}</h2>
          ${answer === undefined ? html`<p class="soft">${waiting}</p>` : answer.map((b) => blockView(b, context, () => this))}
        </article>`;
      })}
    </div>`;
  }

  /** A coach with a made-up fault, one tap away from what was read. */
  #practice(): unknown {
    const { welcome } = this.controller;
    if (welcome === null || welcome.role === 'reviews' || welcome.coaches.length === 0) return nothing;
    return html`<section class="practice" aria-labelledby="practice">
      <h2 id="practice">Practice on a made-up fault</h2>
      <p class="soft">Nothing of it goes into a coach's history.</p>
      <div class="keys">
        ${welcome.coaches.map(
          (c) =>
            html`<button
              type="button"
              class="key"
              @click=${() => {
                location.hash = hashOf({ at: 'session', session: this.controller.open(c.id, this.by, 1) });
              }}
            >
              ${c.coach}
            </button>`,
        )}
      </div>
    </section>`;
  }
}
customElements.define('soap-learn', SoapLearn);
