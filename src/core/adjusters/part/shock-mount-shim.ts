/** Shock-mount shim: what lies between the shock and its mount on the frame. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const shockMountShim = {
  key: 'shockMountShim',
  formerly: 'topShim',
  kind: 'part',
  group: 'links',
  label: 'Shock-mount shim',
  holds: 'number',
  part: 'the shim at the shock mount',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: 0, most: 20, step: 0.5 },
  moves: { end: 'rear', more: 'up', turnedAsHeight: true },
  more: 'thicker',
  less: 'thinner',
  help: 'Shim under the shock mount that does not sit on the rocker. Thicker raises the rear; enough thread must still hold in the mount. With a table it counts as a longer shock.',
} as const satisfies NumberDefinition;
