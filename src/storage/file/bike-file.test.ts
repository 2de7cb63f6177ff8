/** Tests of bikes as files. */
import { expect, it, vi } from 'vitest';
import plain from '../../../fixtures/bikes/plain.json';
import { readBikeFile } from './bike-file.ts';

it('opens a file and gives its text back as it was', async () => {
  const text = `\r\n${JSON.stringify(plain)}`;
  const read = await readBikeFile(new Blob([text]));
  expect(read.ok && read.value.text).toBe(text);
  expect(read.ok && read.value.document.bike.name).toBe('Plain road bike, invented');
});

it('does not even read a file that is too large', async () => {
  const file = new Blob([new Uint8Array(50_000_000)]);
  const reading = vi.spyOn(file, 'arrayBuffer');
  const read = await readBikeFile(file);
  expect(read).toMatchObject({ ok: false, reason: { kind: 'tooLarge' } });
  expect(reading).not.toHaveBeenCalled();
});

it('says why a file could not be read or is no text', async () => {
  const gone = new Blob(['{}']);
  vi.spyOn(gone, 'arrayBuffer').mockRejectedValue(new Error('the file has changed'));
  expect(await readBikeFile(gone)).toEqual({
    ok: false,
    reason: { kind: 'unreadable', sentence: 'The browser could not read the file (the file has changed).' },
  });
  const picture = new Blob([new Uint8Array([0x89, 0x50, 0x4e, 0x47])]);
  expect(await readBikeFile(picture)).toMatchObject({ ok: false, reason: { kind: 'notText' } });
});
