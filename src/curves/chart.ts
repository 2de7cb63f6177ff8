/** The chart of curves as plain drawing data: a scene whose mm are px, and where its field lies. */
import type { Point } from '../core/plane/point.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { textWidthPx } from '../scene/text-width.ts';
import { placeLabels, type Box, type WantedLabel } from '../scene/label-placing.ts';
import type { LabelShape, LabelSpot, MarkShape, PathStep, Role, Scene, Shape } from '../scene/shape.ts';
import type { View } from '../scene/view.ts';
import { axisOf, type Axis } from './axis.ts';
import { legendOf, uprightName } from './chart-legend.ts';
import type { CurveSet, PlacedCurve } from './curve-set.ts';
import type { NeutralZone } from './neutral-zone.ts';
import { isTurned, withUnit, type Band } from '../words/curve-words.ts';
import { lookOf } from './line-look.ts';

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

const LINE = 1.35;
const TICK_ACROSS = 6;
const TICK_UP = 2.4;
const GAP_PX = 7;
/** From the place of bare words at their right to where they begin, px. */
const BARE_BESIDE = 14;
/** Places along an edge of a zone, which bends little. */
const EDGE_PLACES = 25;
const NOW_RADIUS = 6;
const SIGN_RADIUS = 5;

/** An edge of a zone: its height in the reading's unit at a place of the axis. */
type Edge = (x: number) => number;

/** Height of one row of the legend, px. */
export function legendRowPx(textPx: number): number {
  return LINE * textPx + 3;
}

/** A curve of several: the present one is drawn last, over all others. */
export function chartOf(asked: ChartAsked): Chart {
  const { set, style, widthPx, heightPx, textPx, band, zones } = asked;
  const y = yEnds(set, band, zones);
  const legend = legendOf(set, style, widthPx, textPx);
  const rowPx = legendRowPx(textPx);
  const topPx = legend.rows * rowPx + GAP_PX;
  const bottomPx = Math.max(topPx + 20, heightPx - 2.6 * LINE * textPx);
  const yAxis = axisOf({
    quantity: set.reading.quantity,
    style,
    ...y,
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
    quantity: set.axis.quantity,
    style,
    from: set.from,
    to: set.to,
    fromPx: leftPx,
    toPx: rightPx,
    count: Math.max(2, Math.round((rightPx - leftPx) / (TICK_ACROSS * textPx))),
    rounded: false,
  });
  // The scene's y goes up; the chart's px go down.
  const at = (xPx: number, yPx: number): Point => ({ x: xPx, y: heightPx - yPx });
  const label = (text: string, place: Point, spot: LabelSpot, role: Role): LabelShape => ({
    kind: 'label',
    role,
    text,
    at: place,
    spot,
    shiftPx: { x: 0, y: 0 },
    sizePx: textPx,
    leader: false,
  });
  const bareLabel = (text: string, xPx: number, yPx: number): LabelShape =>
    label(text, at(xPx, yPx), 'right', 'axisName');
  const areas: Shape[] = [];
  /** The area between two edges along the axis, kept within the field. */
  const area = (role: Role, lower: Edge, upper: Edge): void => {
    const within = (y: number): number => Math.min(yAxis.most, Math.max(yAxis.least, y));
    const places = Array.from({ length: EDGE_PLACES }, (_, i) => {
      const x = set.from + ((set.to - set.from) * i) / (EDGE_PLACES - 1);
      return { px: xAxis.px(x), low: within(lower(x)), high: within(upper(x)) };
    });
    if (!places.some(({ low, high }) => high > low)) return;
    const above = places.map(({ px, high }) => at(px, yAxis.px(high)));
    const below = places.map(({ px, low }) => at(px, yAxis.px(low))).reverse();
    areas.push({ kind: 'path', role, steps: [...stepsAlong([...above, ...below]), { op: 'close' }] });
  };
  if (zones !== null) {
    const { middle, band: half } = zones;
    const isClosed = isTurned(set.reading);
    const edge = (by: number) => (x: number) => middle(x) + by;
    const ground = () => 0;
    const squatEnd = (x: number): number => Math.max(0, middle(x) - half);
    area('proSquatZone', () => yAxis.least, ground);
    area(isClosed ? 'liftZone' : 'squatZone', ground, squatEnd);
    area('neutralZone', squatEnd, edge(half));
    area(isClosed ? 'squatZone' : 'liftZone', edge(half), () => yAxis.most);
  } else if (band !== null)
    area(
      'neutralZone',
      () => band.least,
      () => band.most,
    );

  const grid: Shape[] = [
    ...yAxis.ticks.map(({ px }) => line('grid', [at(leftPx, px), at(rightPx, px)])),
    ...xAxis.ticks.map(({ px }) => line('grid', [at(px, topPx), at(px, bottomPx)])),
    line('axisLine', [at(leftPx, topPx), at(leftPx, bottomPx), at(rightPx, bottomPx)]),
  ];
  const words: Shape[] = [
    ...yAxis.ticks.map(({ px, text }) => label(text, at(leftPx - 2, px), 'left', 'axisName')),
    ...xAxis.ticks.map(({ px, text }) => label(text, at(px, bottomPx), 'below', 'axisName')),
    label(
      withUnit(set.axis.label, set.axis.quantity, style),
      at((leftPx + rightPx) / 2, bottomPx + LINE * textPx),
      'below',
      'axisName',
    ),
    bareLabel(uprightName(set, style), 2 * GAP_PX - BARE_BESIDE, rowPx / 2),
    ...legend.entries.map(({ name, wordsPx, row }) =>
      bareLabel(name, wordsPx - BARE_BESIDE, (row + 0.5) * rowPx),
    ),
  ];
  const samples: Shape[] = legend.entries.flatMap(({ role, sign, fromPx, toPx, signPx, row }) => {
    const yPx = (row + 0.5) * rowPx;
    return [
      ...(toPx > fromPx ? [line(role, [at(fromPx, yPx), at(toPx, yPx)])] : []),
      mark(role, sign, at(signPx, yPx)),
    ];
  });

  const lines: Shape[] = [];
  const signs: MarkShape[] = [];
  const wanted: WantedLabel[] = [];
  const [first, ...others] = set.curves;
  if (first.place !== null && first.place >= set.from && first.place <= set.to) {
    const xPx = xAxis.px(first.place);
    lines.push(line('curveCursor', [at(xPx, topPx), at(xPx, bottomPx)]));
  }
  for (const placed of [...others.reverse(), first]) {
    const { role, sign } = lookOf(placed);
    if (placed.under === null)
      for (const stretch of stretchesIn(placed, xAxis, yAxis, at))
        lines.push(stretch.length === 1 ? mark(role, 'dot', stretch[0]) : line(role, stretch));
    const { name, place, value } = placed;
    if (place === null || typeof value !== 'number' || place < set.from || place > set.to) continue;
    const here = at(xAxis.px(place), yAxis.px(value));
    const isNow = placed === first;
    signs.push(isNow ? { ...mark('curveMark', sign, here), radiusPx: NOW_RADIUS } : mark(role, sign, here));
    // Over an adjuster all stand one above the other, and there the legend has to do.
    if (!isNow && (placed.of !== 'state' || !set.overTravel)) continue;
    const text = isNow ? writeNumber(value, set.reading.quantity, style).text : name;
    const spot = here.x > (leftPx + rightPx) / 2 ? 'left' : 'right';
    wanted.unshift({ role, text, at: here, spot, sizePx: textPx, startPx: { x: 0, y: LINE * textPx + 2 } });
  }
  const around: Box[] = [
    { left: 0, top: 0, right: widthPx, bottom: topPx - 2 },
    { left: 0, top: bottomPx, right: widthPx, bottom: heightPx },
    { left: 0, top: 0, right: leftPx, bottom: heightPx },
    ...signs.map(({ at: { x, y } }) => boxAround(x, heightPx - y, NOW_RADIUS)),
  ];
  const view: View = { scale: 1, turn: 0, xPx: 0, yPx: heightPx };
  const names = placeLabels(wanted, view, widthPx, heightPx, around);
  return {
    scene: [
      { name: 'zones', ink: 1, shapes: areas },
      { name: 'construction', ink: 1, shapes: [...grid, ...lines, ...signs, ...samples] },
      { name: 'labels', ink: 1, shapes: [...words, ...names] },
    ],
    view,
    leftPx,
    rightPx,
    topPx,
    bottomPx,
  };
}

