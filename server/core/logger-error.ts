/** A logger file that cannot be decided: names the line and the column, counted from 1 as a person counts them. */
export class LoggerError extends Error {
  readonly line: number | null;
  readonly column: number | null;
  constructor(what: string, line: number | null | undefined = null, column: number | null = null) {
    const where = [line == null ? '' : `line ${line}`, column === null ? '' : `column ${column}`].filter(Boolean);
    super(where.length === 0 ? what : `${where.join(', ')}: ${what}`);
    this.name = 'LoggerError';
    this.line = line ?? null;
    this.column = column;
  }
}
