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
import { timed } from '../support/timed.ts';

/** Solving a link layout at an angle of the arm, with both derivatives, ns. */
const GOAL_NS = 1000;
const GOAL_RATIO = 100;

/** Calls timed as one, so that what the timing itself costs is spread over them. */
const CALLS = 100;
const spring = { force: (stroke: number) => 90 * (8 + stroke), rate: () => 90 };

function line(name: string, microseconds: number, besides: string): string {
  return `${name.padEnd(60)} ${(1000 * microseconds).toFixed(0).padStart(9)} ns  ${besides}`;
}

/** Microseconds of one of a hundred calls, each with another number. */
function each(run: (i: number) => number): number {
  return (
    timed(() => {
      let sum = 0;
      for (let i = 0; i < CALLS; i++) sum += run(i);
      return sum;
    }) / CALLS
  );
}

export default async function linkage(): Promise<string[]> {
  const lines: string[] = [];
  for (const { name, layout } of rearLayouts) {
    const of = madeLinks(layout);
    const rear = madeRear(layout);
    const angles = evenly(0, rear.wheelTravel, CALLS).map((travel) => rearAt(rear, travel).angle);
    const solve = each((i) => shockAt(of, angles[i])?.length ?? NaN);
    lines.push(
      line(
        `${name}, shock from arm`,
        solve,
        `goal ${GOAL_NS} ns: ${solve * 1000 <= GOAL_NS ? 'met' : 'MISSED'}`,
      ),
    );
  }
  for (const layout of [rockerOnArm, rockerToArm]) {
    const of = madeLinks(layout);
    const range = madeRange(layout);
    const lengths = evenly(of.closedLength, of.fullLength, CALLS);
    const back = each((i) => {
      const arm = angleAtLength(of, range, lengths[i]);
      return arm.ok ? arm.angle : NaN;
    });
    lines.push(
      line(
        `arm from shock, ${layout === rockerOnArm ? 'closed form' : 'searched between two angles'}`,
        back,
        '',
      ),
    );
  }
  const of = madeLinks(rockerOnArm);
  const rear = madeRear(rockerOnArm);
  const travels = evenly(0, rear.wheelTravel, CALLS);
  const angles = travels.map((travel) => rearAt(rear, travel).angle);
  const solve = each((i) => shockAt(of, angles[i])?.length ?? NaN);
  const front = each((i) => {
    const at = suspensionAt(rear, travels[i]);
    return at.ok ? at.motionRatio : NaN;
  });
  lines.push(line('travel to angle, stroke, ratio and its change', front, ''));
  lines.push(
    line(
      'links with their range from a layout',
      timed(() => madeRear(rockerOnArm).wheelTravel),
      '',
    ),
  );
  lines.push(
    line(
      '201 points of every curve',
      timed(() => {
        const curves = travelCurves(rear, spring);
        return curves.ok ? curves.points.length : NaN;
      }),
      '',
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
  const ratio = general / solve;
  lines.push(
    line(
      'planegcs, the same sketch with the axle at another height',
      general,
      `${ratio.toFixed(0)} × as long`,
    ),
  );
  lines.push(
    `planegcs agrees to ${worst.toExponential(1)} mm; goal ${GOAL_RATIO} ×: ${ratio >= GOAL_RATIO ? 'met' : 'MISSED'}`,
  );
  return lines;
}
