/** The teeth of a sprocket. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const toothCount = {
  key: 'toothCount',
  label: 'Teeth',
  quantity: 'teeth',
  read: 'exact',
  takes: [['sprocket']],
  sd: 0,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: true,
  least: 6,
  most: 120,
  drawnAs: 'round',
  help: 'Count them, or read the number stamped on the sprocket.',
  figure: () => null,
  fromOther: null,
} as const satisfies MeasureKind;
