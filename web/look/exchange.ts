/** How an exchange on the sheet looks. */
import { css } from 'lit';

export const exchangeLook = css`
  :host {
    display: block;
    border-bottom: var(--thin) solid var(--rule);
    content-visibility: auto;
    contain-intrinsic-size: auto 72px;
  }
  a {
    color: inherit;
  }
  .acts .link {
    min-height: 44px;
  }
  .row {
    display: grid;
    grid-template-columns: 2.875rem minmax(0, 1fr);
    gap: 0 10px;
    padding: 8px 10px 10px 6px;
  }
  .first {
    display: grid;
    gap: 8px;
    padding: 8px 8px 0;
  }
  .margin {
    display: grid;
    align-content: start;
    gap: 1px;
    padding-top: 3px;
    text-align: right;
    font-size: 0.8125rem;
    line-height: 1.25;
    color: var(--soft);
    font-variant-numeric: tabular-nums;
  }
  .margin time {
    font-size: 0.9375rem;
    color: var(--ink);
  }
  .state.waiting,
  .state.sent,
  .state.refused {
    color: var(--ink);
    font-weight: var(--weight);
  }
  .state.waiting {
    border: 2px dashed currentColor;
    padding: 0 2px;
    text-align: center;
  }
  .state.sent {
    border: 2px solid currentColor;
    padding: 0 2px;
    text-align: center;
  }
  .state.refused {
    border: 3px double currentColor;
    text-align: center;
  }
  .text {
    font-family: var(--typed);
    font-size: 1.0625rem;
    line-height: 1.3;
    white-space: pre-wrap;
    overflow-wrap: anywhere;
    margin: 0;
  }
  .provisional .text {
    border-left: 3px dashed var(--edge);
    padding-left: 9px;
  }
  .voided .text {
    text-decoration: line-through;
    color: var(--soft);
  }
  .body {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
    min-width: 0;
  }
  .fold {
    width: 100%;
    min-height: 56px;
    display: block;
  }
  .fold .text {
    color: var(--soft);
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    line-clamp: 2;
    overflow: hidden;
  }
  .fold .said {
    font-weight: var(--weight);
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    line-clamp: 2;
    overflow: hidden;
  }
  .close {
    justify-self: end;
  }
  .mark-row {
    color: var(--soft);
    font-size: 0.9375rem;
  }
  .photos {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .photos img {
    max-width: min(100%, 15rem);
    max-height: 12rem;
    height: auto;
    border: var(--line) solid var(--edge);
  }
  .remark {
    border-left: var(--line) dotted var(--edge);
    padding-left: 10px;
    font-style: italic;
  }
  .refusal {
    border: 3px double var(--ink);
    padding: 8px 10px;
    display: grid;
    gap: 8px;
  }
  .two {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
`;
