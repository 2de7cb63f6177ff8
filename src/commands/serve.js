/** A small web server for the built page. */
// Vite's own leaks a file handle on each aborted download, and its `Vary: Origin` keeps stored scripts from being found offline.
import { open, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { CONTENT_POLICY } from './content-policy.js';

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
 * The path inside `folder` that an address names, whether or not anything is there; undefined when the address is
 * malformed or leads outside.
 * @param {string} folder
 * @param {string} address as it stands in the request: a path, or a whole address with its host; still escaped
 * @returns {string | undefined}
 */
export function pathFor(folder, address) {
  const base = resolve(folder);
  // A path that begins with two slashes is still a path and names no host.
  const path = address.startsWith('/') ? address.split(/[?#]/, 1)[0] : pathOfWhole(address);
  if (path === undefined) return undefined;
  let unescaped;
  try {
    unescaped = decodeURIComponent(path);
  } catch {
    return undefined; // A broken escape names no file.
  }
  if (unescaped.includes('\0')) return undefined;
  const file = resolve(join(base, unescaped));
  return file === base || file.startsWith(base + sep) ? file : undefined;
}

/** The path of an address with scheme and host, such as a proxy sends. @param {string} address */
function pathOfWhole(address) {
  return /^https?:/i.test(address) && URL.canParse(address) ? new URL(address).pathname : undefined;
}

/** What the build names by its content, such as `assets/index-DgtfQHv4.js`: other content has another name. */
const NAMED_BY_CONTENT = /[\\/]assets[\\/][^\\/]+-[\w-]{8}\.\w+$/;
/** A browser keeps the file and what it made of a script, which halves its work on the next visit. */
const KEPT_FOR_GOOD = 'public, max-age=31536000, immutable';
/** The browser asks each time, so that a rebuilt page is never mixed with an old one. */
const ASKED_ANEW = 'no-cache';

/** What is not there, or cannot be there under such a name. */
const ABSENT = ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'ELOOP', 'EISDIR'];
const FORBIDDEN = ['EACCES', 'EPERM'];

/** A file is what its type says, tells nobody where its reader came from, and stands in no other page's frame. */
const GUARDS = {
  'Content-Security-Policy': `${CONTENT_POLICY}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'X-Frame-Options': 'DENY',
};

/** A page elsewhere whose name was made to lead to this machine must not read what lies here. */
const OWN_HOSTS = ['localhost', '127.0.0.1', '[::1]'];

/**
 * Whether a request names this machine; one that names no host, as old programs send, comes from no page.
 * @param {string | undefined} host
 * @param {readonly string[]} hosts its names in the network, in small letters
 */
function isOwnHost(host, hosts) {
  return host === undefined || [...OWN_HOSTS, ...hosts].includes(host.replace(/:\d*$/, '').toLowerCase());
}

/** @type {Record<number, string>} */
const REFUSALS = {
  403: 'This file may not be read.\n',
  404: 'There is no such file.\n',
  405: 'Only GET and HEAD are answered.\n',
  421: 'This server answers to its own addresses alone.\n',
  500: 'The file could not be read.\n',
};

/** The status for a file that could not be opened. @param {unknown} error */
function statusOf(error) {
  const code = String(/** @type {NodeJS.ErrnoException} */ (error).code);
  if (ABSENT.includes(code)) return 404;
  return FORBIDDEN.includes(code) ? 403 : 500;
}

/**
 * Opens the file that an address names, or the index of the folder that it names.
 * @param {string} folder
 * @param {string} address
 * @returns {Promise<{ file: string, handle: import('node:fs/promises').FileHandle } | { status: number }>}
 */
async function openFor(folder, address) {
  const path = pathFor(folder, address);
  if (path === undefined) return { status: 404 };
  try {
    const there = await stat(path);
    const file = there.isDirectory() ? join(path, 'index.html') : path;
    if (!(there.isDirectory() ? await stat(file) : there).isFile()) return { status: 404 };
    return { file, handle: await open(file) };
  } catch (error) {
    return { status: statusOf(error) };
  }
}

/**
 * @param {string} folder
 * @param {readonly string[]} hosts
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(folder, hosts, request, response) {
  /** @param {number} status @param {import('node:http').OutgoingHttpHeaders} [headers] */
  const refuse = (status, headers = {}) => {
    response
      .writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', ...headers })
      .end(REFUSALS[status]);
  };
  if (!isOwnHost(request.headers.host, hosts)) {
    refuse(421);
    return;
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    refuse(405, { Allow: 'GET, HEAD' });
    return;
  }
  const opened = await openFor(folder, request.url ?? '/');
  if ('status' in opened) {
    refuse(opened.status);
    return;
  }
  const { file, handle } = opened;
  const keep = NAMED_BY_CONTENT.test(file) ? KEPT_FOR_GOOD : ASKED_ANEW;
  response.writeHead(200, { ...GUARDS, 'Content-Type': contentType(file), 'Cache-Control': keep });
  if (request.method === 'HEAD') {
    await handle.close();
    response.end();
    return;
  }
  // Closes the file however the download ends.
  await pipeline(handle.createReadStream(), response);
}

/**
 * Serves `folder` to this machine alone, or with `hosts` to the network, where it answers to those names too. Where the
 * port is busy it takes the next free one, unless `strict`.
 * @param {string} folder
 * @param {number} port
 * @param {{ strict?: boolean, hosts?: readonly string[] }} [options]
 * @returns {Promise<import('node:http').Server & { portTaken: number }>}
 */
export function serve(folder, port, { strict = false, hosts } = {}) {
  const interfaceAsked = hosts === undefined ? THIS_MACHINE : ALL_INTERFACES;
  const server = createServer((request, response) => {
    // Either the visitor has left or the file broke off half way: it is too late for a status.
    answer(folder, hosts ?? [], request, response).catch(() => response.destroy());
  });
  return new Promise((fulfil, reject) => {
    let next = port;
    const lastTried = Math.min(port + PORTS_TRIED, LAST_PORT);
    server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code !== 'EADDRINUSE' || strict || next >= lastTried) reject(error);
      else server.listen(++next, interfaceAsked);
    });
    server.on('listening', () => {
      const address = server.address();
      const portTaken = address && typeof address === 'object' ? address.port : next;
      fulfil(Object.assign(server, { portTaken }));
    });
    server.listen(next, interfaceAsked);
  });
}

/** How many further ports are tried; more busy ones in a row than this means something else is wrong. */
const PORTS_TRIED = 50;
const LAST_PORT = 65535;

/** Both `localhost` and `127.0.0.1` reach it, and no other machine does. */
const THIS_MACHINE = '127.0.0.1';
const ALL_INTERFACES = '0.0.0.0';
