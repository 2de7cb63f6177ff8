/** Shock air pressure: what a gauge shows with the wheel hanging. */
import { ANY_PRESSURE } from '../../parts/bounds.ts';
import { onShockAir } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const shockAirPressure = {
  key: 'shockAirPressure',
  kind: 'part',
  group: 'springs',
  label: 'Shock air pressure',
  holds: 'number',
  part: 'the shock’s air pressure',
  quantity: 'pressure',
  saved: ANY_PRESSURE,
  default: 0,
  range: { least: 0, most: 25, step: 0.2 },
  minutes: 5,
  applies: onShockAir,
  moves: { end: 'rear', more: 'up' },
  more: 'more',
  less: 'less',
  help: 'What a gauge shows with the wheel hanging and the shock cold. More raises the rear and stiffens it. Keep below the maker’s most.',
} as const satisfies NumberDefinition;
