/** The length of the shock between its bolts. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const eyeToEye = {
  key: 'eyeToEye',
  label: 'Shock, eye to eye',
  quantity: 'length',
  read: 'number',
  takes: [],
  sd: 0.5,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: 5,
  most: 700,
  drawnAs: 'shock',
  help: 'Measure from the centre of one bolt to the centre of the other. With the rear hanging this is the full length.',
  figure: ({ eyeToEye }) => eyeToEye(),
  fromOther: null,
} as const satisfies MeasureKind;
