/** Tests of the drawing of a bike on its scales. */
import { describe, expect, it } from 'vitest';
import type { Point } from '../core/plane/point.ts';
import type { MarkShape, PathShape, Role, Shape } from './shapes/shape.ts';
import { toScreen } from './shapes/view.ts';
import { weighingScene, type WeighingShown } from './weighing-drawing.ts';

const window = { widthPx: 300, heightPx: 190, sizePx: 13 };
const level: WeighingShown = {
  wheelbase: 1400,
  frontRadius: 300,
  rearRadius: 330,
  first: 'wheelsLevel',
  raised: null,
  scales: { front: 'Front scale', rear: 'Rear scale' },
  dimension: 'Wheelbase',
  centre: { x: 680, y: 560 },
};
const nose: WeighingShown = {
  ...level,
  raised: { end: 'front', lift: 260 },
  scales: { rear: 'Rear scale' },
  dimension: 'Lift',
};

function shapesOf(shown: WeighingShown): Shape[] {
  return weighingScene(shown, window).scene.flatMap((layer) => layer.shapes);
}

function points(shapes: readonly Shape[], role: Role): Point[][] {
  return shapes
    .filter((shape): shape is PathShape => shape.kind === 'path' && shape.role === role)
    .map(({ steps }) =>
      steps.flatMap((step) =>
        step.op === 'move' || step.op === 'line'
          ? [{ x: step.x, y: step.y }]
          : step.op === 'arc'
            ? [{ x: step.cx, y: step.cy }]
            : [],
      ),
    );
}

function centreOf(shapes: readonly Shape[]): Point {
  const mark = shapes.find((shape): shape is MarkShape => shape.kind === 'mark');
  if (mark === undefined) throw new Error('no centre of gravity');
  return mark.at;
}

describe('a bike on its scales', () => {
  it('level has both scales named, the wheelbase measured, and its centre where it was found', () => {
    const shapes = shapesOf(level);
    const words = shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []));
    expect(words.sort()).toEqual(['Front scale', 'Rear scale', 'Wheelbase']);
    const [[from, to]] = points(shapes, 'dimension');
    expect(to.x - from.x).toBeCloseTo(1400, 9);
    expect(centreOf(shapes)).toEqual({ x: expect.closeTo(680, 9), y: expect.closeTo(560, 9) });
    expect(points(shapes, 'clamp')).toHaveLength(2);
  });

  it('raised turns as one body: axles and centre keep their distances, and the lift is measured', () => {
    const shapes = shapesOf(nose);
    const [[rear, front]] = points(shapes, 'swingarmLine');
    expect(front.y - 300).toBeCloseTo(260, 9);
    expect(Math.hypot(front.x - rear.x, front.y - rear.y)).toBeCloseTo(Math.hypot(1400, 30), 9);
    const centre = centreOf(shapes);
    expect(Math.hypot(centre.x - rear.x, centre.y - rear.y)).toBeCloseTo(Math.hypot(680, 230), 9);
    expect(Math.hypot(centre.x - front.x, centre.y - front.y)).toBeCloseTo(Math.hypot(720, 260), 9);
    // The nose is up, so the centre has moved back.
    expect(centre.x).toBeLessThan(680);
    const [[from, to]] = points(shapes, 'dimension');
    expect(to.y - from.y).toBeCloseTo(260, 9);
  });

  it('with level axles has the smaller wheel stand on a block', () => {
    const [[rear, front]] = points(shapesOf({ ...level, first: 'axlesLevel' }), 'swingarmLine');
    expect(front.y).toBe(rear.y);
    expect(points(shapesOf({ ...level, first: 'axlesLevel' }), 'clamp')).toHaveLength(3);
  });

  it.each([level, nose, { ...nose, raised: { end: 'rear' as const, lift: 400 } }])(
    'lies within its window',
    (shown) => {
      const { scene, view } = weighingScene(shown, window);
      const drawn = scene.flatMap((layer) => layer.shapes);
      for (const role of ['tyre', 'dimension', 'clamp'] as const)
        for (const each of points(drawn, role).flat()) {
          const { x, y } = toScreen(view, each);
          expect(x > 0 && x < window.widthPx && y > 0 && y < window.heightPx).toBe(true);
        }
    },
  );

  it('shows no centre before it is known', () => {
    expect(shapesOf({ ...level, centre: null }).some((shape) => shape.kind === 'mark')).toBe(false);
  });
});
