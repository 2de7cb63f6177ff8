/** Opens a file as a picture: decoded upright by the browser, with what the file says of its lens; or why not. */
import type { GreyWindow } from '../../core/measure/photo/rim-edge.ts';
import { fail, succeed, type Result } from '../../core/numeric/result.ts';
import { pictureFacts, type PictureFacts } from '../../core/measure/photo/picture-facts.ts';
import { LEAST_SIDE_PX, MOST_PIXELS, type NoPicture } from '../../words/measure/photo-words.ts';

export interface OpenPicture {
  /** Upright, as it is looked at; of a very large picture a smaller copy. */
  readonly bitmap: ImageBitmap;
  /** Of the picture itself, upright: what is clicked is counted in these pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
  readonly facts: PictureFacts;
  /** Whether parts of it are see-through. */
  readonly isClear: boolean;
}

/** What stands before the picture itself in a file: cameras write their notes and a small picture first. */
const FIRST_BYTES = 512 * 1024;
/** A picture of more pixels is held as a smaller copy: 64 MB, and as fine as a click. */
const HELD_PIXELS = 16_000_000;
/** See-through parts are looked for on a copy of so many pixels to a side. */
const GLANCE_PX = 64;

export async function openPicture(file: Blob): Promise<Result<OpenPicture, NoPicture>> {
  let facts: PictureFacts;
  try {
    facts = pictureFacts(new Uint8Array(await file.slice(0, FIRST_BYTES).arrayBuffer()));
  } catch {
    // A browser rejects a file that was moved or may not be read.
    return fail('notRead');
  }
  const { size } = facts;
  // Before decoding, which would take the memory.
  const named = size === null ? null : wrongSize(size.widthPx, size.heightPx);
  if (named !== null) return fail(named);
  let bitmap: ImageBitmap;
  try {
    bitmap = await decode(file, size === null ? 1 : heldPart(size.widthPx * size.heightPx), facts);
  } catch {
    // A browser rejects whatever it cannot decode.
    return fail('notAPicture');
  }
  const whole = size === null ? bitmap : upright(size, bitmap);
  const { width: widthPx, height: heightPx } = whole;
  const wrong = wrongSize(widthPx, heightPx);
  if (wrong === null) return succeed({ bitmap, widthPx, heightPx, facts, isClear: isClear(bitmap) });
  bitmap.close();
  return fail(wrong);
}

function wrongSize(widthPx: number, heightPx: number): NoPicture | null {
  if (widthPx * heightPx > MOST_PIXELS) return 'tooLarge';
  return Math.min(widthPx, heightPx) < LEAST_SIDE_PX ? 'tooSmall' : null;
}

/** How many pixels to a side the copy has for each of the picture. */
function heldPart(pixels: number): number {
  return Math.min(1, Math.sqrt(HELD_PIXELS / pixels));
}

/** Throws where the browser cannot decode the file. */
async function decode(file: Blob, part: number, { size, sideways }: PictureFacts): Promise<ImageBitmap> {
  const imageOrientation = 'from-image';
  if (size === null || part === 1) return createImageBitmap(file, { imageOrientation });
  const resizeWidth = Math.round(part * (sideways ? size.heightPx : size.widthPx));
  return createImageBitmap(file, { imageOrientation, resizeWidth, resizeQuality: 'high' });
}

/** The size of the whole picture as the browser has turned it. */
function upright(
  { widthPx, heightPx }: NonNullable<PictureFacts['size']>,
  { width, height }: ImageBitmap,
): { readonly width: number; readonly height: number } {
  const off = (across: number, down: number): number =>
    Math.abs(Math.log((width / height) * (down / across)));
  return off(widthPx, heightPx) <= off(heightPx, widthPx)
    ? { width: widthPx, height: heightPx }
    : { width: heightPx, height: widthPx };
}

function isClear(bitmap: ImageBitmap): boolean {
  const brush = new OffscreenCanvas(GLANCE_PX, GLANCE_PX).getContext('2d');
  if (brush === null) return false;
  brush.drawImage(bitmap, 0, 0, GLANCE_PX, GLANCE_PX);
  const { data } = brush.getImageData(0, 0, GLANCE_PX, GLANCE_PX);
  return data.some((level, i) => i % 4 === 3 && level < 255);
}

/** Part of a picture in grey; null where the browser gives no canvas. */
export function greyWindow(bitmap: ImageBitmap, window: Omit<GreyWindow, 'light'>): GreyWindow | null {
  const leftPx = Math.max(0, window.leftPx);
  const topPx = Math.max(0, window.topPx);
  const widthPx = Math.min(bitmap.width, window.leftPx + window.widthPx) - leftPx;
  const heightPx = Math.min(bitmap.height, window.topPx + window.heightPx) - topPx;
  if (!(widthPx > 0 && heightPx > 0)) return null;
  const brush = new OffscreenCanvas(widthPx, heightPx).getContext('2d', { willReadFrequently: true });
  if (brush === null) return null;
  onWhite(brush, widthPx, heightPx);
  brush.drawImage(bitmap, -leftPx, -topPx);
  const { data } = brush.getImageData(0, 0, widthPx, heightPx);
  const light = new Uint8Array(widthPx * heightPx);
  // Luma of ITU-R BT.601.
  for (let i = 0; i < light.length; i++)
    light[i] = 0.299 * data[4 * i] + 0.587 * data[4 * i + 1] + 0.114 * data[4 * i + 2];
  return { leftPx, topPx, widthPx, heightPx, light };
}

/** What is see-through on a picture shows white, whatever lies behind it on the page. */
export function onWhite(brush: CanvasRect & CanvasFillStrokeStyles, widthPx: number, heightPx: number): void {
  brush.fillStyle = 'white';
  brush.fillRect(0, 0, widthPx, heightPx);
}
