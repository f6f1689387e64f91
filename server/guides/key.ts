/** A tap that writes a note: label on the key, text in the note line. */
export type Key = { readonly label: string; readonly text: string };
export const key = (label: string, text: string): Key => ({ label, text });
