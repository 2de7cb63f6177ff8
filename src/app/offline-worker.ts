/** The worker that keeps the page on the device: it answers from what the last build put down, so that no network is missed. */

/** Both are written in by the build: every file of it, apart by spaces, and a mark that changes with any of them. */
const PARTS = '__PARTS__'.split(' ');
const BUILD = '__BUILD__';

/** What this file uses of a service worker; the page's own types do not know it. */
interface WorkerEvent extends Event {
  waitUntil(done: Promise<unknown>): void;
}
interface FetchAsked extends WorkerEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Told extends WorkerEvent {
  readonly data: unknown;
}
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', listener: (event: WorkerEvent) => void): void;
  addEventListener(kind: 'fetch', listener: (event: FetchAsked) => void): void;
  addEventListener(kind: 'message', listener: (event: Told) => void): void;
}

const scope = self as unknown as Scope;
/** Pages in several folders of one address keep apart. */
const START = `sidestance ${new URL(scope.registration.scope).pathname} `;
const KEPT = `${START}${BUILD}`;

/** Puts the whole build down, or nothing of it. */
async function putDown(): Promise<void> {
  const kept = await caches.open(KEPT);
  await kept.addAll(PARTS.map((part) => new Request(part, { cache: 'no-cache' })));
  const page = await kept.match('./');
  const named = (await page?.text())?.match(/assets\/[^"]+/gu) ?? [];
  if (named.length > 0 && named.every((part) => PARTS.includes(part))) return;
  // A host that still gave an older page: the next visit tries again.
  await caches.delete(KEPT);
  throw new Error('The page and its parts are of two builds.');
}

async function clearOlder(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(START) && name !== KEPT).map((name) => caches.delete(name)),
  );
  await scope.clients.claim();
}

/** A file of this build from the device, whatever stands behind its address; anything else from the network. */
async function answer(request: Request): Promise<Response> {
  const kept = await caches.open(KEPT);
  const asked = request.mode === 'navigate' ? './' : request;
  return (await kept.match(asked, { ignoreSearch: true, ignoreVary: true })) ?? (await fetch(request));
}

/** Only the page itself is a page here: a picture or a schema that is opened by its address comes from the network. */
function isOurs({ method, mode, url }: Request): boolean {
  if (method !== 'GET' || !url.startsWith(scope.registration.scope)) return false;
  const path = url.slice(scope.registration.scope.length).split(/[?#]/u)[0];
  return mode !== 'navigate' || path === '' || path === 'index.html';
}

scope.addEventListener('install', (event) => event.waitUntil(putDown()));
scope.addEventListener('activate', (event) => event.waitUntil(clearOlder()));
scope.addEventListener('fetch', (event) => {
  if (isOurs(event.request)) event.respondWith(answer(event.request));
});
// A newer build waits until a person takes it.
scope.addEventListener('message', (event) => {
  if (event.data === 'take') event.waitUntil(scope.skipWaiting());
});
