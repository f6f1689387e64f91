/** How the read-back looks: what was assumed, and what was not read. */
import { css } from 'lit';

export const tookLook = css`
  .took {
    display: flex;
    flex-wrap: wrap;
    gap: 2px 14px;
    font-size: 0.9375rem;
    color: var(--soft);
  }
  .taken {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 2px 8px;
  }
  .taken.assumed .taken-words,
  .taken.carried .taken-words,
  .taken.hunch .taken-words {
    border-bottom: 2px dashed currentColor;
  }
  .taken.unread .taken-words,
  .taken.ambiguous .taken-words,
  .taken.held .taken-words {
    border-bottom: 3px double currentColor;
    color: var(--ink);
  }
  .legend {
    font-size: 0.8125rem;
    align-self: center;
  }
  .wants .link {
    text-align: left;
  }
  .taken-mark {
    font-style: italic;
  }
  .mends {
    display: flex;
    gap: 6px;
    max-width: 100%;
    overflow-x: auto;
    scrollbar-width: none;
    padding: 2px;
  }
  .mend {
    color: var(--ink);
    font-size: 0.9375rem;
    min-height: 40px;
    align-self: center;
  }
`;
