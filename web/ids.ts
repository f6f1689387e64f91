/** Ids made in the page: `crypto.randomUUID` is missing where the page comes over plain http on a shop's own name. */
const letters = 'abcdefghijklmnopqrstuvwxyz0123456789';

/** 16 letters and digits, 82 random bits: fits NoteId and SessionId of the protocol. */
export const newId = (): string => {
  const bytes = crypto.getRandomValues(new Uint32Array(16));
  return Array.from(bytes, (b) => letters[b % letters.length]).join('');
};
