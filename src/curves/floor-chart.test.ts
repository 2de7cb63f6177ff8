/** Tests of the chart of a length over the rear travel, by the places of what is drawn in it. */
import { expect, it } from 'vitest';
import { labelBox } from '../scene/shapes/label-placing.ts';
import type { LabelShape, MarkShape, PathShape, Role } from '../scene/shapes/shape.ts';
import { floorChart, type FloorCurve } from './floor-chart.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;
const SIZE = { widthPx: 300, heightPx: 150, textPx: 12 };
/** A length that falls evenly and has no number at one place. */
const FALLS: FloorCurve = {
  name: 'Slack',
  points: [0, 25, 50, 75, 100].map((travel) => ({ travel, value: travel === 50 ? null : 40 - travel / 5 })),
  mark: { travel: 100, value: 20 },
  floor: 10,
  floorLabel: 'least to keep',
  now: 30,
};

function drawn(curve: FloorCurve) {
  const chart = floorChart(curve, STYLE, SIZE);
  const shapes = chart.scene.flatMap((layer) => layer.shapes);
  const paths = (role: Role): PathShape[] =>
    shapes.filter((shape): shape is PathShape => shape.kind === 'path' && shape.role === role);
  const marks = shapes.filter((shape): shape is MarkShape => shape.kind === 'mark');
  const labels = shapes.filter((shape): shape is LabelShape => shape.kind === 'label');
  return { chart, paths, marks, labels };
}

const ends = ({ steps }: PathShape) =>
  steps.flatMap((step) => (step.op === 'move' || step.op === 'line' ? [{ x: step.x, y: step.y }] : []));

it('breaks the curve where there is no number', () => {
  const { paths } = drawn(FALLS);
  expect(paths('curveNow').map((path) => ends(path).length)).toEqual([2, 2]);
});

it('lays equal steps of travel and of value equally far apart, higher values higher', () => {
  const { paths } = drawn(FALLS);
  const [[a, b], [c, d]] = paths('curveNow').map(ends);
  expect(b.x - a.x).toBeCloseTo(d.x - c.x, 9);
  expect(b.y - a.y).toBeCloseTo(d.y - c.y, 9);
  expect(b.y).toBeLessThan(a.y);
  expect(c.x - a.x).toBeCloseTo(3 * (b.x - a.x), 9);
});

it('draws the floor below the curve over the whole travel, and the place of the bike between its ends', () => {
  const { chart, paths } = drawn(FALLS);
  const [floor] = paths('curveFloor').map(ends);
  expect(floor.map(({ x }) => x)).toEqual([chart.leftPx, chart.rightPx].map((px) => expect.closeTo(px, 9)));
  const [[a], [, last]] = paths('curveNow').map(ends);
  // The curve falls by 20 mm and ends 10 mm above its floor.
  expect(last.y - floor[0].y).toBeCloseTo((a.y - last.y) / 2, 9);
  const [cursor] = paths('curveCursor').map(ends);
  expect(cursor[0].x).toBeCloseTo(chart.leftPx + 0.3 * (chart.rightPx - chart.leftPx), 9);
});

it('marks the place that matters on the curve, and nothing without one', () => {
  const { paths, marks } = drawn(FALLS);
  expect(marks).toHaveLength(1);
  expect(marks[0].at).toEqual(ends(paths('curveNow')[1])[1]);
  expect(drawn({ ...FALLS, mark: null }).marks).toEqual([]);
});

it.each([
  ['falls', FALLS],
  ['rises', { ...FALLS, points: FALLS.points.map(({ travel }) => ({ travel, value: 12 + travel / 5 })) }],
])('keeps the words of the floor clear of a curve that %s', (_, curve) => {
  const { paths, labels } = drawn(curve);
  const words = labels.find(({ text }) => text === 'least to keep');
  if (words === undefined) throw new Error('the floor has no words');
  const box = labelBox(
    words.text,
    words.sizePx,
    words.spot,
    { x: words.at.x, y: SIZE.heightPx - words.at.y },
    words.shiftPx,
  );
  const inBox = paths('curveNow')
    .flatMap(ends)
    .filter(
      ({ x, y }) =>
        x > box.left && x < box.right && SIZE.heightPx - y > box.top && SIZE.heightPx - y < box.bottom,
    );
  expect(inBox).toEqual([]);
});

it('has a field where every value is zero', () => {
  const { chart, paths } = drawn({
    ...FALLS,
    points: [0, 50].map((travel) => ({ travel, value: 0 })),
    floor: 0,
    mark: null,
  });
  expect(
    paths('curveNow')
      .flatMap(ends)
      .every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)),
  ).toBe(true);
  expect(chart.bottomPx).toBeGreaterThan(chart.topPx);
});
