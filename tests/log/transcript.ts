/** A session as words, line by line: what was shown, for holding old logs to it. */
import type { Entry } from '../../server/session/entry.ts';

export const transcriptOf = (entries: readonly Entry[]): string =>
  entries
    .flatMap((e): string[] => {
      const head = `${e.seq} ${new Date(e.kept).toISOString()} ${e.by}`;
      switch (e.is) {
        case 'opened':
          return [`${head} opened ${e.coach} by sheet ${e.sheet.slice(0, 16)}`];
        case 'sheet':
          return [`${head} went on by sheet ${e.sheet.slice(0, 16)}`];
        case 'note':
        case 'remark':
          return [`${head}: ${e.text}`];
        case 'reply':
          return [`${head}:`, ...e.blocks.map((b) => `  ${b.is}: ${b.words}`)];
        case 'closed':
        case 'reopened':
          return [`${head} ${e.is}: ${e.words}`];
        case 'estimate':
          return [`${head} estimate:`, ...e.lines.map((l) => `  ${l.id}: ${l.words}, ${l.hands} min`)];
        case 'decided':
          return [`${head} ${e.line} of ${e.about} ${e.yes ? 'approved' : 'declined'}: ${e.name} ${e.words}`];
      }
    })
    .join('\n')
    .concat('\n');
