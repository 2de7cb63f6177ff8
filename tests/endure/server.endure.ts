/** A minute of a client that means harm, against the server that `npm start` starts: nothing outside its folder leaves it, and a good visitor is answered all the while. */
import { spawn, type ChildProcess } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from '../../src/commands/install.js';
import { benchTable } from '../bench/bench-table.ts';

const LASTS_MS = { long: 60_000, short: 1000 };
/** Connections of the hostile client at one time, and the most requests it makes at all. */
const AT_ONCE = 12;
const MOST_REQUESTS = 200_000;
/** How often the good visitor comes, and how long it waits, ms. */
const VISIT_EVERY_MS = 250;
const VISITOR_WAITS_MS = 5000;
/** Lines that the good visitor's own program may keep open for its next visit. */
const KEPT_BY_VISITOR = 5;
/** How long one hostile connection stays at most, ms. */
const STAYS_MS = 300;

const SECRET = 'outside-of-the-folder';
const PAGE = '<p>page</p>';

/** The same numbers in every run: what comes next from what came before. */
function drawn(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const WAYS_UP = [
  '../',
  '..%2f',
  '%2e%2e/',
  '%2e%2e%2f',
  '..\\',
  '..%5c',
  '....//',
  '%252e%252e/',
  '.%2e/',
  '..;/',
];
const METHODS = [
  'GET',
  'HEAD',
  'POST',
  'PUT',
  'DELETE',
  'OPTIONS',
  'TRACE',
  'CONNECT',
  'PATCH',
  'get',
  'X'.repeat(200),
];
const HOSTS = [
  'localhost',
  '127.0.0.1',
  'elsewhere.example',
  '127.0.0.1.elsewhere.example',
  '',
  'localhost@elsewhere',
  '[::1]',
  'a b',
];
const TARGETS = [
  'secret.txt',
  'page-beside/secret.txt',
  'etc/passwd',
  'out/secret.txt',
  'dev/zero',
  'proc/self/environ',
];

/** What one hostile connection sends. */
function attack(next: (below: number) => number): string | Buffer {
  const pick = <T>(from: readonly T[]): T => from[next(from.length)];
  const up = Array.from({ length: 1 + next(6) }, () => pick(WAYS_UP)).join('');
  const path = `/${pick(['', '', 'assets/', '/', './'])}${up}${pick(TARGETS)}${pick(['', '', '%00.html', '?', '#', '/'])}`;
  const head = (line: string, more = ''): string => `${line}\r\nHost: ${pick(HOSTS)}\r\n${more}\r\n`;
  const kinds: readonly (() => string | Buffer)[] = [
    () => head(`GET ${path} HTTP/1.1`),
    () => head(`GET ${path} HTTP/1.1`),
    () => head(`GET http://localhost${path} HTTP/1.1`),
    () => head(`${pick(METHODS)} ${path} HTTP/1.1`, 'Content-Length: 5\r\n') + 'hello',
    () => `GET ${path} HTTP/1.0\r\n\r\n`,
    () => head('GET / HTTP/1.1').repeat(1 + next(30)),
    () => head('GET /large.bin HTTP/1.1'),
    () => head(`GET /${'a'.repeat(next(40_000))} HTTP/1.1`),
    () => head('GET / HTTP/1.1', `X-Long: ${'x'.repeat(next(60_000))}\r\n`),
    () => head('GET / HTTP/1.1', 'X-Many: 1\r\n'.repeat(next(3000))),
    () => head('GET /large.bin HTTP/1.1', `Range: bytes=0-${'9'.repeat(next(40))},-1\r\n`),
    () =>
      head('POST / HTTP/1.1', 'Transfer-Encoding: chunked\r\nContent-Length: 3\r\n') +
      'zz\r\nhello\r\n0\r\n\r\n',
    () => head('GET / HTTP/1.1', 'Upgrade: websocket\r\nConnection: Upgrade\r\n'),
    () => 'GET / HTTP/1.1\r\nHost: local',
    () => Buffer.from(Array.from({ length: 1 + next(3000) }, () => next(256))),
    () => '',
  ];
  return pick(kinds)();
}

/** Sends something, hears a little of the answer and leaves in one way or another; gives back what was heard. */
function assault(port: number, sent: string | Buffer, leaves: 'waits' | 'breaks off'): Promise<string> {
  return new Promise((done) => {
    let heard = '';
    const line = connect(port, '127.0.0.1', () => line.write(sent));
    const timer = setTimeout(() => line.destroy(), STAYS_MS);
    line.on('data', (bytes) => {
      if (heard.length < 100_000) heard += bytes.toString('latin1');
      if (leaves === 'breaks off' || heard.length >= 100_000) line.destroy();
    });
    // A line that the server closes half way is one of its answers.
    line.on('error', () => line.destroy());
    line.on('close', () => {
      clearTimeout(timer);
      done(heard);
    });
  });
}

/** A server in a process of its own, so that what it holds can be counted. */
async function startedServer(folder: string): Promise<{ port: number; process: ChildProcess }> {
  const program = `
    const [address, folder] = process.argv.slice(1);
    const { serve } = await import(address);
    console.log((await serve(folder, 0)).portTaken);`;
  const address = pathToFileURL(join(root, 'src/commands/serve.js')).href;
  const started = spawn(process.execPath, ['--input-type=module', '-e', program, address, folder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const port = await new Promise<number>((fulfil, reject) => {
    started.on('exit', () => reject(new Error('the server ended before it listened')));
    started.stdout.once('data', (bytes: Buffer) => fulfil(Number(bytes.toString())));
  });
  return { port, process: started };
}

/** Files and lines it holds open, and its memory in MB; null where the system does not tell. */
function heldBy(pid: number): { open: number; memory: number } | null {
  if (!existsSync(`/proc/${pid}/status`)) return null;
  const memory = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
  return { open: readdirSync(`/proc/${pid}/fd`).length, memory: Number(memory) / 1024 };
}

/** The server's folder, and beside it what must stay there. */
function madeFolder(): { folder: string; remove: () => void } {
  const outside = mkdtempSync(join(tmpdir(), 'sidestance-hostile-'));
  const folder = join(outside, 'page');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(outside, 'page-beside'));
  writeFileSync(join(folder, 'index.html'), PAGE);
  writeFileSync(join(folder, 'large.bin'), Buffer.alloc(8_000_000, 'y'));
  for (const place of ['secret.txt', 'page-beside/secret.txt']) writeFileSync(join(outside, place), SECRET);
  symlinkSync('ring', join(folder, 'ring'));
  return { folder, remove: () => rmSync(outside, { recursive: true, force: true }) };
}

const settle = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

export default async function server(short: boolean): Promise<string[]> {
  const { folder, remove } = madeFolder();
  const started = await startedServer(folder);
  const pid = started.process.pid ?? 0;
  const address = `http://127.0.0.1:${started.port}/`;
  const next = drawn(18);
  const counts = { asked: 0, refused: 0, told: 0, other: 0, leaked: 0 };
  const visits: number[] = [];
  let failedVisits = 0;
  const visit = async (): Promise<void> => {
    const begun = performance.now();
    const body = await fetch(address, { signal: AbortSignal.timeout(VISITOR_WAITS_MS) }).then(
      (response) => response.text(),
      String,
    );
    if (body === PAGE) visits.push(performance.now() - begun);
    else failedVisits++;
  };
  try {
    await visit();
    const before = heldBy(pid);
    const end = performance.now() + (short ? LASTS_MS.short : LASTS_MS.long);
    const goesOn = (): boolean => performance.now() < end && counts.asked < MOST_REQUESTS;
    const hostile = async (): Promise<void> => {
      while (goesOn()) {
        counts.asked++;
        const heard = await assault(started.port, attack(next), next(4) === 0 ? 'breaks off' : 'waits');
        if (heard.includes(SECRET) || heard.includes('root:')) counts.leaked++;
        const status = Number(/^HTTP\/1\.1 (\d+)/.exec(heard)?.[1]);
        if (status >= 400) counts.refused++;
        else if (status === 200) counts.told++;
        else counts.other++;
      }
    };
    const visitor = async (): Promise<void> => {
      while (goesOn()) {
        await visit();
        await settle(VISIT_EVERY_MS);
      }
    };
    await Promise.all([visitor(), ...Array.from({ length: AT_ONCE }, hostile)]);
    await settle(2 * STAYS_MS);
    await visit();
    const after = heldBy(pid);
    const sorted = [...visits].sort((a, b) => a - b);
    return [
      `${counts.asked} hostile connections in ${(short ? LASTS_MS.short : LASTS_MS.long) / 1000} s: ${counts.refused} refused, ` +
        `${counts.told} told what is public, ${counts.other} left or cut off without an answer`,
      ...benchTable([
        {
          what: 'answers that hold what lies outside the folder',
          figure: counts.leaked,
          unit: '',
          goal: { most: 0 },
        },
        { what: 'visits of a good visitor that failed', figure: failedVisits, unit: '', goal: { most: 0 } },
        { what: 'good visits answered', figure: visits.length, unit: '' },
        {
          what: 'a good visit, 19 of 20 within',
          figure: sorted[Math.floor(0.95 * sorted.length)],
          unit: 'ms',
        },
        {
          what: 'the server is still there',
          figure: started.process.exitCode === null ? 1 : 0,
          unit: '',
          goal: { least: 1 },
        },
        ...(before === null || after === null
          ? []
          : [
              {
                what: 'files and lines open afterwards, more than before',
                figure: after.open - before.open,
                unit: '',
                goal: { most: KEPT_BY_VISITOR },
              },
              {
                what: 'memory afterwards, more than before',
                figure: after.memory - before.memory,
                unit: 'MB',
              },
            ]),
      ]),
    ];
  } finally {
    started.process.kill();
    remove();
  }
}
