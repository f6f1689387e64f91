/** The strokes of all drawings: ink on paper, told apart by weight, dash and hatch. */
import { css } from 'lit';

export const drawings = css`
  .drawing {
    display: block;
    width: 100%;
    max-width: 26rem;
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
  .drawing .edge {
    font-size: 14px;
    font-weight: 700;
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
  .drawing .halo {
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 5px;
    stroke-linejoin: round;
  }
  .drawing .pipe.joined {
    stroke-width: 7;
    stroke: var(--soft);
  }
  .drawing .pipe.lit {
    stroke-width: 7;
    stroke-dasharray: 9 4;
    stroke: var(--ink);
  }
  .drawing .part {
    fill: var(--card);
    stroke: var(--ink);
    stroke-width: 2;
  }
  .drawing .part.joined {
    fill: url(#joined);
  }
  .drawing .part.lit {
    stroke-width: 5;
  }
  .drawing .flag {
    fill: var(--ink);
  }
  .drawing .hatch-ground {
    fill: var(--card);
  }
  .drawing .hatch {
    stroke: var(--soft);
    stroke-width: 1.4;
  }
  .drawing .part-name,
  .drawing .part ~ .value {
    paint-order: stroke;
    stroke: var(--card);
    stroke-width: 5px;
    stroke-linejoin: round;
  }
  .drawing .tap {
    cursor: pointer;
  }
  .drawing .tap:hover .part {
    fill: var(--key);
  }
  .drawing .tap:focus-visible {
    outline: none;
  }
  .drawing .tap:focus-visible .part {
    stroke: var(--focus);
    stroke-width: 5;
  }
  .drawing .shim {
    fill: var(--ink);
  }
  .drawing .take-out {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
    stroke-dasharray: 4 3;
  }
  .drawing .leg {
    stroke: var(--ink);
    stroke-width: 2;
  }
  .drawing .leg.guilty {
    stroke-width: 9;
  }
  .drawing .node {
    fill: var(--card);
    stroke: var(--ink);
    stroke-width: 2.5;
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
