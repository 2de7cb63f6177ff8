/** What the kinds share that measure once round a wheel. */
import type { HeldBike } from './held-bike.ts';
import type { MeasureKind } from './measure-kind.ts';
import type { MeasurePartKey } from './measure-parts.ts';
import { wheelRadius } from './wheel-radius.ts';

export const ONCE_ROUND = {
  quantity: 'length',
  read: 'number',
  takes: [['wheel']],
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: true,
  least: 20,
  most: 3500,
  drawnAs: 'round',
  figure: (held: HeldBike, [wheel]: readonly MeasurePartKey[]): number | null => {
    const radius = wheelRadius(held, wheel);
    return radius === null ? null : 2 * Math.PI * radius;
  },
  gives: 'wheelSize',
  fromOther: null,
} as const satisfies Partial<MeasureKind>;
