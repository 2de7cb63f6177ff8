/** How far the front axle lies ahead of the steering axis. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const offset = {
  key: 'offset',
  label: 'Offset of the front axle',
  quantity: 'length',
  read: 'number',
  takes: [],
  sd: 0.5,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: -100,
  most: 200,
  drawnAs: 'offset',
  help: 'Clamp offset and axle lead together: from the steering stem’s centre line to the fork tubes’, plus from the fork tubes’ centre line to the axle, both square to the fork.',
  figure: ({ offset }) => offset,
  gives: 'axleOffset',
  fromOther: null,
} as const satisfies MeasureKind;
