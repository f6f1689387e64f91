/** How the bar and the menu look. */
import { css } from 'lit';

export const pageLook = css`
  :host {
    display: block;
    height: 100%;
  }
  .shell {
    display: flex;
    flex-direction: column;
    height: 100dvh;
    position: relative;
  }
  main {
    flex: 1;
    min-height: 0;
  }
  .bar {
    display: flex;
    align-items: stretch;
    min-height: 44px;
    border-bottom: var(--line) solid var(--edge);
    font-size: 0.9375rem;
  }
  .bar button {
    flex: none;
    min-width: 56px;
    border: 0;
    background: none;
    font-weight: var(--weight);
    padding: 0 12px;
    cursor: pointer;
  }
  @media (forced-colors: none) {
    .bar button[aria-pressed='true'],
    .bar button[aria-expanded='true'] {
      background: var(--ink);
      color: var(--paper);
    }
  }
  .title {
    flex: 1;
    min-width: 0;
    display: flex;
    align-items: center;
    gap: 8px;
    padding: 0 4px;
  }
  .title h1 {
    font-size: 1rem;
    font-weight: var(--weight);
    white-space: nowrap;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .link-state {
    flex: none;
    color: var(--soft);
  }
  .link-state.away {
    color: var(--ink);
    border: 2px dashed currentColor;
    padding: 0 6px;
    font-weight: var(--weight);
  }
  @media print {
    .bar,
    soap-menu {
      display: none;
    }
    :host,
    .shell {
      display: block;
      height: auto;
    }
  }
  .gone {
    padding: 32px 20px;
    display: grid;
    gap: 16px;
    justify-items: start;
  }
`;
