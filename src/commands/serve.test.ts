/** Tests the small web server on a folder made for the test. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { contentType, fileFor, serve } from './serve.js';

let outside = '';
let folder = '';

beforeAll(() => {
  outside = mkdtempSync(join(tmpdir(), 'serve-'));
  folder = join(outside, 'page');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(outside, 'page-beside'));
  writeFileSync(join(folder, 'index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'assets', 'a b.js'), 'export {}');
  writeFileSync(join(outside, 'secret.txt'), 'secret');
  writeFileSync(join(outside, 'page-beside', 'secret.txt'), 'secret');
});
afterAll(() => rmSync(outside, { recursive: true }));

describe('the file for an address', () => {
  it('is the file itself, with escapes undone and the query dropped', () => {
    expect(fileFor(folder, '/assets/a%20b.js?v=1')).toBe(join(folder, 'assets', 'a b.js'));
  });

  it('is the index of a folder', () => {
    expect(fileFor(folder, '/')).toBe(join(folder, 'index.html'));
  });

  it('is none for what is absent, for a folder without an index and for a broken escape', () => {
    for (const address of ['/none.js', '/assets', '/%E0%A4%A', '/a%00b'])
      expect(fileFor(folder, address)).toBeUndefined();
  });

  it('is none outside the folder, however the way up is written', () => {
    for (const way of [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/assets/../../secret.txt',
      '/..%2fsecret.txt',
    ])
      expect(fileFor(folder, way)).toBeUndefined();
    expect(fileFor(folder, '/../page-beside/secret.txt')).toBeUndefined();
  });
});

describe('the server', () => {
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
    expect((await answer(port, '/../secret.txt')).status).toBe(404);
    expect((await answer(port, '/', 'POST')).status).toBe(405);
    server.close();
  });

  it('takes another port when the first is busy, and refuses to when told to be strict', async () => {
    const first = await serve(folder, 0);
    const second = await serve(folder, first.portTaken);
    expect(second.portTaken).toBeGreaterThan(first.portTaken);
    await expect(serve(folder, first.portTaken, { strict: true })).rejects.toThrow('EADDRINUSE');
    first.close();
    second.close();
  });

  it('names a script a script, and what it does not know plain bytes', () => {
    expect(contentType('x.JS')).toBe('text/javascript; charset=utf-8');
    expect(contentType('x.unknown')).toBe('application/octet-stream');
  });
});
