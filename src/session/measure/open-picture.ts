/** Opens a file as a picture: decoded upright by the browser, with what the file says of its lens; or why not. */
import type { GreyWindow } from '../../core/measure/rim-edge.ts';
import { fail, succeed, type Result } from '../../core/numeric/result.ts';
import { pictureFacts, type PictureFacts } from '../../core/measure/picture-facts.ts';
import { LEAST_SIDE_PX, MOST_PIXELS, type NoPicture } from '../../words/photo-words.ts';

export interface OpenPicture {
  /** Upright, as it is looked at. */
  readonly bitmap: ImageBitmap;
  readonly facts: PictureFacts;
}

/** What stands before the picture itself in a file: cameras write their notes and a small picture first. */
const FIRST_BYTES = 512 * 1024;

export async function openPicture(file: Blob): Promise<Result<OpenPicture, NoPicture>> {
  const facts = pictureFacts(new Uint8Array(await file.slice(0, FIRST_BYTES).arrayBuffer()));
  // Before decoding, which would take the memory.
  if (facts.size !== null && facts.size.widthPx * facts.size.heightPx > MOST_PIXELS) return fail('tooLarge');
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    // A browser rejects whatever it cannot decode.
    return fail('notAPicture');
  }
  const { width, height } = bitmap;
  const wrong =
    width * height > MOST_PIXELS ? 'tooLarge' : Math.min(width, height) < LEAST_SIDE_PX ? 'tooSmall' : null;
  if (wrong === null) return succeed({ bitmap, facts });
  bitmap.close();
  return fail(wrong);
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
  brush.drawImage(bitmap, -leftPx, -topPx);
  const { data } = brush.getImageData(0, 0, widthPx, heightPx);
  const light = new Uint8Array(widthPx * heightPx);
  // Luma of ITU-R BT.601.
  for (let i = 0; i < light.length; i++)
    light[i] = 0.299 * data[4 * i] + 0.587 * data[4 * i + 1] + 0.114 * data[4 * i + 2];
  return { leftPx, topPx, widthPx, heightPx, light };
}
