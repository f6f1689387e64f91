/** How the blocks of a reply are printed on the job sheet. */
import { css } from 'lit';
import { cautionLook } from './caution.ts';
import { findingsLook } from './findings.ts';
import { suspectsLook } from './suspects.ts';
import { tookLook } from './took.ts';

const others = css`
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
  .teach > .explain {
    justify-self: start;
  }
  .head-row {
    display: flex;
    justify-content: space-between;
    align-items: baseline;
    gap: 14px;
  }
  .explain {
    min-height: 24px;
    color: var(--soft);
    font-size: 0.9375rem;
    font-weight: 400;
  }
  .check-more .explain,
  .whys .explain {
    min-height: 32px;
  }
  .explain[aria-expanded='true'] {
    text-decoration-style: dotted;
  }
  .explained {
    border-left: var(--line) dashed var(--edge);
    padding: 2px 0 2px 12px;
    font-size: 1rem;
    scroll-margin: 8px;
  }
  .explained a {
    color: inherit;
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

export const blocks = [tookLook, cautionLook, findingsLook, suspectsLook, others];
