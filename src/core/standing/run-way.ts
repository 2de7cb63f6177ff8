/** The way of a straight run of chain or belt, from the two circles that it lies along. */
import { hasRuns } from '../parts/drive-kind.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from './stance.ts';

/**
 * The way of a free run toward the front, of length one, ground frame, as if no guide were there: the line of the sprockets'
 * centres, turned by the angle whose sine is the difference of the pitch radii over their distance. Of a shaft or hub drive
 * it is that line itself, and means nothing.
 */
export function runWay({ machine, countershaft }: Stance, which: 'upper' | 'lower'): Point {
  const smaller = hasRuns(machine.driveKind) ? machine.rearSprocketRadius - machine.frontSprocketRadius : 0;
  const difference = which === 'upper' ? smaller : -smaller;
  const x = countershaft.x;
  const y = countershaft.y - machine.rearRadius;
  const square = x * x + y * y;
  if (square === 0) return { x: 1, y: 0 };
  const run = Math.sqrt(square - difference * difference);
  return { x: (x * run + y * difference) / square, y: (y * run - x * difference) / square };
}
