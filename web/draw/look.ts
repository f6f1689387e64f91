/** The strokes of all drawings: ink on paper, told apart by weight, dash and hatch. */
import { css } from 'lit';

export const drawings = css`
  .drawing {
    display: block;
    width: 100%;
    max-width: 30rem;
    height: auto;
    overflow: visible;
    font-family: var(--words);
    font-variant-numeric: tabular-nums;
  }
  .drawing text {
    fill: var(--ink);
    font-size: 14px;
  }
  .drawing .tape {
    fill: var(--card);
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .drawing .window {
    fill: var(--fill);
  }
  .drawing .limits {
    fill: none;
    stroke: var(--ink);
    stroke-width: 3.5;
  }
  .drawing .nominal {
    stroke: var(--ink);
    stroke-width: 2;
  }
  .drawing .tick {
    stroke: var(--ink);
    stroke-width: 1.2;
  }
  .drawing .mark {
    font-size: 13px;
  }
  .drawing .value {
    font-weight: 700;
    font-size: 15px;
  }
  .drawing .point {
    fill: var(--ink);
    stroke: var(--paper);
    stroke-width: 1.5;
  }
  .drawing .whisker {
    stroke: var(--ink);
    stroke-width: 1.6;
    fill: none;
  }
  .drawing .lead {
    stroke: var(--soft);
    stroke-width: 1;
  }
  .drawing .axis {
    stroke: var(--ink);
    stroke-width: 1.5;
    fill: none;
  }
  .drawing .grid {
    stroke: var(--rule);
    stroke-width: 1;
  }
  .drawing .fit {
    stroke: var(--ink);
    stroke-width: 2.5;
    fill: none;
  }
  .drawing .limit {
    stroke: var(--ink);
    stroke-width: 2;
    stroke-dasharray: 7 5;
    fill: none;
  }
  .drawing .dot {
    fill: var(--ink);
  }
  .drawing .body {
    fill: var(--card);
    stroke: var(--ink);
    stroke-width: 2;
  }
  .drawing .pipe {
    stroke: var(--ink);
    stroke-width: 2.5;
    fill: none;
  }
  .drawing .small {
    font-size: 12px;
  }
  .drawing .strong {
    font-weight: 700;
  }
  .drawing .wheel {
    fill: var(--ink);
  }
`;
