/** The two plain pages of pairing: one on the bench, one on the device. No script; all text escaped. Pure. */
import { encode } from 'uqr';
import { showCode, type Code } from './codes.ts';
import type { DeviceLine } from './devices.ts';
import { roles, type Role } from './roles.ts';

export const escape = (text: string): string => text.replaceAll(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

const roleWords: Readonly<Record<Role, string>> = {
  works: 'works: reads and writes',
  reviews: 'reviews: reads and remarks',
  learns: 'learns: reads, asks, practises',
};

/** `text` as a QR picture (ISO/IEC 18004), dark on light with the quiet zone of four modules it asks for. */
export const qrSvg = (text: string): string => {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  let path = '';
  for (const [y, row] of data.entries()) for (const [x, dark] of row.entries()) if (dark) path += `M${x} ${y}h1v1h-1z`;
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="QR picture of the pairing address" viewBox="0 0 ${size} ${size}" width="280" height="280" shape-rendering="crispEdges"><rect width="${size}" height="${size}" fill="#fff"/><path d="${path}" fill="#000"/></svg>`;
};

const frame = (title: string, body: string): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escape(title)}</title><link rel="stylesheet" href="/pair.css"></head><body><main><h1>${escape(title)}</h1>${body}</main></body></html>`;

export const pairCss = `:root{color-scheme:light dark;font:1.125rem/1.5 system-ui,sans-serif}
a{color:inherit}
main{max-width:40rem;margin:0 auto;padding:1rem}
input,select,button{font:inherit;min-height:64px;width:100%;box-sizing:border-box;margin:.25rem 0 1rem;padding:.5rem 1rem}
.code{font-size:3rem;font-variant-numeric:tabular-nums;letter-spacing:.08em;margin:.5rem 0}
.wrong{border-left:8px solid;padding-left:1rem}
table{width:100%;border-collapse:collapse}td,th{text-align:left;padding:.5rem .5rem .5rem 0;border-top:1px solid;vertical-align:top}
td button{margin:0;min-height:44px}svg{max-width:100%;height:auto}.small{overflow-wrap:anywhere;font-size:1rem}`;

/** The device's page. `code`: from the QR picture, to be sent only when the person presses the key. */
export const pairPage = (code: string, wrong: string | null): string =>
  frame(
    'Pair this device',
    `${wrong === null ? '' : `<p class="wrong" role="alert">${escape(wrong)}</p>`}
<form method="post" action="/pair"><label>Code shown at the bench<input name="code" required autocomplete="off" autocapitalize="characters" maxlength="12" value="${escape(code)}"></label>
<label>What this device is called<input name="name" required maxlength="40" placeholder="phone of KD"></label><button>Pair</button></form>
<p><a href="/shop.crt">The shop's certificate</a>: installed on this device it opens without a warning, offline too. Compare its fingerprint with the one shown at the bench first.</p>`,
  );

export type BenchView = {
  code: Code | null;
  /** Address of this server in the shop; null when it is not open to the shop. */
  address: string | null;
  fingerprint: string;
  devices: readonly DeviceLine[];
  time: (at: number) => string;
};

/** The bench's page: the code on show, the devices, and how to take one back. */
export const benchPage = ({ code, address, fingerprint, devices, time }: BenchView): string => {
  if (address === null)
    return frame(
      'Devices',
      '<p>This server answers this machine only. Start it with <code>npm start -- --open</code> to pair phones and tablets.</p>',
    );
  const shown =
    code === null
      ? ''
      : `<p class="code">${escape(showCode(code.code))}</p><p>${escape(roleWords[code.role])}. Good once, until ${escape(time(code.until))}.</p>${qrSvg(`${address}pair?code=${code.code}`)}`;
  const rows = devices.map(
    (d) =>
      `<tr><td>${escape(d.name)}</td><td>${escape(d.role)}</td><td>paired ${escape(time(d.paired))}, seen ${escape(time(d.seen))}</td><td><form method="post" action="/bench/revoke"><input type="hidden" name="id" value="${escape(d.id)}"><button>Revoke ${escape(d.name)}</button></form></td></tr>`,
  );
  return frame(
    'Devices',
    `<p>On the device open <strong>${escape(address)}pair</strong>, or point its camera at the picture.</p>${shown}
<form method="post" action="/bench/code"><label>New code for a device that<select name="role">${roles.map((r) => `<option value="${r}">${escape(roleWords[r])}</option>`).join('')}</select></label><button>Show a code</button></form>
<p class="small">Fingerprint of the shop's certificate (SHA-256): ${escape(fingerprint)}</p>
<h2>Paired</h2>${rows.length === 0 ? '<p>None.</p>' : `<table>${rows.join('')}</table>`}
<p><a href="/">Back to the bench page</a></p>`,
  );
};
