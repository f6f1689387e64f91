/** How the ruled job sheet looks between its exchanges. */
import { css } from 'lit';

export const sheetLook = css`
  :host {
    display: block;
    /* what is for hearing only stands where its scroller is, and does not lengthen the whole page */
    position: relative;
    overflow-y: auto;
    overflow-x: hidden;
    overscroll-behavior: contain;
    background: var(--paper);
  }
  .earlier {
    display: grid;
    padding: 8px 10px;
    border-bottom: var(--thin) solid var(--rule);
  }
  .day {
    padding: 4px 10px;
    font-size: 0.875rem;
    font-weight: var(--weight);
    border-bottom: var(--thin) solid var(--rule);
  }
  .note {
    padding: 10px;
    color: var(--soft);
  }
  .empty {
    padding: 24px 16px;
    display: grid;
    gap: 8px;
    max-width: 36rem;
  }
  @media (max-width: 699px) {
    .empty .keys {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
  .empty h2 {
    font-size: 1.375rem;
  }
`;
