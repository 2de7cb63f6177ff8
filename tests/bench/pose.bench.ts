/** How fast a pose with its readings is, against two general solvers that find the same pose in the same run. */
import { READINGS } from '../../src/core/readings/all-readings.ts';
import type { Reading } from '../../src/core/readings/reading.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance, type Travel } from '../../src/core/standing/stance.ts';
import { constraintSolver } from '../support/constraint-solver.ts';
import { dampedNewton } from '../support/damped-newton.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { poseConstraints, posePoints, worstDistance } from '../support/pose-constraints.ts';
import { made, standing, TOPPED_OUT } from '../support/standing.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals: a full pose with all readings, from bike and setup as from travel alone, and how much faster than the constraint solver at its job. */
const GOAL_US = 5;
const GOAL_RATIO = 100;

/**
 * The readings that follow from the ten points, which is the solvers' job. The others are left out, because each
 * further reading would make the solvers look quicker.
 */
const OF_THE_POINTS: readonly string[] = [
  'rake',
  'trail',
  'wheelbase',
  'pivotHeight',
  'frontSprocketHeight',
  'centreHeight',
  'upperRunAngle',
  'squatAngle',
];
const POINT_READINGS = READINGS.filter(({ key }) => OF_THE_POINTS.includes(key));

/** Different travel on every call, so that nothing can be remembered. */
const TRAVELS: readonly Travel[] = Array.from({ length: 100 }, (_, i) => ({
  front: 10 + (i % 10) * 8,
  rear: 10 + Math.floor(i / 10) * 9,
}));

function read(readings: readonly Reading[], on: Stance): number {
  let sum = 0;
  for (const reading of readings) {
    const value = reading.read(on);
    if (typeof value === 'number') sum += value;
  }
  return sum;
}

function stood(parts: ReturnType<typeof machine>, travel: Travel): Stance {
  const on = parts.ok ? stance(parts, travel) : parts;
  if (!on.ok) throw new Error(on.reason);
  return on;
}

const most = (errors: number[]): string => Math.max(...errors).toExponential(1);

export default async function pose(short: boolean): Promise<string[]> {
  const { timed } = timer(short);
  const parts = made();
  const setups = TRAVELS.map((_, i) => ({ ...plainSetup, forkTubes: i / 10, shockLength: i / 25 }));
  const poseOnly = timed((i) => stood(parts, TRAVELS[i % 100]).rake);
  const sameJob = timed((i) => read(POINT_READINGS, stood(parts, TRAVELS[i % 100])));
  const fromTravel = timed((i) => read(READINGS, stood(parts, TRAVELS[i % 100])));
  const fromBike = timed((i) => read(READINGS, stood(machine(plainBike, setups[i % 100]), TRAVELS[i % 100])));

  const stances = TRAVELS.map((travel) => standing(plainBike, plainSetup, travel));
  const problems = stances.map(poseConstraints);
  const answers = stances.map(posePoints);
  const near = posePoints(standing(plainBike, plainSetup, TOPPED_OUT));

  const solver = await constraintSolver();
  const anew = timed((i) => {
    solver.setUp(problems[i % 100], near);
    solver.solve();
    return solver.points().size;
  });
  solver.setUp(problems[0], near);
  const again = timed((i) => {
    solver.measure(problems[i % 100]);
    solver.solve();
    return solver.points().size;
  });
  const solverErrors = problems.map((problem, i) => {
    solver.setUp(problem, near);
    solver.solve();
    return worstDistance(solver.points(), answers[i]);
  });
  solver.close();

  const newton = timed((i) => dampedNewton(problems[i % 100], near).size);
  const newtonErrors = problems.map((problem, i) => worstDistance(dampedNewton(problem, near), answers[i]));

  const all = `pose and all ${READINGS.length} readings`;
  const row = (what: string, figure: number): BenchRow => ({ what, figure, unit: 'µs' });
  const points = row(`pose and the ${POINT_READINGS.length} readings of the ten points`, sameJob);
  return [
    `over ${problems.length} poses planegcs agrees with the core to ${most(solverErrors)} mm, Newton to ${most(newtonErrors)} mm`,
    ...benchTable([
      row('pose alone, from machine and travel', poseOnly),
      { ...points, peer: { name: 'plain damped Newton, 20 unknowns', figure: newton } },
      { ...points, peer: { name: 'planegcs, the sketch set up anew', figure: anew, goal: GOAL_RATIO } },
      { ...points, peer: { name: 'planegcs, given other measures', figure: again, goal: GOAL_RATIO } },
      { ...row(`${all}, from machine and travel`, fromTravel), goal: { most: GOAL_US } },
      { ...row(`${all}, from bike and setup`, fromBike), goal: { most: GOAL_US } },
    ]),
  ];
}
