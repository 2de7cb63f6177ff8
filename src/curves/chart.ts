/** The chart of curves as plain drawing data: a scene whose mm are px, and where its field lies. */
import type { Point } from '../core/plane/point.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { LabelShape, LabelSpot, Role, Scene, Shape } from '../scene/shape.ts';
import { textWidthPx } from '../scene/text-width.ts';
import type { View } from '../scene/view.ts';
import { axisOf, type Axis } from './axis.ts';
import { sameLine, type CurveSet, type PlacedCurve } from './curve-set.ts';
import { withUnit, type Band } from './curve-words.ts';

export interface ChartAsked {
  readonly set: CurveSet;
  readonly style: NumberStyle;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly textPx: number;
  /** The target band, metric; null without one. */
  readonly band: Band | null;
  /** Half-width of the neutral zone of anti-squat, to draw the zones; null to draw none. */
  readonly zones: number | null;
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
/** The rest of the curves, in the order in which they were kept. */
const KEPT_ROLES: readonly Role[] = ['curveKept1', 'curveKept2', 'curveKept3', 'curveKept4'];

/** A curve of several: the present one is drawn last, over all others. */
export function chartOf(asked: ChartAsked): Chart {
  const { set, style, widthPx, heightPx, textPx, band, zones } = asked;
  const y = yEnds(set, band, zones);
  const topPx = LINE * textPx + GAP_PX;
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
  const leftPx = 2 * GAP_PX + Math.max(...yAxis.ticks.map(({ text }) => textWidthPx(text, textPx)), textPx);
  const rightPx = Math.max(leftPx + 40, widthPx - 2 * GAP_PX);
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
  const areas: Shape[] = [];
  const area = (role: Role, from: number, to: number): void => {
    const low = Math.max(from, yAxis.least);
    const high = Math.min(to, yAxis.most);
    if (!(high > low)) return;
    areas.push(box(role, at(leftPx, yAxis.px(high)), at(rightPx, yAxis.px(low))));
  };
  if (zones !== null) {
    area('proSquatZone', -Infinity, 0);
    area('squatZone', 0, 100 - zones);
    area('neutralZone', 100 - zones, 100 + zones);
    area('liftZone', 100 + zones, Infinity);
  } else if (band !== null) area('neutralZone', band.least, band.most);

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
    label(
      withUnit(set.reading.label, set.reading.quantity, style),
      at(leftPx, topPx / 2),
      'right',
      'axisName',
    ),
  ];
  const lines: Shape[] = [];
  const names: Shape[] = [];
  const taken: number[] = [];
  const [first, ...others] = set.curves;
  const kept = others.filter(({ of }) => of === 'kept');
  for (const placed of [...others, first]) {
    if (placed !== first && sameLine(placed.curve, first.curve)) continue;
    const role = roleOf(placed, kept);
    const stretches = stretchesIn(placed, xAxis, yAxis, at);
    for (const stretch of stretches)
      lines.push(stretch.length === 1 ? dot(role, stretch[0]) : line(role, stretch));
    const end = stretches.at(-1)?.at(-1);
    if (end !== undefined && set.curves.length > 1) {
      let yPx = heightPx - end.y;
      while (taken.some((other) => Math.abs(other - yPx) < LINE * textPx + 3)) yPx -= LINE * textPx + 3;
      taken.push(yPx);
      names.push(label(placed.name, at(end.x, Math.max(topPx, yPx)), 'left', role));
    }
  }
  const { place, value } = first;
  if (typeof value === 'number' && place >= set.from && place <= set.to) {
    const here = at(xAxis.px(place), yAxis.px(value));
    lines.push(line('curveCursor', [at(xAxis.px(place), topPx), at(xAxis.px(place), bottomPx)]));
    lines.push({ kind: 'mark', role: 'curveMark', at: here, sign: 'ring', radiusPx: 6 });
    const text = writeNumber(value, set.reading.quantity, style).text;
    const spot = here.x > (leftPx + rightPx) / 2 ? 'left' : 'right';
    names.push({ ...label(text, here, spot, 'curveNow'), shiftPx: { x: 0, y: LINE * textPx + 2 } });
  }
  return {
    scene: [
      { name: 'zones', ink: 1, shapes: areas },
      { name: 'construction', ink: 1, shapes: [...grid, ...lines] },
      { name: 'labels', ink: 1, shapes: [...words, ...names] },
    ],
    view: { scale: 1, turn: 0, xPx: 0, yPx: heightPx },
    leftPx,
    rightPx,
    topPx,
    bottomPx,
  };
}

function roleOf(placed: PlacedCurve, kept: readonly PlacedCurve[]): Role {
  if (placed.of === 'now') return 'curveNow';
  return placed.of === 'baseline' ? 'curveBaseline' : KEPT_ROLES[kept.indexOf(placed) % KEPT_ROLES.length];
}

/** The span of all curves and of the band; for zones neutral is always in sight. */
function yEnds(set: CurveSet, band: Band | null, zones: number | null): { from: number; to: number } {
  const numbers = set.curves.flatMap(({ curve, value }) =>
    [...curve.y, value].filter((y): y is number => typeof y === 'number'),
  );
  if (band !== null) numbers.push(band.least, band.most);
  if (zones !== null) numbers.push(100 - 2 * zones, 100 + 2 * zones);
  return numbers.length === 0
    ? { from: 0, to: 1 }
    : {
        from: numbers.reduce((a, b) => Math.min(a, b)),
        to: numbers.reduce((a, b) => Math.max(a, b)),
      };
}

/** The curve's places with its bike's own among them, broken where the reading has no number. */
function stretchesIn(
  { curve, place, value }: PlacedCurve,
  xAxis: Axis,
  yAxis: Axis,
  at: (xPx: number, yPx: number) => Point,
): Point[][] {
  const points = curve.x.map((x, i) => ({ x, y: curve.y[i] }));
  const [low, high] = [curve.x[0] ?? Infinity, curve.x[curve.x.length - 1] ?? -Infinity];
  if (place > low && place < high && !curve.x.includes(place)) points.push({ x: place, y: value });
  points.sort((a, b) => a.x - b.x);
  const stretches: Point[][] = [];
  let open = false;
  for (const { x, y } of points) {
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
  return {
    kind: 'path',
    role,
    steps: points.map((point, i) => ({ op: i === 0 ? 'move' : 'line', ...point })),
  };
}

function box(role: Role, from: Point, to: Point): Shape {
  return {
    kind: 'path',
    role,
    steps: [
      { op: 'move', ...from },
      { op: 'line', x: to.x, y: from.y },
      { op: 'line', ...to },
      { op: 'line', x: from.x, y: to.y },
      { op: 'close' },
    ],
  };
}

function dot(role: Role, at: Point): Shape {
  return { kind: 'mark', role, at, sign: 'dot', radiusPx: 3 };
}
