/** The thread that paints: takes drawings from the page and paints them on the canvas that the page lends it. */
import { paintList, type CanvasSize, type MakeCanvas } from './paint-list.ts';
import { SHOWN, type DrawingSent, type ToPainter } from './painter-messages.ts';

let context: OffscreenCanvasRenderingContext2D | null = null;
let shown: CanvasSize | null = null;
/** Whether the page knows that there is something to see. */
let told = false;

function contextOf(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const made = canvas.getContext('2d');
  if (made === null) throw new Error('this browser has no 2D canvas off the page');
  return made;
}

const makeCanvas: MakeCanvas = (size) => {
  const canvas = new OffscreenCanvas(pixels(size.widthPx, size), pixels(size.heightPx, size));
  const made = contextOf(canvas);
  made.scale(size.pixelRatio, size.pixelRatio);
  return { canvas, context: made };
};

function pixels(px: number, { pixelRatio }: CanvasSize): number {
  return Math.max(1, Math.trunc(px * pixelRatio));
}

/** A canvas that is given a size forgets its scale and what is on it. */
function resize(of: OffscreenCanvasRenderingContext2D, size: CanvasSize): void {
  of.canvas.width = pixels(size.widthPx, size);
  of.canvas.height = pixels(size.heightPx, size);
  of.scale(size.pixelRatio, size.pixelRatio);
  shown = size;
}

let last: DrawingSent | null = null;
let waiting = false;

/** Of several drawings that have come, the last: the others are out of date. */
function paintLast(): void {
  waiting = false;
  if (last === null) return;
  if (context === null) throw new Error('a drawing came before the canvas');
  const { list, background, size } = last;
  if (
    shown?.widthPx !== size.widthPx ||
    shown.heightPx !== size.heightPx ||
    shown.pixelRatio !== size.pixelRatio
  )
    resize(context, size);
  paintList(list, background, context, size, makeCanvas);
  if (told) return;
  told = true;
  postMessage(SHOWN);
}

/** What has come in the meantime is heard before the timer runs. */
function paintSoon(): void {
  if (!waiting) setTimeout(paintLast);
  waiting = true;
}

/** A canvas that the system took away for a while comes back empty and without its scale. */
function paintAnew(): void {
  shown = null;
  paintSoon();
}

addEventListener('message', ({ data }: MessageEvent<ToPainter>) => {
  if (data.kind === 'canvas') {
    context = contextOf(data.canvas);
    data.canvas.addEventListener('contextrestored', paintAnew);
    return;
  }
  last = data;
  paintSoon();
});
