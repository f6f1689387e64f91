/** How a coach sheet looks while it is filled in. */
import { css } from 'lit';

export const sheetLook = css`
  .group {
    border-top: var(--line) solid var(--edge);
    padding-top: 10px;
  }
  .group > summary {
    font-size: 1.1875rem;
    font-weight: 800;
    min-height: 44px;
    text-decoration: none;
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    align-items: baseline;
    width: auto;
  }
  .group > summary::before {
    content: '+';
    width: 1ch;
  }
  .group[open] > summary::before {
    content: '−';
  }
  .group > summary .soft {
    font-size: 1rem;
    font-weight: 400;
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr));
    gap: 16px 24px;
    padding: 10px 0 18px;
    align-items: start;
  }
  .wide {
    grid-column: 1 / -1;
  }
  fieldset {
    border: 0;
    margin: 0;
    padding: 0;
    min-width: 0;
  }
  legend {
    font-weight: 600;
    padding: 0;
  }
  fieldset label {
    font-weight: 400;
    font-size: 0.9375rem;
  }
  .set {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 7rem), 1fr));
    gap: 8px;
    align-items: end;
  }
  .row {
    border-bottom: var(--thin) solid var(--rule);
    padding: 8px 0;
    margin-bottom: 6px;
    align-items: start;
  }
  .row .key {
    align-self: end;
  }
  .small {
    font-size: 0.875rem;
  }
  .save.changed {
    position: sticky;
    bottom: 0;
  }
  .save .go {
    grid-template-columns: 1fr 1fr;
  }
  .save {
    background: var(--paper);
    border-top: var(--line) solid var(--edge);
    padding: 10px 0;
    display: grid;
    gap: 8px;
  }
  .versions {
    display: grid;
    gap: 2px;
  }
  .spec {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 8px;
    align-items: center;
  }
  @media (max-width: 599px) {
    .spec {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;
