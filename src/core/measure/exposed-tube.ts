/** How much of the fork's sliding tube is in sight. */
import type { MeasureKind } from './measure-kind.ts';

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
  help: 'Measure the shiny tube between the dust seal and the clamp, or the casting it slides into. In two states it says how much travel is used.',
  figure: ({ exposedTube }) => exposedTube,
  fromOther: null,
} as const satisfies MeasureKind;
