/** How a caution looks: nothing else on the page has its frame. */
import { css } from 'lit';

export const cautionLook = css`
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
`;
