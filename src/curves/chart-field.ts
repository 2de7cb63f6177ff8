/** The field of a chart: two axes with their ticks, lines and names, and where a pair of numbers lies between them. */
import type { Point } from '../core/plane/point.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { LabelShape, LabelSpot, Shape } from '../scene/shapes/shape.ts';
import { textWidthPx } from '../scene/shapes/text-width.ts';
import type { View } from '../scene/shapes/view.ts';
import { withUnit } from '../words/kept/curve-words.ts';
import { axisOf, type Axis } from './axis.ts';
import { chartLine } from './chart-line.ts';

/** What an axis counts, from where to where in the metric unit, and its name. */
export interface AxisSpan {
  readonly name: string;
  readonly quantity: QuantityKey;
  readonly from: number;
  readonly to: number;
}

export interface FieldAsked {
  readonly across: AxisSpan;
  readonly up: AxisSpan;
  readonly style: NumberStyle;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly textPx: number;
  /** Rows of words above the field; the first begins with the name of the upright axis. */
  readonly rows: number;
}

export interface ChartField {
  readonly view: View;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  /** The field between the axes, px from the left and from the top. */
  readonly leftPx: number;
  readonly rightPx: number;
  readonly topPx: number;
  readonly bottomPx: number;
  /** Height of one row of words above the field, px. */
  readonly rowPx: number;
  readonly grid: readonly Shape[];
  readonly words: readonly Shape[];
  /** Px from the left and from the top as a place of the scene, whose y goes up. */
  readonly at: (xPx: number, yPx: number) => Point;
  /** The place of a pair of metric numbers. */
  readonly place: (x: number, y: number) => Point;
  /** Words in the first rows, from `xPx` on. */
  readonly bareLabel: (text: string, xPx: number, row: number) => LabelShape;
}

const LINE = 1.35;
const TICK_ACROSS = 6;
const TICK_UP = 2.4;
const GAP_PX = 7;
/** From the place of bare words at their right to where they begin, px. */
const BARE_BESIDE = 14;

/** Height of one row of the legend, px. */
export function legendRowPx(textPx: number): number {
  return LINE * textPx + 3;
}

export function chartField(asked: FieldAsked): ChartField {
  const { across, up, style, widthPx, heightPx, textPx, rows } = asked;
  const rowPx = legendRowPx(textPx);
  const topPx = rows * rowPx + GAP_PX;
  const bottomPx = Math.max(topPx + 20, heightPx - 2.6 * LINE * textPx);
  const yAxis = axisOf({
    quantity: up.quantity,
    style,
    from: up.from,
    to: up.to,
    fromPx: bottomPx,
    toPx: topPx,
    count: Math.max(2, Math.round((bottomPx - topPx) / (TICK_UP * textPx))),
    rounded: true,
  });
  // What stands left of the axis, with the space that a label has beside its words.
  const leftPx =
    BARE_BESIDE + GAP_PX + Math.max(...yAxis.ticks.map(({ text }) => textWidthPx(text, textPx)), textPx);
  // The last number may stand at the very end, half of it beyond.
  const rightPx = Math.max(leftPx + 40, widthPx - Math.max(2 * GAP_PX, 1.6 * textPx));
  const xAxis = axisOf({
    quantity: across.quantity,
    style,
    from: across.from,
    to: across.to,
    fromPx: leftPx,
    toPx: rightPx,
    count: Math.max(2, Math.round((rightPx - leftPx) / (TICK_ACROSS * textPx))),
    rounded: false,
  });
  const at = (xPx: number, yPx: number): Point => ({ x: xPx, y: heightPx - yPx });
  const label = (text: string, place: Point, spot: LabelSpot): LabelShape => ({
    kind: 'label',
    role: 'axisName',
    text,
    at: place,
    spot,
    shiftPx: { x: 0, y: 0 },
    sizePx: textPx,
    leader: false,
  });
  const bareLabel = (text: string, xPx: number, row: number): LabelShape =>
    label(text, at(xPx - BARE_BESIDE, (row + 0.5) * rowPx), 'right');
  return {
    view: { scale: 1, turn: 0, xPx: 0, yPx: heightPx },
    xAxis,
    yAxis,
    leftPx,
    rightPx,
    topPx,
    bottomPx,
    rowPx,
    grid: [
      ...yAxis.ticks.map(({ px }) => chartLine('grid', [at(leftPx, px), at(rightPx, px)])),
      ...xAxis.ticks.map(({ px }) => chartLine('grid', [at(px, topPx), at(px, bottomPx)])),
      chartLine('axisLine', [at(leftPx, topPx), at(leftPx, bottomPx), at(rightPx, bottomPx)]),
    ],
    words: [
      ...yAxis.ticks.map(({ px, text }) => label(text, at(leftPx - 2, px), 'left')),
      ...xAxis.ticks.map(({ px, text }) => label(text, at(px, bottomPx), 'below')),
      label(
        withUnit(across.name, across.quantity, style),
        at((leftPx + rightPx) / 2, bottomPx + LINE * textPx),
        'below',
      ),
      bareLabel(withUnit(up.name, up.quantity, style), 2 * GAP_PX, 0),
    ],
    at,
    place: (x, y) => at(xAxis.px(x), yAxis.px(y)),
    bareLabel,
  };
}
