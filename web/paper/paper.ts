/** The element of each paper; the elements themselves are fetched when somebody goes there (rooms.ts). */
import { html, type TemplateResult } from 'lit';
import type { Route } from '../route.ts';
import type { SocketController } from '../socket-controller.ts';

/** `by`: initials, never empty. */
export const paperView = (
  route: Extract<Route, { at: 'paper' }>,
  controller: SocketController,
  by: string,
): TemplateResult => {
  switch (route.page) {
    case 'report':
      return html`<soap-report .session=${route.of}></soap-report>`;
    case 'estimate':
      return html`<soap-estimate .session=${route.of} .controller=${controller} .by=${by} .tick=${{}}></soap-estimate>`;
    case 'history':
      return html`<soap-history .coach=${route.of}></soap-history>`;
    case 'shop':
      return html`<soap-shop .controller=${controller} .session=${route.from}></soap-shop>`;
    case 'sheet':
      return html`<soap-sheet-editor
        .coach=${route.of}
        .session=${route.from}
        .controller=${controller}
        .by=${by}
        .tick=${{}}
      ></soap-sheet-editor>`;
  }
};
