/** The transcript on screen and on paper. */
import { css } from 'lit';
import { scroller } from './scroller.ts';

export const tables = css`
  ${scroller}
  .paper {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 26px;
    max-width: 60rem;
    margin: 0 auto;
    padding: 14px 14px 60px;
  }
  .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .acts a {
    display: grid;
    place-items: center;
    color: inherit;
    text-decoration: none;
  }
  header {
    display: grid;
    gap: 4px;
    border-bottom: var(--line) solid var(--edge);
    padding-bottom: 12px;
  }
  h1 {
    font-size: 1.625rem;
    font-weight: 800;
    letter-spacing: -0.02em;
  }
  h2 {
    font-size: 1.1875rem;
    font-weight: 800;
    padding-bottom: 6px;
  }
  .complaint {
    font-family: var(--typed);
    font-size: 1.125rem;
  }
  .scroll {
    position: relative;
    overflow-x: auto;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
    font-size: 1rem;
  }
  th {
    text-align: left;
    font-size: 0.875rem;
    color: var(--soft);
    font-weight: 600;
    padding: 4px 14px 4px 0;
    border-bottom: var(--line) solid var(--edge);
    white-space: nowrap;
  }
  td {
    padding: 6px 14px 6px 0;
    border-bottom: var(--thin) solid var(--rule);
    vertical-align: top;
  }
  td:first-child {
    white-space: nowrap;
  }
  @media (max-width: 600px) {
    td:nth-child(2) {
      min-width: 9rem;
    }
  }
  .num {
    text-align: right;
    white-space: nowrap;
  }
  .gone,
  .gone b {
    text-decoration: line-through;
    color: var(--soft);
  }
  .ref {
    min-width: 28px;
  }
  .plain-list li {
    display: grid;
    grid-template-columns: 3.25rem minmax(0, 1fr) auto;
    gap: 10px;
    padding: 6px 0;
    border-top: var(--thin) solid var(--rule);
  }
  .at {
    font-variant-numeric: tabular-nums;
  }
  .row {
    display: grid;
    grid-template-columns: 3.25rem minmax(0, 1fr);
    gap: 10px;
    padding: 12px 0;
    border-top: var(--thin) solid var(--rule);
    scroll-margin-top: 8px;
  }
  .row.mark {
    color: var(--soft);
  }
  .when {
    font-size: 0.9375rem;
    font-variant-numeric: tabular-nums;
    line-height: 1.3;
  }
  .said {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }
  .text {
    font-family: var(--typed);
    font-size: 1.0625rem;
    white-space: pre-wrap;
    overflow-wrap: anywhere;
  }
  .said img {
    max-width: min(100%, 20rem);
    height: auto;
    border: var(--line) solid var(--edge);
  }
  .remark {
    border-left: var(--line) dotted var(--edge);
    padding-left: 10px;
  }
  .remark-form {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .remark-form textarea {
    flex: 1 1 100%;
    border: var(--line) solid var(--edge);
    background: var(--card);
    padding: 8px;
  }
  .add-remark {
    justify-self: start;
    color: var(--soft);
    font-size: 0.9375rem;
  }
  @media print {
    :host {
      height: auto;
      overflow: visible;
    }
    .paper {
      max-width: none;
      padding: 0;
      gap: 16px;
    }
    .acts,
    .add-remark,
    .remark-form,
    summary {
      display: none;
    }
    .ref {
      text-decoration: none;
    }
    .row,
    tr,
    .finding,
    .caution {
      break-inside: avoid;
    }
    h2 {
      break-after: avoid;
    }
    .drawing {
      max-width: 9cm;
    }
  }
`;
