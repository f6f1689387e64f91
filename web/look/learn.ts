/** How the pages to read look: one column of text, large enough to read at arm's length. */
import { css } from 'lit';
import { scroller } from './scroller.ts';

export const learnLook = css`
  ${scroller}
  main {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 20px;
    max-width: 46rem;
    margin: 0 auto;
    padding: 12px 16px 48px;
  }
  .crumbs {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 24px;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  .crumbs a {
    padding: 10px 0;
  }
  h1 {
    font-size: 1.75rem;
    font-weight: 800;
    letter-spacing: -0.01em;
  }
  h2 {
    font-size: 1.1875rem;
    font-weight: 800;
    margin-top: 12px;
  }
  form {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 8px;
  }
  label {
    grid-column: 1 / -1;
    font-weight: 600;
  }
  input {
    min-width: 0;
    min-height: 64px;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--card);
    padding: 6px 12px;
    font-size: 1.125rem;
  }
  article {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 12px;
    line-height: 1.45;
  }
  .answer {
    border-top: var(--line) solid var(--edge);
    padding-top: 12px;
  }
  .lead {
    font-size: 1.1875rem;
  }
  .links,
  .words {
    list-style: none;
    margin: 0;
    padding: 0;
    display: grid;
  }
  .links li {
    padding: 11px 0;
    border-bottom: var(--thin) solid var(--rule);
  }
  .links.wide li {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    align-items: baseline;
    gap: 0 16px;
  }
  .links.wide .soft {
    flex: none;
    font-variant-numeric: tabular-nums;
  }
  .links a {
    font-weight: 600;
  }
  .words div {
    display: grid;
    gap: 0 16px;
    padding: 10px 0;
    border-bottom: var(--thin) solid var(--rule);
  }
  .words dt {
    font-weight: var(--weight);
  }
  dd {
    margin: 0;
  }
  .steps {
    margin: 0;
    padding: 0;
    list-style: none;
    counter-reset: step;
    display: grid;
    gap: 20px;
  }
  .steps > li {
    counter-increment: step;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    position: relative;
    padding-left: 48px;
  }
  .steps > li::before {
    content: counter(step);
    position: absolute;
    left: 0;
    top: -4px;
    font-size: 1.625rem;
    font-weight: 800;
    font-variant-numeric: tabular-nums;
  }
  .steps dl {
    margin: 0;
    display: grid;
    gap: 2px 14px;
    border-left: var(--thick) solid var(--rule);
    padding-left: 12px;
  }
  .steps dt {
    font-weight: 600;
  }
  .warn {
    border: var(--line) solid var(--edge);
    border-left-width: 10px;
    padding: 6px 10px;
  }
  .caution ul {
    margin: 8px 0;
    padding-left: 20px;
    display: grid;
    gap: 6px;
  }
  .turn {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 12px;
    margin-top: 12px;
  }
  .turn a,
  .practice a {
    display: grid;
    place-items: center;
    text-decoration: none;
  }
  @media (min-width: 700px) {
    .words div {
      grid-template-columns: 11rem minmax(0, 1fr);
    }
    .steps dl {
      grid-template-columns: minmax(8rem, 14rem) minmax(0, 1fr);
    }
  }
  @media print {
    form,
    .crumbs,
    .turn,
    .practice {
      display: none;
    }
    :host {
      height: auto;
    }
  }
`;
