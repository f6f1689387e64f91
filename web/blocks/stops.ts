/** The stops of a reply: the first in full with its keys, the rest behind one key that says how many and what about. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';

type Stop = Extract<Block, { is: 'caution' }>;

/** Two stand side by side with their keys in sight where there is room for them; on a phone one does. */
const most = (roomy: boolean): number => (roomy ? 2 : 1);

export const stopsView = (
  stops: readonly Stop[],
  roomy: boolean,
  open: boolean,
  view: (stop: Stop) => unknown,
  toggle: () => void,
): TemplateResult | typeof nothing => {
  if (stops.length === 0) return nothing;
  const first = stops.slice(0, most(roomy));
  const rest = stops.slice(first.length);
  return html`<div class="first">
    ${first.map(view)}
    ${
      rest.length === 0
        ? nothing
        : html`<button type="button" class="key more-stops" aria-expanded=${open ? 'true' : 'false'} @click=${toggle}>
            <b><span aria-hidden="true">▲ </span>${rest.length} more ${rest.length === 1 ? 'stop' : 'stops'}</b>
            ${open ? nothing : html`<span class="more-words">${rest.map((s) => s.words.replace(/^Stop\. /, '')).join(' · ')}</span>`}
          </button>`
    }
    ${open ? rest.map(view) : nothing}
  </div>`;
};
