/** The transcript on screen and on paper. */
import { css } from 'lit';
import { paper } from './paper.ts';

export const tables = css`
  ${paper}
  .paper {
    gap: 26px;
  }
  table {
    font-size: 1rem;
  }
  th {
    white-space: nowrap;
  }
  td:first-child {
    white-space: nowrap;
  }
  @media (max-width: 600px) {
    td:nth-child(2) {
      min-width: 9rem;
    }
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
    .paper {
      gap: 16px;
    }
    .add-remark,
    .remark-form,
    summary {
      display: none;
    }
    .ref {
      text-decoration: none;
    }
    .row,
    .finding,
    .caution {
      break-inside: avoid;
    }
    .drawing {
      max-width: 9cm;
    }
  }
`;
