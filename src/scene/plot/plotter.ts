/** What a renderer has to be able to do: lay an outline in px of the screen, paint it, and write words. */
import type { SceneLayer } from '../shapes/shape.ts';
import type { Theme } from '../shapes/theme.ts';
import type { View } from '../shapes/view.ts';

/** How an outline is filled and stroked. Joins and ends are round, so that tubes and springs look like metal. */
export interface Paint {
  readonly fill: string | null;
  /** `evenOdd` makes an outline within an outline a hole. */
  readonly fillRule: 'nonZero' | 'evenOdd';
  readonly stroke: string | null;
  readonly widthPx: number;
  readonly dashPx: readonly number[];
  readonly ends: 'flat' | 'round';
}

/** A line of words. `xPx` is its middle, `yPx` the line its letters stand on. */
export interface Words {
  readonly text: string;
  readonly xPx: number;
  readonly yPx: number;
  readonly sizePx: number;
  readonly bold: boolean;
  readonly colour: string;
}

/**
 * Screen coordinates: px, x right, y down, angles in radians clockwise. The steps between `begin` and `paint` are one
 * outline. An arc is joined to what comes before it by a line; it runs counter-clockwise when `to` is less than `from`.
 */
export interface Plotter {
  begin(): void;
  move(xPx: number, yPx: number): void;
  line(xPx: number, yPx: number): void;
  curve(x1Px: number, y1Px: number, x2Px: number, y2Px: number, xPx: number, yPx: number): void;
  arc(xPx: number, yPx: number, radiusPx: number, from: number, to: number): void;
  close(): void;
  paint(paint: Paint): void;
  words(words: Words): void;
}

/** Type of `plotLayer`, handed to the renderers, which know no scene but its data. */
export type PlotLayer = (layer: SceneLayer, view: View, theme: Theme, plotter: Plotter) => void;
