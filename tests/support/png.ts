/** PNG files written by hand (Portable Network Graphics, third edition, W3C): grey, see-through or moving. */
import { crc32, deflateSync, inflateSync } from 'node:zlib';

export interface GreyPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  /** One level of grey a pixel, by rows. */
  readonly light: Uint8Array;
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const GREY = 0;
const GREY_AND_ALPHA = 4;

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}

const numbers = (...values: readonly number[]): Buffer => {
  const data = Buffer.alloc(4 * values.length);
  values.forEach((value, i) => data.writeUInt32BE(value, 4 * i));
  return data;
};

const head = (widthPx: number, heightPx: number, colours: number): Buffer =>
  chunk('IHDR', Buffer.concat([numbers(widthPx, heightPx), Buffer.from([8, colours, 0, 0, 0])]));

/** Each row begins with its filter: 0 for none, 1 for the difference from the pixel before. */
function packed({ widthPx, heightPx, light }: GreyPicture, alpha: number | null): Buffer {
  const size = alpha === null ? 1 : 2;
  const rows = Buffer.alloc((size * widthPx + 1) * heightPx);
  let at = 0;
  for (let row = 0; row < heightPx; row++) {
    rows[at++] = alpha === null ? 1 : 0;
    for (let column = 0; column < widthPx; column++) {
      const i = row * widthPx + column;
      if (alpha === null) rows[at++] = light[i] - (column === 0 ? 0 : light[i - 1]);
      else {
        rows[at++] = light[i];
        rows[at++] = alpha;
      }
    }
  }
  return deflateSync(rows, { level: 9 });
}

export function greyPng(picture: GreyPicture): Buffer {
  const { widthPx, heightPx } = picture;
  return Buffer.concat([
    SIGNATURE,
    head(widthPx, heightPx, GREY),
    chunk('IDAT', packed(picture, null)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** The light of a file that `greyPng` has written. */
export function readGreyPng(file: Buffer): GreyPicture {
  const [widthPx, heightPx] = [file.readUInt32BE(16), file.readUInt32BE(20)];
  const from = file.indexOf('IDAT', 0, 'latin1');
  const rows = inflateSync(file.subarray(from + 4, from + 4 + file.readUInt32BE(from - 4)));
  const light = new Uint8Array(widthPx * heightPx);
  for (let row = 0; row < heightPx; row++) {
    let level = 0;
    for (let column = 0; column < widthPx; column++) {
      level = (level + rows[row * (widthPx + 1) + 1 + column]) & 0xff;
      light[row * widthPx + column] = level;
    }
  }
  return { widthPx, heightPx, light };
}

/** A picture through which half of what lies behind it is seen. */
export function clearPng(picture: GreyPicture): Buffer {
  return Buffer.concat([
    SIGNATURE,
    head(picture.widthPx, picture.heightPx, GREY_AND_ALPHA),
    chunk('IDAT', packed(picture, 128)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** Two images that follow one another without end. */
export function movingPng(first: GreyPicture, second: GreyPicture): Buffer {
  const { widthPx, heightPx } = first;
  const frame = (order: number): Buffer =>
    chunk('fcTL', Buffer.concat([numbers(order, widthPx, heightPx, 0, 0), Buffer.from([0, 1, 0, 4, 0, 0])]));
  return Buffer.concat([
    SIGNATURE,
    head(widthPx, heightPx, GREY),
    chunk('acTL', numbers(2, 0)),
    frame(0),
    chunk('IDAT', packed(first, null)),
    frame(1),
    chunk('fdAT', Buffer.concat([numbers(2), packed(second, null)])),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** A file that says how large it is, and holds nothing. */
export function emptyPng(widthPx: number, heightPx: number): Buffer {
  return Buffer.concat([SIGNATURE, head(widthPx, heightPx, GREY), chunk('IEND', Buffer.alloc(0))]);
}
