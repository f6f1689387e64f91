/** Just enough of the distinguished encoding rules (ITU-T X.690) to write a certificate. Pure. */
export const tlv = (tag: number, ...contents: readonly Uint8Array[]): Buffer => {
  const body = Buffer.concat(contents);
  const size = body.length;
  if (size < 0x80) return Buffer.concat([Buffer.from([tag, size]), body]);
  const bytes = size < 0x100 ? [0x81, size] : [0x82, size >> 8, size & 0xff];
  if (size > 0xffff) throw new RangeError(`${size} bytes are more than a certificate holds`);
  return Buffer.concat([Buffer.from([tag, ...bytes]), body]);
};
export const sequence = (...contents: readonly Uint8Array[]): Buffer => tlv(0x30, ...contents);
export const set = (...contents: readonly Uint8Array[]): Buffer => tlv(0x31, ...contents);
export const explicit = (n: number, ...contents: readonly Uint8Array[]): Buffer => tlv(0xa0 | n, ...contents);
export const implicit = (n: number, bytes: Uint8Array): Buffer => tlv(0x80 | n, bytes);
export const octets = (bytes: Uint8Array): Buffer => tlv(0x04, bytes);
export const bits = (bytes: Uint8Array, unused = 0): Buffer => tlv(0x03, Buffer.from([unused]), bytes);
export const truth = tlv(0x01, Buffer.from([0xff]));
export const text = (words: string): Buffer => tlv(0x0c, Buffer.from(words, 'utf8'));

/** `bytes`: magnitude, most significant first. */
export const integer = (bytes: Uint8Array): Buffer => {
  let at = 0;
  while (at < bytes.length - 1 && bytes[at] === 0) at += 1;
  const short = bytes.subarray(at);
  return (short[0] ?? 0) >= 0x80 ? tlv(0x02, Buffer.from([0]), short) : tlv(0x02, short);
};

/** "1.2.840.10045.4.3.2" */
export const oid = (dotted: string): Buffer => {
  const [first = 0, second = 0, ...rest] = dotted.split('.').map(Number);
  const out: number[] = [];
  for (const value of [first * 40 + second, ...rest]) {
    const groups = [value & 0x7f];
    for (let left = Math.floor(value / 128); left > 0; left = Math.floor(left / 128))
      groups.unshift((left & 0x7f) | 0x80);
    out.push(...groups);
  }
  return tlv(0x06, Buffer.from(out));
};

/** `at`: ms since the epoch. Two-digit years to 2049, four-digit ones from 2050 (RFC 5280, 4.1.2.5). */
export const time = (at: number): Buffer => {
  const stamp = new Date(at).toISOString().replaceAll(/[-:T]|\.\d+/g, '');
  return Number(stamp.slice(0, 4)) < 2050 ? tlv(0x17, Buffer.from(stamp.slice(2))) : tlv(0x18, Buffer.from(stamp));
};