/** The span of all curves and of the band; for zones neutral is always in sight. */
function yEnds(set: CurveSet, band: Band | null, zones: NeutralZone | null): { from: number; to: number } {
  const numbers = set.curves.flatMap(({ curve, value }) =>
    [...curve.y, value].filter((y): y is number => typeof y === 'number'),
  );
  if (band !== null) numbers.push(band.least, band.most);
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

/** The curve's places, broken where the reading has no number. */
function stretchesIn(
  { curve }: PlacedCurve,
  xAxis: Axis,
  yAxis: Axis,
  at: (xPx: number, yPx: number) => Point,
): Point[][] {
  const stretches: Point[][] = [];
  let open = false;
  for (const [i, x] of curve.x.entries()) {
    const y = curve.y[i];
    if (typeof y !== 'number') {
      open = false;
      continue;
    }
    if (!open) stretches.push([]);
    open = true;
    stretches[stretches.length - 1].push(at(xAxis.px(x), yAxis.px(y)));
  }
  return stretches;
}

function line(role: Role, points: readonly Point[]): Shape {
  return { kind: 'path', role, steps: stepsAlong(points) };
}

function stepsAlong(points: readonly Point[]): PathStep[] {
  return points.map((point, i) => ({ op: i === 0 ? 'move' : 'line', ...point }));
}

function mark(role: Role, sign: MarkShape['sign'], at: Point): MarkShape {
  return { kind: 'mark', role, at, sign, radiusPx: sign === 'dot' ? 3.5 : SIGN_RADIUS };
}

function boxAround(xPx: number, yPx: number, halfPx: number): Box {
  return { left: xPx - halfPx, top: yPx - halfPx, right: xPx + halfPx, bottom: yPx + halfPx };
}
