/** What is known of the floor under a gauge that was not zeroed on it: level, to half a degree. */
import { degrees } from '../units/convert.ts';
import type { FitRow } from './fit-values.ts';

/** 0° ± 0.5° with 95 %. */
export const FLOOR_SLOPE: FitRow = {
  kind: {
    key: 'floorSlope',
    label: 'Slope of the floor',
    quantity: 'angle',
    read: 'number',
    takes: [],
    sd: 0.25,
    state: 'onWheels',
    betweenStates: false,
    slant: false,
    anyState: true,
    least: -5,
    most: 5,
    drawnAs: null,
    help: '',
    figure: ({ slope }) => degrees(slope),
    fromOther: null,
  },
  row: { parts: [], state: 'onWheels', otherState: null, outOfPlane: 0 },
  measured: 0,
  sd: 0.25,
};
