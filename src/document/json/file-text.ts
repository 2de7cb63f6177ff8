/** From the bytes of a file to its text, refusing what is too large or not UTF-8. */
import { fail, succeed, type Result } from '../../core/numeric/result.ts';
import type { OpenReason } from './open-reason.ts';
import { LARGEST_TEXT, tooLarge } from './read-json.ts';

/** Why a file of this size is not even read; null when it may be read. */
export function tooLargeToRead(sizeInBytes: number, most = LARGEST_TEXT): OpenReason | null {
  return sizeInBytes > most ? tooLarge(sizeInBytes, most) : null;
}

/** The text of `bytes`. `decode` is the platform's strict UTF-8 decoder, which throws on any other bytes. */
export function textOfBytes(
  bytes: Uint8Array,
  decode: (bytes: Uint8Array) => string,
  most = LARGEST_TEXT,
): Result<string, OpenReason> {
  const large = tooLargeToRead(bytes.length, most);
  if (large) return fail(large);
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return fail({
      kind: 'notText',
      sentence: 'The file is saved as UTF-16. Save it as UTF-8 and open it again.',
    });
  try {
    return succeed(decode(bytes));
  } catch {
    return fail({
      kind: 'notText',
      sentence:
        'The file is not text in UTF-8, so it is no Sidestance bike or it was saved in another encoding.',
    });
  }
}
