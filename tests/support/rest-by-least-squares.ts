/** The rest of a bike on its springs, found by a general least-squares loop (Levenberg–Marquardt) from the same equations. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { rearForceAtWheel } from '../../src/core/springs/at-the-wheel.ts';
import { pushesOn } from '../../src/core/riding/equilibrium/pushes.ts';
import type { RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { springForce } from '../../src/core/springs/spring-law.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { stance, type Stance, type Travel } from '../../src/core/standing/stance.ts';
import { steadyLoads, type SteadyLoads } from '../../src/core/riding/equilibrium/steady-loads.ts';
import { reached } from './plain-springs.ts';

/**
 * Squares of the forces left over at which the loop ends, N²: its travel is then as near to equilibrium as the
 * core's, 1e-9 mm.
 */
const SQUARES_LEFT = 1e-15;
/** Where the core begins too, as a part of the travel at both ends. */
const START = 0.35;
const DAMPING = 1e-6;
/** Step of the loop's differences, as a part of the travel. */
const DIFFERENCE = 1e-5;

/** Who gives the loop its derivatives: the loop itself, by differences, or the core, exactly. */
export type Derivatives = 'byDifference' | 'exact';

/** Travel at rest. The loop knows no stops: it is for bikes that both springs carry. */
export function restByLeastSquares(
  bike: SprungMachine,
  forces: RideForces,
  derivatives: Derivatives,
): Travel {
  const standing = ([front, rear]: number[]): readonly [Stance, SteadyLoads] => {
    const on = reached(stance(bike.machine, { front, rear }));
    return [on, reached(steadyLoads(on, forces, bike.brake))];
  };
  const left = (travel: number[]): ((equation: number) => number) => {
    const [on, loads] = standing(travel);
    const front = loads.frontPush - springForce(bike.fork, on.travel.front);
    const rear = loads.rearPush - rearForceAtWheel(bike, on);
    return (equation) => (equation === 0 ? front : rear);
  };
  const changes = (travel: number[]): ((equation: number) => number[]) => {
    const [on, loads] = standing(travel);
    const { xPerX, xPerY, yPerX, yPerY } = reached(pushesOn({ sprung: bike, stance: on, loads }));
    const rows = [
      [xPerX, xPerY],
      [yPerX, yPerY],
    ];
    return (equation) => rows[equation];
  };
  const { most } = bike;
  const { parameterValues } = levenbergMarquardt({ x: [0, 1], y: [0, 0] }, left, {
    initialValues: [START * most.front, START * most.rear],
    minValues: [0, 0],
    maxValues: [most.front, most.rear],
    damping: DAMPING,
    gradientDifference: DIFFERENCE,
    maxIterations: 50,
    errorTolerance: SQUARES_LEFT,
    ...(derivatives === 'exact' && { jacobianFunction: changes }),
  });
  return { front: parameterValues[0], rear: parameterValues[1] };
}
