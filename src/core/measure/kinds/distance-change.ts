/** How one distance differs between two states, as sag is measured. */
import { distance } from './distance.ts';
import type { MeasureKind } from '../held/measure-kind.ts';

export const distanceChange = {
  ...distance,
  key: 'distanceChange',
  label: 'Change between two states',
  sd: 1,
  state: 'bothHanging',
  betweenStates: true,
  least: -600,
  most: 600,
  drawnAs: 'tape',
  help: 'Measure the same distance in both states and take the first less the second. Sag at the rear: from the axle up to a mark on the tail.',
} as const satisfies MeasureKind;
