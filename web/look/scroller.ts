/** A room that scrolls in itself. */
import { css } from 'lit';

export const scroller = css`
  :host {
    display: block;
    height: 100%;
    /* what is for hearing only stands where its scroller is, and does not lengthen the whole page */
    position: relative;
    overflow-y: auto;
  }
`;
