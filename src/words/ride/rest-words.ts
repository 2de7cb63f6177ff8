/** How the two ends of a bike rest, in words. */
import type { Equilibrium } from '../../core/riding/equilibrium/equilibrium.ts';
import type { Rest } from '../../core/riding/equilibrium/end-at-rest.ts';

export const REST_WORDS: Readonly<Record<Rest, string>> = {
  onSprings: 'on its springs',
  toppedOut: 'topped out',
  bottomed: 'bottomed',
  coilsClosed: 'coil-bound',
};

/** Both ends in one breath, such as "both ends on their springs" or "front on its springs, rear topped out". */
export function restsWords({ front, rear }: Equilibrium): string {
  if (front.rest !== rear.rest) return `front ${REST_WORDS[front.rest]}, rear ${REST_WORDS[rear.rest]}`;
  return `both ends ${front.rest === 'onSprings' ? 'on their springs' : REST_WORDS[front.rest]}`;
}
