import { randomInt } from 'node:crypto';
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { codeLasts, makeCodes, showCode } from '../../server/auth/codes.ts';
import { cookieFor, tokenOf } from '../../server/auth/cookie.ts';
import { benchPage, pairPage, qrSvg } from '../../server/auth/pages.ts';

const clock = () => {
  let at = 1_000_000;
  return { now: () => at, pass: (ms: number) => (at += ms) };
};

describe('a pairing code', () => {
  it('is good once, in any case, with or without its dash', () => {
    const codes = makeCodes(clock().now, randomInt);
    const { code } = codes.issue('reviews');
    expect(code).toMatch(/^[A-HJKMNP-TV-Z2-9]{6}$/);
    expect(codes.take(` ${showCode(code).toLowerCase()} `)).toEqual({ ok: true, role: 'reviews' });
    expect(codes.take(code)).toEqual({ ok: false, why: 'wrong' });
  });

  it('ends after five minutes, and when a new one is shown', () => {
    const { now, pass } = clock();
    const codes = makeCodes(now, randomInt);
    const first = codes.issue('works').code;
    const second = codes.issue('works').code;
    expect(codes.take(first).ok).toBe(false);
    pass(codeLasts - 1);
    expect(codes.current()?.code).toBe(second);
    pass(1);
    expect(codes.current()).toBeNull();
    expect(codes.take(second).ok).toBe(false);
  });

  it('dies after five wrong tries, and pairing rests after twenty', () => {
    const { now, pass } = clock();
    const codes = makeCodes(now, randomInt);
    const { code } = codes.issue('works');
    for (let i = 0; i < 5; i += 1) expect(codes.take('wrong')).toEqual({ ok: false, why: 'wrong' });
    expect(codes.take(code)).toEqual({ ok: false, why: 'wrong' });
    for (let i = 0; i < 14; i += 1) codes.take('wrong');
    const { code: fresh } = codes.issue('works');
    expect(codes.take(fresh)).toEqual({ ok: false, why: 'resting' });
    pass(10 * 60_000 + 1);
    expect(codes.take(codes.issue('works').code).ok).toBe(true);
  });
});

describe('a clock that steps back', () => {
  it('lengthens neither a code nor the rest after wrong ones', () => {
    const { now, pass } = clock();
    const codes = makeCodes(now, randomInt);
    const { code } = codes.issue('works');
    for (let i = 0; i < 20; i += 1) codes.take('wrong');
    codes.issue('works');
    pass(-24 * 3_600_000);
    expect(codes.current()).toBeNull();
    expect(codes.take(code)).toEqual({ ok: false, why: 'resting' });
    pass(10 * 60_000 + 1);
    expect(codes.take(codes.issue('works').code).ok).toBe(true);
  });
});

describe('the cookie', () => {
  it('comes back as it went, and is kept from scripts, other sites and plain http', () => {
    const token = 'A-_'.repeat(14);
    const cookie = cookieFor(token, 90_000);
    expect(cookie).toBe(`soapwater=${token}; Path=/; Max-Age=90; HttpOnly; Secure; SameSite=Strict`);
    expect(tokenOf(`other=1; ${cookie.split(';')[0]}; more=2`)).toBe(token);
    for (const bad of [undefined, '', 'soapwater=', 'soapwater=short', `xsoapwater=${token}`])
      expect(tokenOf(bad)).toBeUndefined();
    expect(tokenOf(`soapwater=${'<'.repeat(30)}`)).toBeUndefined();
  });
});

describe('the pages of pairing', () => {
  it('show the address as a QR picture that another library reads back', () => {
    const text = 'https://192.168.7.20:4281/pair?code=K7QF3M';
    const svg = qrSvg(text);
    const size = Number(/viewBox="0 0 (\d+) /.exec(svg)?.[1]);
    const scale = 4;
    const pixels = new Uint8ClampedArray(size * size * scale * scale * 4).fill(255);
    for (const [, x, y] of svg.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
      for (let dy = 0; dy < scale; dy += 1)
        for (let dx = 0; dx < scale; dx += 1) {
          const at = ((Number(y) * scale + dy) * size * scale + Number(x) * scale + dx) * 4;
          pixels.fill(0, at, at + 3);
        }
    expect(jsQR.default(pixels, size * scale, size * scale)?.data).toBe(text);
  });

  it('keep what a device is called as text', () => {
    const name = `"><script>alert('x')</script>`;
    const page = benchPage({
      code: null,
      address: 'https://bench.local:4281/',
      fingerprint: 'AA:BB',
      devices: [{ id: 'd1', name, role: 'works', paired: 0, seen: 0, until: 0 }],
      time: String,
    });
    expect(page).not.toContain('<script');
    expect(page).toContain('&#60;script&#62;');
    expect(pairPage(name, name)).not.toContain('<script');
  });
});
