#!/usr/bin/env node
/** Starts a Firefox of the system for Playwright and stands between the two, because Playwright speaks as the newest Firefox does: what an older one does not know yet is answered here, and a download gets the name it lacks. */
import { spawn } from 'node:child_process';
import WebSocket, { WebSocketServer } from 'ws';

/** Commands that an older Firefox does not know and a test can do without. */
const NOT_YET_KNOWN = ['emulation.setMediaFeaturesOverride'];
const LISTENS = /WebDriver BiDi listening on (ws:\S+)/;

const firefox = spawn(process.env.FIREFOX_PATH ?? 'firefox-esr', process.argv.slice(2), {
  stdio: ['ignore', 'inherit', 'pipe'],
});
firefox.on('exit', (code) => process.exit(code ?? 1));
firefox.on('error', (error) => {
  console.error(error.message);
  process.exit(1);
});
for (const signal of /** @type {const} */ (['SIGTERM', 'SIGINT']))
  process.on(signal, () => firefox.kill(signal));

let said = '';
firefox.stderr.on('data', (/** @type {Buffer} */ bytes) => {
  said += bytes.toString();
  const place = LISTENS.exec(said)?.[1];
  if (place === undefined) return;
  firefox.stderr.removeAllListeners('data').resume();
  open(place);
});

/** Listens for Playwright and tells it where. @param {string} place where Firefox listens */
function open(place) {
  const server = new WebSocketServer({ host: '127.0.0.1', port: 0 });
  server.on('listening', () => {
    const { port } = /** @type {import('node:net').AddressInfo} */ (server.address());
    console.error(`WebDriver BiDi listening on ws://127.0.0.1:${port}`);
  });
  server.on('connection', (near, { url }) => join(near, new WebSocket(place + url, { maxPayload: 2 ** 28 })));
}

/** @typedef {{ id?: number, method?: string, params?: Record<string, unknown> }} Message */

/** Carries messages both ways. @param {WebSocket} near Playwright @param {WebSocket} far Firefox */
function join(near, far) {
  /** @type {string[]} */
  const early = [];
  far.on('open', () => early.splice(0).forEach((text) => far.send(text)));
  near.on('message', (bytes) => {
    const text = String(bytes);
    const { id, method } = /** @type {Message} */ (JSON.parse(text));
    if (NOT_YET_KNOWN.includes(method ?? '')) near.send(JSON.stringify({ type: 'success', id, result: {} }));
    else if (far.readyState === WebSocket.OPEN) far.send(text);
    else early.push(text);
  });
  far.on('message', (bytes) => near.send(withDownloadName(String(bytes))));
  near.on('close', () => far.close());
  far.on('close', () => near.close());
}

/** An older Firefox names no download; its address is made once and does as a name. @param {string} text */
function withDownloadName(text) {
  if (!text.includes('"browsingContext.download')) return text;
  const message = /** @type {Message} */ (JSON.parse(text));
  return JSON.stringify({ ...message, params: { download: message.params?.url, ...message.params } });
}
