/** What this device may do, so that what it may not is not offered. As `server/auth/roles.ts` has it, where it is kept. Pure. */
import type { Welcome } from './socket-controller.ts';

export type Role = Welcome['role'];

/** Notes, closing, opening again: in this session. */
export const mayWrite = (role: Role, practice: boolean): boolean => role === 'works' || (role === 'learns' && practice);

export const mayRemark = (role: Role, practice: boolean): boolean => role === 'reviews' || mayWrite(role, practice);

/** One line why; '' where nothing is kept from it. */
export const whyNot = (role: Role): string => {
  switch (role) {
    case 'works':
      return '';
    case 'reviews':
      return 'This device was paired to review: it reads, asks and remarks. Notes are typed at the bench.';
    case 'learns':
      return 'This device was paired to learn: it reads, asks and practises. Notes on a real coach are typed at the bench.';
  }
};

/** Pairing is done where the server runs. */
export const atBench = (host = location.hostname): boolean =>
  host === 'localhost' || host === '[::1]' || host.startsWith('127.');
