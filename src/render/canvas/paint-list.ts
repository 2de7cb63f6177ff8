/** Paints a drawing's list on a canvas of this thread. */
import { CanvasPlotter, type CanvasContext } from './canvas-plotter.ts';
import { NO_COLOUR, STEP, type DrawingList } from './drawing-list.ts';

/** A size in px of the screen, with the pixels to each. */
export interface CanvasSize {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pixelRatio: number;
}

/** A canvas of a size with nothing on it, its context scaled to px. */
export type MakeCanvas = (size: CanvasSize) => {
  readonly canvas: HTMLCanvasElement | OffscreenCanvas;
  readonly context: CanvasContext;
};

/** The context is scaled to px. A dimmed layer is drawn on a canvas that `makeCanvas` gives. */
export function paintList(
  { numbers, texts }: DrawingList,
  background: string,
  context: CanvasContext,
  size: CanvasSize,
  makeCanvas: MakeCanvas,
): void {
  // A background may be clear, for what lies under the canvas.
  context.clearRect(0, 0, size.widthPx, size.heightPx);
  context.fillStyle = background;
  context.fillRect(0, 0, size.widthPx, size.heightPx);
  let at = 0;
  while (at < numbers.length) {
    const ink = numbers[at + 1];
    // A dimmed layer is dimmed as a whole, so that nothing shines through from behind it within the layer.
    const own = ink === 1 ? null : makeCanvas(size);
    at = paintLayer(numbers, texts, at + 2, new CanvasPlotter(own?.context ?? context));
    if (own === null) continue;
    context.globalAlpha = ink;
    context.drawImage(own.canvas, 0, 0, size.widthPx, size.heightPx);
    context.globalAlpha = 1;
  }
}

/** Paints the steps from `start` to the next layer or the end, and returns where that is. */
function paintLayer(
  n: DrawingList['numbers'],
  texts: DrawingList['texts'],
  start: number,
  plotter: CanvasPlotter,
): number {
  const colour = (place: number): string | null => (place === NO_COLOUR ? null : texts[place]);
  let i = start;
  while (i < n.length && n[i] !== STEP.layer) {
    switch (n[i]) {
      case STEP.begin:
        plotter.begin();
        i += 1;
        break;
      case STEP.move:
        plotter.move(n[i + 1], n[i + 2]);
        i += 3;
        break;
      case STEP.line:
        plotter.line(n[i + 1], n[i + 2]);
        i += 3;
        break;
      case STEP.curve:
        plotter.curve(n[i + 1], n[i + 2], n[i + 3], n[i + 4], n[i + 5], n[i + 6]);
        i += 7;
        break;
      case STEP.arc:
        plotter.arc(n[i + 1], n[i + 2], n[i + 3], n[i + 4], n[i + 5]);
        i += 6;
        break;
      case STEP.close:
        plotter.close();
        i += 1;
        break;
      case STEP.paint: {
        const dashes = n[i + 6];
        plotter.paint({
          fill: colour(n[i + 1]),
          fillRule: n[i + 2] === 1 ? 'evenOdd' : 'nonZero',
          stroke: colour(n[i + 3]),
          widthPx: n[i + 4],
          ends: n[i + 5] === 1 ? 'round' : 'flat',
          dashPx: dashes === 0 ? [] : [...n.subarray(i + 7, i + 7 + dashes)],
        });
        i += 7 + dashes;
        break;
      }
      case STEP.words:
        plotter.words({
          text: texts[n[i + 1]],
          xPx: n[i + 2],
          yPx: n[i + 3],
          sizePx: n[i + 4],
          bold: n[i + 5] === 1,
          colour: texts[n[i + 6]],
        });
        i += 7;
        break;
      default:
        throw new Error(`a drawing has no step ${n[i]}`);
    }
  }
  return i;
}
