/**
 * Pairing codes: short, shown at the bench, good once and for five minutes. Guessing is counted: a code dies after five
 * wrong tries, and pairing rests for ten minutes after twenty from anywhere. One code at a time. Clock and chance come in.
 */
import type { Role } from './roles.ts';

/** Without I, L, O, U, 0 and 1: nothing that is misread on a screen across the shop. 30 letters. */
const letters = 'ABCDEFGHJKMNPQRSTVWXYZ23456789';
const length = 6;
export const codeLasts = 5 * 60_000;
const triesOfCode = 5;
const triesOfAll = 20;
const rest = 10 * 60_000;

export type Code = { code: string; role: Role; until: number };
export type Taken = { ok: true; role: Role } | { ok: false; why: 'wrong' | 'resting' };

export type Codes = {
  issue: (role: Role) => Code;
  /** The code on show, or null. */
  current: () => Code | null;
  take: (text: string) => Taken;
};

/** As typed on a phone: any case, with or without the dash. */
export const cleanCode = (text: string): string => text.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');
export const showCode = (code: string): string => `${code.slice(0, 3)}-${code.slice(3)}`;

/** `random`: a whole number from 0 to below `below`, not to be guessed. */
export const makeCodes = (now: () => number, random: (below: number) => number): Codes => {
  let held: (Code & { wrong: number; from: number }) | null = null;
  let wrongs: number[] = [];

  // a clock that steps back lengthens neither a code nor a rest
  const current = (): (Code & { wrong: number }) | null => {
    if (held && (now() >= held.until || now() < held.from || held.wrong >= triesOfCode)) held = null;
    return held;
  };
  return {
    issue: (role) => {
      const code = Array.from({ length }, () => letters[random(letters.length)]).join('');
      held = { code, role, until: now() + codeLasts, wrong: 0, from: now() };
      return held;
    },
    current,
    take: (text) => {
      const at = now();
      wrongs = wrongs.map((t) => Math.min(t, at)).filter((t) => t > at - rest);
      if (wrongs.length >= triesOfAll) return { ok: false, why: 'resting' };
      const code = current();
      if (code && cleanCode(text) === code.code) {
        held = null;
        return { ok: true, role: code.role };
      }
      wrongs.push(at);
      if (code) code.wrong += 1;
      return { ok: false, why: 'wrong' };
    },
  };
};
