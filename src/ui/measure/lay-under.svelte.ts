/** Lays the photo under the side view, where the bike's middle plane lies on the drawing. */
import type { Attachment } from 'svelte/attachments';
import { rotate, type Point } from '../../core/plane/point.ts';
import { findTheme } from '../../scene/shapes/theme.ts';
import { toScreen } from '../../scene/shapes/view.ts';
import { onWhite } from '../../session/measure/open-picture.ts';
import type { Photo } from '../../session/measure/photo.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';
import { quadMatrix } from './quad-matrix.ts';

/** A picture is painted no larger than this, pixels: a screen shows no more, and it is moved with each drag. */
const LONGEST_SIDE = 2400;

/** The photo as something to lie under the drawing. It is never inverted: a theme changes lines and words alone. */
export function layUnder(
  { sideView, standing, preferences }: Workbench,
  photo: Photo,
): Attachment<HTMLElement> {
  function corners(): readonly Point[] {
    const { live } = standing;
    const seen = photo.outcome?.corners ?? [];
    if (live === null) return [];
    const { rearAxle, frontAxle } = live.stance;
    const along = Math.atan2(frontAxle.y - rearAxle.y, frontAxle.x - rearAxle.x);
    return seen.map((corner) => {
      const { x, y } = rotate(corner, along);
      return toScreen(sideView.view, { x: rearAxle.x + x, y: rearAxle.y + y });
    });
  }

  return (container) => {
    const sheet = document.createElement('canvas');
    sheet.style.cssText =
      'position: absolute; top: 0; left: 0; z-index: -1; transform-origin: 0 0; pointer-events: none';
    container.prepend(sheet);
    $effect(() => paint(sheet, photo.bitmap));
    $effect(() => {
      const [p0, p1, p2, p3] = corners();
      sheet.style.display = p3 === undefined ? 'none' : 'block';
      if (p3 === undefined) return;
      const matrix = quadMatrix(sheet.width, sheet.height, [p0, p1, p2, p3]);
      sheet.style.transform = `matrix3d(${matrix.join()})`;
    });
    $effect(() => {
      sheet.style.opacity = String(photo.opacity);
      sheet.style.filter = `contrast(${photo.contrast})`;
    });
    $effect(() => {
      const { background } = findTheme(preferences.theme);
      container.style.isolation = 'isolate';
      container.style.background = background;
      const drawing = [...container.querySelectorAll('canvas')].filter((each) => each !== sheet);
      // A casing: each line stands out from whatever the photo has behind it.
      for (const each of drawing) each.style.filter = `drop-shadow(0 0 1px ${background})`.repeat(2);
      return () => {
        for (const each of drawing) each.style.filter = '';
      };
    });
    return () => {
      sheet.remove();
      container.style.isolation = '';
      container.style.background = '';
    };
  };
}

function paint(sheet: HTMLCanvasElement, bitmap: ImageBitmap | null): void {
  if (bitmap === null) return;
  const part = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  sheet.width = Math.round(part * bitmap.width);
  sheet.height = Math.round(part * bitmap.height);
  const brush = sheet.getContext('2d');
  if (brush === null) return;
  onWhite(brush, sheet.width, sheet.height);
  brush.drawImage(bitmap, 0, 0, sheet.width, sheet.height);
}
