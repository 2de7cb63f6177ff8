/** The height of an axle over the floor. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const axleHeight = {
  key: 'axleHeight',
  label: 'Axle height',
  quantity: 'length',
  read: 'number',
  takes: [['wheel']],
  sd: 1,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: 5,
  most: 1500,
  drawnAs: 'tapeFromFloor',
  help: 'Stand a square on the floor beside the wheel and read the axle’s centre. On its wheels this is the tyre’s radius under that load; off the floor it says how high the wheel hangs.',
  figure: ({ place }, [wheel]) =>
    wheel === 'frontWheel'
      ? (place('frontAxle')?.y ?? null)
      : wheel === 'rearWheel'
        ? (place('rearAxle')?.y ?? null)
        : null,
  gives: 'wheelSize',
  fromOther: null,
} as const satisfies MeasureKind;
