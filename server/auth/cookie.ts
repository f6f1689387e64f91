/** The device's cookie (RFC 6265): out of reach of scripts, never sent from another site, over TLS only. Pure. */
const name = 'soapwater';

export const tokenOf = (header: string | undefined): string | undefined => {
  for (const part of (header ?? '').split(';')) {
    const at = part.indexOf('=');
    if (at > 0 && part.slice(0, at).trim() === name) {
      const value = part.slice(at + 1).trim();
      return /^[\w-]{20,100}$/.test(value) ? value : undefined;
    }
  }
  return undefined;
};

/** `lasts`: milliseconds; 0 takes the cookie back. */
export const cookieFor = (token: string, lasts: number): string =>
  `${name}=${token}; Path=/; Max-Age=${Math.floor(lasts / 1000)}; HttpOnly; Secure; SameSite=Strict`;
