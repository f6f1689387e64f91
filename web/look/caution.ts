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
    padding: 10px 12px 0;
    border-left: 4px solid var(--ink);
  }
  .caution-in,
  .stop-rest {
    display: grid;
    gap: 8px;
  }
  .caution-in p {
    line-height: 1.3;
  }
  .stop-rest > :last-child {
    padding-bottom: 12px;
  }
  .caution .caution-words {
    font-size: 1.25rem;
    line-height: 1.25;
    font-weight: 800;
    text-wrap: balance;
  }
  /*
   * The answer stays in sight while the reason is read, however little height the keyboard leaves; inside what follows
   * the question, so that no answer stands without its question.
   */
  @media (max-width: 699px) {
    .caution .keys.n3 {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .caution .keys.n3 > :last-child {
      grid-column: 1 / -1;
    }
  }
  .caution .keys {
    position: sticky;
    bottom: 0;
    padding-top: 4px;
    background: var(--warn-paper);
  }
  .answered {
    font-weight: var(--weight);
  }
  .more-stops {
    display: grid;
    gap: 2px;
    border: 4px solid var(--ink);
    background:
      repeating-linear-gradient(-45deg, var(--warn-ink) 0 8px, var(--warn) 8px 16px) left / 16px 100% no-repeat,
      var(--warn-paper);
    padding: 6px 12px 6px 28px;
    text-align: left;
  }
  .more-words {
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    line-clamp: 2;
    overflow: hidden;
    font-weight: 500;
    text-wrap: pretty;
  }
`;
