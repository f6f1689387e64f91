/** Shared look of every element: box, text, keys, focus. */
import { css } from 'lit';

export const base = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  :host {
    color: var(--ink);
  }
  [hidden] {
    display: none !important;
  }
  p,
  h1,
  h2,
  h3,
  ul,
  ol,
  dl,
  dd,
  figure {
    margin: 0;
    padding: 0;
  }
  ul,
  ol {
    list-style: none;
  }
  button,
  input,
  textarea,
  select {
    font: inherit;
    color: inherit;
  }
  :focus-visible {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  .soft {
    color: var(--soft);
  }
  .typed {
    font-family: var(--typed);
  }
  .figure {
    font-variant-numeric: tabular-nums lining-nums;
    font-weight: var(--weight);
    letter-spacing: -0.01em;
  }
  .hear {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;

export const keys = css`
  .keys {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 6.25rem), 1fr));
    gap: var(--gap);
  }
  .keys.sided {
    grid-template-columns: repeat(2, minmax(0, 1fr));
    column-gap: 12px;
  }
  .key.whole {
    grid-column: 1 / -1;
  }
  @media (min-width: 700px) {
    .keys.n6 {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
  }
  @media (max-width: 699px) {
    .keys:is(.n4, .n6) {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
  .key {
    min-height: 64px;
    min-width: 0;
    padding: 6px 8px;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--key);
    font-weight: var(--weight);
    font-size: 1.0625rem;
    line-height: 1.15;
    text-align: center;
    text-wrap: balance;
    overflow-wrap: anywhere;
    cursor: pointer;
    touch-action: manipulation;
    -webkit-tap-highlight-color: transparent;
  }
  .key:active:not(:disabled) {
    background: var(--ink);
    color: var(--paper);
  }
  @media (hover: hover) {
    .key:hover:not(:disabled, :active, .main) {
      background: var(--key-down);
    }
    :host-context([data-theme='sun']) .key:hover {
      background: var(--paper);
    }
  }
  .key:disabled {
    border-style: dashed;
    color: var(--soft);
    cursor: default;
  }
  .key.main {
    background: var(--ink);
    border-color: var(--ink);
    color: var(--paper);
  }
  .key.main:disabled {
    background: transparent;
    border-color: var(--soft);
    color: var(--soft);
  }
  .key.small {
    min-height: 48px;
    font-size: 1rem;
    padding: 4px 12px;
  }
  .chip {
    flex: none;
    min-height: 44px;
    padding: 2px 12px;
    border: var(--thin) solid var(--edge);
    border-radius: var(--round);
    background: var(--paper);
    font-weight: 600;
    font-size: 1rem;
    white-space: nowrap;
    cursor: pointer;
    touch-action: manipulation;
  }
  .chip[aria-pressed='true'] {
    background: var(--ink);
    color: var(--paper);
  }
  @media (forced-colors: active) {
    .key.main:not(:disabled),
    [aria-pressed='true'],
    .bar [aria-expanded='true'] {
      forced-color-adjust: none;
      background: ButtonText;
      color: ButtonFace;
    }
  }
  .plain {
    border: 0;
    background: none;
    padding: 0;
    text-align: inherit;
    cursor: pointer;
  }
  .link {
    display: inline;
    min-height: 24px;
    border: 0;
    background: none;
    padding: 2px 0;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 3px;
    cursor: pointer;
    color: inherit;
    font: inherit;
  }
  .term {
    display: inline;
    min-height: 0;
    padding: 0;
  }
  summary {
    cursor: pointer;
    width: fit-content;
    min-height: 32px;
    padding: 4px 0;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 3px;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  details[open] > summary {
    text-decoration-style: dotted;
  }
`;
