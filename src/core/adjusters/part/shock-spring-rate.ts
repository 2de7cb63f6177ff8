/** Shock spring rate: that of one shock’s spring. */
import { ANY_RATE } from '../../parts/bounds.ts';
import { onShockRate } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const shockSpringRate = {
  key: 'shockSpringRate',
  kind: 'part',
  group: 'springs',
  label: 'Shock spring rate',
  holds: 'number',
  part: 'the shock spring',
  quantity: 'rate',
  saved: ANY_RATE,
  default: 0,
  range: { least: 0, most: 250, step: 5 },
  applies: onShockRate,
  moves: { end: 'rear', more: 'up' },
  more: 'stiffer',
  less: 'softer',
  help: 'Rate of one shock’s spring, as printed on it. Leave it at zero if you do not know it: only Topped out and Travel set by hand have readings then.',
} as const satisfies NumberDefinition;
