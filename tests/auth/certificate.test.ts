/** The certificates, held against the TLS library inside Node (OpenSSL), which knows nothing of how they were written. */
import { X509Certificate } from 'node:crypto';
import { createServer, connect, type TLSSocket } from 'node:tls';
import { afterAll, describe, expect, it } from 'vitest';
import { addressBytes, makeAuthority, makeServerCertificate, type Pair } from '../../server/auth/certificate.ts';
import { integer, oid, time } from '../../server/auth/der.ts';

const day = 24 * 3_600_000;
const now = Date.now();
const span = { from: now - day, to: now + 30 * day };
const authority = makeAuthority('soapwater shop', span);
const names = ['192.168.7.20', 'fd00::17', 'bench.local'];
const server = makeServerCertificate(authority, 'soapwater shop', names, span);

const ends: (() => void)[] = [];
afterAll(() => ends.forEach((end) => end()));

/** What a client that trusts `trusted` says to a server with `pair` that it calls `name`: "trusted" or its error. */
const greet = async (pair: Pair, trusted: string, name: string): Promise<string> => {
  const listening = createServer(pair, (socket) => socket.end());
  ends.push(() => listening.close());
  await new Promise<void>((resolve) => listening.listen(0, '127.0.0.1', resolve));
  const { port } = listening.address() as { port: number };
  return new Promise((resolve) => {
    const socket: TLSSocket = connect({ port, host: '127.0.0.1', servername: name, ca: trusted }, () => {
      resolve(socket.authorized ? 'trusted' : 'not trusted');
      socket.destroy();
    });
    socket.on('error', (error: NodeJS.ErrnoException) =>
      resolve(error.code === 'UNSPECIFIED' ? error.message : (error.code ?? '')),
    );
  });
};

describe('the shop certificates', () => {
  it('are read by OpenSSL as they were meant', () => {
    const top = new X509Certificate(authority.cert);
    const leaf = new X509Certificate(server.cert);
    expect(top.ca).toBe(true);
    expect(leaf.ca).toBe(false);
    expect(leaf.verify(top.publicKey)).toBe(true);
    expect(leaf.checkIssued(top)).toBe(true);
    expect(leaf.checkIP('192.168.7.20')).toBe('192.168.7.20');
    expect(leaf.checkIP('fd00::17')).toBe('fd00::17');
    expect(leaf.checkHost('bench.local')).toBe('bench.local');
    expect(leaf.checkHost('other.local')).toBeUndefined();
    expect(Math.abs(Date.parse(leaf.validTo) - span.to)).toBeLessThan(1000);
    expect(Math.abs(Date.parse(leaf.validFrom) - span.from)).toBeLessThan(1000);
  });

  it('are trusted by a client that trusts the authority, and by no other', async () => {
    expect(await greet(server, authority.cert, 'bench.local')).toBe('trusted');
    expect(await greet(server, authority.cert, 'other.local')).toBe('ERR_TLS_CERT_ALTNAME_INVALID');
    const other = makeAuthority('soapwater shop', span).cert;
    expect(await greet(server, other, 'bench.local')).toMatch(/UNABLE_TO_|SIGNATURE/);
  });

  it('end when they end', async () => {
    const over = makeServerCertificate(authority, 'soapwater shop', names, { from: now - 9 * day, to: now - day });
    expect(await greet(over, authority.cert, 'bench.local')).toBe('CERT_HAS_EXPIRED');
  });

  it('cannot vouch for a name on the internet, even with the key of the authority', async () => {
    const forged = makeServerCertificate(authority, 'soapwater shop', ['bank.example'], span);
    expect(await greet(forged, authority.cert, 'bank.example')).toBe('permitted subtree violation');
    const address = makeServerCertificate(authority, 'soapwater shop', ['203.0.113.9', 'bench.local'], span);
    expect(await greet(address, authority.cert, 'bench.local')).toBe('permitted subtree violation');
    const own = makeAuthority('soapwater shop', span, ['bench.shop.example', '203.0.113.9']);
    const named = makeServerCertificate(own, 'soapwater shop', ['bench.shop.example', '203.0.113.9'], span);
    expect(await greet(named, own.cert, 'bench.shop.example')).toBe('trusted');
  });
});

describe('the encoding', () => {
  // RFC 8017's 1.2.840.113549 as every RSA key carries it; RFC 5280, 4.1.2.5 for the years
  it('writes numbers, identifiers and times as the rules say', () => {
    expect(oid('1.2.840.113549').toString('hex')).toBe('06062a864886f70d');
    expect(integer(Buffer.from([0, 0, 0x80])).toString('hex')).toBe('02020080');
    expect(integer(Buffer.from([0x7f])).toString('hex')).toBe('02017f');
    expect(
      time(Date.UTC(2049, 11, 31, 23, 59, 59))
        .toString('latin1')
        .slice(2),
    ).toBe('491231235959Z');
    expect(
      time(Date.UTC(2050, 0, 1))
        .toString('latin1')
        .slice(2),
    ).toBe('20500101000000Z');
    expect(addressBytes('fe80::1:2').toString('hex')).toBe('fe800000000000000000000000010002');
    expect(() => addressBytes('300.1.1.1')).toThrow('no IP address');
  });
});
