/** A coach sheet as groups of fields that fold; a group stays open once something in it was to be mended. */
import { html, nothing, type TemplateResult } from 'lit';
import { sheetGroups } from '../../server/sheet/fields.ts';
import { fieldView, type CellsHow } from './sheet-cells.ts';
import { given, type Draft } from './sheet-draft.ts';

type Group = (typeof sheetGroups)[number];

const ofPanel = (g: Group): boolean => g.fields.some((f) => f.path.startsWith('panel.'));
const badIn = (g: Group, wrong: ReadonlyMap<string, string>): number =>
  [...wrong.keys()].filter((path) => g.fields.some((f) => path === f.path || path.startsWith(`${f.path}.`))).length;

/** Groups that stand open from the start: the coach and its heights, and on a new one its units. */
const openAtFirst = (index: number, fresh: boolean): boolean => index === 0 || index === 2 || (index === 1 && fresh);

const noPanelKey = (none: boolean, how: CellsHow, typed: (draft: Draft) => void): TemplateResult =>
  html`<button
    type="button"
    class="key small"
    aria-pressed=${none ? 'true' : 'false'}
    ?disabled=${how.locked}
    @click=${() => {
      const { panel: _panel, ...rest } = how.draft;
      typed(none ? rest : { ...rest, panel: 'none' });
    }}
  >
    this coach has no panel${none ? ' ✓' : ''}
  </button>`;

/** `opened`: names of the groups that were opened for something to mend; `fresh`: a coach that has no sheet yet. */
export const groupsView = (
  how: CellsHow,
  opened: Set<string>,
  fresh: boolean,
  typed: (draft: Draft) => void,
): TemplateResult =>
  html`<form @submit=${(e: SubmitEvent) => e.preventDefault()}>
    ${sheetGroups.map((g, i) => {
      const bad = badIn(g, how.wrong);
      const panel = ofPanel(g);
      const none = panel && how.draft['panel'] === 'none';
      if (bad > 0) opened.add(g.name);
      return html`<details class="group" ?open=${openAtFirst(i, fresh) || opened.has(g.name)}>
        <summary>
          ${g.name}
          <span class="soft"
            >${none ? 'has none' : `${given(how.draft, g.fields)} of ${g.fields.length} given`}${bad > 0 ? html`, <b>${bad} to mend</b>` : nothing}</span
          >
        </summary>
        ${g.help === undefined ? nothing : html`<p class="soft">${g.help}</p>`}
        ${panel ? noPanelKey(none, how, typed) : nothing}
        ${none ? nothing : html`<div class="fields">${g.fields.map((f) => fieldView(f, how))}</div>`}
      </details>`;
    })}
  </form>`;
