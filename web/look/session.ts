/** How the three bands, and the three columns look. */
import { css } from 'lit';

export const sessionLook = css`
  :host {
    display: grid;
    grid-template: 'plan' auto 'sheet' minmax(0, 1fr) 'foot' auto / minmax(0, 1fr);
    min-height: 0;
    height: 100%;
  }
  .plan {
    grid-area: plan;
    border-bottom: var(--line) solid var(--edge);
  }
  .under {
    min-height: 44px;
  }
  soap-sheet {
    grid-area: sheet;
    min-height: 0;
  }
  .foot {
    grid-area: foot;
    border-top: var(--line) solid var(--edge);
    background: var(--paper);
    min-width: 0;
  }
  .right {
    grid-area: sheet;
    overflow-y: auto;
    background: var(--paper);
    z-index: 1;
  }
  .trouble {
    display: flex;
    justify-content: space-between;
    gap: 12px;
    margin: 8px 8px 0;
    padding: 8px 10px;
    border: 3px double var(--ink);
    font-weight: var(--weight);
  }
  .told {
    margin: 8px 8px 0;
    padding: 8px 10px;
    border-left: var(--thick) solid var(--edge);
    background: var(--card);
  }
  .foot soap-timer {
    display: block;
    padding: 0 8px;
  }
  .closed {
    display: grid;
    gap: 8px;
    padding: 10px;
  }
  :host([wide]) {
    grid-template:
      'left sheet side' minmax(0, 1fr)
      'left foot side' auto / minmax(18rem, 23rem) minmax(0, 1fr) minmax(17rem, 23rem);
  }
  :host([wide]) .plan {
    grid-area: left;
    border-bottom: 0;
    border-right: var(--line) solid var(--edge);
    overflow-y: auto;
    padding: 8px;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 12px;
  }
  :host([wide]) soap-plan {
    padding: 0;
  }
  :host([wide]) .right {
    grid-area: side;
    border-left: var(--line) solid var(--edge);
  }
  :host([wide]) .foot soap-line,
  :host([wide]) .foot soap-next {
    max-width: 52rem;
  }
`;
