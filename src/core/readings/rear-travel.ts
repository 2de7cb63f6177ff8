/** Rear travel used: how far the rear axle has risen. */
import type { Reading } from './reading.ts';

/**
 * Rear travel used, mm: rise of the axle from hanging with the shock as set, square to the ground with the frame
 * held; never negative. The stance's own travel, so always there.
 * Example: rear travel used 35 mm → 35 mm.
 */
export const rearTravel: Reading = {
  key: 'rearTravel',
  label: 'Rear travel used',
  group: 'suspension',
  quantity: 'length',
  construction: 'rearTravel',
  read: ({ travel }) => travel.rear,
  more: 'rear uses more travel',
  less: 'rear uses less travel',
  help: {
    what: 'How far the rear axle has risen from where it hangs, the frame held.',
    sign: 'Zero is hanging; it is never negative.',
    measured:
      'Tape from the axle straight up to a mark on the tail, hanging and as it stands; the difference. Hang the wheel on a stand that cannot slip, while a second person holds the bike.',
    feels: 'More brings the rear down: flatter swingarm, more rake, slower steering.',
  },
};
