/** A straight run of chain or belt, from the two circles that it lies along. */
import { hasRuns } from '../parts/drive-kind.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from './stance.ts';

/** A free run, as if no guide were there; ground frame, mm. */
export interface ChainRun {
  /** Toward the front, of length one. */
  readonly way: Point;
  /** Between the points where it touches both pitch circles. */
  readonly length: number;
  /** How far along it from its rear end the pivot lies, and how far it passes above the pivot, square to it. */
  readonly pivotAlong: number;
  readonly lever: number;
}

/** The radius of the rear pitch circle less that of the front one, as a run on that side of the bike sees it, mm. */
export function runDifference({ machine }: Stance, which: 'upper' | 'lower'): number {
  if (!hasRuns(machine.driveKind)) return 0;
  const difference = machine.rearSprocketRadius - machine.frontSprocketRadius;
  return which === 'upper' ? difference : -difference;
}

/**
 * The run that is the tangent on one side of both pitch circles: it goes as the line of their centres, turned by the angle
 * whose sine is the radii's difference over their distance. Of a shaft or hub drive it is that line, and means nothing.
 */
export function chainRun(on: Stance, which: 'upper' | 'lower'): ChainRun {
  const { machine, countershaft, pose } = on;
  const { rearRadius, rearSprocketRadius } = machine;
  const difference = runDifference(on, which);
  const y = countershaft.y - rearRadius;
  // Nothing where the two centres are in one place, as no drive with runs has them.
  const square = countershaft.x ** 2 + y * y || 1;
  const length = Math.sqrt(square - difference * difference);
  const cos = (countershaft.x * length + y * difference) / square;
  const sin = (y * length - countershaft.x * difference) / square;
  const above = pose.pivot.y - rearRadius;
  return {
    way: { x: cos, y: sin },
    length,
    pivotAlong: above * sin + pose.pivot.x * cos,
    lever: pose.pivot.x * sin - above * cos + (which === 'upper' ? rearSprocketRadius : -rearSprocketRadius),
  };
}
