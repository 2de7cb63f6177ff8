/** The general constraint solver planegcs, given the points and constraints of a standing bike. */
import {
  Algorithm,
  GcsWrapper,
  init_planegcs_module,
  SolveStatus,
  type SketchPrimitive,
} from '@salusoft89/planegcs';
import type { Point } from '../../src/core/plane/point.ts';
import { FREE_POINTS, type AnyPoint, type FreePoint, type PoseConstraints } from './pose-constraints.ts';

export interface ConstraintSolver {
  /** Sets the sketch up anew from points near the answer. */
  readonly setUp: (pose: PoseConstraints, near: ReadonlyMap<FreePoint, Point>) => void;
  /** Gives an already set-up sketch other measures; it starts from where it is. */
  readonly measure: (pose: PoseConstraints) => void;
  /** Solves, or throws when the solver says that it did not. */
  readonly solve: () => void;
  readonly points: () => Map<FreePoint, Point>;
  readonly close: () => void;
}

/** The measure of a constraint that has one, by which its parameter is named. */
function measures({ constraints }: PoseConstraints): [string, number][] {
  return constraints.flatMap((each, i): [string, number][] =>
    each.kind === 'distance'
      ? [[`m${i}`, each.length]]
      : each.kind === 'height'
        ? [[`m${i}`, each.height]]
        : [],
  );
}

/** Stops when no equation is off by more than this, mm or mm². */
const CONVERGED = 1e-10;

export async function constraintSolver(): Promise<ConstraintSolver> {
  const module = await init_planegcs_module();
  const gcs = new GcsWrapper(new module.GcsSystem());
  gcs.set_convergence_threshold(CONVERGED);

  const setUp: ConstraintSolver['setUp'] = (pose, near) => {
    gcs.clear_data();
    for (const [name, value] of measures(pose)) gcs.push_sketch_param(name, value);
    const point = (id: AnyPoint, { x, y }: Point, fixed: boolean): SketchPrimitive => ({
      id,
      type: 'point',
      x,
      y,
      fixed,
    });
    const primitives: SketchPrimitive[] = [
      ...[...pose.given].map(([id, p]) => point(id, p, true)),
      ...[...near].map(([id, p]) => point(id, p, false)),
      ...pose.constraints.map((each, i): SketchPrimitive => {
        const id = `c${i}`;
        switch (each.kind) {
          case 'distance':
            return { id, type: 'p2p_distance', p1_id: each.a, p2_id: each.b, distance: `m${i}` };
          case 'height':
            return { id, type: 'coordinate_y', p_id: each.a, y: `m${i}` };
          case 'onLine':
            return { id, type: 'point_on_line_ppp', p_id: each.a, lp1_id: each.from, lp2_id: each.to };
          case 'square':
            return {
              id,
              type: 'perpendicular_pppp',
              l1p1_id: each.a,
              l1p2_id: each.b,
              l2p1_id: each.c,
              l2p2_id: each.d,
            };
        }
      }),
    ];
    for (const primitive of primitives) gcs.push_primitive(primitive);
  };

  return {
    setUp,
    measure: (pose) => {
      for (const [name, value] of measures(pose)) gcs.set_sketch_param(name, value);
    },
    solve: () => {
      const status = gcs.solve(Algorithm.DogLeg);
      if (status !== SolveStatus.Success && status !== SolveStatus.Converged)
        throw new Error(`The constraint solver ended with status ${status}`);
      gcs.apply_solution();
    },
    points: () =>
      new Map(
        FREE_POINTS.map((id) => {
          const found = gcs.sketch_index.get_sketch_point(id);
          return [id, { x: found.x, y: found.y }];
        }),
      ),
    close: () => gcs.destroy_gcs_module(),
  };
}
