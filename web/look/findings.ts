/** How findings and their "why" look. */
import { css } from 'lit';

export const findingsLook = css`
  .finding {
    display: grid;
    gap: 4px;
    border-left: var(--thick) solid var(--ink);
    padding: 2px 0 4px 12px;
  }
  .finding.within,
  .finding.no-limit {
    border-left: var(--line) solid var(--ink);
    padding-left: 16px;
  }
  .finding.cannot-tell {
    border-left: var(--thick) dotted var(--ink);
  }
  .finding-words {
    font-size: 1.3125rem;
    line-height: 1.22;
    font-weight: 800;
    letter-spacing: -0.01em;
    font-variant-numeric: tabular-nums;
    text-wrap: pretty;
  }
  .finding.within .finding-words,
  .finding.no-limit .finding-words {
    font-size: 1.125rem;
    font-weight: 600;
  }
  .finding .mark {
    display: inline-block;
    margin-right: 0.35em;
    font-size: 0.85em;
  }
  .finding.within .mark {
    font-size: 0.6em;
    vertical-align: 0.15em;
  }
  .finding .drawing {
    margin: 6px 0 2px;
  }
  .whys {
    display: flex;
    flex-wrap: wrap;
    align-items: start;
    gap: 0 20px;
  }
  .whys .why[open] {
    flex-basis: 100%;
  }
  .why > summary {
    color: var(--soft);
    font-size: 0.9375rem;
  }
  .why-in {
    display: grid;
    gap: 6px;
    margin: 2px 0 8px;
    padding: 8px 12px;
    border: var(--thin) solid var(--rule);
    background: var(--card);
    font-size: 1rem;
  }
  .formula {
    font-family: var(--typed);
    font-size: 0.9375rem;
    overflow-wrap: anywhere;
  }
  .inputs {
    display: grid;
    gap: 4px;
  }
  .inputs > div {
    display: grid;
    grid-template-columns: minmax(0, 2fr) minmax(0, 3fr);
    gap: 10px;
    border-top: var(--thin) solid var(--rule);
    padding-top: 4px;
  }
`;
