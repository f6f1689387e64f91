/** How the first page looks. */
import { css } from 'lit';
import { scroller } from './scroller.ts';

export const startLook = css`
  ${scroller}
  main {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 28px;
    max-width: 62rem;
    margin: 0 auto;
    padding: 20px 16px 40px;
  }
  header {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    align-items: baseline;
    gap: 4px 16px;
    border-bottom: var(--line) solid var(--edge);
    padding-bottom: 10px;
  }
  nav {
    display: flex;
    flex-wrap: wrap;
    gap: 0 20px;
    margin-left: auto;
  }
  header a {
    color: inherit;
    padding: 8px 0;
  }
  .role {
    padding: 12px;
    border: 3px double var(--ink);
    font-weight: var(--weight);
  }
  .papers a {
    color: inherit;
    display: inline-block;
    padding: 8px 0;
    margin-right: 16px;
  }
  .refused {
    grid-column: 1 / -1;
    border: 3px double var(--ink);
    padding: 10px 14px;
    overflow-wrap: anywhere;
  }
  h1 {
    font-size: 1.625rem;
    font-weight: 800;
    letter-spacing: -0.02em;
  }
  h2 {
    font-size: 1.1875rem;
    font-weight: 800;
  }
  section {
    display: grid;
    gap: 12px;
    align-content: start;
  }
  label {
    font-weight: 600;
  }
  input {
    width: 100%;
    min-height: 56px;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--card);
    padding: 6px 12px;
    font-size: 1.125rem;
  }
  input::placeholder {
    color: var(--soft);
    opacity: 1;
  }
  .who {
    display: grid;
    gap: 4px;
    max-width: 12rem;
  }
  .coaches {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
    gap: 10px;
  }
  .coach {
    display: grid;
    gap: 2px;
    min-height: 76px;
    padding: 10px 14px;
    text-align: left;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--card);
    cursor: pointer;
  }
  .coach b {
    font-size: 1.1875rem;
  }
  .coach[aria-pressed='true'] {
    border-width: 2px 2px 2px 10px;
    background: var(--key);
  }
  .go {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 12rem), 1fr));
    gap: 10px;
    max-width: 36rem;
  }
  .missing {
    border: 3px double var(--ink);
    padding: 8px 12px;
    font-weight: var(--weight);
  }
  .sessions a {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 2px 14px;
    padding: 12px 2px;
    border-top: var(--thin) solid var(--rule);
    color: inherit;
    text-decoration: none;
  }
  .sessions li:last-child a {
    border-bottom: var(--thin) solid var(--rule);
  }
  .sessions b {
    font-size: 1.0625rem;
  }
  .sessions .words {
    grid-column: 1 / -1;
    font-family: var(--typed);
    font-size: 1rem;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .tag {
    border: var(--thin) solid currentColor;
    padding: 0 6px;
    font-size: 0.875rem;
    white-space: nowrap;
  }
  @media (hover: hover) {
    .sessions a:hover {
      background: var(--key);
    }
  }
  @media (min-width: 900px) {
    main {
      grid-template-columns: minmax(0, 5fr) minmax(0, 6fr);
      gap: 36px 48px;
      padding-top: 36px;
    }
    header {
      grid-column: 1 / -1;
    }
  }
`;
