/**
 * Sends what stands to every page that follows a session: worked out once for all of them, at once when the session was
 * quiet, and at most ten times a second when it is not.
 */
import type { Desk } from './desk.ts';

const step = 100;

export type Boards = {
  /** Calls `tell` with the board's frame after each change until the returned function is called. */
  follow: (session: string, tell: (frame: string) => void) => () => void;
  /** The frame as of now. */
  frame: (session: string) => Promise<string>;
};

type Held = {
  tells: Set<(frame: string) => void>;
  last: number;
  timer: NodeJS.Timeout | null;
  stop: () => void;
};

export const makeBoards = (desk: Desk, now: () => number): Boards => {
  const sessions = new Map<string, Held>();
  const frame = async (session: string): Promise<string> =>
    JSON.stringify({ is: 'board', board: await desk.board(session) });

  const send = (session: string): void => {
    const held = sessions.get(session);
    if (!held) return;
    held.timer = null;
    held.last = now();
    frame(session).then(
      (text) => {
        for (const tell of sessions.get(session)?.tells ?? []) tell(text);
      },
      // the session cannot be read: whoever asks for it is told so
      () => undefined,
    );
  };
  const changed = (session: string): void => {
    const held = sessions.get(session);
    if (!held || held.timer) return;
    const since = now() - held.last;
    if (since >= step || since < 0) send(session);
    else held.timer = setTimeout(() => send(session), step - since);
  };
  const begin = (session: string): Held => ({
    tells: new Set(),
    last: 0,
    timer: null,
    stop: desk.follow(session, () => changed(session)),
  });
  return {
    frame,
    follow: (session, tell) => {
      const held = sessions.get(session) ?? begin(session);
      held.tells.add(tell);
      sessions.set(session, held);
      return () => {
        if (!held.tells.delete(tell) || held.tells.size > 0) return;
        if (held.timer) clearTimeout(held.timer);
        held.stop();
        sessions.delete(session);
      };
    },
  };
};
