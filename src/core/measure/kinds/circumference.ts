/** The way round a tyre's tread. */
import type { MeasureKind } from '../held/measure-kind.ts';
import { ONCE_ROUND } from '../held/once-round.ts';

export const circumference = {
  ...ONCE_ROUND,
  key: 'circumference',
  label: 'Round the tread',
  // 1 mm of radius, once round.
  sd: 2 * Math.PI,
  help: 'Lay a tape round the middle of the tread with the wheel off the floor.',
} as const satisfies MeasureKind;
