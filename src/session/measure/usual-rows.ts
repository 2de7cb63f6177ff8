/** The rows that a tape and an angle gauge answer first: with the bike on its wheels, from outside, nothing taken off. */
import type { MeasureKindKey } from '../../core/measure/kinds/all-kinds.ts';
import type { MeasurePartKey } from '../../core/measure/held/measure-parts.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { KeptRow } from '../../document/measure.ts';
import { newRow, partsFor } from './tape-rows.ts';

/** In the order of a walk round the bike. */
const USUAL: readonly (readonly [MeasureKindKey, ...MeasurePartKey[]])[] = [
  ['horizontal', 'rearAxle', 'frontAxle'],
  ['axleHeight', 'frontWheel'],
  ['axleHeight', 'rearWheel'],
  ['angle', 'forkLeg'],
  ['distance', 'rearAxle', 'pivot'],
  ['height', 'pivot'],
  ['height', 'countershaft'],
  ['distance', 'pivot', 'countershaft'],
  ['height', 'steeringHead'],
  ['distance', 'frontAxle', 'steeringHead'],
  ['height', 'seat'],
];

/** The usual rows that this bike can have and its sheet has not, each without a figure. */
export function usualRows(bike: Bike, rows: readonly KeptRow[]): readonly KeptRow[] {
  return USUAL.flatMap(([kind, ...parts]) => {
    const can = parts.every((part, place) => partsFor(kind, place, bike).includes(part));
    const row = { ...newRow(kind, bike), parts };
    const has = rows.some(
      (each) =>
        each.kind === kind &&
        each.state === row.state &&
        parts.length === each.parts.length &&
        parts.every((part) => each.parts.includes(part)),
    );
    return can && !has ? [row] : [];
  });
}
