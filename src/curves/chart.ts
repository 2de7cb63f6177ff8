/** The chart of curves as plain drawing data: a scene whose mm are px, and where its field lies. */
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { WantedLabel } from '../scene/shapes/label-placing.ts';
import type { MarkShape, Scene, Shape } from '../scene/shapes/shape.ts';
import type { View } from '../scene/shapes/view.ts';
import { isTurned, type Band } from '../words/kept/curve-words.ts';
import { chartArea, chartCurve, type Edge } from './chart-curve.ts';
import { chartField, type ChartField } from './chart-field.ts';
import { legendOf, type Legend } from './chart-legend.ts';
import { chartLine, chartMark } from './chart-line.ts';
import { chartNames, NOW_RADIUS } from './chart-names.ts';
import type { CurveSet } from './curve-set.ts';
import { lookOf } from './line-look.ts';
import type { NeutralZone } from './neutral-zone.ts';
import { bandEdges, bandShapes, type SpreadBand } from './spread-band.ts';

export interface ChartAsked {
  readonly set: CurveSet;
  readonly style: NumberStyle;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly textPx: number;
  /** The target band, metric; null without one. */
  readonly band: Band | null;
  /** Where neutral lies, to draw the zones about it; null to draw none. */
  readonly zones: NeutralZone | null;
  /** How surely the present curve runs; left out or null where nobody knows. */
  readonly spread?: SpreadBand | null;
}

export interface Chart {
  readonly scene: Scene;
  readonly view: View;
  /** The field between the axes, px from the left and from the top. */
  readonly leftPx: number;
  readonly rightPx: number;
  readonly topPx: number;
  readonly bottomPx: number;
}

/** How far below its place a name is tried first, as a part of the text's size. */
const NAME_BELOW = 1.35;

/** A curve of several: the present one is drawn last, over all others. */
export function chartOf(asked: ChartAsked): Chart {
  const { set, style, widthPx, heightPx, textPx, band, zones, spread = null } = asked;
  const { reading, axis, from, to } = set;
  const legend = legendOf(set, style, widthPx, textPx);
  const field = chartField({
    across: { name: axis.label, quantity: axis.quantity, from, to },
    up: { name: reading.label, quantity: reading.quantity, ...yEnds(set, band, zones, spread) },
    style,
    widthPx,
    heightPx,
    textPx,
    rows: legend.rows,
  });
  const { lines, signs, wanted } = curvesIn(field, set, style, textPx);
  const names = chartNames(field, wanted, signs, widthPx, heightPx);
  const entries = legend.entries.map(({ name, wordsPx, row }) => field.bareLabel(name, wordsPx, row));
  const { view, leftPx, rightPx, topPx, bottomPx } = field;
  return {
    scene: [
      { name: 'zones', ink: 1, shapes: areasIn(field, set, band, zones) },
      {
        name: 'construction',
        ink: 1,
        shapes: [
          ...field.grid,
          ...(spread === null ? [] : bandShapes(field, set.curves[0].curve, spread)),
          ...lines,
          ...signs,
          ...samplesIn(field, legend),
        ],
      },
      { name: 'labels', ink: 1, shapes: [...field.words, ...entries, ...names] },
    ],
    view,
    leftPx,
    rightPx,
    topPx,
    bottomPx,
  };
}

/** The zones about neutral, or else the target band. */
function areasIn(field: ChartField, set: CurveSet, band: Band | null, zones: NeutralZone | null): Shape[] {
  const { yAxis } = field;
  if (zones === null)
    return band === null
      ? []
      : chartArea(
          'neutralZone',
          field,
          set,
          () => band.least,
          () => band.most,
        );
  const { middle, band: half } = zones;
  const isClosed = isTurned(set.reading);
  const edge =
    (by: number): Edge =>
    (x) =>
      middle(x) + by;
  const ground: Edge = () => 0;
  const squatEnd: Edge = (x) => Math.max(0, middle(x) - half);
  return [
    ...chartArea('proSquatZone', field, set, () => yAxis.least, ground),
    ...chartArea(isClosed ? 'liftZone' : 'squatZone', field, set, ground, squatEnd),
    ...chartArea('neutralZone', field, set, squatEnd, edge(half)),
    ...chartArea(isClosed ? 'squatZone' : 'liftZone', field, set, edge(half), () => yAxis.most),
  ];
}

/** A piece of each line of the legend, with its sign. */
function samplesIn({ rowPx, at }: ChartField, legend: Legend): Shape[] {
  return legend.entries.flatMap(({ role, sign, fromPx, toPx, signPx, row }) => {
    const yPx = (row + 0.5) * rowPx;
    return [
      ...(toPx > fromPx ? [chartLine(role, [at(fromPx, yPx), at(toPx, yPx)])] : []),
      chartMark(role, sign, at(signPx, yPx)),
    ];
  });
}

/** The curves with a sign and a name where each bike stands, and a line through the place of the present one. */
function curvesIn(field: ChartField, set: CurveSet, style: NumberStyle, textPx: number) {
  const { xAxis, topPx, bottomPx, leftPx, rightPx, at } = field;
  const lines: Shape[] = [];
  const signs: MarkShape[] = [];
  const wanted: WantedLabel[] = [];
  const [first, ...others] = set.curves;
  const isPresent = first.of === 'now';
  if (isPresent && first.place !== null && first.place >= set.from && first.place <= set.to) {
    const xPx = xAxis.px(first.place);
    lines.push(chartLine('curveCursor', [at(xPx, topPx), at(xPx, bottomPx)]));
  }
  for (const placed of [...others.reverse(), first]) {
    const { role, sign } = lookOf(placed);
    if (placed.under === null) lines.push(...chartCurve(role, field, placed.curve.x, placed.curve.y));
    const { name, place, value } = placed;
    if (place === null || typeof value !== 'number' || place < set.from || place > set.to) continue;
    const here = field.place(place, value);
    const isNow = isPresent && placed === first;
    signs.push(
      isNow ? { ...chartMark('curveMark', sign, here), radiusPx: NOW_RADIUS } : chartMark(role, sign, here),
    );
    // Over an adjuster all stand one above the other, and there the legend has to do.
    if (!isNow && (placed.of !== 'state' || !set.overTravel)) continue;
    const text = isNow ? writeNumber(value, set.reading.quantity, style).text : name;
    const spot = here.x > (leftPx + rightPx) / 2 ? 'left' : 'right';
    wanted.unshift({
      role,
      text,
      at: here,
      spot,
      sizePx: textPx,
      startPx: { x: 0, y: NAME_BELOW * textPx + 2 },
    });
  }
  return { lines, signs, wanted };
}

/** The span of all curves and of both bands; for zones neutral is always in sight. */
function yEnds(
  set: CurveSet,
  band: Band | null,
  zones: NeutralZone | null,
  spread: SpreadBand | null,
): { from: number; to: number } {
  const numbers = set.curves.flatMap(({ curve, value }) =>
    [...curve.y, value].filter((y): y is number => typeof y === 'number'),
  );
  if (band !== null) numbers.push(band.least, band.most);
  if (spread !== null)
    for (const { low, high } of bandEdges(set.curves[0].curve, spread).flat()) numbers.push(low, high);
  if (zones !== null)
    for (const x of [set.from, set.to])
      numbers.push(zones.middle(x) - 2 * zones.band, zones.middle(x) + 2 * zones.band);
  return numbers.length === 0
    ? { from: 0, to: 1 }
    : {
        from: numbers.reduce((a, b) => Math.min(a, b)),
        to: numbers.reduce((a, b) => Math.max(a, b)),
      };
}
