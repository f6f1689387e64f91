/** How the estimate looks, beside what every paper has. */
import { css } from 'lit';

export const estimateLook = css`
  .line {
    border-top: var(--line) solid var(--edge);
    padding: 12px 0;
    display: grid;
    gap: 8px;
    break-inside: avoid;
  }
  .cells {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 9rem), 1fr));
    gap: 8px;
  }
  .part {
    display: grid;
    grid-template-columns: minmax(0, 2fr) minmax(0, 1fr) auto;
    gap: 8px;
    align-items: end;
  }
  .sums {
    display: grid;
    grid-template-columns: auto auto;
    gap: 2px 18px;
    width: fit-content;
    font-variant-numeric: tabular-nums;
  }
  .sums dd {
    text-align: right;
  }
`;
