/** Wheelbase, as papers state it. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const paperWheelbase = {
  key: 'paperWheelbase',
  label: 'Wheelbase, from its papers',
  quantity: 'length',
  read: 'number',
  takes: [],
  sd: 2.5,
  state: 'makersPosture',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: 500,
  most: 3000,
  drawnAs: 'wheelbase',
  help: 'From the maker’s data.',
  figure: ({ place }) => {
    const front = place('frontAxle');
    const rear = place('rearAxle');
    return front === null || rear === null ? null : front.x - rear.x;
  },
  fromOther: null,
} as const satisfies MeasureKind;
