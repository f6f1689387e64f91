/** Suspects as bars, the mark where each stood before the last note, and its rank in words. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Suspect } from '../../server/chat/reply.ts';

const moved = (s: Suspect): string => {
  if (s.was === undefined) return 'new';
  if (s.p > s.was + 0.03) return '▲ up since the last note';
  if (s.p < s.was - 0.03) return '▼ down since the last note';
  return '';
};

const bar = (s: Suspect): TemplateResult =>
  html`<svg class="bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
    <rect class="bar-box" x="0" y="0" width="100" height="10" />
    <rect class="bar-fill" x="0" y="0" width=${Math.max(0.8, Math.min(1, s.p) * 100)} height="10" />
    ${s.was === undefined ? nothing : svg`<rect class="bar-was" x=${Math.min(99, Math.max(0, s.was * 100 - 0.5))} y="-3" width="1" height="16" />`}
  </svg>`;

/** `head`: what stands over a line, where faults of one part stand together (web/by-part.ts). */
export const suspectsView = (
  list: readonly Suspect[],
  most = 6,
  head: (s: Suspect, before: Suspect | undefined) => unknown = () => nothing,
): TemplateResult =>
  html`<ol class="suspects">
    ${list.slice(0, most).map(
      (s, i) =>
        html`<li>
          ${head(s, list[i - 1])}
          <p class="suspect">
            <span>${s.name}</span>
            <b class="figure">${s.rank}</b>
          </p>
          ${bar(s)}
          <span class="moved">${moved(s)}</span>
          <details class="why">
            <summary>why<span class="hear"> ${s.name}</span></summary>
            <div class="why-in">
              ${
                s.speaks.length === 0
                  ? html`<p>Nothing noted speaks for or against it yet: it stands where such faults usually stand.</p>`
                  : html`<ul class="speaks">
                      ${s.speaks.map(
                        (k) =>
                          html`<li>
                            <span class="sign" aria-hidden="true">${k.bits > 0 ? '+' : '−'}</span
                            ><span class="hear">${k.bits > 0 ? 'for: ' : 'against: '}</span>${k.words}
                          </li>`,
                      )}
                    </ul>`
              }
              <p class="soft">
                about ${Math.round(s.p * 100)} in
                100${s.was === undefined ? '' : `, before the last note ${Math.round(s.was * 100)}`}
              </p>
            </div>
          </details>
        </li>`,
    )}
  </ol>`;
