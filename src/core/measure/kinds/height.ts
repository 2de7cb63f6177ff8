/** The height of one place over the floor. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const height = {
  key: 'height',
  label: 'Height over the floor',
  quantity: 'length',
  read: 'number',
  takes: [['point', 'mark']],
  sd: 1.5,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: 0,
  most: 2500,
  drawnAs: 'tapeFromFloor',
  help: 'Stand the tape upright on the floor beside the bike and sight across to the centre.',
  figure: ({ place }, [part]) => place(part)?.y ?? null,
  fromOther: null,
} as const satisfies MeasureKind;
