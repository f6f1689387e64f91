/** How a coach's history looks, beside what every paper has. */
import { css } from 'lit';

export const historyLook = css`
  .charts {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 18rem), 1fr));
    gap: 20px 28px;
  }
  .visits a {
    color: inherit;
  }
  .visits li {
    display: grid;
    gap: 2px;
    padding: 10px 0;
  }
  .items .late {
    border-left: var(--thick) solid var(--ink);
    padding-left: 10px;
  }
  details {
    padding-top: 4px;
  }
  @media print {
    /* a long list of visits beside a short one of work leaves half of every further page empty */
    .two {
      display: block;
    }
    .visits li {
      padding: 4px 0;
      break-inside: avoid;
    }
  }
`;
