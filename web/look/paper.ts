/** Paper on screen and printed: the column, its head and headings, plain tables. What every paper and the transcript share. */
import { css } from 'lit';
import { scroller } from './scroller.ts';

export const paper = css`
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
  @media print {
    :host {
      height: auto;
      overflow: visible;
    }
    .paper {
      max-width: none;
      padding: 0;
      gap: 12px;
    }
    .acts,
    .no-print {
      display: none !important;
    }
    h2 {
      break-after: avoid;
    }
    tr {
      break-inside: avoid;
    }
  }
`;
