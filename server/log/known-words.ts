/**
 * Words that a session has in the log already: a session says the same few dozen words over and over, and each one written
 * again is another page of the file touched and synced for nothing. What is not held here is merely written again.
 */

/** Sessions held, and words of each. The session used longest ago goes first. */
const mostSessions = 256;
const mostWords = 500;

export type KnownWords = {
  /** True once for each word of a session, until it is forgotten. */
  isNew: (session: string, word: string) => boolean;
  /** All: what was written may have been undone. */
  forget: () => void;
};

export const knownWords = (): KnownWords => {
  const sessions = new Map<string, Set<string>>();
  const of = (session: string): Set<string> => {
    const had = sessions.get(session);
    const made = had && had.size < mostWords ? had : new Set<string>();
    sessions.delete(session);
    sessions.set(session, made);
    for (const oldest of sessions.keys()) {
      if (sessions.size <= mostSessions) break;
      sessions.delete(oldest);
    }
    return made;
  };
  return {
    isNew: (session, word) => {
      const words = of(session);
      if (words.has(word)) return false;
      words.add(word);
      return true;
    },
    forget: () => sessions.clear(),
  };
};
