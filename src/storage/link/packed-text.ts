/** A text packed into characters that every address takes, and back; the browser compresses it. */
import { fail, succeed, type Result } from '../../core/numeric/result.ts';

const PACKING = 'deflate-raw';

/** `cannot`: this browser does not pack. `damaged`: what was packed is no text of ours. `tooLong`: it unpacks to more than allowed. */
export type PackReason = 'cannot' | 'damaged' | 'tooLong';

/** Packs a text into letters, digits, - and _. */
export async function packText(text: string): Promise<Result<string, PackReason>> {
  const packer = packing(() => new CompressionStream(PACKING));
  if (packer === null) return fail('cannot');
  const packed = await readAll(new Blob([text]).stream().pipeThrough(packer), Infinity);
  if (!packed.ok) return packed;
  const characters = Array.from(packed.value, (byte) => String.fromCharCode(byte)).join('');
  return succeed(btoa(characters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', ''));
}

/** Unpacks a text of at most `most` bytes. It stops as soon as there are more, however much would follow. Never rejects. */
export async function unpackText(packed: string, most: number): Promise<Result<string, PackReason>> {
  const unpacker = packing(() => new DecompressionStream(PACKING));
  if (unpacker === null) return fail('cannot');
  try {
    const characters = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(characters, (each) => each.charCodeAt(0));
    const read = await readAll(new Blob([bytes]).stream().pipeThrough(unpacker), most);
    return read.ok ? succeed(new TextDecoder('utf-8', { fatal: true }).decode(read.value)) : read;
  } catch {
    // The standard's words for it differ from browser to browser, and all mean the same.
    return fail('damaged');
  }
}

/** Null in a browser that does not have it. */
function packing<Stream>(make: () => Stream): Stream | null {
  try {
    return make();
  } catch {
    return null;
  }
}

async function readAll(
  stream: ReadableStream<Uint8Array>,
  most: number,
): Promise<Result<Uint8Array<ArrayBuffer>, PackReason>> {
  const reader = stream.getReader();
  const pieces: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      return fail('tooLong');
    }
    pieces.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return succeed(whole);
}
