/** Trail: how far the front contact patch follows behind the steering axis on the ground. */
import type { Reading } from './reading.ts';

/**
 * Ground trail, mm: from the point where the steering axis meets the ground back to the front contact patch.
 * Positive when the patch is behind. Source: (radius·sin rake − offset) / cos rake, from the triangle of axis,
 * axle and ground (every textbook of the field). No answer only when the axis is flat, which no stance is.
 * Example: radius 600 mm, rake 5°, offset 22 mm → 30.40916169 mm.
 */
export function groundTrail(radius: number, rake: number, offset: number): number {
  return (radius * Math.sin(rake) - offset) / Math.cos(rake);
}

/** Ground trail of the bike as it stands, mm. Example: front wheel radius 600 mm, rake 5°, offset 22 mm → 30.409 mm. */
export const trail: Reading = {
  key: 'trail',
  label: 'Trail',
  group: 'steering',
  quantity: 'length',
  construction: 'trailTriangle',
  read: (stance) => groundTrail(stance.machine.frontRadius, stance.rake, stance.offset),
  usual: { least: 0, most: 300 },
  more: 'steadier steering',
  less: 'quicker steering',
  felt: {
    from: 2,
    gauge: { more: 'longer', less: 'shorter' },
  },
  belowZero: { more: 'pulls off straight less', less: 'pulls off straight more' },
  help: {
    what: 'How far the front contact patch trails behind the point the steering axis aims at on the ground.',
    sign: 'Positive when the patch is behind that point.',
    measured:
      'Computed from rake, front tyre radius and offset; on the bike, sight down the axis to the floor.',
    feels: 'More centres itself and steers heavier; less is lighter and quicker, and can shake its head.',
  },
};
