/**
 * Certificates of the shop (RFC 5280, ECDSA P-256 with SHA-256): an authority that a phone is told to trust once, and
 * the server's own certificate under it. The authority can vouch only for private addresses and .local names, so that
 * trusting it gives nobody the rest of the phone's traffic, even if its key is stolen.
 */
import {
  createHash,
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  type KeyObject,
  randomBytes,
  sign,
} from 'node:crypto';
import { BlockList, isIP, isIPv4 } from 'node:net';
import { bits, explicit, implicit, integer, octets, oid, sequence, set, text, time, tlv, truth } from './der.ts';

export type Pair = { cert: string; key: string };
export type Span = { from: number; to: number };

const ecdsa = sequence(oid('1.2.840.10045.4.3.2'));
const nameOf = (words: string): Buffer =>
  sequence(set(sequence(oid('2.5.4.10'), text('soapwater'))), set(sequence(oid('2.5.4.3'), text(words))));
const extension = (id: string, value: Buffer, critical = false): Buffer =>
  critical ? sequence(oid(id), truth, octets(value)) : sequence(oid(id), octets(value));

/** IPv4 or IPv6 address as its 4 or 16 bytes. */
export const addressBytes = (address: string): Buffer => {
  if (isIPv4(address)) return Buffer.from(address.split('.').map(Number));
  if (isIP(address) !== 6) throw new RangeError(`"${address}" is no IP address`);
  const [head, tail] = address.split('::') as [string, string | undefined];
  const groups = (part: string): number[] => (part === '' ? [] : part.split(':').map((g) => Number.parseInt(g, 16)));
  const left = groups(head);
  const right = tail === undefined ? [] : groups(tail);
  const all = [...left, ...Array.from({ length: 8 - left.length - right.length }, () => 0), ...right];
  return Buffer.from(all.flatMap((g) => [g >> 8, g & 0xff]));
};

const spki = (key: KeyObject): Buffer => createPublicKey(key).export({ type: 'spki', format: 'der' });
/** Key identifier: SHA-1 of the public key's bits (RFC 5280, 4.2.1.2, method 1); P-256's 65 bytes end the structure. */
const keyId = (key: KeyObject): Buffer => createHash('sha1').update(spki(key).subarray(-65)).digest();

const pem = (der: Buffer): string =>
  `-----BEGIN CERTIFICATE-----\n${der.toString('base64').replaceAll(/.{64}(?=.)/g, '$&\n')}\n-----END CERTIFICATE-----\n`;
const keyPem = (key: KeyObject): string => key.export({ type: 'pkcs8', format: 'pem' }).toString();

const issue = (
  subject: string,
  key: KeyObject,
  issuer: string,
  by: KeyObject,
  { from, to }: Span,
  own: Buffer[],
): string => {
  const serial = randomBytes(16);
  serial[0] = (serial[0]! & 0x7f) | 0x40;
  const body = sequence(
    explicit(0, integer(Buffer.from([2]))),
    integer(serial),
    ecdsa,
    nameOf(issuer),
    sequence(time(from), time(to)),
    nameOf(subject),
    spki(key),
    explicit(
      3,
      sequence(
        ...own,
        extension('2.5.29.14', octets(keyId(key))),
        extension('2.5.29.35', sequence(implicit(0, keyId(by)))),
      ),
    ),
  );
  return pem(sequence(body, ecdsa, bits(sign('sha256', body, by))));
};

/** dNSName, iPAddress or a network of addresses, as general names. */
const dnsName = (name: string): Buffer => implicit(2, Buffer.from(name));
const network = (address: string, prefix: number): Buffer => {
  const bytes = addressBytes(address);
  const mask = bytes.map((_, i) => (0xff << Math.max(0, 8 - Math.max(0, prefix - i * 8))) & 0xff);
  return implicit(7, Buffer.concat([bytes, mask]));
};
/** Private and link-local networks (RFC 1918, RFC 3927, RFC 4193, RFC 4291), loopback, and .local names (RFC 6762). */
const ownNetworks: readonly (readonly [string, number])[] = [
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['169.254.0.0', 16],
  ['127.0.0.0', 8],
  ['fc00::', 7],
  ['fe80::', 10],
  ['::1', 128],
];

const own = new BlockList();
for (const [address, prefix] of ownNetworks) own.addSubnet(address, prefix, isIPv4(address) ? 'ipv4' : 'ipv6');

/** Whether every authority may vouch for `name`: a private address or a .local name. */
export const isOwn = (name: string): boolean =>
  isIP(name) ? own.check(name, isIPv4(name) ? 'ipv4' : 'ipv6') : name.endsWith('.local');

/** A new authority named `shop`, good over `span`, for private addresses, .local names and `also`, and for no other. */
export const makeAuthority = (shop: string, span: Span, also: readonly string[] = []): Pair => {
  const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'prime256v1' });
  const permitted = [
    dnsName('local'),
    ...ownNetworks.map(([a, p]) => network(a, p)),
    ...also.map((name) => (isIP(name) ? network(name, isIPv4(name) ? 32 : 128) : dnsName(name))),
  ];
  const cert = issue(shop, privateKey, shop, privateKey, span, [
    extension('2.5.29.19', sequence(truth, integer(Buffer.from([0]))), true),
    extension('2.5.29.15', bits(Buffer.from([0x06]), 1), true),
    extension('2.5.29.30', sequence(tlv(0xa0, ...permitted.map((name) => sequence(name)))), true),
  ]);
  return { cert, key: keyPem(privateKey) };
};

/** A server's certificate under `authority` for `names` (host names and addresses). */
export const makeServerCertificate = (authority: Pair, shop: string, names: readonly string[], span: Span): Pair => {
  const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'prime256v1' });
  const alternatives = names.map((name) => (isIP(name) ? implicit(7, addressBytes(name)) : dnsName(name)));
  const cert = issue(`${shop} server`, privateKey, shop, createPrivateKey(authority.key), span, [
    extension('2.5.29.19', sequence(), true),
    extension('2.5.29.15', bits(Buffer.from([0x80]), 7), true),
    extension('2.5.29.37', sequence(oid('1.3.6.1.5.5.7.3.1'))),
    extension('2.5.29.17', sequence(...alternatives)),
  ]);
  return { cert, key: keyPem(privateKey) };
};
