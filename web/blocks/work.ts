/** Long work: what it is, how far it has come, and its stop key. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Work } from '../works.ts';

export const workView = ({ words, part, stop }: Work): TemplateResult =>
  html`<div class="work" role="group" aria-label=${words}>
    <p role="status">${words}</p>
    <progress aria-label="how far" max="1" .value=${part ?? nothing}></progress>
    <button type="button" class="key small" @click=${stop}>stop<span class="hear"> ${words}</span></button>
  </div>`;
