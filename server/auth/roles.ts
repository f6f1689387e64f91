/** What each role may do: one table. Pure. */
import type { FromPage } from '../chat/protocol.ts';

/** works: everything · reviews: reads, asks, remarks · learns: reads, asks, practises; writes nothing to a coach's log. */
export const roles = ['works', 'reviews', 'learns'] as const;
export type Role = (typeof roles)[number];
export const isRole = (text: unknown): text is Role => roles.some((role) => role === text);

/** Who a request or a socket speaks for. `device`: "bench" is this machine. */
export type Who = { role: Role; device: string; name: string };
export const bench: Who = { role: 'works', device: 'bench', name: 'bench' };

type May = 'yes' | 'in practice' | 'no';
const frames: Readonly<Record<FromPage['is'], Readonly<Record<Role, May>>>> = {
  hello: { works: 'yes', reviews: 'yes', learns: 'yes' },
  follow: { works: 'yes', reviews: 'yes', learns: 'yes' },
  earlier: { works: 'yes', reviews: 'yes', learns: 'yes' },
  list: { works: 'yes', reviews: 'yes', learns: 'yes' },
  ask: { works: 'yes', reviews: 'yes', learns: 'yes' },
  open: { works: 'yes', reviews: 'no', learns: 'in practice' },
  note: { works: 'yes', reviews: 'no', learns: 'in practice' },
  remark: { works: 'yes', reviews: 'yes', learns: 'in practice' },
  close: { works: 'yes', reviews: 'no', learns: 'in practice' },
  reopen: { works: 'yes', reviews: 'no', learns: 'in practice' },
  estimate: { works: 'yes', reviews: 'no', learns: 'in practice' },
  decide: { works: 'yes', reviews: 'no', learns: 'in practice' },
  resheet: { works: 'yes', reviews: 'no', learns: 'no' },
};

/** Whether `role` may send a frame of the kind: always, only to a practice session, or not. */
export const mayFrame = (role: Role, is: FromPage['is']): May => frames[is][role];

/** Whether `role` may bring a picture in. */
export const mayPicture = (role: Role): boolean => role === 'works';

/** Whether `role` may change a coach's sheet or the shop's own settings. */
export const mayEdit = (role: Role): boolean => role === 'works';
