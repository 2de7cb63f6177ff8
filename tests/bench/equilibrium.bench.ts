/** How fast a full equilibrium is found, against general tools that find the same rest in the same run. */
import { balance, type Equilibrium } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { frontLiftLimit } from '../../src/core/riding/equilibrium/lift-limits.ts';
import { AT_REST, type RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { stance, type Travel } from '../../src/core/standing/stance.ts';
import { settledByEngine } from '../support/engine-bike.ts';
import { plainSprings, reached, sprung } from '../support/plain-springs.ts';
import { restByLeastSquares, type Derivatives } from '../support/rest-by-least-squares.ts';
import { shockBike, shockSetup } from '../support/shock-bike.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/**
 * Goals for a full equilibrium with all it reports: its time, and how many times as long general least squares takes.
 */
const GOAL_US = 60;
const GOAL_RATIO = 3;

/** Other forces on every call, so that nothing can be remembered: upright, on gas and brake, leaned. */
const FORCES: readonly RideForces[] = Array.from({ length: 100 }, (_, i) => ({
  ...AT_REST,
  acceleration: -0.35 + (i % 10) * 0.07,
  lean: Math.floor(i / 10) * 0.08,
}));

const apart = (a: Travel, b: Travel): number => Math.hypot(a.front - b.front, a.rear - b.rear);
const mm = (lengths: readonly number[]): string => `${Math.max(...lengths).toExponential(1)} mm`;

export default function equilibria(short: boolean): string[] {
  const { timed, timedInTurn } = timer(short);
  const bike = sprung(plainSprings, shockBike, shockSetup);
  const balanced = (forces: RideForces): Equilibrium => reached(balance(bike, forces));
  // The general loop knows no stops, so that it is held against what both springs carry.
  const carried = FORCES.filter((forces) => {
    const { front, rear } = balanced(forces);
    return front.rest === 'onSprings' && rear.rest === 'onSprings';
  });
  const forcesOf = (i: number): RideForces => carried[i % carried.length];
  const general = (derivatives: Derivatives) => (i: number) =>
    restByLeastSquares(bike, forcesOf(i), derivatives).front;
  const [full, byDifference, exact] = timedInTurn([
    (i) => balanced(forcesOf(i)).front.travelUsed,
    general('byDifference'),
    general('exact'),
  ]);
  const rests = carried.map(balanced);
  const awayFrom = (derivatives: Derivatives): string =>
    mm(
      carried.map((forces, i) =>
        apart(restByLeastSquares(bike, forces, derivatives), rests[i].stance.travel),
      ),
    );

  let near: Travel = { front: 40, rear: 40 };
  const followed = timed((i) => {
    const rest = reached(balance(bike, { ...AT_REST, acceleration: 0.2 * Math.sin(i / 50) }, near));
    near = rest.stance.travel;
    return near.front;
  });
  const limit = timed((i) => reached(frontLiftLimit(bike, { ...AT_REST, lean: (i % 100) / 200 })).limit);
  const onTyres = sprung(
    plainSprings,
    {
      ...shockBike,
      frontWheel: { ...shockBike.frontWheel, tyreRate: 160 },
      rearWheel: { ...shockBike.rearWheel, tyreRate: 190 },
    },
    shockSetup,
  );
  const soft = timed((i) => reached(balance(onTyres, forcesOf(i))).front.travelUsed);
  const still = balanced(AT_REST).stance.travel;
  const start = reached(stance(bike.machine, { front: 45, rear: 45 }));
  const began = performance.now();
  const settled = settledByEngine(start, plainSprings, { acceleration: 0, pressed: 1, held: 'nothing' });
  const engine = 1000 * (performance.now() - began);

  const row = (what: string, figure: number): BenchRow => ({ what, figure, unit: 'µs' });
  const rounds = rests.map((rest) => rest.rounds);
  return [
    `rounds of the search: ${Math.min(...rounds)} to ${Math.max(...rounds)}; worst miss ${mm(rests.map((rest) => rest.miss))}`,
    `from the same start least squares agrees over ${carried.length} equilibria to ${awayFrom('byDifference')}, with exact derivatives to ${awayFrom('exact')}; the engine to ${mm([apart(settled.travel, still)])}`,
    ...benchTable([
      row('full equilibrium begun from its neighbour', followed),
      row('full equilibrium on tyres that give', soft),
      row('front-lift limit, posture and acceleration together', limit),
      {
        ...row('full equilibrium with its reports', full),
        peer: { name: 'rigid-body engine settling the same bike', figure: engine },
      },
      {
        ...row('full equilibrium with its reports', full),
        goal: { most: GOAL_US },
        peer: { name: 'general least squares, the same equations', figure: byDifference, goal: GOAL_RATIO },
      },
      {
        ...row('full equilibrium with its reports', full),
        peer: { name: 'the same, given the exact derivatives', figure: exact, goal: GOAL_RATIO },
      },
    ]),
  ];
}
