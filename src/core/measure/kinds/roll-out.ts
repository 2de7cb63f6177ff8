/** How far a wheel rolls in one turn. */
import type { MeasureKind } from '../held/measure-kind.ts';
import { wheelRadius } from '../held/wheel-radius.ts';

export const rollOut = {
  key: 'rollOut',
  label: 'Roll-out of one turn',
  quantity: 'length',
  read: 'number',
  takes: [['wheel']],
  // 2 mm of radius, once round.
  sd: 4 * Math.PI,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: true,
  least: 20,
  most: 3500,
  drawnAs: 'round',
  help: 'Mark tyre and floor at the valve, push the bike on until the valve is down again, and measure between the marks. A tyre that gives rolls a little less than its tread; a tape round the tread tells more.',
  figure: (held, [wheel]) => {
    const radius = wheelRadius(held, wheel);
    return radius === null ? null : 2 * Math.PI * radius;
  },
  fromOther: null,
} as const satisfies MeasureKind;
