/** "explain" beside any block of a reply; its teaching text then stands under the block. */
import { html, type TemplateResult } from 'lit';
import type { Block } from '../../server/chat/reply.ts';

/** What is explained, for one who hears the link alone. */
const names: Readonly<Record<Block['is'], string>> = {
  took: 'how the note was read',
  caution: 'this stop',
  findings: 'what was found',
  suspects: 'the suspects',
  check: 'this check',
  question: 'this question',
  step: 'this step',
  teach: 'the words of this answer',
  withdrawn: 'what was taken back',
  picture: 'this picture',
};

export const explainLink = (is: Block['is'], open: boolean, toggle: () => void): TemplateResult =>
  html`<button type="button" class="link explain" aria-expanded=${open ? 'true' : 'false'} @click=${toggle}>
    explain<span class="hear"> ${names[is]}</span>
  </button>`;
