/** Tells a person what stands in the way of a pair of sprockets, and the nearest that works. */
import type { PairObstacle } from '../../core/chain/pair-obstacle.ts';

/** One or two sentences: what cannot be fitted, and the nearest tooth count that can. */
export function pairObstacleWords({ reason, found, nearest }: PairObstacle): string {
  if (reason === 'frontBelowShaft')
    return `A front sprocket of ${found} teeth does not go over the countershaft. It takes ${nearest ?? '–'} teeth or more.`;
  const end = reason === 'pivotInsideFront' ? 'front' : 'rear';
  const advice = nearest === null ? 'No sprocket is small enough.' : `${nearest} teeth or fewer clear it.`;
  return `With ${found} teeth the ${end} sprocket would reach over the swingarm pivot. ${advice}`;
}
