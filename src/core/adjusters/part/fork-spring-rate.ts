/** Fork spring rate: that of one fork spring. */
import { ANY_RATE } from '../../parts/bounds.ts';
import { onForkRate } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const forkSpringRate = {
  key: 'forkSpringRate',
  kind: 'part',
  group: 'springs',
  label: 'Fork spring rate',
  holds: 'number',
  part: 'the fork springs',
  quantity: 'rate',
  saved: ANY_RATE,
  default: 0,
  range: { least: 0, most: 30, step: 0.5 },
  applies: onForkRate,
  moves: { end: 'front', more: 'up' },
  more: 'stiffer',
  less: 'softer',
  help: 'Rate of one fork spring, as printed on it. Leave it at zero if you do not know it: only Topped out and Travel set by hand have readings then.',
} as const satisfies NumberDefinition;
