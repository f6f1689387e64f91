/** How papers look, on screen and printed: over what every paper shares. */
import { css } from 'lit';
import { paper } from '../look/paper.ts';

export const paperLook = css`
  .shop {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 4px 24px;
  }
  .lines {
    white-space: pre-line;
  }
  ${paper}
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
    .paper {
      font-size: 10pt;
      line-height: 1.25;
    }
    h1 {
      font-size: 15pt;
    }
    h2 {
      font-size: 11.5pt;
      padding-bottom: 2px;
    }
    .items li,
    td {
      padding: 2px 0;
    }
    li,
    .card {
      break-inside: avoid;
    }
  }
`;
