/** A distance between two places, as a tape shows it. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const distance = {
  key: 'distance',
  label: 'Distance',
  quantity: 'length',
  read: 'number',
  takes: [
    ['point', 'mark'],
    ['point', 'mark'],
  ],
  sd: 1,
  state: 'onWheels',
  betweenStates: false,
  slant: true,
  anyState: false,
  least: 5,
  most: 4000,
  drawnAs: 'tape',
  help: 'Hold the tape from centre to centre, in line with the bike. Under 200 mm also measure how much further out to the side one centre lies.',
  figure: ({ place }, [from, to]) => {
    const a = place(from);
    const b = place(to);
    return a === null || b === null ? null : Math.hypot(b.x - a.x, b.y - a.y);
  },
  fromOther: null,
} as const satisfies MeasureKind;
