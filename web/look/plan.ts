/** How the five keys look. */
import { css } from 'lit';

export const planLook = css`
  :host {
    display: block;
    padding: 8px;
    container-type: inline-size;
  }
  .plan {
    position: relative;
    display: grid;
    grid-template:
      'lf tank rf' minmax(64px, auto) 'lr tank rr' minmax(64px, auto) / minmax(0, 1fr) minmax(0, 0.62fr)
      minmax(0, 1fr);
    gap: 8px 12px;
  }
  .key {
    position: relative;
    display: grid;
    align-content: center;
    gap: 0;
    min-width: 0;
    min-height: 64px;
    padding: 4px 7px;
    text-align: left;
    border: var(--line) solid var(--edge);
    border-radius: var(--round);
    background: var(--card);
    cursor: pointer;
    touch-action: manipulation;
    -webkit-tap-highlight-color: transparent;
    line-height: 1.15;
  }
  .key:active {
    background: var(--ink);
    color: var(--paper);
  }
  .key.low {
    border-bottom-width: 8px;
  }
  .key.high {
    border-top-width: 8px;
  }
  .key.low::after,
  .key.high::after {
    content: '';
    position: absolute;
    inset: 3px;
    border: 1px solid var(--edge);
    pointer-events: none;
  }
  .place {
    font-size: 0.875rem;
    color: var(--soft);
    white-space: nowrap;
  }
  .key:active .place,
  .key:active .unit {
    color: inherit;
  }
  .place b {
    color: var(--ink);
  }
  .figure {
    font-size: 1.5rem;
    line-height: 1.1;
    white-space: nowrap;
  }
  .unit {
    font-size: 0.875rem;
    font-weight: 500;
    color: var(--soft);
    letter-spacing: 0;
  }
  .none {
    color: var(--soft);
    font-weight: 400;
    font-size: 1.125rem;
  }
  .beside {
    font-size: 0.875rem;
    font-variant-numeric: tabular-nums;
    white-space: nowrap;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .lf {
    grid-area: lf;
  }
  .rf {
    grid-area: rf;
  }
  .lr {
    grid-area: lr;
  }
  .rr {
    grid-area: rr;
  }
  .tank {
    grid-area: tank;
    text-align: center;
    overflow: hidden;
    justify-items: center;
  }
  .tank > * {
    position: relative;
  }
  .tank .level {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
  }
  .level .water {
    fill: var(--fill);
  }
  .level .cut {
    stroke: var(--edge);
    stroke-width: 2;
    vector-effect: non-scaling-stroke;
  }
  .key:active .level {
    display: none;
  }
  /* wheels at the outer edge of each key: one in front, two of the tandem behind */
  .wheel {
    position: absolute;
    top: 50%;
    width: 5px;
    height: 22px;
    translate: 0 -50%;
    background: var(--edge);
    border-radius: 2px;
  }
  .wheel.twin {
    height: 18px;
  }
  .wheel.twin.first {
    top: 30%;
  }
  .wheel.twin.second {
    top: 70%;
  }
  .l .wheel {
    left: -6px;
  }
  .r .wheel {
    right: -6px;
  }
  :host([compact]) {
    padding: 4px 8px;
  }
  :host([compact]) .plan {
    grid-template-areas: 'lf rf tank lr rr';
    grid-template-columns: repeat(5, minmax(0, 1fr));
    grid-template-rows: 44px;
    gap: 4px;
  }
  :host([compact]) .key {
    min-height: 44px;
    padding: 1px 3px;
    justify-items: center;
    text-align: center;
  }
  :host([compact]) .key.low {
    border-bottom-width: 5px;
  }
  :host([compact]) .key.high {
    border-top-width: 5px;
  }
  :host([compact]) .place {
    font-size: 0.8125rem;
    line-height: 1;
  }
  :host([compact]) .figure {
    font-size: 1rem;
  }
  :host([compact]) .key::after,
  :host([compact]) :is(.unit, .beside, .wheel, .level) {
    display: none;
  }
  /* "right front ▼ low" is wider than its key there: mark and edge say it, as in the compact plan */
  @container (max-width: 26rem) {
    .low-words {
      display: none;
    }
  }
  @container (max-width: 20rem) {
    .figure {
      font-size: 1.3125rem;
    }
  }
  /* "right front ▼ high" needs as much */
  @container (max-width: 24rem) {
    .low-words {
      display: none;
    }
  }
  @container (min-width: 30rem) {
    .figure {
      font-size: 1.75rem;
    }
    .place {
      font-size: 1rem;
    }
    .key {
      min-height: 76px;
      padding-inline: 12px;
    }
  }
`;
