/** Tests of what is read from files, pipes and devices, and what is said of those that cannot be. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { LARGEST_TEXT } from '../document/json/read-json.ts';
import { bytesOf } from './file-bytes.ts';

it('a file is read whole, one that cannot be is named with the cause', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bytes-'));
  const file = join(folder, 'bike.json');
  const text = '{"bike":"é"}'.repeat(20_000);
  writeFileSync(file, text);
  const read = bytesOf(file);
  expect(read.ok && new TextDecoder().decode(read.value)).toBe(text);
  writeFileSync(file, Buffer.alloc(LARGEST_TEXT + 1));
  expect(bytesOf(file)).toMatchObject({ ok: false, reason: expect.stringMatching(/^The file is 5\.0 MB; /) });
  for (const [path, cause] of [
    [join(folder, 'none'), 'there is no such file'],
    [join(file, 'none'), 'there is no such folder'],
    [folder, 'it is a folder'],
    [join(folder, 'a'.repeat(300)), 'its name is too long'],
  ])
    expect(bytesOf(String(path))).toEqual({
      ok: false,
      reason: `The file ${path} cannot be read: ${cause}.`,
    });
  rmSync(folder, { recursive: true });
});

it.skipIf(process.platform === 'win32')('a device that never ends is left, and a pipe is read', () => {
  expect(bytesOf('/dev/zero')).toEqual({
    ok: false,
    reason: 'The file goes on beyond 5 MB, and nothing as large is opened.',
  });
  const pipe = spawnSync(
    'sh',
    ['-c', 'cat fixtures/bikes/plain.json | node src/commands/readings.js /dev/stdin'],
    {
      encoding: 'utf8',
    },
  );
  expect(pipe.stderr).toBe('');
  expect(JSON.parse(pipe.stdout)).toMatchObject({ bike: expect.any(String) });
});
