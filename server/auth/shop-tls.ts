/** The shop's own authority and server certificate, kept in the data folder and renewed before they end. */
import { X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { join } from 'node:path';
import { isOwn, makeAuthority, makeServerCertificate, type Pair } from './certificate.ts';

const day = 24 * 3_600_000;
const authorityLasts = 10 * 365 * day;
/** Phones refuse server certificates that last longer than 398 days. */
const serverLasts = 397 * day;
const renewBefore = 30 * day;

export class TlsRefused extends Error {}

const readPair = (folder: string, name: string): Pair | null => {
  const [cert, key] = ['crt', 'key'].map((end) => join(folder, `${name}.${end}`)) as [string, string];
  return existsSync(cert) && existsSync(key)
    ? { cert: readFileSync(cert, 'utf8'), key: readFileSync(key, 'utf8') }
    : null;
};
const writePair = (folder: string, name: string, pair: Pair): Pair => {
  writeFileSync(join(folder, `${name}.key`), pair.key, { mode: 0o600 });
  writeFileSync(join(folder, `${name}.crt`), pair.cert);
  return pair;
};
const lasts = (pair: Pair, now: number): boolean =>
  Date.parse(new X509Certificate(pair.cert).validTo) > now + renewBefore;
const covers = (pair: Pair, names: readonly string[]): boolean => {
  const cert = new X509Certificate(pair.cert);
  return names.every((n) => (isIP(n) ? cert.checkIP(n) : cert.checkHost(n)) !== undefined);
};

export type ShopTls = Pair & {
  /** What a phone is told to trust, PEM; null for a certificate of one's own. */
  authority: string | null;
  /** SHA-256 of the certificate the phone will see first, for comparing by eye. */
  fingerprint: string;
};

/** `names`: host names and addresses the server is called by. Raises TlsRefused when a file cannot be read. */
export const shopTls = (folder: string, names: readonly string[], now: number): ShopTls => {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    let authority = readPair(folder, 'shop');
    const also = names.filter((n) => !isOwn(n));
    const alsoFile = join(folder, 'shop.names');
    const known = existsSync(alsoFile) ? readFileSync(alsoFile, 'utf8').split('\n') : [];
    // it can vouch for the names it was made for only: another one needs another authority, trusted anew
    const renewed = !authority || !lasts(authority, now) || also.some((n) => !known.includes(n));
    if (!authority || renewed) {
      writeFileSync(alsoFile, also.join('\n'));
      authority = writePair(
        folder,
        'shop',
        makeAuthority('soapwater shop', { from: now - day, to: now + authorityLasts }, also),
      );
    }
    let server = readPair(folder, 'server');
    if (!server || renewed || !lasts(server, now) || !covers(server, names))
      server = writePair(
        folder,
        'server',
        makeServerCertificate(authority, 'soapwater shop', names, { from: now - day, to: now + serverLasts }),
      );
    return { ...server, authority: authority.cert, fingerprint: new X509Certificate(authority.cert).fingerprint256 };
  } catch (error) {
    throw new TlsRefused(`the certificates in ${folder} cannot be used: ${(error as Error).message}`, { cause: error });
  }
};

/** A certificate and key of one's own. Raises TlsRefused naming the file. */
export const ownTls = (certFile: string, keyFile: string): ShopTls => {
  const read = (file: string): string => {
    try {
      return readFileSync(file, 'utf8');
    } catch {
      throw new TlsRefused(`${file} cannot be read`);
    }
  };
  const [cert, key] = [read(certFile), read(keyFile)];
  try {
    return { cert, key, authority: null, fingerprint: new X509Certificate(cert).fingerprint256 };
  } catch (error) {
    throw new TlsRefused(`${certFile} is no certificate in PEM`, { cause: error });
  }
};
