/** A row of keys, at most three wide on a phone. A key carries a whole note. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Key } from '../../server/chat/reply.ts';
import { tell } from '../events.ts';

const sideOf = (k: Key): 'left' | 'right' | null =>
  (/^(left|right)\b/i.exec(k.label)?.[1]?.toLowerCase() as 'left' | 'right' | undefined) ?? null;

/**
 * Keys that differ by their side stand in two columns, left on the left: whose thumb is gloved hits no wrong side. What has
 * no side comes first, over both.
 */
const bySide = (list: readonly Key[]): readonly Key[] | null => {
  const [left, right] = (['left', 'right'] as const).map((side) => list.filter((k) => sideOf(k) === side));
  if (!left || !right || left.length === 0 || left.length !== right.length) return null;
  return [...list.filter((k) => sideOf(k) === null), ...left.flatMap((k, i) => [k, right[i]!])];
};

export const keyRow = (list: readonly Key[], label: string): TemplateResult | typeof nothing => {
  if (list.length === 0) return nothing;
  const sided = bySide(list);
  const alone = sided ? list.filter((k) => sideOf(k) === null).length : 0;
  return html`<div class="keys ${sided ? 'sided' : `n${list.length}`}" role="group" aria-label=${label}>
    ${(sided ?? list).map(
      (k, i) =>
        html`<button
          type="button"
          class="key ${sided && i === alone - 1 && alone % 2 === 1 ? 'whole' : ''}"
          @click=${(e: Event) => e.currentTarget && tell(e.currentTarget, 'write', { text: k.text, whole: true })}
        >
          ${k.label}
        </button>`,
    )}
  </div>`;
};
