/** The reader comes after the page stands: its word tables outweigh everything else, and notes can be sent without it. */
type Reader = typeof import('./read-back.ts');

let here: Reader | null = null;
let coming: Promise<void> | null = null;

export const readerComes = (): Promise<void> => {
  coming ??= import('./read-back.ts').then(
    (module) => {
      here = module;
    },
    () => {
      // not reached: asked for again the next time a session is opened
      coming = null;
    },
  );
  return coming;
};

/** null until it has come: there is then no read-back, and nothing else is missing. */
export const reader = (): Reader | null => here;
