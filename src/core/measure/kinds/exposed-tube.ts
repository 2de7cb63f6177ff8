/** How much of the fork's sliding tube is in sight. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const exposedTube = {
  key: 'exposedTube',
  label: 'Exposed fork tube',
  quantity: 'length',
  read: 'number',
  takes: [],
  sd: 0.5,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: 0,
  most: 600,
  drawnAs: 'tube',
  help: 'Measure the shiny tube from the dust seal to the lower clamp [bottom yoke]; on an upside-down fork, down to the axle’s casting. In two states it says how much travel is used.',
  figure: ({ exposedTube }) => exposedTube,
  fromOther: null,
} as const satisfies MeasureKind;
