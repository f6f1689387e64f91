/** What this machine is called in the shop. Pure: the interfaces and the host name come in. */
import { isIP, isIPv4 } from 'node:net';
import type { NetworkInterfaceInfo } from 'node:os';

/** Addresses (IPv4 first) and names, without loopback; `extra` first: the name a person gave. */
export const shopNames = (
  interfaces: NodeJS.Dict<NetworkInterfaceInfo[]>,
  hostName: string,
  extra: string | undefined,
): string[] => {
  const addresses = Object.values(interfaces)
    .flatMap((list) => list ?? [])
    // link-local addresses carry a zone that no certificate and no Host header can
    .filter((i) => !i.internal && !i.address.toLowerCase().startsWith('fe80'))
    .map((i) => i.address.toLowerCase())
    .toSorted((a, b) => Number(isIPv4(b)) - Number(isIPv4(a)));
  const host = hostName.toLowerCase();
  const named = /^[a-z0-9-]+(?:\.[a-z0-9-]+)*$/.test(host) ? [host.includes('.') ? host : `${host}.local`] : [];
  return [...new Set([...(extra ? [extra.toLowerCase()] : []), ...addresses, ...named])];
};

/** `name` with the port, as a Host header has it. */
export const hostWith = (name: string, port: number, usual: number): string[] => {
  const shown = isIP(name) === 6 ? `[${name}]` : name;
  return port === usual ? [shown, `${shown}:${port}`] : [`${shown}:${port}`];
};
