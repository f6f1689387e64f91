/** The log cannot be opened, trusted or written: `words` say it to a person in one line. */
export class LogRefused extends Error {
  constructor(words: string, cause?: unknown) {
    super(words, { cause });
    this.name = 'LogRefused';
  }
}

/** `error` of the database or the file system on the log `file`, as a refusal in words. */
export const refusedBy = (error: unknown, file: string): LogRefused => {
  if (error instanceof LogRefused) return error;
  const code = (error as { code?: string } | null)?.code ?? '';
  const say = (words: string): LogRefused => new LogRefused(words, error);
  if (/SQLITE_BUSY|SQLITE_LOCKED/.test(code))
    return say(`the log ${file} is held by another soapwater: stop that one first`);
  if (/SQLITE_NOTADB|SQLITE_CORRUPT/.test(code))
    return say(`the log ${file} is damaged: restore a backup, or move it away to start anew`);
  if (/SQLITE_FULL|ENOSPC|EDQUOT/.test(code))
    return say(`the disk of the log ${file} is full: make room, then send it again`);
  if (/SQLITE_READONLY|SQLITE_CANTOPEN|EACCES|EROFS|EPERM/.test(code))
    return say(`the log ${file} cannot be written: make the file and its folder writable`);
  if (/SQLITE_IOERR/.test(code)) return say(`the disk of the log ${file} does not answer as it should (${code})`);
  return say(`the log ${file} failed: ${error instanceof Error ? error.message : String(error)}`);
};
