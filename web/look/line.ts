/** How the note line looks. */
import { css } from 'lit';

export const lineLook = css`
  :host {
    display: grid;
    gap: 8px;
    padding-bottom: max(8px, env(safe-area-inset-bottom));
  }
  .line {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr) auto;
    gap: 8px;
    padding: 8px 8px 0;
    align-items: stretch;
  }
  .line .key {
    min-width: 64px;
  }
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--card);
    min-height: 64px;
  }
  .field:focus-within {
    outline: 3px solid var(--focus);
    outline-offset: 1px;
  }
  textarea {
    border: 0;
    outline: 0;
    resize: none;
    background: none;
    min-width: 0;
    width: 100%;
    font-family: var(--typed);
    font-size: 1.125rem;
    line-height: 1.3;
    padding: 6px 4px 6px 10px;
    align-self: center;
    field-sizing: content;
    min-height: 1.3em;
    max-height: 8.2em;
  }
  textarea:focus-visible {
    outline: 0;
  }
  textarea::placeholder {
    color: var(--soft);
    opacity: 1;
  }
  .toggle {
    border: 0;
    border-left: var(--thin) solid var(--rule);
    background: none;
    min-width: 46px;
    padding: 0 4px;
    font-weight: var(--weight);
    font-size: 0.9375rem;
    cursor: pointer;
  }
  @media (forced-colors: none) {
    .toggle[aria-pressed='true'] {
      background: var(--ink);
      color: var(--paper);
    }
  }
  .under {
    padding: 0 10px;
    min-height: 0;
    max-height: 7.5rem;
    overflow-y: auto;
  }
  .under .took {
    font-size: 1rem;
  }
  .under .lead {
    font-size: 0.875rem;
    color: var(--soft);
  }
  .chips {
    display: flex;
    gap: 6px;
    overflow-x: auto;
    padding: 2px 8px;
    scrollbar-width: none;
  }
  @media (min-width: 700px) {
    .chips {
      flex-wrap: wrap;
    }
  }
  .picture-chip {
    border-style: dashed;
  }
  .long {
    font-weight: var(--weight);
  }
  .file {
    display: contents;
  }
  .file input {
    position: absolute;
    width: 1px;
    height: 1px;
    opacity: 0;
  }
  .file:focus-within .chip {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  label.chip {
    display: inline-flex;
    align-items: center;
  }
`;
