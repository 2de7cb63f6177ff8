/** What the page and its painting thread say to each other. */
import type { DrawingList } from './drawing-list.ts';
import type { CanvasSize } from './paint-list.ts';

/** The canvas to paint on, once, before anything else. */
export interface CanvasLent {
  readonly kind: 'canvas';
  readonly canvas: OffscreenCanvas;
}

/** A drawing to paint. */
export interface DrawingSent {
  readonly kind: 'drawing';
  readonly list: DrawingList;
  readonly background: string;
  readonly size: CanvasSize;
}

export type ToPainter = CanvasLent | DrawingSent;

/** Said once: the first drawing stands on the canvas. */
export const SHOWN = 'shown';
