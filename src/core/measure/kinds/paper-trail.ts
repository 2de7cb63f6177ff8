/** Trail, as papers state it. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const paperTrail = {
  key: 'paperTrail',
  label: 'Trail, from its papers',
  quantity: 'length',
  read: 'number',
  takes: [],
  sd: 2.5,
  state: 'makersPosture',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: -200,
  most: 400,
  drawnAs: 'trail',
  help: 'From the maker’s data, along the ground.',
  figure: ({ rake, offset, frontRadius }) => (frontRadius * Math.sin(rake) - offset) / Math.cos(rake),
  gives: 'axleOffset',
  fromOther: null,
} as const satisfies MeasureKind;
