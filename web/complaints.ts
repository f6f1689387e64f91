/** What coaches come in for, each a whole note that the reader takes in full: the first tap of a fresh session. */
export const complaints: readonly string[] = [
  'sags overnight',
  'leans left',
  'leans right',
  'pump runs constantly',
  'slow to come up',
  'wont come up',
];
