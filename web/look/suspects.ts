/** How suspects and their bars look. */
import { css } from 'lit';

export const suspectsLook = css`
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
`;
