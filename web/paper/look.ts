/** How papers look, on screen and printed: shared by all of them. */
import { css } from 'lit';
import { scroller } from '../look/scroller.ts';

export const paperLook = css`
  ${scroller}
  .paper {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 24px;
    max-width: 60rem;
    margin: 0 auto;
    padding: 14px 14px 60px;
  }
  .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .acts a,
  a.key {
    display: grid;
    place-items: center;
    color: inherit;
    text-decoration: none;
  }
  .head {
    display: grid;
    gap: 4px;
    border-bottom: var(--line) solid var(--edge);
    padding-bottom: 12px;
  }
  h1 {
    font-size: 1.625rem;
    font-weight: 800;
    letter-spacing: -0.02em;
    overflow-wrap: anywhere;
  }
  h2 {
    font-size: 1.1875rem;
    font-weight: 800;
    padding-bottom: 6px;
  }
  h3 {
    font-size: 1rem;
    font-weight: 700;
  }
  section {
    min-width: 0;
  }
  .two {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr));
    gap: 20px 32px;
  }
  .items li {
    padding: 5px 0;
    border-top: var(--thin) solid var(--rule);
    overflow-wrap: anywhere;
  }
  .items b {
    font-weight: var(--weight);
  }
  .quote {
    font-family: var(--typed);
    font-size: 1.125rem;
    overflow-wrap: anywhere;
  }
  .scroll {
    position: relative;
    overflow-x: auto;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }
  th {
    text-align: left;
    font-size: 0.875rem;
    color: var(--soft);
    font-weight: 600;
    padding: 4px 14px 4px 0;
    border-bottom: var(--line) solid var(--edge);
  }
  td {
    padding: 6px 14px 6px 0;
    border-bottom: var(--thin) solid var(--rule);
    vertical-align: top;
  }
  .num {
    text-align: right;
    white-space: nowrap;
  }
  .wrong,
  .told {
    border: 3px double var(--ink);
    padding: 8px 12px;
    font-weight: var(--weight);
  }
  .told {
    border: var(--thin) solid var(--edge);
    font-weight: 400;
  }
  label {
    font-weight: 600;
  }
  input,
  select,
  textarea {
    width: 100%;
    min-height: 48px;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--card);
    padding: 4px 10px;
    font-size: 1.0625rem;
  }
  input::placeholder {
    color: var(--soft);
    opacity: 1;
  }
  [aria-invalid='true'] {
    border-style: dashed;
    border-width: 3px;
  }
  .mend {
    font-weight: 600;
  }
  .go {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 11rem), 1fr));
    gap: 10px;
    max-width: 40rem;
  }
  p + .go,
  .charts + .go {
    margin-top: 12px;
  }
  .go .soft {
    font-weight: normal;
  }
  .links a {
    color: inherit;
    display: inline-block;
    padding: 6px 0;
    margin-right: 14px;
  }
  @media print {
    :host {
      height: auto;
      overflow: visible;
    }
    .paper {
      max-width: none;
      padding: 0;
      gap: 12px;
      font-size: 10pt;
      line-height: 1.25;
    }
    .acts,
    .no-print {
      display: none !important;
    }
    h1 {
      font-size: 15pt;
    }
    h2 {
      font-size: 11.5pt;
      break-after: avoid;
      padding-bottom: 2px;
    }
    .items li,
    td {
      padding: 2px 0;
    }
    li,
    tr,
    .card {
      break-inside: avoid;
    }
  }
`;
