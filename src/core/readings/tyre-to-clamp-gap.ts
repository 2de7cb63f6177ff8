/** Gap between front tyre and lower clamp with the fork fully in. */
import { freeRadius } from '../standing/tyres.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Gap between the front tyre's tread and the lower clamp's underside with all fork travel used and the fork tubes
 * above the clamp as set, mm along the legs; below zero the tyre would hit the clamp. Length of the legs below the
 * top clamp − travel − depth of the lower clamp − tyre radius. Growth of the tyre with speed and mudguards are not
 * counted. No answer without the depth of the clamp.
 * Example: legs below the top clamp 720 mm, fork travel 120 mm, lower clamp depth 215 mm, front wheel radius 300 mm →
 * 85 mm.
 */
export const tyreToClampGap: Reading = {
  key: 'tyreToClampGap',
  label: 'Tyre clearance to lower clamp [bottom yoke], fork bottomed',
  group: 'suspension',
  quantity: 'length',
  construction: 'clampGap',
  read: ({ machine: { front, tyres, frontRadius } }) =>
    front.lowerClampDepth === null
      ? absent('noClampDepth')
      : front.legLength - front.travel - front.lowerClampDepth - freeRadius(tyres, 'front', frontRadius),
  more: 'more room over the front tyre',
  less: 'less room over the front tyre',
  belowZero: { more: 'tyre reaches less far into the clamp', less: 'tyre reaches further into the clamp' },
  help: {
    what: 'Room left between front tyre and lower clamp when the fork is fully in, as high as it stands in its clamps.',
    sign: 'Positive is clear; below zero the tyre hits the clamp before the fork ends.',
    measured:
      'A workshop job: the front held by the steering head [headstock], the fork caps unloaded before the springs come out, then the fork pushed fully in and a ruler from tread to clamp. Mind the mudguard [fender], and that a tyre grows with speed.',
    feels: 'Nothing until it is gone; then the tyre stops dead under hard braking.',
  },
};
