/** A tyre's size as its sidewall says it. */
import type { MeasureKind } from '../held/measure-kind.ts';
import { wheelRadius } from '../held/wheel-radius.ts';

export const tyreCode = {
  key: 'tyreCode',
  label: 'Tyre size',
  quantity: 'length',
  read: 'size',
  takes: [['wheel']],
  // Of the radius that follows from the size: real tyres differ by 8 mm with 95 %.
  sd: 4,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: true,
  least: 75,
  most: 1000,
  drawnAs: 'round',
  help: 'Read it on the sidewall, such as 120/70-17.',
  figure: (held, [wheel]) => wheelRadius(held, wheel),
  gives: 'wheelSize',
  fromOther: null,
} as const satisfies MeasureKind;
