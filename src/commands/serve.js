/** A small web server for the built page. */
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

/** @type {Record<string, string>} */
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

/** @param {string} file */
export const contentType = (file) => types[extname(file).toLowerCase()] ?? 'application/octet-stream';

/**
 * The file a request's address names inside `folder`; undefined when it lies outside, is malformed, or is not there.
 * @param {string} folder
 * @param {string} address the path of the request, still escaped, with its query if it has one
 * @returns {string | undefined}
 */
export function fileFor(folder, address) {
  const base = resolve(folder);
  let path;
  try {
    path = decodeURIComponent(address.split(/[?#]/, 1)[0] ?? '');
  } catch {
    return undefined; // A broken escape names no file.
  }
  if (path.includes('\0')) return undefined;
  let file = resolve(join(base, path));
  if (file !== base && !file.startsWith(base + sep)) return undefined;
  if (statSync(file, { throwIfNoEntry: false })?.isDirectory()) file = join(file, 'index.html');
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/**
 * Serves `folder` to this machine alone. Where the port is busy it takes the next free one, unless `strict`.
 * @param {string} folder
 * @param {number} port
 * @param {{ strict?: boolean }} [options]
 * @returns {Promise<import('node:http').Server & { portTaken: number }>}
 */
export function serve(folder, port, { strict = false } = {}) {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const file = fileFor(folder, request.url ?? '/');
    if (!file) {
      response
        .writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' })
        .end('There is no such file.\n');
      return;
    }
    // Asked for anew each time, so that a rebuilt page is never mixed with an old one.
    response.writeHead(200, { 'Content-Type': contentType(file), 'Cache-Control': 'no-cache' });
    if (request.method === 'HEAD') response.end();
    else
      createReadStream(file)
        .on('error', () => response.destroy())
        .pipe(response);
  });
  return new Promise((fulfil, reject) => {
    let next = port;
    server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code !== 'EADDRINUSE' || strict || next >= port + PORTS_TRIED) reject(error);
      else server.listen(++next, HOST);
    });
    server.on('listening', () => {
      const address = server.address();
      const portTaken = address && typeof address === 'object' ? address.port : next;
      fulfil(Object.assign(server, { portTaken }));
    });
    server.listen(next, HOST);
  });
}

/** How many further ports are tried; more busy ones in a row than this means something else is wrong. */
const PORTS_TRIED = 50;

/** Both `localhost` and `127.0.0.1` reach it, and no other machine does. */
const HOST = '127.0.0.1';
