/** The versions a coach sheet went through, each to be fetched as it was. */
import { html, type TemplateResult } from 'lit';
import { clock, date } from '../show.ts';

export type Version = { hash: string; at: number; by: string; words: string };
export type Kept = { hash: string; sheet: unknown; versions: Version[] };

const short = (hash: string): string => hash.slice(0, 12);

const row = (coach: string, v: Version): TemplateResult =>
  html`<li>
    <b>${short(v.hash)}</b> ${v.at === 0 ? '' : `${date(v.at)} ${clock(v.at)}`} ${v.by}
    <span class="soft">${v.words}</span>
    <a class="link" href=${`/paper/sheet/${v.hash}`} download=${`${coach}-${short(v.hash)}.json`}>JSON</a>
  </li>`;

export const versionsView = (coach: string, held: Kept): TemplateResult =>
  html`<section>
    <h2>Versions</h2>
    <ul class="items versions">
      ${
        held.versions.length === 0
          ? html`<li>${short(held.hash)}, as it came</li>`
          : held.versions.toReversed().map((v) => row(coach, v))
      }
    </ul>
  </section>`;
