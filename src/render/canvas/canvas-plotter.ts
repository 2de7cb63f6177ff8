/** Plots on a canvas, of the page or of another thread. */
import type { Paint, Plotter, Words } from '../../scene/plot/plotter.ts';

/** Figures of one width keep a changing number from jumping; the fonts meant by system-ui have them by default. */
const FONT = 'system-ui, sans-serif';

/** What painting takes of a context: the page's own, another thread's and Konva's have it alike. */
export type CanvasContext = Pick<
  CanvasRenderingContext2D,
  | 'arc'
  | 'beginPath'
  | 'clearRect'
  | 'bezierCurveTo'
  | 'closePath'
  | 'drawImage'
  | 'fill'
  | 'fillRect'
  | 'fillStyle'
  | 'fillText'
  | 'font'
  | 'globalAlpha'
  | 'lineCap'
  | 'lineJoin'
  | 'lineTo'
  | 'lineWidth'
  | 'moveTo'
  | 'setLineDash'
  | 'stroke'
  | 'strokeStyle'
  | 'textAlign'
  | 'textBaseline'
>;

export class CanvasPlotter implements Plotter {
  readonly #context: CanvasContext;

  constructor(context: CanvasContext) {
    this.#context = context;
    context.lineJoin = 'round';
    context.textAlign = 'center';
    context.textBaseline = 'alphabetic';
  }

  begin(): void {
    this.#context.beginPath();
  }

  move(xPx: number, yPx: number): void {
    this.#context.moveTo(xPx, yPx);
  }

  line(xPx: number, yPx: number): void {
    this.#context.lineTo(xPx, yPx);
  }

  curve(x1Px: number, y1Px: number, x2Px: number, y2Px: number, xPx: number, yPx: number): void {
    this.#context.bezierCurveTo(x1Px, y1Px, x2Px, y2Px, xPx, yPx);
  }

  arc(xPx: number, yPx: number, radiusPx: number, from: number, to: number): void {
    this.#context.arc(xPx, yPx, radiusPx, from, to, to < from);
  }

  close(): void {
    this.#context.closePath();
  }

  paint({ fill, fillRule, stroke, widthPx, dashPx, ends }: Paint): void {
    const context = this.#context;
    if (fill !== null) {
      context.fillStyle = fill;
      context.fill(fillRule === 'evenOdd' ? 'evenodd' : 'nonzero');
    }
    if (stroke === null) return;
    context.strokeStyle = stroke;
    context.lineWidth = widthPx;
    context.lineCap = ends === 'round' ? 'round' : 'butt';
    context.setLineDash(dashPx as number[]);
    context.stroke();
  }

  words({ text, xPx, yPx, sizePx, bold, colour }: Words): void {
    const context = this.#context;
    context.font = `${bold ? '700' : '400'} ${sizePx}px ${FONT}`;
    context.fillStyle = colour;
    context.fillText(text, xPx, yPx);
  }
}
