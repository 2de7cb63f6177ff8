/** What the kinds share that say how far two places lie apart along or over the floor. */
import type { MeasureKind } from './measure-kind.ts';

export const BETWEEN_PLACES = {
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
  fromOther: null,
} as const satisfies Partial<MeasureKind>;
