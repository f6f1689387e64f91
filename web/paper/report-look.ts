/** How the owner's report looks: one or two sheets of paper. */
import { css } from 'lit';

export const reportLook = css`
  .word {
    border: var(--line) solid var(--edge);
    padding: 8px 12px;
  }
  .stop {
    border: var(--thick) solid var(--ink);
    background: var(--warn-paper);
    padding: 10px 14px;
    display: grid;
    gap: 6px;
  }
  .stop h2 {
    font-size: 1.375rem;
    padding: 0;
  }
  .cards {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr));
    gap: 16px 28px;
  }
  .card {
    display: grid;
    gap: 4px;
    align-content: start;
  }
  .card dl {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(6rem, 1fr));
  }
  .card dt {
    color: var(--soft);
    font-size: 0.875rem;
  }
  .card dd {
    font-size: 1.25rem;
    font-weight: var(--weight);
    font-variant-numeric: tabular-nums;
  }
  .card .soft {
    font-size: 0.875rem;
  }
  .photos {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 11rem), 1fr));
    gap: 14px;
    padding-top: 12px;
  }
  .photos img {
    width: 100%;
    height: 10rem;
    object-fit: contain;
    object-position: left;
    display: block;
  }
  .signs {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 16rem), 1fr));
    gap: 24px 40px;
    padding-top: 34px;
  }
  .signs p {
    border-top: var(--line) solid var(--ink);
    padding-top: 4px;
  }
  .mark {
    font-family: var(--typed);
    font-size: 0.875rem;
    overflow-wrap: anywhere;
  }
  .foot {
    border-top: var(--thin) solid var(--rule);
    padding-top: 8px;
    display: grid;
    gap: 4px;
    font-size: 0.9375rem;
  }
  @media print {
    .cards {
      grid-template-columns: repeat(3, minmax(0, 1fr));
      gap: 8px 18px;
    }
    .card dd {
      font-size: 11pt;
    }
    .photos {
      grid-template-columns: repeat(4, minmax(0, 1fr));
    }
    .photos img {
      height: 3.4cm;
    }
    .two {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      gap: 10px 24px;
    }
    .stop,
    .signs,
    .foot {
      break-inside: avoid;
    }
    .foot,
    .mark {
      font-size: 8.5pt;
    }
    .signs {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`;
