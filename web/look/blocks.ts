/** How the blocks of a reply are printed on the job sheet. */
import { css } from 'lit';

export const blocks = css`
  .took {
    display: flex;
    flex-wrap: wrap;
    gap: 2px 14px;
    font-size: 0.9375rem;
    color: var(--soft);
  }
  .taken {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 2px 8px;
  }
  .taken.assumed .taken-words,
  .taken.carried .taken-words,
  .taken.hunch .taken-words {
    border-bottom: 2px dashed currentColor;
  }
  .taken.unread .taken-words,
  .taken.ambiguous .taken-words,
  .taken.held .taken-words {
    border-bottom: 3px double currentColor;
    color: var(--ink);
  }
  .legend {
    font-size: 0.8125rem;
    align-self: center;
  }
  .wants .link {
    text-align: left;
  }
  .taken-mark {
    font-style: italic;
  }
  .mends {
    display: flex;
    gap: 6px;
    max-width: 100%;
    overflow-x: auto;
    scrollbar-width: none;
    padding: 2px;
  }
  .mend {
    color: var(--ink);
    font-size: 0.9375rem;
    min-height: 40px;
    align-self: center;
  }
  .caution {
    position: relative;
    border: 4px solid var(--ink);
    background:
      repeating-linear-gradient(-45deg, var(--warn-ink) 0 8px, var(--warn) 8px 16px) left / 16px 100% no-repeat,
      var(--warn-paper);
    padding-left: 16px;
  }
  .caution-in {
    display: grid;
    gap: 8px;
    padding: 10px 12px 12px;
    border-left: 4px solid var(--ink);
  }
  .caution-in p {
    line-height: 1.3;
  }
  .caution .caution-words {
    font-size: 1.25rem;
    line-height: 1.25;
    font-weight: 800;
    text-wrap: balance;
  }
  .answered {
    font-weight: var(--weight);
  }
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
  .suspects {
    display: grid;
    gap: 10px;
  }
  .suspect {
    display: flex;
    justify-content: space-between;
    align-items: baseline;
    gap: 12px;
    line-height: 1.25;
  }
  .suspect b {
    flex: none;
  }
  .bar {
    display: block;
    width: 100%;
    height: 14px;
    margin: 3px 0 1px;
    overflow: visible;
  }
  .bar-box {
    fill: var(--card);
    stroke: var(--ink);
    stroke-width: 1.5;
    vector-effect: non-scaling-stroke;
  }
  .bar-fill {
    fill: var(--ink);
  }
  .bar-was {
    fill: var(--ink);
    stroke: var(--paper);
    stroke-width: 2;
    vector-effect: non-scaling-stroke;
  }
  .suspects li {
    position: relative;
  }
  .moved {
    position: absolute;
    right: 0;
    padding-top: 4px;
    font-size: 0.875rem;
    color: var(--soft);
  }
  .speaks {
    display: grid;
    gap: 3px;
  }
  .speaks .sign {
    display: inline-block;
    width: 1.2em;
    font-weight: 800;
  }
  .small-head {
    font-size: 1rem;
    font-weight: var(--weight);
  }
  .suspect-block {
    display: grid;
    gap: 6px;
    border-top: var(--thin) solid var(--rule);
    padding-top: 8px;
  }
  .brief {
    color: var(--soft);
    font-size: 0.9375rem;
  }
  .check {
    display: grid;
    gap: 2px;
  }
  .check-words {
    text-wrap: pretty;
  }
  .check-more {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 18px;
  }
  .check-more .why[open] {
    flex-basis: 100%;
  }
  .destroys {
    font-weight: var(--weight);
  }
  .question,
  .step {
    display: grid;
    gap: 8px;
    border: var(--line) solid var(--edge);
    padding: 10px 12px 12px;
    background: var(--card);
  }
  .question-words,
  .step-words {
    font-weight: 600;
  }
  .step-of {
    color: var(--soft);
    font-size: 0.9375rem;
  }
  .teach {
    display: grid;
    gap: 6px;
    max-width: 40rem;
  }
  .teach-words {
    font-weight: 600;
  }
  .withdrawn {
    border-left: var(--line) dotted var(--edge);
    padding-left: 14px;
  }
  .picture {
    display: grid;
    gap: 4px;
  }
  figcaption {
    color: var(--soft);
    font-size: 0.9375rem;
  }
  .inline-answer {
    border-left: var(--line) dashed var(--edge);
    padding-left: 12px;
    display: grid;
    gap: 6px;
  }
`;
