/** A picture as letters that a file of text can hold (base 64), and back. */

/** Bytes turned at a time: a call takes only so many arguments. */
const CHUNK = 0x8000;

/** The letters of a kept picture; null where the browser has lost what lay behind it. */
export async function pictureText(picture: Blob): Promise<string | null> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await picture.arrayBuffer());
  } catch {
    // A browser that has cleared its files gives a picture that nobody can read.
    return null;
  }
  let signs = '';
  for (let from = 0; from < bytes.length; from += CHUNK)
    signs += String.fromCharCode(...bytes.subarray(from, from + CHUNK));
  return btoa(signs);
}

/** The picture of these letters, which are known to be base 64. */
export function pictureFrom(data: string, type: string): Blob {
  return new Blob([Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0))], { type });
}
