/** Who is at the door: whether a request was meant for this server, came from its own page, and whom it speaks for. */
import type { IncomingMessage } from 'node:http';
import type { Who } from './auth/roles.ts';

/** Own scripts and styles only; sockets and pictures of this host; framed by nobody. */
export const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; font-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
/** For the plain pages of pairing: forms to this host, no script. */
export const formPolicy =
  "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

/**
 * True when the request was meant for this server and comes from its own page: a foreign Host is a rebound name, a
 * foreign Origin another site open in the same browser. A link followed from elsewhere may open a page, no more.
 */
export const sameHouse = (request: IncomingMessage, hosts: readonly string[]): boolean => {
  const host = (request.headers.host ?? '').toLowerCase();
  if (!hosts.includes(host)) return false;
  const origin = request.headers.origin;
  if (origin !== undefined) return hosts.some((h) => origin === `http://${h}` || origin === `https://${h}`);
  const site = request.headers['sec-fetch-site'];
  const opened = request.method === 'GET' && request.headers['sec-fetch-mode'] === 'navigate';
  return site === undefined || site === 'same-origin' || site === 'none' || opened;
};

/** One way in: what it is called, and whom a request through it speaks for (null: nobody yet). */
export type Door = { hosts: () => readonly string[]; who: (request: IncomingMessage) => Who | null };
