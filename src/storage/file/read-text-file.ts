/** Reads the text of a file, or says why not; one that is too large is not even read. */
import { fail, type Result } from '../../core/numeric/result.ts';
import { BIKES_FORMAT } from '../../document/bikes-file.ts';
import { textOfBytes, tooLargeToRead } from '../../document/json/file-text.ts';
import type { OpenReason } from '../../document/json/open-reason.ts';

/** As much of a file as says what it holds, bytes. */
const HEAD = 400;

/** Whether a file says at its head that it holds several bikes; no where it cannot be read, which opening it then says. */
export async function holdsSeveralBikes(file: Blob): Promise<boolean> {
  try {
    return (await file.slice(0, HEAD).text()).includes(`"${BIKES_FORMAT}"`);
  } catch {
    return false;
  }
}

/** The text of a file of at most `most` bytes; without it, of one bike. */
export async function readTextFile(file: Blob, most?: number): Promise<Result<string, OpenReason>> {
  const large = tooLargeToRead(file.size, most);
  if (large) return fail(large);
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    const why = error instanceof Error ? ` (${error.message})` : '';
    return fail({ kind: 'unreadable', sentence: `The browser could not read the file${why}.` });
  }
  const decode = (given: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(given);
  return textOfBytes(bytes, decode, most);
}
