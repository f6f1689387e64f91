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
  .box.no {
    background: linear-gradient(to top right, transparent 43%, var(--ink) 43% 57%, transparent 57%);
  }
  .part {
    display: flex;
    justify-content: space-between;
    gap: 12px;
    margin-bottom: 6px;
    padding-top: 4px;
    border-top: var(--line) solid var(--edge);
    font-weight: 800;
  }
  .under-line {
    width: 100%;
    min-height: 44px;
    padding: 6px 8px;
    border: 0;
    border-top: var(--thin) solid var(--rule);
    background: none;
    font-size: 0.9375rem;
    text-align: left;
  }
  .under {
    border: var(--line) solid var(--edge);
    border-left-width: var(--thick);
    padding: 8px 10px;
    background: var(--card);
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
