/** The routes of pairing: the bench shows a code and takes devices back, a device gives the code and gets its cookie. */
import express, { type Express, type Request, type Response } from 'express';
import { type Codes, cleanCode } from './auth/codes.ts';
import { cookieFor } from './auth/cookie.ts';
import { deviceLasts, type Devices } from './auth/devices.ts';
import { benchPage, pairCss, pairPage } from './auth/pages.ts';
import { isRole } from './auth/roles.ts';
import { formPolicy } from './house.ts';

export type Pairing = {
  codes: Codes;
  devices: Devices;
  /** Address in the shop with its closing slash; null when not open. */
  address: () => string | null;
  authority: string | null;
  fingerprint: string;
  /** Ends what a device has open. */
  drop: (device: string) => void;
};

const form = express.urlencoded({ extended: false, limit: 2048, parameterLimit: 8 });
const field = (request: Request, name: string): string => {
  const value: unknown = (request.body as Record<string, unknown> | undefined)?.[name];
  return typeof value === 'string' ? value : '';
};
const html = (response: Response, body: string, status = 200): void => {
  response.setHeader('Content-Security-Policy', formPolicy);
  response.setHeader('Cache-Control', 'no-store');
  response.status(status).type('html').send(body);
};
const time = (at: number): string => new Date(at).toLocaleString('sv-SE', { dateStyle: 'short', timeStyle: 'short' });
const css = (app: Express): void => {
  app.get('/pair.css', (_request, response) => void response.type('css').send(pairCss));
};

/** On the bench's own door. A form names its origin; without one only what is no browser asks. */
export const benchRoutes = (app: Express, pairing: Pairing): void => {
  const { codes, devices } = pairing;
  css(app);
  app.get('/bench', (_request, response) =>
    html(
      response,
      benchPage({
        code: codes.current(),
        address: pairing.address(),
        fingerprint: pairing.fingerprint,
        devices: devices.list(),
        time,
      }),
    ),
  );
  app.post('/bench/code', form, (request, response) => {
    const role = field(request, 'role');
    if (!isRole(role) || pairing.address() === null)
      return void response.status(400).type('text').send('A code is for a role, on a server that is open to the shop.');
    codes.issue(role);
    response.redirect(303, '/bench');
  });
  app.post('/bench/revoke', form, (request, response) => {
    const id = field(request, 'id');
    try {
      devices.revoke(id);
    } finally {
      // out first, whatever the disk says
      pairing.drop(id);
    }
    response.redirect(303, '/bench');
  });
};

/** On the shop's door, open to whom is not paired yet. */
export const pairRoutes = (app: Express, pairing: Pairing): void => {
  css(app);
  app.get('/pair', (request, response) => {
    const { code } = request.query;
    html(response, pairPage(typeof code === 'string' ? cleanCode(code).slice(0, 12) : '', null));
  });
  app.post('/pair', form, (request, response) => {
    const name = field(request, 'name').trim().slice(0, 40);
    if (name === '')
      return html(response, pairPage(field(request, 'code').slice(0, 12), 'Say what this device is called.'), 400);
    const taken = pairing.codes.take(field(request, 'code').slice(0, 40));
    if (!taken.ok)
      return html(
        response,
        pairPage(
          '',
          taken.why === 'wrong'
            ? 'That code is wrong, used or over: ask for a new one at the bench.'
            : 'Too many wrong codes: pairing rests for ten minutes.',
        ),
        taken.why === 'wrong' ? 403 : 429,
      );
    try {
      const { token } = pairing.devices.add(name, taken.role);
      response.setHeader('Set-Cookie', cookieFor(token, deviceLasts));
      response.redirect(303, '/');
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      html(response, pairPage('', error.message), 409);
    }
  });
  app.get('/shop.crt', (_request, response) => {
    if (pairing.authority === null)
      return void response.status(404).type('text').send('It has a certificate of its own.');
    response.type('application/x-x509-ca-cert').send(pairing.authority);
  });
};
