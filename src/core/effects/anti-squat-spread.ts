/** How much anti-squat changes as the rear goes through its travel. */
import { antiSquat } from '../readings/anti-squat.ts';
import { stance } from '../standing/stance.ts';
import type { TrialFigure } from './trial-figure.ts';

/** Parts of the rear travel between which it is read: where a ridden bike moves. */
const FROM = 0.2;
const TO = 0.7;

/** Difference of anti-squat between a fifth and seven tenths of the rear travel, points without a sign; the fork stays. */
export const antiSquatSpread: TrialFigure = {
  key: 'antiSquatSpread',
  label: 'Anti-squat change through the travel',
  quantity: 'percent',
  isChange: false,
  more: 'changes more through the travel',
  less: 'changes less through the travel',
  same: 'changes as much through the travel',
  of: (_, { machine, travel: { front } }) => {
    const [high, low] = [FROM, TO].map((part) =>
      stance(machine, { front, rear: part * machine.rear.wheelTravel }),
    );
    if (!high.ok) return high;
    if (!low.ok) return low;
    const [atHigh, atLow] = [antiSquat.read(high), antiSquat.read(low)];
    if (typeof atHigh !== 'number') return atHigh;
    return typeof atLow === 'number' ? Math.abs(atHigh - atLow) : atLow;
  },
};
