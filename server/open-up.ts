/** What opening to the shop's network needs: names, certificate, port. Raises TlsRefused. */
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { hostWith, shopNames } from './auth/names.ts';
import { ownTls, type ShopTls, shopTls, TlsRefused } from './auth/shop-tls.ts';

export type Opened = {
  port: number;
  tls: ShopTls;
  address: (port: number) => string;
  hosts: (port: number) => string[];
};

type Wanted = {
  data: string;
  port: number;
  name: string | undefined;
  cert: string | undefined;
  key: string | undefined;
  now: number;
};

export const openUp = ({ data, port, name, cert, key, now }: Wanted): Opened => {
  const names = shopNames(networkInterfaces(), hostname(), name);
  const first = names[0];
  if (first === undefined) throw new TlsRefused('this machine has no network to open to');
  if ((cert === undefined) !== (key === undefined)) throw new TlsRefused('--cert and --key belong together');
  const tls = cert !== undefined && key !== undefined ? ownTls(cert, key) : shopTls(join(data, 'tls'), names, now);
  const hosts = (actual: number): string[] => names.flatMap((n) => hostWith(n, actual, 443));
  return { port, tls, hosts, address: (actual) => `https://${hostWith(first, actual, 443)[0]!}/` };
};
