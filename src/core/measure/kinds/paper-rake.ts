/** Rake, as papers state it. */
import { degrees } from '../../units/convert.ts';
import type { MeasureKind } from '../held/measure-kind.ts';

export const paperRake = {
  key: 'paperRake',
  label: 'Rake, from its papers',
  quantity: 'angle',
  read: 'number',
  takes: [],
  sd: 0.25,
  state: 'makersPosture',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: -10,
  most: 60,
  drawnAs: 'steeringAxis',
  help: 'From the maker’s data; also called caster or steering head angle. Some makers give it from horizontal.',
  figure: ({ rake }) => degrees(rake),
  fromOther: { label: 'from horizontal', turn: (figure) => 90 - figure },
} as const satisfies MeasureKind;
