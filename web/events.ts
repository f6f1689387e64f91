/** What elements tell each other. Everything that a tap says goes through `write`: the one door into the note line. */
export type PageEvents = {
  /** Writes `text` into the line; `whole`: a full note, sent at once when the line is empty. `pad`: a number is due. */
  write: { text: string; whole?: boolean; pad?: boolean; instead?: boolean };
  /** A question that is answered in place and not logged. */
  ask: { text: string; at: string };
  undo: undefined;
  /** On a phone: the board in place of the sheet, or back. */
  board: boolean;
};

export const tell = <K extends keyof PageEvents>(from: EventTarget, name: K, detail: PageEvents[K]): void => {
  from.dispatchEvent(new CustomEvent(`soap-${name}`, { detail, bubbles: true, composed: true }));
};

/** The detail of an event sent with `tell`. */
export const told = <K extends keyof PageEvents>(_name: K, event: Event): PageEvents[K] =>
  (event as CustomEvent<PageEvents[K]>).detail;
