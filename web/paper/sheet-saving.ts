/** The foot of the sheet editor: what stands in the way of saving, why it is changed, and the two keys. */
import { html, type TemplateResult } from 'lit';

export type Saving = {
  /** Fields to mend. */
  wrong: number;
  /** The bench could not be asked about the whole. */
  unchecked: boolean;
  changed: boolean;
  save: () => void;
  drop: () => void;
};

const stands = ({ wrong, unchecked, changed }: Saving): unknown =>
  wrong > 0
    ? html`<b>${wrong} ${wrong === 1 ? 'field' : 'fields'} to mend.</b>`
    : unchecked
      ? 'Not checked as a whole: the bench cannot be reached. It stands here until it can.'
      : changed
        ? 'Changed and not saved.'
        : 'As it was saved.';

export const savingView = (s: Saving): TemplateResult =>
  html`<div class="save ${s.changed ? 'changed' : ''} no-print">
    <p role="status">${stands(s)}</p>
    <label for="why">why it is changed (may stay empty)</label>
    <input id="why" maxlength="200" autocomplete="off" />
    <div class="go">
      <button type="button" class="key main" ?disabled=${!s.changed} @click=${s.save}>save as a new version</button>
      <button type="button" class="key" ?disabled=${!s.changed} @click=${s.drop}>drop the changes</button>
    </div>
  </div>`;
