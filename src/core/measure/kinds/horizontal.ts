/** How far one place lies ahead of another, along the floor. */
import { BETWEEN_PLACES } from '../held/between-places.ts';
import type { MeasureKind } from '../held/measure-kind.ts';

export const horizontal = {
  ...BETWEEN_PLACES,
  key: 'horizontal',
  label: 'Distance along the floor',
  least: -4000,
  most: 4000,
  drawnAs: 'levelTape',
  help: 'Drop a plumb line from both centres and measure between them on the floor; positive when the second lies ahead of the first.',
  figure: ({ place }, [from, to]) => {
    const a = place(from);
    const b = place(to);
    return a === null || b === null ? null : b.x - a.x;
  },
} as const satisfies MeasureKind;
