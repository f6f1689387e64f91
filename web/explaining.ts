/** Which blocks were asked to be explained, and their teaching text, fetched with the first. */
import { html, nothing, type ReactiveControllerHost } from 'lit';
import type { Block } from '../server/chat/reply.ts';
import { explainLink } from './blocks/explain-link.ts';

export class Explaining {
  readonly #host: ReactiveControllerHost;
  #text: ((block: Block) => unknown) | null = null;
  #failed = false;
  readonly #open = new Set<Block>();

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  /** The link that asks for it, and puts it away. */
  readonly link = (block: Block): unknown =>
    explainLink(block.is, this.#open.has(block), () => void this.#toggle(block));

  /** What stands under the block. */
  under(block: Block): unknown {
    if (!this.#open.has(block)) return nothing;
    if (this.#text !== null) return this.#text(block);
    return html`<p class="soft" role="status">
      ${this.#failed ? 'Not in this browser yet: it comes with the connection.' : 'fetching…'}
    </p>`;
  }

  async #toggle(block: Block): Promise<void> {
    if (!this.#open.delete(block)) this.#open.add(block);
    this.#host.requestUpdate();
    if (this.#text !== null) return;
    try {
      this.#text = (await import('./blocks/explain.ts')).explained;
    } catch {
      this.#failed = true;
    }
    this.#host.requestUpdate();
  }
}
