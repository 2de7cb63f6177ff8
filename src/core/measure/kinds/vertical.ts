/** How far one place lies above another. */
import { BETWEEN_PLACES } from '../held/between-places.ts';
import type { MeasureKind } from '../held/measure-kind.ts';

export const vertical = {
  ...BETWEEN_PLACES,
  key: 'vertical',
  label: 'Height of one over the other',
  least: -2500,
  most: 2500,
  drawnAs: 'uprightTape',
  help: 'Measure both heights over the floor and take the difference; positive when the second lies higher than the first.',
  figure: ({ place }, [from, to]) => {
    const a = place(from);
    const b = place(to);
    return a === null || b === null ? null : b.y - a.y;
  },
} as const satisfies MeasureKind;
