/** How far one place lies above another. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const vertical = {
  key: 'vertical',
  label: 'Height of one over the other',
  quantity: 'length',
  read: 'number',
  takes: [
    ['point', 'mark'],
    ['point', 'mark'],
  ],
  sd: 1.5,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: -2500,
  most: 2500,
  drawnAs: 'uprightTape',
  help: 'Measure both heights over the floor and take the difference; positive when the second lies higher than the first.',
  figure: ({ place }, [from, to]) => {
    const a = place(from);
    const b = place(to);
    return a === null || b === null ? null : b.y - a.y;
  },
  fromOther: null,
} as const satisfies MeasureKind;
