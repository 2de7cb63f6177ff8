/** Reads the bytes that a file, a pipe or a device gives, as far as a bike can be large. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { tooLargeToRead } from '../document/json/file-text.ts';
import { LARGEST_TEXT } from '../document/json/read-json.ts';

/** What the system answers where a file cannot be read, in words. */
const CAUSES: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such folder',
  EACCES: 'this user may not read it',
  EPERM: 'this user may not read it',
  EISDIR: 'it is a folder',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links lead round in a ring',
};

const PIECE_BYTES = 1 << 16;

/** All bytes of what is open; a pipe does not tell its size and some devices never end, so it stops beyond the largest. */
function readAll(handle: number): Result<Uint8Array, string> {
  const large = tooLargeToRead(fstatSync(handle).size);
  if (large) return fail(large.sentence);
  const pieces: Uint8Array[] = [];
  let total = 0;
  while (total <= LARGEST_TEXT) {
    const piece = new Uint8Array(PIECE_BYTES);
    const length = readSync(handle, piece, 0, PIECE_BYTES, null);
    if (length === 0) return succeed(Buffer.concat(pieces));
    pieces.push(piece.subarray(0, length));
    total += length;
  }
  return fail(`The file goes on beyond ${LARGEST_TEXT / 1e6} MB, and nothing as large is opened.`);
}

/** The bytes of a file, or one line why it cannot be read. */
export function bytesOf(file: string): Result<Uint8Array, string> {
  let handle: number | undefined;
  try {
    handle = openSync(file, 'r');
    return readAll(handle);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    return fail(`The file ${file} cannot be read: ${CAUSES[code ?? ''] ?? message}.`);
  } finally {
    if (handle !== undefined) closeSync(handle);
  }
}
