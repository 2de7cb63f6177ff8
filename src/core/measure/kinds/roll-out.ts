/** How far a wheel rolls in one turn. */
import type { MeasureKind } from '../held/measure-kind.ts';
import { ONCE_ROUND } from '../held/once-round.ts';

export const rollOut = {
  ...ONCE_ROUND,
  key: 'rollOut',
  label: 'Roll-out of one turn',
  // 2 mm of radius, once round.
  sd: 4 * Math.PI,
  help: 'Mark tyre and floor at the valve, push the bike on until the valve is down again, and measure between the marks. A tyre that gives rolls a little less than its tread; a tape round the tread tells more.',
} as const satisfies MeasureKind;
