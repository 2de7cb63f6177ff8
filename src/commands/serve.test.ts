/** Tests of the small web server, on a folder made for the test. */
import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { contentType, pathFor, serve } from './serve.js';

let outside = '';
let folder = '';

beforeAll(() => {
  outside = mkdtempSync(join(tmpdir(), 'serve-'));
  // Open to others, because a test gives up the superuser's rights.
  chmodSync(outside, 0o755);
  folder = join(outside, 'page');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(outside, 'page-beside'));
  writeFileSync(join(folder, 'index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'assets', 'a b.js'), 'export {}');
  writeFileSync(join(folder, 'assets', 'why-panel-B8_x-Qf3.js'), 'export {}');
  writeFileSync(join(outside, 'secret.txt'), 'secret');
  writeFileSync(join(outside, 'page-beside', 'secret.txt'), 'secret');
});
afterAll(() => rmSync(outside, { recursive: true }));

describe('the path for an address', () => {
  it('lies in the folder, with escapes undone and the query dropped', () => {
    expect(pathFor(folder, '/assets/a%20b.js?v=1')).toBe(join(folder, 'assets', 'a b.js'));
    expect(pathFor(folder, '/')).toBe(folder);
  });

  it('leaves out scheme and host, and takes two slashes for a path', () => {
    expect(pathFor(folder, 'http://localhost:1/assets/a%20b.js?v=1')).toBe(join(folder, 'assets', 'a b.js'));
    expect(pathFor(folder, '//assets/a%20b.js')).toBe(join(folder, 'assets', 'a b.js'));
  });

  it('is undefined for a broken escape, a zero byte and what is not an address', () => {
    for (const address of ['/%E0%A4%A', '/a%00b', '/a\0b', '*', '', 'index.html', 'http://', 'file:///etc'])
      expect(pathFor(folder, address)).toBeUndefined();
  });

  it('never leads outside the folder, however the way up is written', () => {
    for (const way of [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/assets/../../secret.txt',
      '/..%2fsecret.txt',
      '//../secret.txt',
      '/../page-beside/secret.txt',
      'http://localhost/%2e%2e%2fsecret.txt',
    ])
      expect(pathFor(folder, way)).toBeUndefined();
  });
});

describe('the server', () => {
  /** The status of the answer to a request written as it stands; NaN when there is none. */
  const statusFor = (port: number, line: string): Promise<number> =>
    new Promise((fulfil, reject) => {
      let heard = '';
      const visitor = connect(port, '127.0.0.1', () =>
        visitor.write(`${line}\r\nHost: localhost\r\nConnection: close\r\n\r\n`),
      );
      visitor.on('data', (bytes) => (heard += bytes.toString('latin1')));
      visitor.on('error', reject);
      visitor.on('close', () => fulfil(Number(/^HTTP\/1\.1 (\d+)/.exec(heard)?.[1])));
    });
  /** The paths of all files that this process holds open. */
  const openFiles = (): string[] =>
    readdirSync('/proc/self/fd').flatMap((each) => {
      try {
        return [readlinkSync(`/proc/self/fd/${each}`)];
      } catch {
        return []; // Closed since it was listed, as the listing itself is.
      }
    });
  const answer = (port: number, path: string, method = 'GET') =>
    new Promise<{ status?: number; type?: string; body: string }>((fulfil, reject) => {
      const asked = request({ host: '127.0.0.1', port, path, method }, (response) => {
        let body = '';
        response.setEncoding('utf8');
        response.on('data', (chunk: string) => (body += chunk));
        response.on('end', () =>
          fulfil({ status: response.statusCode, type: response.headers['content-type'], body }),
        );
      });
      asked.on('error', reject).end();
    });

  it('answers with the file and its type, and refuses the rest', async () => {
    const server = await serve(folder, 0);
    const port = server.portTaken;
    expect(await answer(port, '/')).toEqual({
      status: 200,
      type: 'text/html; charset=utf-8',
      body: '<p>page</p>',
    });
    expect((await answer(port, '/', 'HEAD')).body).toBe('');
    expect((await answer(port, '/none.js')).status).toBe(404);
    expect((await answer(port, '/', 'POST')).status).toBe(405);
    server.close();
  });

  it('says with every file who may use it and how, and answers to no host but this machine', async () => {
    const server = await serve(folder, 0);
    const at = `http://127.0.0.1:${server.portTaken}/`;
    const { headers } = await fetch(at);
    expect(headers.get('content-security-policy')).toMatch(
      /^default-src 'none'; script-src 'self'; .*frame-ancestors 'none'$/,
    );
    expect(headers.get('content-security-policy')).not.toMatch(
      /https?:|\*|unsafe-eval|script-src[^;]*unsafe/,
    );
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    const statusAs = (host: string): Promise<number | undefined> =>
      new Promise((done, failed) => {
        request(at, { headers: { host } }, (response) => {
          response.resume();
          done(response.statusCode);
        })
          .on('error', failed)
          .end();
      });
    expect(await statusAs(`localhost:${server.portTaken}`)).toBe(200);
    expect(await statusAs('elsewhere.example')).toBe(421);
    expect(await statusAs('localhost.elsewhere.example')).toBe(421);
    server.close();
  });

  it('lets a browser keep what is named by its content, and has it ask for all else each time', async () => {
    const server = await serve(folder, 0);
    const kept = async (path: string): Promise<string | null> =>
      (await fetch(`http://127.0.0.1:${server.portTaken}${path}`)).headers.get('cache-control');
    try {
      expect(await kept('/assets/why-panel-B8_x-Qf3.js')).toBe('public, max-age=31536000, immutable');
      for (const path of ['/', '/index.html', '/assets/a%20b.js']) expect(await kept(path)).toBe('no-cache');
    } finally {
      server.close();
      server.closeAllConnections();
    }
  });

  it('answers every odd request, and lives', async () => {
    symlinkSync(join(folder, 'ring'), join(folder, 'ring'));
    const server = await serve(folder, 0);
    const port = server.portTaken;
    const expected: readonly (readonly [string, number])[] = [
      [`/${'a'.repeat(256)}`, 404],
      [`/${'a'.repeat(5000)}`, 404],
      [`/${'a/'.repeat(5000)}`, 404],
      [`/${'%C3%A9'.repeat(256)}`, 404],
      ['http://localhost/', 200],
      [`http://localhost/${'a'.repeat(300)}`, 404],
      ['http://', 404],
      ['//', 200],
      ['//elsewhere/index.html', 404],
      ['/%00', 404],
      ['/\0', 400],
      ['/%E0%A4%A', 404],
      ['/%', 404],
      ['/ring', 404],
      ['/ring/x', 404],
      ['/index.html/x', 404],
      ['/assets', 404],
      ['*', 404],
      ['x', 400],
      ['/../secret.txt', 404],
      ['/%2e%2e/secret.txt', 404],
      ['/?%', 200],
    ];
    const answers: (readonly [string, number])[] = [];
    for (const [address] of expected)
      answers.push([address, await statusFor(port, `GET ${address} HTTP/1.1`)]);
    expect(answers).toEqual(expected);
    expect(await statusFor(port, 'nonsense')).toBe(400);
    expect((await answer(port, '/')).body).toBe('<p>page</p>');
    server.close();
  });

  it('answers 403 for a file that it may not read', () => {
    writeFileSync(join(folder, 'shut.txt'), 'shut');
    chmodSync(join(folder, 'shut.txt'), 0);
    // A program by itself, because the superuser may read every file and tests cannot give up his rights.
    const program = `
      const [address, folder] = process.argv.slice(1);
      const { serve } = await import(address);
      const server = await serve(folder, 0);
      if (process.geteuid?.() === 0) process.seteuid('nobody');
      for (const path of ['shut.txt', ''])
        console.log((await fetch('http://127.0.0.1:' + server.portTaken + '/' + path)).status);
      process.exit(0);`;
    const given = [new URL('./serve.js', import.meta.url).href, folder];
    const ran = spawnSync(process.execPath, ['--input-type=module', '-e', program, ...given], {
      encoding: 'utf8',
    });
    expect([ran.stdout, ran.stderr]).toEqual(['403\n200\n', '']);
  });

  it('closes the file of every download, whether it comes to its end or is aborted', async () => {
    writeFileSync(join(folder, 'large.bin'), Buffer.alloc(20_000_000, 'a'));
    const server = await serve(folder, 0);
    const large = realpathSync(join(folder, 'large.bin'));
    const isOpen = (): boolean => openFiles().includes(large);
    for (let i = 0; i < 5; i++) {
      const visitor = connect(server.portTaken, '127.0.0.1');
      visitor.write('GET /large.bin HTTP/1.1\r\nHost: localhost\r\n\r\n');
      await once(visitor, 'data');
      visitor.pause();
      // Half way through, which shows that an open file is seen.
      expect(isOpen()).toBe(true);
      visitor.destroy();
      await vi.waitFor(() => expect(isOpen()).toBe(false));
    }
    expect((await answer(server.portTaken, '/large.bin')).body).toHaveLength(20_000_000);
    await answer(server.portTaken, '/large.bin', 'HEAD');
    await vi.waitFor(() => expect(isOpen()).toBe(false));
    server.close();
  });

  it('takes another port when the first is busy, but not when it is strict', async () => {
    const first = await serve(folder, 0);
    const second = await serve(folder, first.portTaken);
    expect(second.portTaken).toBeGreaterThan(first.portTaken);
    await expect(serve(folder, first.portTaken, { strict: true })).rejects.toThrow('EADDRINUSE');
    first.close();
    second.close();
  });

  it('gives a script the type of a script, and an unknown file that of plain bytes', () => {
    expect(contentType('x.JS')).toBe('text/javascript; charset=utf-8');
    expect(contentType('x.unknown')).toBe('application/octet-stream');
  });
});
