/** Triple-clamp offset: fork legs ahead of the steering axis. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const clampOffset = {
  key: 'clampOffset',
  kind: 'part',
  group: 'steering',
  label: 'Triple-clamp [yoke] offset',
  holds: 'number',
  part: 'the triple clamps',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 'essential',
  range: { least: 10, most: 60, step: 0.5 },
  reading: 'trail',
  more: 'more offset',
  less: 'less offset',
  help: 'Fork legs ahead of the steering axis, square to it. More offset takes trail away; too little trail can make the steering shake its head. Less brings the front tyre nearer the radiator. Keep the tubes’ minimum engagement in both clamps.',
} as const satisfies NumberDefinition;
