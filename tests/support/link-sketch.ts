/** A rear linkage as points and distances for the constraint solver planegcs, which knows no linkages. */
import {
  Algorithm,
  GcsWrapper,
  init_planegcs_module,
  SolveStatus,
  type SketchPrimitive,
} from '@salusoft89/planegcs';
import { drawnPoints, type LinkPoint } from '../../src/core/linkage/link-drawing.ts';
import type { LinkLayout } from '../../src/core/parts/rear-layout.ts';
import { distance, type Point } from '../../src/core/plane/point.ts';
import { radians } from '../../src/core/units/convert.ts';

export interface LinkSketch {
  /** Sets the sketch up from the drawing, with the movable points near where they are given. */
  readonly setUp: (near: ReadonlyMap<string, Point>) => void;
  /** Puts the axle at a height, mm above the pivot, and solves; throws when the solver says that it did not. */
  readonly solveAt: (axleHeight: number) => void;
  readonly place: (key: string) => Point;
  readonly close: () => void;
}

/** Stops when no distance is off by more than this, mm. */
const CONVERGED = 1e-11;

/**
 * The frame's points are held; the swingarm is held together by distances from pivot and axle, the rocker by its
 * three sides, the rod by its length. The shock is no constraint: its length is what comes out.
 */
export async function linkSketch(layout: LinkLayout, armLength: number): Promise<LinkSketch> {
  const module = await init_planegcs_module();
  const gcs = new GcsWrapper(new module.GcsSystem());
  gcs.set_convergence_threshold(CONVERGED);
  const angle = radians(layout.drawnAngleDeg);
  const points = drawnPoints(layout, angle);
  const pivot: Point = { x: 0, y: 0 };
  const axle: Point = { x: -armLength * Math.cos(angle), y: -armLength * Math.sin(angle) };
  const at = (key: string): Point => {
    const found = points.find((point) => point.key === key);
    if (found === undefined) throw new Error(`The layout has no ${key}`);
    return found.place;
  };
  const distances: [string, string, number][] = [['pivot', 'axle', armLength]];
  for (const { key, part, place } of points)
    if (part === 'arm')
      distances.push(['pivot', key, distance(pivot, place)], ['axle', key, distance(axle, place)]);
  if (layout.kind !== 'direct') {
    const rodEnd = layout.kind === 'rockerOnFrame' ? 'rodOnArm' : 'rodOnFrame';
    for (const [a, b] of [
      ['rockerPivot', 'rodOnRocker'],
      ['rockerPivot', 'shockOnRocker'],
      ['rodOnRocker', 'shockOnRocker'],
      ['rodOnRocker', rodEnd],
    ])
      distances.push([a, b, distance(at(a), at(b))]);
  }
  const point = (id: string, { x, y }: Point, fixed: boolean): SketchPrimitive => ({
    id,
    type: 'point',
    x,
    y,
    fixed,
  });
  const placeOf = (near: ReadonlyMap<string, Point>, { key, place }: LinkPoint): Point =>
    near.get(key) ?? place;
  return {
    setUp: (near) => {
      gcs.clear_data();
      gcs.push_sketch_param('height', axle.y);
      const primitives: SketchPrimitive[] = [
        point('pivot', pivot, true),
        point('axle', near.get('axle') ?? axle, false),
        ...points.map((each) => point(each.key, placeOf(near, each), each.part === 'frame')),
        ...distances.map(([p1_id, p2_id, length], i): SketchPrimitive => ({
          id: `d${i}`,
          type: 'p2p_distance',
          p1_id,
          p2_id,
          distance: length,
        })),
        { id: 'axleHeight', type: 'coordinate_y', p_id: 'axle', y: 'height' },
      ];
      for (const primitive of primitives) gcs.push_primitive(primitive);
    },
    solveAt: (axleHeight) => {
      gcs.set_sketch_param('height', axleHeight);
      const status = gcs.solve(Algorithm.DogLeg);
      if (status !== SolveStatus.Success && status !== SolveStatus.Converged)
        throw new Error(`The constraint solver ended with status ${status}`);
      gcs.apply_solution();
    },
    place: (key) => {
      const found = gcs.sketch_index.get_sketch_point(key);
      return { x: found.x, y: found.y };
    },
    close: () => gcs.destroy_gcs_module(),
  };
}
