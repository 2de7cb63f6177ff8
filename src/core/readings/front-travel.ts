/** Fork travel used: how far the fork has gone in. */
import type { Reading } from './reading.ts';

/**
 * Fork travel used from topped out, mm, along the legs; never negative. The stance's own travel, so always there.
 * Example: fork travel used 42 mm → 42 mm.
 */
export const frontTravel: Reading = {
  key: 'frontTravel',
  label: 'Fork travel used',
  group: 'suspension',
  quantity: 'length',
  construction: 'forkTravel',
  read: ({ travel }) => travel.front,
  more: 'fork uses more travel',
  less: 'fork uses less travel',
  help: {
    what: 'How far the fork has gone in from fully extended, along the legs.',
    sign: 'Zero is fully extended; it is never negative.',
    measured:
      'Cable tie or rubber ring on the tube, pushed up to the seal with the wheel in the air, on a stand that cannot slip, while a second person holds the bike.',
    feels: 'More brings the front down: steeper rake, less trail, weight forward.',
  },
};
