/** A chain taut on both runs, each followed as a string of its own round the pivot's guides. */
import type { ChainLoop } from '../../src/core/drive/chain-loop.ts';
import type { PivotGuides } from '../../src/core/drive/chain-path.ts';
import { tautRun } from '../../src/core/drive/taut-run.ts';
import type { Point } from '../../src/core/plane/point.ts';

/**
 * Length of the shortest loop in links, wraps counted in teeth; in general no whole number. Each run goes straight, or
 * round its guide as a string at pitch-line height where it would pass nearer to the pivot's centre than the guide does.
 * Angles are those toward the front above the x axis. null when the sprockets overlap or one covers a guide.
 */
export function tightestLoop(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  { centre, upper, lower }: PivotGuides,
): number | null {
  const ends = {
    rear: { centre: rear, radius: loop.rearRadius },
    front: { centre: front, radius: loop.frontRadius },
  };
  const top = tautRun(ends, upper === null ? null : { centre, radius: upper }, 1);
  const bottom = tautRun(ends, lower === null ? null : { centre, radius: lower }, -1);
  if (top === null || bottom === null) return null;
  const { pitch, rearTeeth, frontTeeth } = loop;
  const wraps =
    rearTeeth * (Math.PI + bottom.rearAngle - top.rearAngle) +
    frontTeeth * (Math.PI - bottom.frontAngle + top.frontAngle);
  return (top.length + bottom.length) / pitch + wraps / (2 * Math.PI);
}
