/** Fork extenders: length screwed onto the fork tops. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const forkExtenders = {
  key: 'forkExtenders',
  formerly: 'forkExtender',
  kind: 'part',
  group: 'forkLength',
  label: 'Fork extenders',
  holds: 'number',
  part: 'the fork extenders',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: 0, most: 30, step: 1 },
  moves: { end: 'front', more: 'up', turnedAsHeight: true },
  more: 'longer',
  less: 'shorter',
  help: 'Extra length screwed onto the fork tops. Longer raises the front. Use only parts whose maker allows them for this fork: a thread that gives way drops the front.',
} as const satisfies NumberDefinition;
