/** The way round a tyre's tread. */
import type { MeasureKind } from '../held/measure-kind.ts';
import { wheelRadius } from '../held/wheel-radius.ts';

export const circumference = {
  key: 'circumference',
  label: 'Round the tread',
  quantity: 'length',
  read: 'number',
  takes: [['wheel']],
  // 1 mm of radius, once round.
  sd: 2 * Math.PI,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: true,
  least: 20,
  most: 3500,
  drawnAs: 'round',
  help: 'Lay a tape round the middle of the tread with the wheel off the floor.',
  figure: (held, [wheel]) => {
    const radius = wheelRadius(held, wheel);
    return radius === null ? null : 2 * Math.PI * radius;
  },
  fromOther: null,
} as const satisfies MeasureKind;
