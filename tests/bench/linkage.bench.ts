/** How fast a rear linkage is solved, against a general constraint solver doing the same one in the same run. */
import { angleAtLength } from '../../src/core/linkage/arm-from-shock.ts';
import { linkPoints } from '../../src/core/linkage/link-points.ts';
import { shockAt } from '../../src/core/linkage/links.ts';
import { suspensionAt } from '../../src/core/linkage/suspension.ts';
import { travelCurves } from '../../src/core/linkage/travel-curves.ts';
import { distance, type Point } from '../../src/core/plane/point.ts';
import { linkSketch } from '../support/link-sketch.ts';
import { ARM_LENGTH, rockerToArm, rockerOnArm, rearLayouts } from '../support/rear-layouts.ts';
import { evenly, madeLinks, madeRange, madeRear, madeShock, rearAt } from '../support/rear-made.ts';
import { timer, type Timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Solving a link layout at an angle of the arm, with both derivatives, ns. */
const GOAL_NS = 1000;
const GOAL_RATIO = 100;

/** Calls timed as one, so that what the timing itself costs is spread over them. */
const CALLS = 100;
const spring = { force: (stroke: number) => 90 * (8 + stroke), rate: () => 90 };

const row = (what: string, microseconds: number): BenchRow => ({
  what,
  figure: 1000 * microseconds,
  unit: 'ns',
});

/** Microseconds of one of a hundred calls, each with another number. */
function each(timed: Timer['timed'], run: (i: number) => number): number {
  return (
    timed(() => {
      let sum = 0;
      for (let i = 0; i < CALLS; i++) sum += run(i);
      return sum;
    }) / CALLS
  );
}

export default async function linkage(short: boolean): Promise<string[]> {
  const { timed } = timer(short);
  const rows: BenchRow[] = [];
  for (const { name, layout } of rearLayouts) {
    const of = madeLinks(layout);
    const rear = madeRear(layout);
    const angles = evenly(0, rear.wheelTravel, CALLS).map((travel) => rearAt(rear, travel).angle);
    const solve = each(timed, (i) => shockAt(of, angles[i])?.length ?? NaN);
    rows.push({ ...row(`${name}, shock from arm`, solve), goal: { most: GOAL_NS } });
  }
  for (const layout of [rockerOnArm, rockerToArm]) {
    const of = madeLinks(layout);
    const range = madeRange(layout);
    const lengths = evenly(of.closedLength, of.fullLength, CALLS);
    const back = each(timed, (i) => {
      const arm = angleAtLength(of, range, lengths[i]);
      return arm.ok ? arm.angle : NaN;
    });
    rows.push(
      row(`arm from shock, ${layout === rockerOnArm ? 'closed form' : 'searched between two angles'}`, back),
    );
  }
  const of = madeLinks(rockerOnArm);
  const rear = madeRear(rockerOnArm);
  const travels = evenly(0, rear.wheelTravel, CALLS);
  const angles = travels.map((travel) => rearAt(rear, travel).angle);
  const solve = each(timed, (i) => shockAt(of, angles[i])?.length ?? NaN);
  const front = each(timed, (i) => {
    const at = suspensionAt(rear, travels[i]);
    return at.ok ? at.motionRatio : NaN;
  });
  rows.push(row('travel to angle, stroke, ratio and its change', front));
  rows.push(
    row(
      'links with their range from a layout',
      timed(() => madeRear(rockerOnArm).wheelTravel),
    ),
  );
  rows.push(
    row(
      '201 points of every curve',
      timed(() => {
        const curves = travelCurves(rear, spring);
        return curves.ok ? curves.points.length : NaN;
      }),
    ),
  );

  const sketch = await linkSketch(rockerOnArm, ARM_LENGTH);
  const places = (angle: number): Map<string, Point> =>
    new Map([
      ...(linkPoints(of, angle) ?? []).map(({ key, place }) => [key, place] as const),
      ['axle', { x: -ARM_LENGTH * Math.cos(angle), y: -ARM_LENGTH * Math.sin(angle) }],
    ]);
  sketch.setUp(places(angles[0]));
  const shock = (): number => distance(sketch.place('shockOnRocker'), sketch.place('shockFarEnd'));
  let worst = 0;
  for (const angle of angles) {
    sketch.solveAt(-ARM_LENGTH * Math.sin(angle));
    worst = Math.max(worst, Math.abs(shock() - madeShock(of, angle).length));
  }
  const general = timed((i) => {
    sketch.solveAt(-ARM_LENGTH * Math.sin(angles[i % CALLS]));
    return shock();
  });
  sketch.close();
  rows.push({
    ...row('rocker on the arm, shock from arm', solve),
    peer: { name: 'planegcs, axle at another height', figure: 1000 * general, goal: GOAL_RATIO },
  });
  return [`planegcs agrees to ${worst.toExponential(1)} mm`, ...benchTable(rows)];
}
