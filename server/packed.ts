/** The page's scripts and styles as the build packed them: a third of the bytes on a bad line. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { RequestHandler } from 'express';

/** Stands before the static files of `page`: hands on to FILE.br where the browser takes brotli and the build made one. */
export const packed =
  (page: string): RequestHandler =>
  (request, response, next) => {
    const asset = /^\/assets\/[\w.-]+\.(js|css)$/.exec(request.path);
    if (asset === null) return next();
    response.vary('Accept-Encoding');
    if (request.acceptsEncodings('br') === 'br' && existsSync(join(page, `${request.path}.br`))) {
      request.url = `${request.path}.br`;
      response.type(asset[1] ?? '').setHeader('Content-Encoding', 'br');
    }
    next();
  };
