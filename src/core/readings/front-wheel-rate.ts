/** Front wheel rate: how stiff the fork is at the wheel. */
import { frontWheelRate as rateAtWheel } from '../springs/at-the-wheel.ts';
import { withoutSprings } from './springs-known.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Rate of both legs' springs at the front wheel, N/mm: vertical force per rise of the axle, the frame held. Rate along
 * the legs / cos² of their lean from upright (virtual work). No answer without springs, or beyond closed coils.
 * Example: fork spring rate 10 N/mm, rake 60° → 80 N/mm.
 */
export const frontWheelRate: Reading = {
  key: 'frontWheelRate',
  label: 'Front wheel rate',
  group: 'suspension',
  quantity: 'rate',
  construction: 'forkTravel',
  read: (stance) => {
    const { sprung } = stance;
    return sprung === undefined
      ? absent('noSprings')
      : (withoutSprings(sprung, stance.travel.front, 'front') ?? rateAtWheel(sprung, stance));
  },
  more: 'front stiffer',
  less: 'front softer',
  help: {
    what: 'How much more load the front carries for each mm it sinks, of the springs alone.',
    sign: 'Always positive. A bump stop [bump rubber] counts where it works.',
    measured:
      'Computed from the springs’ rate and the fork’s lean; the air in the fork counts where its sizes are given.',
    feels: 'Stiffer dives less and rides harsher; softer grips better and bottoms sooner.',
  },
};
