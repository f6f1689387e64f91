/** The cells of a coach sheet as fields to type into, each with its name, its unit and what is wrong with it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Cell, Field } from '../../server/sheet/fields.ts';
import { unitFor } from '../../server/sheet/field-text.ts';
import { rowsOf, unitsOf, type Draft } from './sheet-draft.ts';

export type CellsHow = {
  draft: Draft;
  /** Words on what is wrong, by path. */
  wrong: ReadonlyMap<string, string>;
  /** This sheet may not be changed from here. */
  locked: boolean;
  /** A path that may never change again: the short name of a coach that is kept. */
  fixed: string | null;
  set: (path: string, text: string) => void;
  /** Completes what was typed, when the field is left. */
  leave: (path: string, cell: Cell) => void;
  drop: (field: Field, row: number) => void;
  add: (field: Field) => void;
};

const idOf = (path: string): string => `f-${path.replaceAll('.', '-')}`;

const cellView = (path: string, name: string, cell: Cell, how: CellsHow, help?: string): TemplateResult => {
  const id = idOf(path);
  const value = how.draft[path] ?? '';
  const wrong = how.wrong.get(path);
  const off = how.locked || how.fixed === path;
  const unit = cell.is === 'amount' ? unitFor(cell, unitsOf(how.draft)) : null;
  const says = [help, unit === null ? undefined : `a bare number is taken in ${unit}`].filter(Boolean).join('; ');
  const tell = (e: Event): void => how.set(path, (e.target as HTMLInputElement).value);
  const choices = cell.is === 'yes' ? ['yes', 'no'] : cell.is === 'choice' ? cell.of : null;
  return html`<div class="cell">
    <label for=${id}>${name}</label>
    ${
      choices
        ? html`<select
            id=${id}
            ?disabled=${off}
            aria-invalid=${wrong === undefined ? 'false' : 'true'}
            aria-describedby=${`${id}-w`}
            @change=${tell}
          >
            <option value="" ?selected=${value === ''}>not said</option>
            ${(choices.includes(value) || value === '' ? choices : [...choices, value]).map(
              (c) => html`<option value=${c} ?selected=${c === value}>${c}</option>`,
            )}
          </select>`
        : html`<input
            id=${id}
            .value=${value}
            ?disabled=${off}
            autocomplete="off"
            spellcheck="false"
            placeholder=${cell.is === 'amount' && unit !== null ? unit : ''}
            aria-invalid=${wrong === undefined ? 'false' : 'true'}
            aria-describedby=${`${id}-w`}
            @input=${tell}
            @change=${() => how.leave(path, cell)}
          />`
    }
    <p id=${`${id}-w`} class=${wrong === undefined ? 'hear' : 'mend'}>${wrong ?? says}</p>
  </div>`;
};

export const fieldView = (field: Field, how: CellsHow): TemplateResult => {
  const help = field.help === undefined ? nothing : html`<p class="soft small">${field.help}</p>`;
  switch (field.is) {
    case 'one':
      return html`<div class="field">${cellView(field.path, field.name, field.cell, how, field.help)} ${help}</div>`;
    case 'set': {
      const own = how.wrong.get(field.path);
      return html`<fieldset class="field">
        <legend>${field.name}</legend>
        <div class="set">${field.parts.map((p) => cellView(`${field.path}.${p.key}`, p.name, p.cell, how))}</div>
        ${own === undefined ? nothing : html`<p class="mend">${own}</p>`} ${help}
      </fieldset>`;
    }
    case 'rows':
    case 'list': {
      const rows = rowsOf(how.draft, field);
      const own = how.wrong.get(field.path);
      return html`<fieldset class="field wide">
        <legend>${field.name}</legend>
        ${help}
        ${Array.from(
          { length: rows },
          (_, i) =>
            html`<div class="set row">
              ${
                field.is === 'rows'
                  ? field.parts.map((p) => cellView(`${field.path}.${i}.${p.key}`, p.name, p.cell, how))
                  : cellView(`${field.path}.${i}`, `${field.row} ${i + 1}`, field.cell, how)
              }
              ${
                how.locked
                  ? nothing
                  : html`<button
                      type="button"
                      class="key small"
                      aria-label=${`drop ${field.row} ${i + 1}`}
                      @click=${() => how.drop(field, i)}
                    >
                      drop
                    </button>`
              }
            </div>`,
        )}
        ${own === undefined ? nothing : html`<p class="mend">${own}</p>`}
        ${how.locked ? nothing : html`<button type="button" class="key small" @click=${() => how.add(field)}>add a ${field.row}</button>`}
      </fieldset>`;
    }
  }
};
