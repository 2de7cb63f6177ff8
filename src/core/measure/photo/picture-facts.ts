/** What the first bytes of a picture file say of its size and its lens, and never where it was taken. */

export interface PictureFacts {
  /** As stored, before it is turned upright; null where the file does not say. */
  readonly size: { readonly widthPx: number; readonly heightPx: number } | null;
  /** Focal length on 35 mm film, mm; null where the file does not say. */
  readonly focal35: number | null;
  /** Whether the camera noted another size than the picture has: it was cropped or made smaller. */
  readonly resized: boolean;
  /** Whether it is stored on its side: upright, width and height change places. */
  readonly sideways: boolean;
  /** Whether it holds several images that follow one another. */
  readonly animated: boolean;
}

const NOTHING: PictureFacts = {
  size: null,
  focal35: null,
  resized: false,
  sideways: false,
  animated: false,
};

/** Numbers of tags, as EXIF 2.32 (CIPA DC-008) lists them. */
const EXIF_PLACE = 0x8769;
const FOCAL_35 = 0xa405;
const WIDTH = 0xa002;
const HEIGHT = 0xa003;
const ORIENTATION = 0x0112;
/** From this orientation on the rows of the picture are its columns. */
const FIRST_SIDEWAYS = 5;
const SHORT = 3;
const LONG = 4;
/** A GIF says that it moves behind its colours, which are 781 bytes with its header at most. */
const MOVES_WITHIN = 1024;
/** JPEG markers that begin a picture's own header: 0xC0 to 0xCF, less those of tables and of arithmetic coding. */
const NO_SIZE = [0xc4, 0xc8, 0xcc];

const text = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length));

/** Reads the start of a file of any kind; what it does not know says nothing. */
export function pictureFacts(bytes: Uint8Array): PictureFacts {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const has = (upTo: number): boolean => bytes.length >= upTo;
  if (has(4) && view.getUint16(0) === 0xffd8) return ofJpeg(bytes, view);
  if (has(24) && text(bytes, 1, 3) === 'PNG')
    return { ...ofSize(view.getUint32(16), view.getUint32(20)), animated: isMovingPng(bytes, view) };
  if (has(10) && text(bytes, 0, 3) === 'GIF')
    return {
      ...ofSize(view.getUint16(6, true), view.getUint16(8, true)),
      animated: text(bytes, 0, MOVES_WITHIN).includes('NETSCAPE2.0'),
    };
  if (has(30) && text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 4) === 'WEBP') return ofWebp(bytes, view);
  return NOTHING;
}

function ofSize(widthPx: number, heightPx: number): PictureFacts {
  return { ...NOTHING, size: { widthPx, heightPx } };
}

/** Whether a chunk before the image says that others follow. Source: Portable Network Graphics, third edition (W3C). */
function isMovingPng(bytes: Uint8Array, view: DataView): boolean {
  for (let at = 8; at + 8 <= bytes.length; at += 12 + view.getUint32(at)) {
    const name = text(bytes, at + 4, 4);
    if (name === 'acTL') return true;
    if (name === 'IDAT') return false;
  }
  return false;
}

/** Source: RFC 9649. */
function ofWebp(bytes: Uint8Array, view: DataView): PictureFacts {
  switch (text(bytes, 12, 4)) {
    case 'VP8X':
      return {
        ...ofSize(1 + (view.getUint32(24, true) & 0xffffff), 1 + (view.getUint32(26, true) >>> 8)),
        animated: (bytes[20] & 2) !== 0,
      };
    case 'VP8L': {
      const packed = view.getUint32(21, true);
      return ofSize(1 + (packed & 0x3fff), 1 + ((packed >>> 14) & 0x3fff));
    }
    case 'VP8 ':
      return ofSize(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
    default:
      return NOTHING;
  }
}

function ofJpeg(bytes: Uint8Array, view: DataView): PictureFacts {
  let noted: Noted = {};
  let at = 2;
  while (at + 9 < bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1];
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (marker === 0xe1 && text(bytes, at + 4, 4) === 'Exif')
      noted = exifNotes(
        new DataView(
          view.buffer,
          view.byteOffset + at + 10,
          Math.max(0, Math.min(length - 8, bytes.length - at - 10)),
        ),
      );
    if (marker >= 0xc0 && marker <= 0xcf && !NO_SIZE.includes(marker))
      return withNotes(view.getUint16(at + 7), view.getUint16(at + 5), noted);
    if (length < 2) break;
    at += 2 + length;
  }
  return { ...NOTHING, focal35: focalOf(noted), sideways: isSideways(noted) };
}

function isSideways(noted: Noted): boolean {
  return (noted[ORIENTATION] ?? 1) >= FIRST_SIDEWAYS;
}

type Noted = Readonly<Record<number, number>>;

function focalOf(noted: Noted): number | null {
  const focal = noted[FOCAL_35] ?? 0;
  return focal > 0 ? focal : null;
}

function withNotes(widthPx: number, heightPx: number, noted: Noted): PictureFacts {
  const [width = widthPx, height = heightPx] = [noted[WIDTH], noted[HEIGHT]];
  const same =
    Math.min(width, height) === Math.min(widthPx, heightPx) &&
    Math.max(width, height) === Math.max(widthPx, heightPx);
  // A camera that notes no size writes zero.
  return {
    ...ofSize(widthPx, heightPx),
    focal35: focalOf(noted),
    resized: width > 0 && height > 0 && !same,
    sideways: isSideways(noted),
  };
}

/** Whole numbers of the notes that count here, by tag; empty where they cannot be read. */
function exifNotes(view: DataView): Noted {
  if (view.byteLength < 8) return {};
  const order = view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return {};
  const small = order === 0x4949;
  const first = listAt(view, view.getUint32(4, small), small);
  const place = first[EXIF_PLACE];
  return place === undefined ? first : { ...first, ...listAt(view, place, small) };
}

function listAt(view: DataView, place: number, small: boolean): Noted {
  const found: Record<number, number> = {};
  if (place + 2 > view.byteLength) return found;
  const count = view.getUint16(place, small);
  for (let i = 0; i < count; i++) {
    const at = place + 2 + 12 * i;
    if (at + 12 > view.byteLength) break;
    const tag = view.getUint16(at, small);
    const type = view.getUint16(at + 2, small);
    if (type === SHORT) found[tag] = view.getUint16(at + 8, small);
    if (type === LONG) found[tag] = view.getUint32(at + 8, small);
  }
  return found;
}
