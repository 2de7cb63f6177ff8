/** A figure that tells whether a text arrived as it was sent. */

/** The polynomial of CRC-32 as in ISO 3309, its bits turned round. */
const POLYNOMIAL = 0xedb88320;
/** Digits that 32 bits take in base 36. */
const DIGITS = 7;

/** CRC-32 of a text of ASCII characters, in seven digits of base 36; any change within 32 bits in a row changes it. */
export function checkFigure(text: string): string {
  let rest = 0xffffffff;
  for (let i = 0; i < text.length; i++) {
    rest ^= text.charCodeAt(i) & 0xff;
    for (let bit = 0; bit < 8; bit++) rest = (rest >>> 1) ^ (rest & 1 ? POLYNOMIAL : 0);
  }
  return (~rest >>> 0).toString(36).padStart(DIGITS, '0');
}
