/** Where a figure comes from, read aloud: "sheet: heights.leftRear" is "coach sheet: heights left rear". Pure. */
const spoken = (path: string): string =>
  path
    .split('.')
    .map((step) =>
      /^\d+$/.test(step) ? `row ${Number(step) + 1}` : step.replaceAll(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`),
    )
    .join(' ');

/** Sources of several fields name the sheet once. */
export const sheetSource = (words: string): string => {
  let named = false;
  return words.replaceAll(
    /\bsheet: ([a-z]\w*(?:\.\w+)*)((?:(?:, | \+ )[a-z]\w*(?:\.\w+)+)*)/gi,
    (_all, path: string, more: string) => {
      const rest = more.replaceAll(
        /(, | \+ )([^,+]+)/g,
        (_one, by: string, field: string) => `${by}${spoken(field.trim())}`,
      );
      const out = `${named ? '' : 'coach sheet: '}${spoken(path)}${rest}`;
      named = true;
      return out;
    },
  );
};
