/** How the board looks. */
import { css } from 'lit';

export const sideLook = css`
  :host {
    display: block;
  }
  .side {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 22px;
    padding: 12px 14px 24px;
  }
  .side.left {
    padding: 4px 8px 16px;
  }
  section {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }
  h2 {
    font-size: 1.125rem;
    font-weight: 800;
  }
  .list {
    display: grid;
    gap: 5px;
  }
  .list li {
    display: grid;
    grid-template-columns: 1.25rem minmax(0, 1fr);
    gap: 6px;
    line-height: 1.3;
  }
  .box {
    width: 16px;
    height: 16px;
    margin-top: 3px;
    border: 2px solid var(--edge);
  }
  .box.full {
    background: var(--ink);
  }
  .box.unsure {
    border-style: dashed;
  }
  .reading {
    display: grid;
    gap: 2px;
    border-top: var(--thin) solid var(--rule);
    padding-top: 6px;
  }
  .reading p {
    display: flex;
    justify-content: space-between;
    gap: 10px;
    line-height: 1.25;
  }
  .reading b {
    white-space: nowrap;
  }
  .also {
    font-size: 0.9375rem;
  }
`;
