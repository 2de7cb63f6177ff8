/** Fork spring rate: that of one fork spring. */
import { ANY_RATE } from '../parts/bounds.ts';
import type { NumberDefinition } from './adjuster.ts';

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
  moves: { end: 'front', more: 'up' },
  more: 'stiffer',
  less: 'softer',
  help: 'Rate of one fork spring, as printed on it. Zero while it is not known; then the bike is read topped out and with travel set by hand only.',
} as const satisfies NumberDefinition;
