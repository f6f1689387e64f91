/** How long work looks while it goes on. */
import { css } from 'lit';

export const workLook = css`
  .work {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    align-items: center;
    gap: 4px 12px;
    margin: 8px 8px 0;
    padding: 6px 10px;
    border-left: var(--thick) solid var(--edge);
    background: var(--card);
  }
  .work p {
    overflow-wrap: anywhere;
  }
  .work .key {
    grid-area: 1 / 2 / span 2;
  }
  progress {
    appearance: none;
    width: 100%;
    height: 12px;
    border: var(--line) solid var(--edge);
    background: var(--paper);
  }
  progress::-webkit-progress-bar {
    background: var(--paper);
  }
  progress::-webkit-progress-value {
    background: var(--ink);
  }
  progress::-moz-progress-bar {
    background: var(--ink);
  }
  progress:indeterminate {
    border-style: dashed;
  }
`;
