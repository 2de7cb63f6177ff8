/** How fast a full balance is, against two general tools finding the same rest in the same run. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { balance, type Equilibrium } from '../../src/core/riding/equilibrium.ts';
import { frontLiftLimit } from '../../src/core/riding/lift-limits.ts';
import { AT_REST, type RideForces } from '../../src/core/riding/ride-forces.ts';
import { springForce } from '../../src/core/springs/spring-law.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { stance, type Travel } from '../../src/core/standing/stance.ts';
import { steadyLoads } from '../../src/core/riding/steady-loads.ts';
import { settledByEngine } from '../support/engine-bike.ts';
import { plainSprings, reached, sprung } from '../support/plain-springs.ts';
import { shockBike, shockSetup } from '../support/shock-bike.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals for a full balance with all it reports: its time, and how many times as long general least squares takes. */
const GOAL_US = 60;
const GOAL_RATIO = 3;

/** Other forces on every call, so that nothing can be remembered: upright, on gas and brake, leaned. */
const FORCES: readonly RideForces[] = Array.from({ length: 100 }, (_, i) => ({
  ...AT_REST,
  acceleration: -0.35 + (i % 10) * 0.07,
  lean: Math.floor(i / 10) * 0.08,
}));

/** The same two equations handed to a general least-squares solver, which asks for a few digits only. */
function byLeastSquares(bike: SprungMachine, forces: RideForces): Travel {
  const left = ([front, rear]: number[]): ((equation: number) => number) => {
    const on = stance(bike.machine, { front, rear });
    const loads = on.ok ? steadyLoads(on, forces, bike.brake) : on;
    if (!on.ok || !loads.ok) return () => 1e6;
    return (equation) =>
      equation === 0
        ? loads.frontPush - springForce(bike.fork, front)
        : loads.rearPush - (springForce(bike.shock, on.arm.shockStroke) * on.arm.lever) / on.pose.originX;
  };
  const start = [0.35 * bike.most.front, 0.35 * bike.most.rear];
  const { parameterValues } = levenbergMarquardt({ x: [0, 1], y: [0, 0] }, left, {
    initialValues: start,
    minValues: [0, 0],
    maxValues: [bike.most.front, bike.most.rear],
    damping: 1e-6,
    gradientDifference: 1e-5,
    centralDifference: false,
    maxIterations: 50,
    errorTolerance: 1e-8,
  });
  return { front: parameterValues[0], rear: parameterValues[1] };
}

const apart = (a: Travel, b: Travel): number => Math.hypot(a.front - b.front, a.rear - b.rear);

export default function balances(short: boolean): string[] {
  const timed = timer(short);
  const bike = sprung(plainSprings, shockBike, shockSetup);
  const at = (i: number): Equilibrium => reached(balance(bike, FORCES[i % FORCES.length]));
  const full = timed((i) => at(i).front.travelUsed);
  let near: Travel = { front: 40, rear: 40 };
  const followed = timed((i) => {
    const rest = reached(balance(bike, { ...AT_REST, acceleration: 0.2 * Math.sin(i / 50) }, near));
    near = rest.stance.travel;
    return near.front;
  });
  const limit = timed((i) => reached(frontLiftLimit(bike, { ...AT_REST, lean: (i % 100) / 200 })).limit);
  const general = timed((i) => byLeastSquares(bike, FORCES[i % FORCES.length]).front);
  const onSprings = FORCES.filter(
    (_, i) => at(i).front.rest === 'onSprings' && at(i).rear.rest === 'onSprings',
  );
  const generalMiss = Math.max(
    ...onSprings.map((forces) =>
      apart(byLeastSquares(bike, forces), reached(balance(bike, forces)).stance.travel),
    ),
  );

  const rest = reached(balance(bike, AT_REST)).stance.travel;
  const start = reached(stance(bike.machine, { front: 45, rear: 45 }));
  const began = performance.now();
  const settled = settledByEngine(start, plainSprings, { acceleration: 0, pressed: 1, held: 'nothing' });
  const engine = 1000 * (performance.now() - began);

  const row = (what: string, figure: number): BenchRow => ({ what, figure, unit: 'µs' });
  const rounds = FORCES.map((_, i) => at(i).rounds);
  return [
    `rounds of the balance: ${Math.min(...rounds)} to ${Math.max(...rounds)}; worst miss ${Math.max(...FORCES.map((_, i) => at(i).miss)).toExponential(1)} mm`,
    `least squares agrees to ${generalMiss.toExponential(1)} mm over ${onSprings.length} balances, the engine to ${apart(settled.travel, rest).toExponential(1)} mm`,
    ...benchTable([
      row('full balance begun from its neighbour', followed),
      row('front-lift limit, posture and acceleration together', limit),
      {
        ...row('full balance with its reports', full),
        peer: { name: 'rigid-body engine settling the same bike', figure: engine },
      },
      {
        ...row('full balance with its reports', full),
        goal: { most: GOAL_US },
        peer: { name: 'general least squares, the same equations', figure: general, goal: GOAL_RATIO },
      },
    ]),
  ];
}
