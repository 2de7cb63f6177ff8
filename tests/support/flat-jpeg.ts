/** JPEG files of grey squares, written without a codec: every block of 8 by 8 pixels has one level of grey. */

/** Pixels to a side of a square. */
export const SQUARE_PX = 8;

interface FlatJpeg {
  /** In squares. */
  readonly across: number;
  readonly down: number;
  /** Level of grey of a square, 0 to 255. */
  readonly level: (column: number, row: number) => number;
  /** EXIF orientation, 1 to 8; without, the file has no EXIF. */
  readonly orientation?: number;
}

/** A file as ITU-T T.81 has it: baseline, grey. Each code for a difference between squares has four bits, each empty rest one. */
export function flatJpeg({ across, down, level, orientation }: FlatJpeg): Buffer {
  const [width, height] = [across * SQUARE_PX, down * SQUARE_PX];
  return Buffer.concat([
    Buffer.from([0xff, 0xd8]),
    ...(orientation === undefined ? [] : [segment(0xe1, exif(orientation))]),
    segment(0xdb, [0, ...Array.from({ length: 64 }, () => 8)]),
    segment(0xc0, [8, height >> 8, height & 0xff, width >> 8, width & 0xff, 1, 1, 0x11, 0]),
    segment(0xc4, [0x00, 0, 0, 0, 10, ...ZEROS, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9]),
    segment(0xc4, [0x10, 1, 0, 0, 0, ...ZEROS, 0x00]),
    segment(0xda, [1, 1, 0x00, 0, 63, 0]),
    scan(across, down, level),
    Buffer.from([0xff, 0xd9]),
  ]);
}

/** No codes of five to sixteen bits. */
const ZEROS = Array.from({ length: 12 }, () => 0);

function segment(marker: number, data: readonly number[]): Buffer {
  const length = data.length + 2;
  return Buffer.from([0xff, marker, length >> 8, length & 0xff, ...data]);
}

/** One tag, orientation, as EXIF 2.32 (CIPA DC-008) has it, biggest byte first. */
function exif(orientation: number): readonly number[] {
  const head = [...Buffer.from('Exif\0\0MM', 'latin1'), 0, 42, 0, 0, 0, 8];
  return [...head, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
}

/** The squares, each as its difference from the one before. */
function scan(across: number, down: number, level: FlatJpeg['level']): Buffer {
  const bytes = Buffer.alloc(across * down * 4 + 8);
  let length = 0;
  let held = 0;
  let bits = 0;
  const write = (value: number, count: number): void => {
    held = (held << count) | value;
    bits += count;
    while (bits >= 8) {
      bits -= 8;
      const byte = (held >> bits) & 0xff;
      bytes[length++] = byte;
      // A byte of ones is followed by an empty one, as it would begin a marker.
      if (byte === 0xff) bytes[length++] = 0;
    }
    held &= (1 << bits) - 1;
  };
  let before = 0;
  for (let row = 0; row < down; row++)
    for (let column = 0; column < across; column++) {
      const here = level(column, row) - 128;
      const change = here - before;
      const size = change === 0 ? 0 : Math.floor(Math.log2(Math.abs(change))) + 1;
      write(size, 4);
      write(change < 0 ? change + (1 << size) - 1 : change, size);
      write(0, 1);
      before = here;
    }
  write(0x7f, 7);
  return bytes.subarray(0, length);
}
