/** Where a limit comes from, for whoever reads a paper: the field's name on the sheet is for the bench. */
export const plainSource = (words: string): string =>
  words.replaceAll(/sheet: [\w.]+(?:(?: less|,) sheet: [\w.]+)*(?:, [a-z][^)]*)?/g, 'coach sheet');
