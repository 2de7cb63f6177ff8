/** The chart of one length over the rear travel: its floor, the place that matters, and where the bike stands. */
import type { NumberStyle } from '../core/units/number-style.ts';
import { labelBox } from '../scene/shapes/label-placing.ts';
import type { LabelShape, LabelSpot } from '../scene/shapes/shape.ts';
import { chartCurve } from './chart-curve.ts';
import { chartField, type ChartField } from './chart-field.ts';
import { chartLine, chartMark } from './chart-line.ts';
import { NOW_RADIUS } from './chart-names.ts';
import type { Chart } from './chart.ts';

export interface FloorPoint {
  /** Rear travel and value, mm; null where there is none. */
  readonly travel: number;
  readonly value: number | null;
}

export interface FloorCurve {
  /** What the value is called. */
  readonly name: string;
  readonly points: readonly FloorPoint[];
  /** The place that matters. */
  readonly mark: FloorPoint | null;
  /** What the value should not fall below, mm. */
  readonly floor: number;
  readonly floorLabel: string;
  /** Rear travel of the bike as it stands, mm. */
  readonly now: number;
}

export interface ChartSize {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly textPx: number;
}

/** Height axes span at least this, mm: a value that stays at its floor still has a field to lie in. */
const LEAST_SPAN = 1;

export function floorChart(curve: FloorCurve, style: NumberStyle, size: ChartSize): Chart {
  const { name, points, mark, floor, now } = curve;
  const values = points.flatMap(({ value }) => (value === null ? [] : [value]));
  const travels = points.map(({ travel }) => travel);
  const to = Math.max(LEAST_SPAN, ...travels);
  const field = chartField({
    across: { name: 'Rear travel', quantity: 'length', from: 0, to },
    up: {
      name,
      quantity: 'length',
      from: Math.min(0, floor, ...values),
      to: Math.max(floor, LEAST_SPAN, ...values),
    },
    style,
    ...size,
    rows: 1,
  });
  const { view, leftPx, rightPx, topPx, bottomPx, at, place, xAxis } = field;
  const lines = [
    chartLine('curveCursor', [at(xAxis.px(now), topPx), at(xAxis.px(now), bottomPx)]),
    chartLine('curveFloor', [place(0, floor), place(to, floor)]),
    ...chartCurve(
      'curveNow',
      field,
      travels,
      points.map(({ value }) => value),
    ),
    ...(mark === null || mark.value === null
      ? []
      : [
          {
            ...chartMark('curveMark', 'ring', place(mark.travel, mark.value)),
            radiusPx: NOW_RADIUS,
          } as const,
        ]),
  ];
  return {
    scene: [
      { name: 'construction', ink: 1, shapes: [...field.grid, ...lines] },
      { name: 'labels', ink: 1, shapes: [...field.words, floorName(curve, field, to, size)] },
    ],
    view,
    leftPx,
    rightPx,
    topPx,
    bottomPx,
  };
}

/** The floor's words, at the end and on the side of its line at which they are clearest of the curve. */
function floorName(
  { points, floor, floorLabel }: FloorCurve,
  { place, bottomPx }: ChartField,
  to: number,
  { heightPx, textPx }: ChartSize,
): LabelShape {
  /** Px from the left and from the top. */
  const onScreen = (x: number, y: number) => ({ x: place(x, y).x, y: heightPx - place(x, y).y });
  const widthPx = labelWidth(floorLabel, textPx);
  const curve = points.flatMap(({ travel, value }) => (value === null ? [] : [onScreen(travel, value)]));
  const spots: readonly LabelSpot[] = ['above', 'below'];
  const candidates = [-1, 1].flatMap((side) =>
    spots.map((spot) => {
      const end = onScreen(side < 0 ? to : 0, floor);
      const middle = { x: end.x + (side * widthPx) / 2, y: end.y };
      const box = labelBox(floorLabel, textPx, spot, middle, NO_SHIFT);
      const gaps = curve
        .filter(({ x }) => x > box.left && x < box.right)
        .map(({ y }) => Math.max(box.top - y, y - box.bottom, 0));
      return { spot, middle, clear: box.bottom > bottomPx ? -1 : Math.min(...gaps, heightPx) };
    }),
  );
  const { spot, middle } = candidates.reduce((best, each) => (each.clear > best.clear ? each : best));
  return {
    kind: 'label',
    role: 'curveFloor',
    text: floorLabel,
    at: { x: middle.x, y: heightPx - middle.y },
    spot,
    shiftPx: NO_SHIFT,
    sizePx: textPx,
    leader: false,
  };
}

const NO_SHIFT = { x: 0, y: 0 };

function labelWidth(text: string, textPx: number): number {
  const { left, right } = labelBox(text, textPx, 'above', NO_SHIFT, NO_SHIFT);
  return right - left;
}
